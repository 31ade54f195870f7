package sheet

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// wheel is a wheel of twelve tips as a template shows it: ticks, a bore, a trundle's
// hole, a start hole with its cross, hatched waste, and numbers.
func wheel(t *testing.T) *render.Drawing {
	b := template.NewBoard("wheel", style)
	b.Drawing.Title, b.Drawing.Description = "Wheel", "glue on"
	var rim []geometry.Vertex
	var ticks []geometry.Line
	for i := range 12 {
		way := geometry.Clock(geometry.Degrees(float64(30 * i)))
		rim = append(rim, geometry.Vertex{Point: geometry.Polar(20, way)}, geometry.Vertex{Point: geometry.Polar(18, way-geometry.Degrees(15))})
		ticks = append(ticks, geometry.Line{From: geometry.Polar(20.9, way), To: geometry.Polar(22.3, way)})
	}
	teeth, err := geometry.NewOutline(rim)
	require.NoError(t, err)
	b.Closed(template.Stroke{Layer: render.LayerTeeth, Quantity: "teeth", Pen: render.Visible, Fill: render.Brass}, teeth)
	b.Circle(template.Stroke{Layer: render.LayerWindows, Quantity: "crossing", Pen: render.Visible, Fill: render.Waste}, geometry.Point{X: 10}, 5)
	b.Circle(template.Stroke{Layer: render.LayerSawLine, Pen: render.Hidden}, geometry.Point{X: 10}, 4.7)
	b.Circle(template.Stroke{Layer: render.LayerBore, Quantity: "bore", Pen: render.Visible, Fill: render.Paper}, geometry.Point{}, 3)
	b.Circle(template.Stroke{Layer: render.LayerScrews, Quantity: "mount", Pen: render.Visible, Fill: render.Paper}, geometry.Point{X: -6, Y: 1}, 1)
	b.Circle(template.Stroke{Layer: render.LayerStartHoles, Pen: render.Thin, Fill: render.Paper}, geometry.Point{X: 13, Y: 1}, 0.4)
	b.Line(template.Stroke{Layer: render.LayerStartHoles, Pen: render.Hair}, geometry.Line{From: geometry.Point{X: 13.2, Y: 1}, To: geometry.Point{X: 14.2, Y: 1}})
	b.Line(template.Stroke{Layer: render.LayerCentreLines, Quantity: "teeth.count", Pen: render.Hair, Ink: render.Blue}, ticks...)
	b.Write(template.Stroke{Layer: render.LayerText, Ink: render.Blue}, render.Text{At: geometry.Point{X: 1, Y: 26}, Height: 2.5, String: "0"})
	return b.Drawing
}

func TestMirroredReadsInAMirror(t *testing.T) {
	d := wheel(t)
	m := Look{Mirrored: true}.of(d, style)
	require.Len(t, m.Items, len(d.Items))
	require.Contains(t, m.Description, "Mirrored")
	require.Contains(t, m.Description, "glue on")
	for i, it := range m.Items {
		was, ok := d.Items[i].Bounds()
		is, _ := it.Bounds()
		require.True(t, ok)
		require.InDelta(t, -was.Max.X, is.Min.X, 1e-9)
		require.InDelta(t, was.Min.Y, is.Min.Y, 1e-9)
		require.Equal(t, it.Text != nil, it.Text != nil && it.Text.Mirror)
	}
	page, err := LayContext(t.Context(), []Sheet{{Drawing: d, Block: block}}, Papers()[0], style, Options{Look: Look{Mirrored: true}})
	require.NoError(t, err)
	readable := 0
	for _, it := range page[0].Drawing.Items {
		if it.Text != nil {
			require.Equal(t, it.Text.String == "0", it.Text.Mirror, "only the template is mirrored: %q", it.Text.String)
			readable++
		}
	}
	require.Greater(t, readable, 10)
}

func TestOutlinesOnly(t *testing.T) {
	d := Look{OutlinesOnly: true}.of(wheel(t), style)
	for i, it := range d.Items {
		require.Contains(t, []render.Fill{render.NoFill, render.Paper, render.Solid}, it.Fill)
		require.Equal(t, wheel(t).Items[i].Outlines, it.Outlines)
	}
	notes := Look{OutlinesOnly: true}.ofNotes(block.Notes)
	require.Len(t, notes.Legend, 2, "nothing says what is hatched")
	require.Equal(t, block.Notes.Legend, Look{}.ofNotes(block.Notes).Legend)
}

// Thin lines are hairlines; dashed ones stay dashed, with the same dashes and the
// same length in all.
func TestThinLines(t *testing.T) {
	d := Look{Thin: true}.of(wheel(t), style)
	marks := 0.0
	for _, it := range d.Items {
		require.Contains(t, []render.Pen{render.NoPen, render.Hair}, it.Pen)
		if it.Layer == render.LayerSawLine {
			for _, c := range it.Chains {
				for i := range c.Len() {
					s := c.Segment(i)
					require.LessOrEqual(t, s.Length(), render.Hidden.Dashes()[0]+1e-9)
					arc, ok := s.Arc()
					require.True(t, ok)
					require.InDelta(t, 4.7, arc.Radius, 1e-9)
					marks += s.Length()
				}
			}
		}
	}
	mark, gap := render.Hidden.Dashes()[0], render.Hidden.Dashes()[1]
	require.InDelta(t, 2*math.Pi*4.7*mark/(mark+gap), marks, mark)
}

