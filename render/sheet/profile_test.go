package sheet

import (
	"bytes"
	"compress/zlib"
	"context"
	"io"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/pdf"
)

// pairOfBars is what two bars measured and what comes of it.
type pairOfBars struct {
	name         string
	bar, x, y    float64
	wantX, wantY float64
	blamed       geometry.Quantity
	source       string
	least, most  float64
}

func TestAProfileFromBars(t *testing.T) {
	for _, row := range []pairOfBars{
		{name: "true", bar: BarMillimetres, x: 100, y: 100, wantX: 1, wantY: 1, source: "definition"},
		{name: "mm", bar: BarMillimetres, x: 99.7, y: 100.4, wantX: 0.997, wantY: 1.004, source: "definition"},
		{name: "inch", bar: BarInches, x: 101.6, y: 101.0, wantX: 1, wantY: 101.0 / 101.6, source: "definition"},
		{
			name: "short in the scan direction", bar: BarInches, x: BarInches * (1 - 0.0078), y: BarInches, wantX: 0.9922, wantY: 1,
			source: "savagetaylor.com TIL TA43830: 0.78 percent",
		},
		{
			name: "worst engine quoted", bar: BarMillimetres, x: 97, y: 103, wantX: 0.97, wantY: 1.03,
			source: "comp.laser-printers June 1988: 10 in could be 0.3 in out",
		},
		{name: "fitted to the page", bar: BarMillimetres, x: 94, y: 100, blamed: "printing.across", least: 97, most: 103, source: "MostError"},
		{name: "enlarged", bar: BarInches, x: 101.6, y: 105, blamed: "printing.up", least: 98.552, most: 104.648, source: "MostError"},
		{name: "the other bar", bar: BarMillimetres, x: 4, y: 4, blamed: "printing.across", least: 97, most: 103, source: "inches for mm"},
		{name: "nothing", bar: BarMillimetres, blamed: "printing.across", least: 97, most: 103, source: "bad input"},
		{name: "negative", bar: BarMillimetres, x: 100, y: -100, blamed: "printing.up", least: 97, most: 103, source: "bad input"},
		{name: "no number", bar: BarMillimetres, x: math.NaN(), y: 100, blamed: "printing.across", least: 97, most: 103, source: "bad input"},
		{name: "endless", bar: BarMillimetres, x: 100, y: math.Inf(1), blamed: "printing.up", least: 97, most: 103, source: "bad input"},
	} {
		t.Run(row.name, func(t *testing.T) { row.try(t) })
	}
}

func (row pairOfBars) try(t *testing.T) {
	p, err := FromBars("Laser", "a4", row.bar, row.x, row.y)
	if row.blamed == "" {
		require.NoError(t, err, row.source)
		require.Equal(t, "Laser", p.Name)
		require.Equal(t, "a4", p.Paper)
		require.InDelta(t, row.wantX, p.X, 1e-12, row.source)
		require.InDelta(t, row.wantY, p.Y, 1e-12, row.source)
		require.NoError(t, p.Check())
		return
	}
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit, row.source)
	require.Equal(t, row.blamed, limit.Quantity)
	require.Equal(t, "printer.fitted", limit.Code)
	require.InDelta(t, row.least, limit.Min, 1e-9)
	require.InDelta(t, row.most, limit.Max, 1e-9)
	require.True(t, p.None())
}

// A printer that errs by (ex, ey) prints a corrected sheet's bars true, and bars
// measured on a sheet that a wrong profile shaped give the true one.
func TestASheetThatAProfileShapedIsMeasuredAgain(t *testing.T) {
	const ex, ey = 0.991, 1.013
	wrong := Profile{"Laser", "a4", 1.004, 0.998}
	byX, byY := wrong.stretch(false).Factors()
	right, err := wrong.Remeasured("Laser", "a4", Bar{BarMillimetres, 100 * byX * ex}, Bar{BarInches, 101.6 * byY * ey})
	require.NoError(t, err)
	require.InDelta(t, ex, right.X, 1e-12)
	require.InDelta(t, ey, right.Y, 1e-12)
	byX, byY = right.stretch(false).Factors()
	require.InDelta(t, 1, ex*byX, 1e-12)
	require.InDelta(t, 1, ey*byY, 1e-12)
	_, err = right.Remeasured("Laser", "a4", Bar{BarMillimetres, 105}, Bar{BarMillimetres, 100})
	require.Error(t, err)
}

