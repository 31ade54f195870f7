package render

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func sample(t require.TestingT) *Drawing {
	d := &Drawing{Title: "Sample", Scale: 1}
	d.Add(Item{Layer: LayerText, Ink: Blue, Text: &Text{At: point(10, 0), Height: 3.5, Turn: 0.2, String: "R"}})
	d.Add(Item{Layer: LayerTeeth, Pen: Visible, Fill: Brass, Outlines: []geometry.Outline{circle(t, 0, 0, 10)}})
	d.Add(CentreLine(point(-20, 0), point(20, 0)))
	d.Add(Item{Layer: "odd", Pen: Thin, Chains: []geometry.Chain{geometry.ChainOf(geometry.Line{From: point(0, 0), To: point(0, 5)}.Segment())}})
	return d
}

// Places and lines are enlarged; letters, pens and the drawing it came from stay.
func TestPlaced(t *testing.T) {
	d := sample(t)
	p := d.Placed(point(100, 50), 10, math.Pi/2)
	require.Equal(t, 10.0, p.Scale)
	require.InDelta(t, 0, point(100, 150).Dist(p.Items[0].Text.At), 1e-9)
	require.Equal(t, 3.5, p.Items[0].Text.Height)
	require.InDelta(t, 0.2+math.Pi/2, float64(p.Items[0].Text.Turn), 1e-12)
	require.Equal(t, Visible, p.Items[1].Pen)
	require.InDelta(t, 0, point(100, 150).Dist(p.Items[1].Outlines[0].Vertex(0).Point), 1e-9)
	require.InDelta(t, 0, point(100, -150).Dist(p.Items[2].Chains[0].Vertex(0).Point), 1e-9)
	require.Equal(t, point(10, 0), d.Items[0].Text.At)
	require.Equal(t, 1.0, d.Scale)
}

func TestBounds(t *testing.T) {
	box := sample(t).Bounds()
	require.InDelta(t, 0, point(-20, -10).Dist(box.Min), 1e-9)
	require.InDelta(t, 0, point(20, 10).Dist(box.Max), 1e-9)
	require.Equal(t, geometry.Box{}, (&Drawing{}).Bounds())
}

func TestCentred(t *testing.T) {
	d := sample(t).Placed(point(7, 9), 1, 0).Centred()
	require.InDelta(t, 0, d.Bounds().Centre().Norm(), 1e-9)
}

// Items come out layer by layer, and none is lost.
func TestLevels(t *testing.T) {
	var layers []Layer
	for _, level := range sample(t).Levels() {
		layers = append(layers, level.Layer)
		require.Len(t, level.Items, 1)
	}
	require.Equal(t, []Layer{LayerTeeth, LayerCentreLines, LayerText, "odd"}, layers)
}
