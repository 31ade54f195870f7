package pdf

import (
	"bytes"
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

func point(x, y float64) geometry.Point { return geometry.Point{X: x, Y: y} }

func circle(t require.TestingT, at geometry.Point, r float64) geometry.Outline {
	o, err := geometry.Circle(at, r, "")
	require.NoError(t, err)
	return o
}

// wheelPage is a sheet with something of every kind on it.
func wheelPage(t require.TestingT) render.Page {
	d := &render.Drawing{Title: "Third wheel", Scale: 1}
	d.Add(render.Item{
		Layer: render.LayerTeeth, Pen: render.Visible, Fill: render.Brass,
		Outlines: []geometry.Outline{circle(t, point(105, 150), 40)},
	})
	d.Add(render.Item{
		Layer: render.LayerWindows, Pen: render.Visible, Fill: render.Waste,
		Outlines: []geometry.Outline{circle(t, point(105, 150), 30), circle(t, point(105, 150), 10)},
	})
	d.Add(render.Item{Layer: render.LayerSawLine, Pen: render.Hidden, Outlines: []geometry.Outline{circle(t, point(105, 150), 29)}})
	d.Add(render.CentreLine(point(60, 150), point(150, 150)))
	d.Add(render.Linear(point(65, 150), point(145, 150), -50, "80.00 mm")...)
	d.Add(render.Item{Layer: render.LayerText, Text: &render.Text{At: point(20, 280), Height: 5, Bold: true, String: "Third wheel: 84 Zähne, 5°30′"}})
	return render.Page{Width: 210, Height: 297, Drawing: d}
}

func wheelDocument(t require.TestingT) render.Document {
	page := wheelPage(t)
	return render.Document{Title: "Régulateur", Subject: "Templates", Author: "A. Maker", Language: "en", Pages: []render.Page{page, page}}
}

func written(t require.TestingT, doc render.Document) []byte {
	var b bytes.Buffer
	require.NoError(t, Write(&b, doc))
	return b.Bytes()
}

func TestSameDocumentSameBytes(t *testing.T) {
	want := written(t, wheelDocument(t))
	var all sync.WaitGroup
	for range 4 {
		all.Go(func() {
			if !bytes.Equal(want, written(t, wheelDocument(t))) {
				t.Error("the bytes differ")
			}
		})
	}
	all.Wait()
	require.NotContains(t, string(want), "Date")
	other := wheelDocument(t)
	other.Title = "Regulator"
	identifier := regexp.MustCompile(`/ID\[<[0-9a-f]{32}><[0-9a-f]{32}>\]`)
	require.NotEqual(t, identifier.Find(want), identifier.Find(written(t, other)))
}

// Every entry of the table of objects points at the object it names.
func TestObjectTable(t *testing.T) {
	file := written(t, wheelDocument(t))
	start := regexp.MustCompile(`startxref\n(\d+)\n%%EOF\n$`).FindSubmatch(file)
	require.NotNil(t, start)
	at, err := strconv.Atoi(string(start[1]))
	require.NoError(t, err)
	rows := strings.Split(string(file[at:]), "\n")
	require.Equal(t, "xref", rows[0])
	count := 0
	_, err = fmt.Sscanf(rows[1], "0 %d", &count)
	require.NoError(t, err)
	for i := 1; i < count; i++ {
		require.Len(t, rows[2+i], 19)
		offset, err := strconv.Atoi(rows[2+i][:10])
		require.NoError(t, err)
		require.True(t, bytes.HasPrefix(file[offset:], fmt.Appendf(nil, "%d 0 obj\n", i)), "object %d", i)
	}
}

func TestWhatTheViewerIsTold(t *testing.T) {
	file := string(written(t, wheelDocument(t)))
	require.True(t, strings.HasPrefix(file, "%PDF-1.7\n"))
	require.Contains(t, file, "/PrintScaling/None")
	require.Contains(t, file, "/Lang"+text("en"))
	require.Contains(t, file, "/Title"+text("Régulateur"))
	require.Contains(t, file, "/Subject"+text("Templates"))
	require.Contains(t, file, "/Author"+text("A. Maker"))
	require.Equal(t, 2, strings.Count(file, "/MediaBox[0 0 595.27559 841.88976]")) // 210·72/25.4, 297·72/25.4
	require.Contains(t, file, "+OpenSans-SemiBold")
	for _, layer := range []string{"teeth", "windows", "saw-line", "centre-lines", "dimensions", "text"} {
		require.Contains(t, file, "/Type/OCG/Name"+text(layer))
	}
	require.NotContains(t, file, text("bore"))
}

func TestUnsoundDocuments(t *testing.T) {
	stray := wheelPage(t)
	stray.Drawing.Add(render.Item{Layer: render.LayerText, Text: &render.Text{At: point(math.NaN(), 1), Height: 5, String: "x"}})
	endless := wheelPage(t)
	endless.Drawing.Add(render.Item{Layer: render.LayerText, Text: &render.Text{Height: math.Inf(1), String: "x"}})
	for _, row := range []struct {
		name  string
		pages []render.Page
		says  string
	}{
		{"no pages", nil, "no pages"},
		{"no size", []render.Page{{Width: 0, Height: 297}}, "page 1: a sheet cannot measure 0 × 297 mm"},
		{"size no number", []render.Page{{Width: 210, Height: 297}, {Width: math.NaN(), Height: 297}}, "page 2"},
		{"place no number", []render.Page{stray}, "no number"},
		{"letters without end", []render.Page{endless}, "no number"},
	} {
		t.Run(row.name, func(t *testing.T) {
			require.ErrorContains(t, Write(&bytes.Buffer{}, render.Document{Pages: row.pages}), row.says)
		})
	}
}

// An empty sheet is a page all the same.
func TestEmptySheet(t *testing.T) {
	file := written(t, render.Document{Pages: []render.Page{{Width: 100, Height: 50}, {Width: 50, Height: 50, Drawing: &render.Drawing{}}}})
	require.Contains(t, string(file), "/Count 2")
}

// full is a writer with room for so many bytes.
type full struct{ room int }

func (f *full) Write(b []byte) (int, error) {
	if len(b) > f.room {
		return f.room, errors.New("disk full")
	}
	f.room -= len(b)
	return len(b), nil
}

func TestDiskFull(t *testing.T) {
	size := len(written(t, wheelDocument(t)))
	for _, room := range []int{0, 100, size / 2, size - 1} {
		require.ErrorContains(t, Write(&full{room}, wheelDocument(t)), "disk full")
	}
	require.NoError(t, Write(&full{size}, wheelDocument(t)))
}

func TestNumbers(t *testing.T) {
	for v, want := range map[float64]string{0: "0", -0.0000001: "0", 10: "10", 0.5: "0.5", -1.25: "-1.25", 100.000004: "100", 1200: "1200"} {
		require.Equal(t, want, number(v))
	}
	require.Equal(t, "7 0", string(appendNumber([]byte("7 "), -1e-9)))
}