// straight are the level and upright lines of a PDF's page in millimetres of its
// own numbers.
func straight(t *testing.T, page render.Page) (across, up []float64) {
	var file bytes.Buffer
	require.NoError(t, pdf.Write(&file, render.Document{Pages: []render.Page{page}}))
	at := regexp.MustCompile(`(?s)<</Filter/FlateDecode/Length (\d+)>>\nstream\n`).FindSubmatchIndex(file.Bytes())
	require.NotNil(t, at)
	z, err := zlib.NewReader(bytes.NewReader(file.Bytes()[at[1]:]))
	require.NoError(t, err)
	text, err := io.ReadAll(z)
	require.NoError(t, err)
	var numbers []float64
	var by, from geometry.Point
	for _, word := range strings.Fields(string(text)) {
		if v, err := strconv.ParseFloat(word, 64); err == nil {
			numbers = append(numbers, v)
			continue
		}
		if n := len(numbers); n >= 2 {
			to := geometry.Point{X: numbers[n-2] * by.X, Y: numbers[n-1] * by.Y}
			switch word {
			case "cm":
				by = geometry.Point{X: numbers[0], Y: numbers[3]}.Times(25.4 / 72)
			case "m":
				from = to
			case "l":
				if from.Y == to.Y {
					across = append(across, to.X-from.X)
				} else if from.X == to.X {
					up = append(up, to.Y-from.Y)
				}
				from = to
			}
		}
		numbers = numbers[:0]
	}
	return across, up
}

// The file's own numbers are longer where the printer prints short: the bars, and
// the work, an upright rectangle, to 1 µm. On a sheet that lies, the printer's two
// ways change places.
func TestACorrectionIsInTheFile(t *testing.T) {
	profile := Profile{"Laser", "a4", 0.985, 1.012}
	a4 := Papers()[0]
	for _, row := range []struct {
		name          string
		width, height float64
		x, y          float64
	}{
		{"upright", 90, 50, 0.985, 1.012},
		{"lying", 230, 60, 1.012, 0.985},
	} {
		t.Run(row.name, func(t *testing.T) {
			sheets := []Sheet{{Drawing: plate(row.width, row.height, 1), Block: block}}
			pages, err := LayContext(context.Background(), sheets, a4, style, Options{Profile: profile})
			require.NoError(t, err)
			require.Len(t, pages, 1)
			require.Equal(t, row.width > 200, pages[0].Width > pages[0].Height)
			across, up := straight(t, pages[0])
			for _, want := range []float64{100 / row.x, 101.6 / row.x, row.width / row.x} {
				require.True(t, has(across, want), "%v across", want)
			}
			for _, want := range []float64{100 / row.y, 101.6 / row.y, row.height / row.y} {
				require.True(t, has(up, want), "%v up", want)
			}
			text := strings.Join(said(pages[0]), "\n")
			require.Contains(t, text, "Laser")
			require.Contains(t, text, "−1.50 % across the paper and +1.20 % along it")
			require.NotContains(t, text, "none: check the bars")
		})
	}
}

func has(lengths []float64, want float64) bool {
	for _, l := range lengths {
		if math.Abs(math.Abs(l)-want) < 0.001 {
			return true
		}
	}
	return false
}

// However a page is stretched, nothing of it leaves the sheet.
func TestACorrectedSheetIsWithinItsPaper(t *testing.T) {
	for _, paper := range papers(t) {
		for _, p := range []Profile{{"L", paper.Name, 0.97, 0.97}, {"L", paper.Name, 1.03, 0.97}, {"L", paper.Name, 1.03, 1.03}} {
			for _, d := range []*render.Drawing{plate(60, 40, 1), plate(240, 60, 1), plate(900, 700, 1)} {
				pages, err := LayContext(context.Background(), []Sheet{{Drawing: d, Block: block}}, paper, style, Options{Profile: p})
				require.NoError(t, err)
				for _, page := range pages {
					x, y := page.Stretch.Factors()
					b := page.Drawing.Bounds()
					require.LessOrEqual(t, b.Max.X*x, page.Width-3.9, paper.Name)
					require.LessOrEqual(t, b.Max.Y*y, page.Height-8, paper.Name)
				}
			}
		}
	}
}

func TestAProfileThatWillNotDo(t *testing.T) {
	a4 := Papers()[0]
	_, err := LayContext(context.Background(), []Sheet{{Drawing: plate(9, 9, 1), Block: block}}, a4, style, Options{Profile: Profile{"L", "letter", 1, 1}})
	var refusal *Refusal
	require.ErrorAs(t, err, &refusal)
	require.Equal(t, Refusal{"letter", "paper.profile"}, *refusal)
	_, err = LayContext(context.Background(), []Sheet{{Drawing: plate(9, 9, 1), Block: block}}, a4, style, Options{Profile: Profile{"L", "a4", 0.5, 1}})
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit)
	require.True(t, style.Words.Has(limit.Code))
}
