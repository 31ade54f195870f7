package sheet

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

var style = template.Style{Words: words.English()}

var block = TitleBlock{
	Job: "Signal-cabin timepiece", Part: "Escape wheel", Kind: "Crossing template", Maker: "A. Maker", Number: "SC-1",
	Date: "2026-11-25", Notes: template.Notes{
		Legend:  []template.Mark{{Pen: render.Visible, Fill: render.Waste, Text: "hatched: waste"}, {Pen: render.Hidden, Text: "dashed: saw line"}, {Round: true, Pen: render.Thin, Text: "start hole"}},
		Figures: []template.Figure{{Label: "Set-over", Value: "5.198 mm"}, {Label: "Infeed", Value: "2.299 mm"}, {Label: "Land", Value: "0.200 mm"}, {Label: "Tilt", Value: "10°"}, {Label: "Root", Value: "45.5 mm"}},
	},
}

// plate is a drawing of a rectangle filled with steel, its diagonals and its name.
func plate(width, height, scale float64) *render.Drawing {
	b := template.NewBoard("plate", style)
	b.Drawing.Title, b.Drawing.Description, b.Drawing.Scale = "Plate", "A plate with its diagonals, drawn to be laid out", scale
	p, q := geometry.Point{X: -width / 2, Y: -height / 2}, geometry.Point{X: width / 2, Y: height / 2}
	b.Rectangle(template.Stroke{Layer: render.LayerTeeth, Pen: render.Visible, Fill: render.Steel}, p, q)
	b.Line(template.Stroke{Layer: render.LayerForm, Pen: render.Thin},
		geometry.Line{From: p, To: q}, geometry.Line{From: geometry.Point{X: p.X, Y: q.Y}, To: geometry.Point{X: q.X, Y: p.Y}})
	b.Write(template.Stroke{Layer: render.LayerText}, render.Text{At: geometry.Point{X: 3}, Height: 3.5, String: "middle"})
	return b.Drawing
}

func papers(t *testing.T) []Paper {
	all := Papers()
	for _, text := range []string{"140x200mm", "300x160mm", "2000x2000mm"} {
		p, err := ParsePaper(text)
		require.NoError(t, err)
		all = append(all, p)
	}
	return all
}

func TestBarsAreExactBothWays(t *testing.T) {
	for _, paper := range papers(t) {
		t.Run(paper.Name, func(t *testing.T) {
			pages, err := Place(plate(60, 40, 1), paper, block, style)
			require.NoError(t, err)
			var across, up []float64
			for _, it := range pages[0].Drawing.Items {
				if it.Quantity != "sheet.bar" {
					continue
				}
				for _, c := range it.Chains {
					s := c.Segment(0)
					if s.From.Y == s.To.Y {
						across = append(across, s.To.X-s.From.X)
					} else {
						require.Equal(t, s.From.X, s.To.X)
						up = append(up, s.To.Y-s.From.Y)
					}
				}
			}
			require.InDeltaSlice(t, []float64{100, 101.6}, across, 1e-12)
			require.InDeltaSlice(t, []float64{100, 101.6}, up, 1e-12)
		})
	}
}

func TestEverySheetIsWithinItsPaper(t *testing.T) {
	for _, paper := range papers(t) {
		for _, d := range []*render.Drawing{plate(60, 40, 1), plate(100, 110, 1), plate(250, 120, 5), plate(900, 700, 1), plate(170, 60, 0)} {
			pages, err := Place(d, paper, block, style)
			require.NoError(t, err, paper.Name)
			for i, page := range pages {
				b := page.Drawing.Bounds()
				require.GreaterOrEqual(t, b.Min.X, 4.0, "%s page %d", paper.Name, i)
				require.GreaterOrEqual(t, b.Min.Y, 9.0, "%s page %d", paper.Name, i)
				require.LessOrEqual(t, b.Max.X, page.Width-3.9, "%s page %d", paper.Name, i)
				require.LessOrEqual(t, b.Max.Y, page.Height-9, "%s page %d", paper.Name, i)
			}
		}
	}
}

func TestLetteringStandsClear(t *testing.T) {
	for _, paper := range papers(t) {
		pages, err := Place(plate(60, 40, 1), paper, block, style)
		require.NoError(t, err)
		var texts []render.Text
		for _, it := range pages[0].Drawing.Items {
			if it.Text != nil {
				texts = append(texts, *it.Text)
			}
		}
		require.Greater(t, len(texts), 20)
		for i, a := range texts {
			for _, b := range texts[i+1:] {
				require.False(t, a.Bounds().Grow(-0.05).Touches(b.Bounds().Grow(-0.05)), "%s: %q stands on %q", paper.Name, a.String, b.String)
			}
		}
	}
}

func TestADrawingKeepsItsSize(t *testing.T) {
	d := plate(100, 110, 1)
	pages, err := Place(d, Papers()[0], block, style)
	require.NoError(t, err)
	require.Len(t, pages, 1)
	for _, it := range pages[0].Drawing.Items {
		if it.Layer == render.LayerTeeth {
			b := it.Outlines[0].Bounds()
			require.InDelta(t, 100, b.Width(), 1e-12)
			require.InDelta(t, 110, b.Height(), 1e-12)
		}
	}
	require.Contains(t, said(pages[0]), "1 : 1")
}

func said(p render.Page) []string {
	var all []string
	for _, it := range p.Drawing.Items {
		if it.Text != nil {
			all = append(all, it.Text.String)
		}
	}
	return all
}