// The punch points are the hole's centres, each once, and the tips; teeth, windows
// and the holes themselves are gone, numbers and ticks are not.
func TestPunchPoints(t *testing.T) {
	d := Look{Punch: true}.of(wheel(t), style)
	want := []geometry.Point{{}, {X: -6, Y: 1}, {X: 13, Y: 1}}
	for i := range 12 {
		want = append(want, geometry.Polar(20, geometry.Clock(geometry.Degrees(float64(30*i)))))
	}
	var got []geometry.Point
	for _, it := range d.Items {
		require.Empty(t, it.Outlines)
		if it.Quantity == punchQuantity {
			require.Len(t, it.Chains, 4)
			bounds, _ := it.Bounds()
			got = append(got, bounds.Centre())
			for _, c := range it.Chains {
				require.Greater(t, c.Segment(0).From.Dist(bounds.Centre()), 0.05, "the centre is left open")
			}
		}
	}
	require.Len(t, got, len(want))
	for i := range want {
		require.InDelta(t, 0, want[i].Dist(got[i]), 1e-9)
	}
	require.Len(t, d.Items, len(want)+2, "ticks and numbers stay")
	require.NotContains(t, d.Description, "glue on")
	plain := plate(30, 20, 10)
	require.Same(t, plain, Look{Punch: true}.of(plain, style), "there is nothing to punch")
}

// Of the maker's own, the holes are punched and the notes are read; what is scribed is gone.
func TestTheMakersOwnHolesArePunched(t *testing.T) {
	b := template.NewBoard("own", style)
	b.Drawing.Title = "Own"
	hole, scribed := geometry.Point{X: 4, Y: -6}, geometry.Point{X: 2, Y: 5}
	own := template.Stroke{Layer: render.LayerAdditions, Pen: render.Visible, Fill: render.Paper}
	b.Circle(own, hole, 1.5)
	b.Circle(template.Stroke{Layer: render.LayerAdditions, Pen: render.Thin}, scribed, 3)
	b.Line(template.Stroke{Layer: render.LayerAdditions, Pen: render.Thin}, geometry.Line{From: hole, To: scribed})
	b.Write(own, render.Text{At: geometry.Point{Y: 8}, Height: 2.5, String: "dial side"})
	d := Look{Punch: true}.of(b.Drawing, style)
	require.Len(t, d.Items, 2)
	require.Equal(t, "dial side", d.Items[0].Text.String)
	bounds, _ := d.Items[1].Bounds()
	require.InDelta(t, 0, hole.Dist(bounds.Centre()), 1e-9)
}

// However a template is laid out, in these looks nothing of it is filled or drawn thick.
func TestLooksHoldOnTheSheet(t *testing.T) {
	sheets := []Sheet{{Drawing: wheel(t), Block: block, With: "own"}, {Drawing: wheel(t), Block: block, With: "own"}, {Drawing: plate(400, 300, 1), Block: block}}
	pages, err := LayContext(t.Context(), sheets, Papers()[0], style, Options{Look: Look{OutlinesOnly: true, Thin: true}})
	require.NoError(t, err)
	require.Greater(t, len(pages), 3)
	for _, page := range pages {
		for _, it := range page.Drawing.Items {
			if it.Layer != render.LayerSheet {
				require.Contains(t, []render.Fill{render.NoFill, render.Paper, render.Solid}, it.Fill)
				require.Contains(t, []render.Pen{render.NoPen, render.Hair}, it.Pen)
			}
		}
	}
}

// One ink: all is black on white, and hatching is lines.
func TestBlackOnly(t *testing.T) {
	pages, err := LayContext(t.Context(), []Sheet{{Drawing: wheel(t), Block: block}, {Drawing: plate(400, 300, 1), Block: block}}, Papers()[0], style, Options{Look: Look{BlackOnly: true}})
	require.NoError(t, err)
	for _, page := range pages {
		for _, it := range page.Drawing.Items {
			require.Equal(t, render.Black, it.Ink)
			require.Contains(t, []render.Fill{render.NoFill, render.Paper, render.Solid}, it.Fill)
		}
	}
	d := wheel(t)
	for _, it := range d.Items {
		if it.Fill == render.Waste {
			items := blackened(it)
			require.Len(t, items, 3)
			require.Len(t, items[1].Chains, len(it.WasteLines()))
			require.Equal(t, it.Outlines, items[2].Outlines)
		}
	}
}

func TestCardsKeepTheirLook(t *testing.T) {
	card := plate(100, 50, 0)
	for _, l := range []Look{{Mirrored: true}, {OutlinesOnly: true}, {Thin: true}, {Punch: true}} {
		require.Same(t, card, l.of(card, style))
	}
	require.Same(t, card, Look{}.of(card, style))
}
