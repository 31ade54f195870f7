package packet_test

import (
	"bytes"
	"context"
	"io"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/template"
)

func sample(t testing.TB) *job.Job {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	j, err := job.Read(bytes.NewReader(data))
	require.NoError(t, err)
	return j
}

func options(t testing.TB, j *job.Job) packet.Options {
	paper, err := sheet.ParsePaper("a4")
	require.NoError(t, err)
	return packet.Options{Paper: paper, Style: template.Style{Words: words.English(), Units: solve.Units(j)}}
}

func build(t testing.TB, j *job.Job, o packet.Options) render.Document {
	d, err := packet.Build(context.Background(), solve.Solve(context.Background(), j), o)
	require.NoError(t, err)
	return d
}

func titles(d render.Document) []string {
	var ts []string
	for _, p := range d.Pages {
		ts = append(ts, p.Drawing.Title)
	}
	return ts
}

// says reports whether a page has a text that contains the words, its lines put
// together.
func says(p render.Page, text string) bool {
	var all []string
	for _, i := range p.Drawing.Items {
		if i.Text != nil {
			all = append(all, i.Text.String)
		}
	}
	return strings.Contains(strings.Join(all, " "), text)
}

func TestPacketIsInTheOrderOfTheWork(t *testing.T) {
	j := sample(t)
	got := slices.Compact(titles(build(t, j, options(t, j))))
	want := []string{"Signal-cabin timepiece"}
	for _, w := range j.Wheels {
		want = append(want, w.Name+": the blank", w.Name+": cutter", w.Name+": setting and depth", w.Name+": dividing", w.Name)
	}
	require.Equal(t, want, got[:len(want)])
	require.Equal(t, "Cautions", got[len(got)-1])
}

func TestCopiesRepeatTemplatesOnly(t *testing.T) {
	j := sample(t)
	o := options(t, j)
	o.Wheel = "escape"
	one := titles(build(t, j, o))
	o.Copies = 3
	three := titles(build(t, j, o))
	count := func(ts []string, name string) int {
		n := 0
		for _, title := range ts {
			if title == name {
				n++
			}
		}
		return n
	}
	for name, times := range map[string]int{
		"Escape wheel": 3, "Escape wheel: cutter": 3, "Escape wheel: the blank": 1, "Escape wheel: setting and depth": 1,
	} {
		require.Equal(t, count(one, name)*times, count(three, name), name)
	}
}

func TestCoverSaysWhatIsMissing(t *testing.T) {
	j := sample(t)
	broken, err := j.Set("third", "teeth.module", "many")
	require.NoError(t, err)
	d := build(t, broken, options(t, j))
	require.True(t, says(d.Pages[0], "Third wheel: not in this packet"))
	require.NotContains(t, titles(d), "Third wheel")
	require.Contains(t, titles(d), "Hour wheel")
	for field, text := range map[geometry.Quantity]string{"crossing.hub": "70 mm"} {
		broken, err = j.Set("third", field, text)
		require.NoError(t, err)
		d = build(t, broken, options(t, j))
		require.True(t, says(d.Pages[0], "the windows of the crossing"))
	}
}

// Every sheet keeps within its paper, says its number, and has the bars.
func TestEverySheet(t *testing.T) {
	j := sample(t)
	for _, name := range []string{"a4", "a3", "letter", "legal", "tabloid", "150x210mm"} {
		o := options(t, j)
		var err error
		o.Paper, err = sheet.ParsePaper(name)
		require.NoError(t, err)
		d := build(t, j, o)
		for i, p := range d.Pages {
			paper := geometry.Box{Max: geometry.Point{X: p.Width, Y: p.Height}}
			b := p.Drawing.Bounds()
			require.True(t, paper.Contains(b.Min) && paper.Contains(b.Max), "%s, sheet %d, %s: %v", name, i+1, p.Drawing.Title, b)
			require.True(t, says(p, "100 mm: measured"), p.Drawing.Title)
		}
	}
}

func TestSameBytes(t *testing.T) {
	j := sample(t)
	var first, second bytes.Buffer
	require.NoError(t, pdf.Write(&first, build(t, j, options(t, j))))
	require.NoError(t, pdf.Write(&second, build(t, sample(t), options(t, j))))
	require.True(t, bytes.Equal(first.Bytes(), second.Bytes()))
}

func TestBuildGivesWay(t *testing.T) {
	j := sample(t)
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, err := packet.Build(ctx, solve.Solve(context.Background(), j), options(t, j))
	require.ErrorIs(t, err, context.Canceled)
}

func BenchmarkPacketOfSample(b *testing.B) {
	j := sample(b)
	o := options(b, j)
	b.ReportAllocs()
	for b.Loop() {
		require.NoError(b, pdf.Write(io.Discard, build(b, j, o)))
	}
}