func TestTheTitleBlockSaysItsFields(t *testing.T) {
	pages, err := Lay([]Sheet{{Drawing: plate(50, 50, 10), Block: block}, {Drawing: plate(50, 50, 0), Block: TitleBlock{Job: "Other"}}}, Papers()[0], style)
	require.NoError(t, err)
	require.Len(t, pages, 2)
	for _, text := range []string{
		"Signal-cabin timepiece", "Escape wheel", "Crossing template", "A. Maker", "SC-1", "2026-11-25", "1 of 2", "10 : 1",
		"none: check the bars", "5.198 mm", "10°", "hatched: waste", "100 mm: measured _________", "4 in: measured _________",
	} {
		require.Contains(t, said(pages[0]), text)
	}
	require.Contains(t, said(pages[1]), "2 of 2")
	require.Contains(t, said(pages[1]), "–", "an empty field shows a dash")
	require.Contains(t, said(pages[1]), words.English().Say("sheet.caution"))
}

func TestTheTitleBlockIs180Wide(t *testing.T) { // ISO 7200, from memory
	for _, row := range []struct {
		paper string
		width float64
	}{{"a4", 180}, {"letter", 180}, {"a3", 180}, {"140x200mm", 110}} {
		paper, err := ParsePaper(row.paper)
		require.NoError(t, err)
		l := plan(lying{paper: paper}, plate(10, 10, 1), block, style)
		require.InDelta(t, row.width, l.blockWide, 1e-9, row.paper)
	}
}

func TestScaleText(t *testing.T) { // ISO 5455 clause 5
	for _, row := range []struct {
		scale float64
		text  string
	}{{1, "1 : 1"}, {10, "10 : 1"}, {0.5, "1 : 2"}, {2.5, "2.5 : 1"}, {0, ""}} {
		require.Equal(t, row.text, scaleText(row.scale))
	}
}

func TestFitShortensWhatIsTooWide(t *testing.T) {
	long := "A movement with a very long name that no title block in the world could hold"
	for _, width := range []float64{5, 20, 60} {
		text := fit(long, false, width, 3.5, 2.5)
		require.LessOrEqual(t, text.Width(), width)
		require.Equal(t, 2.5, text.Height)
	}
	require.Equal(t, 3.5, fit("short", true, 60, 3.5, 2.5).Height)
}

func TestTheWayThatFits(t *testing.T) {
	a4 := Papers()[0]
	for _, row := range []struct {
		name          string
		width, height float64
		lying         bool
		pages         int
	}{
		{"small stands", 60, 40, false, 1},
		{"wide lies", 240, 80, true, 1},
		{"large is tiled", 400, 300, false, 6},
	} {
		t.Run(row.name, func(t *testing.T) {
			pages, err := Place(plate(row.width, row.height, 1), a4, block, style)
			require.NoError(t, err)
			require.Equal(t, row.lying, pages[0].Width > pages[0].Height)
			require.Len(t, pages, row.pages)
			require.Equal(t, row.pages == 1, Fits(plate(row.width, row.height, 1), a4, block, style))
		})
	}
}

// Whatever is to stand beside a drawing, paper that Tipline takes holds the drawing; paper
// too small for the bars is refused.
func TestPaperThatHoldsAnythingHoldsTheDrawing(t *testing.T) {
	crowded := block
	crowded.Notes.Caution = strings.Repeat("Wear eye protection. ", 60)
	for range 90 {
		crowded.Notes.Figures = append(crowded.Notes.Figures, template.Figure{Label: "x", Value: "1"})
		crowded.Notes.Legend = append(crowded.Notes.Legend, template.Mark{Pen: render.Thin, Text: "a line"})
	}
	for _, paper := range papers(t) {
		for _, of := range []TitleBlock{block, crowded} {
			for _, x := range []float64{1, 1 - MostError, 1 + MostError} {
				d := plate(150, 150, 1)
				d.Description = strings.Repeat(d.Description+"\n", 3)
				pages, err := LayContext(t.Context(), []Sheet{{Drawing: d, Block: of}}, paper, style, Options{Profile: Profile{"L", paper.Name, x, x}})
				require.NoError(t, err, paper.Name)
				require.LessOrEqual(t, len(pages), 12, paper.Name)
			}
		}
	}
	_, err := Place(plate(50, 50, 1), Paper{"small", 80, 90}, crowded, style)
	var refusal *Refusal
	require.ErrorAs(t, err, &refusal)
	require.Equal(t, "paper.size", refusal.Code)
	require.False(t, math.IsNaN(plan(lying{paper: Papers()[0]}, plate(1, 1, 1), crowded, style).free.Height()))
}

func TestACardIsReducedNotTiled(t *testing.T) {
	for _, paper := range papers(t) {
		pages, err := Place(template.Cautions(style), paper, block, style)
		require.NoError(t, err)
		require.Len(t, pages, 1, paper.Name)
		bounds := pages[0].Drawing.Bounds()
		require.LessOrEqual(t, bounds.Max.X, pages[0].Width-3.9, paper.Name)
		require.GreaterOrEqual(t, bounds.Min.Y, 9.0, paper.Name)
		for _, it := range pages[0].Drawing.Items {
			if it.Text != nil {
				require.GreaterOrEqual(t, it.Text.Height, 1.0, "%s: %q", paper.Name, it.Text.String)
			}
		}
	}
}

func TestACardStandsAtTheTopLeft(t *testing.T) {
	a4 := Papers()[0]
	pages, err := Place(plate(100, 50, 0), a4, block, style)
	require.NoError(t, err)
	l := plan(lying{paper: a4}, plate(100, 50, 0), block, style)
	for _, it := range pages[0].Drawing.Items {
		if it.Layer == render.LayerTeeth {
			b := it.Outlines[0].Bounds()
			require.InDelta(t, l.free.Min.X, b.Min.X, 1e-9)
			require.InDelta(t, l.free.Max.Y-space, b.Max.Y, 1e-9)
		}
	}
}
