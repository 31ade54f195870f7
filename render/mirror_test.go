package render

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// Every place of a mirrored drawing, letters' outlines too, is the mirrored place.
func TestMirroredDrawing(t *testing.T) {
	for _, text := range []Text{
		{At: geometry.Point{X: 3, Y: 4}, Height: 2.5, Align: Middle, Centred: true, String: "R 8.00"},
		{At: geometry.Point{X: -30, Y: 4}, Height: 5, Align: Right, Turn: 0.7, String: "Tip 12"},
		{At: geometry.Point{X: 1, Y: -9}, Height: 3.5, Turn: -2, Bold: true, String: "Fg"},
	} {
		d := &Drawing{Scale: 1}
		circle, err := geometry.Circle(geometry.Point{X: 7, Y: 2}, 3, "")
		require.NoError(t, err)
		d.Add(Item{Layer: LayerText, Text: &text}, Item{Layer: LayerTeeth, Pen: Visible, Outlines: []geometry.Outline{circle}},
			Item{Layer: LayerForm, Pen: Thin, Chains: []geometry.Chain{geometry.ChainOf(geometry.Segment{To: geometry.Point{X: 5, Y: 1}, Bulge: 0.4})}})
		m := d.Mirrored()
		glyphs, mirrored := text.Glyphs(), m.Items[0].Text.Glyphs()
		require.Len(t, mirrored, len(glyphs))
		for i, contour := range glyphs {
			require.InDelta(t, 0, contour.Start.Mirror().Dist(mirrored[i].Start), 1e-9)
			for k, c := range contour.Curves {
				require.InDelta(t, 0, c.To.Mirror().Dist(mirrored[i].Curves[k].To), 1e-9)
				require.InDelta(t, 0, c.Control.Mirror().Dist(mirrored[i].Curves[k].Control), 1e-9)
			}
		}
		require.InDelta(t, 0, text.Origin().Mirror().Dist(m.Items[0].Text.Origin()), 1e-9)
		require.Equal(t, geometry.Box{Min: geometry.Point{X: -10, Y: -1}, Max: geometry.Point{X: -4, Y: 5}}, m.Items[1].Outlines[0].Bounds())
		arc := m.Items[2].Chains[0].Segment(0)
		require.Equal(t, geometry.Segment{To: geometry.Point{X: -5, Y: 1}, Bulge: -0.4}, arc)
		back := m.Mirrored()
		require.Equal(t, d.Bounds(), back.Bounds())
		require.Equal(t, text, *back.Items[0].Text)
	}
}
