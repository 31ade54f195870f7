package render

import (
	"errors"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func TestDump(t *testing.T) {
	d := &Drawing{Title: "Bore", Scale: 10}
	d.Add(Item{Layer: LayerText, Ink: Grey, Text: &Text{At: point(1, -0.00001), Height: 2.5, Align: Middle, Turn: geometry.Degrees(90), String: "Ø 6"}})
	d.Add(Item{Layer: LayerBore, Part: "third", Quantity: "bore", Pen: Visible, Fill: Paper, Outlines: []geometry.Outline{circle(t, 0, 0, 3)}})
	d.Add(CentreLine(point(-4, 0), point(4, 0)))
	var b strings.Builder
	require.NoError(t, d.Dump(&b))
	require.Equal(t, `drawing "Bore" scale 10
bore part="third" quantity="bore" pen=visible ink=black fill=paper
  outline
    3.0000 0.0000 bulge 1.000000
    -3.0000 0.0000 bulge 1.000000
centre-lines part="" quantity="" pen=centre ink=blue fill=none
  chain
    -4.0000 0.0000
    4.0000 0.0000
text part="" quantity="" pen=none ink=grey fill=none
  text "Ø 6" at 1.0000 0.0000 height 2.5000 turn 90.0000° middle centred=false bold=false
`, b.String())
	require.ErrorContains(t, d.Dump(full{}), "disk full")
	require.Equal(t, "9", Pen(9).String())
}

// full is a writer without room.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("disk full") }
