package svg

import (
	"bytes"
	"encoding/xml"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// A sketch has the box asked for, only what lies in it, on paper, and its letters as text as
// wide as ours.
func TestASketchIsWhatLiesInItsBox(t *testing.T) {
	said := render.Text{At: point(1, 2), Height: 2.5, Turn: geometry.Degrees(30), Bold: true, String: "R < 4 & up"}
	d := drawing(
		render.Item{Layer: render.LayerTeeth, Pen: render.Visible, Outlines: []geometry.Outline{circle(t, point(1, 1), 1.23456)}},
		render.Item{Layer: render.LayerBore, Pen: render.Visible, Outlines: []geometry.Outline{circle(t, point(50, 50), 1)}},
		render.Item{Layer: render.LayerText, Text: &said},
	)
	var b bytes.Buffer
	require.NoError(t, Sketch(&b, d, geometry.Box{Min: point(-5, -4), Max: point(5, 6)}))
	var root element
	require.NoError(t, xml.Unmarshal(b.Bytes(), &root))
	require.Equal(t, "-5 -6 10 10", root.attr("viewBox"))
	require.Equal(t, "10mm", root.attr("width"))
	require.Len(t, root.all("path"), 1)
	require.NotContains(t, b.String(), "1.23456")
	require.Contains(t, b.String(), "1.235")
	ground := root.all("rect")[0]
	require.Equal(t, []string{"-5", "-6", "10", "10"}, []string{ground.attr("x"), ground.attr("y"), ground.attr("width"), ground.attr("height")})
	text := root.all("text")[0]
	require.Equal(t, said.String, text.Text)
	width, err := strconv.ParseFloat(text.attr("textLength"), 64)
	require.NoError(t, err)
	require.InDelta(t, said.Width(), width, 0.0005)
	require.Equal(t, "rotate(-30 1 -2)", text.attr("transform"))
}

func TestASketchOfNothingIsRefused(t *testing.T) {
	require.Error(t, Sketch(&bytes.Buffer{}, nil, geometry.Box{Max: point(1, 1)}))
	full := drawing(render.Item{Layer: render.LayerBore, Pen: render.Visible, Outlines: []geometry.Outline{circle(t, point(0, 0), 1)}})
	require.Error(t, Sketch(&bytes.Buffer{}, full, geometry.NoBox()))
}
