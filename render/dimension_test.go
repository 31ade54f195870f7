package render

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func point(x, y float64) geometry.Point { return geometry.Point{X: x, Y: y} }

// tips returns where the arrowheads of the items point.
func tips(items []Item) (at []geometry.Point) {
	for _, it := range items {
		if it.Fill == Solid {
			for _, head := range it.Outlines {
				at = append(at, head.Vertex(0).Point)
			}
		}
	}
	return at
}

func figure(t *testing.T, items []Item) *Text {
	for _, it := range items {
		if it.Text != nil {
			return it.Text
		}
	}
	require.Fail(t, "no figure")
	return nil
}

func TestDimensionsAreBlueAndThin(t *testing.T) {
	all := map[string][]Item{
		"linear": Linear(point(0, 0), point(40, 0), 8, "40.00 mm"),
		"radius": Radius(point(0, 0), 30, 0.5, "R 30"),
	}
	for name, items := range all {
		t.Run(name, func(t *testing.T) {
			require.NotEmpty(t, items)
			for _, it := range items {
				require.Equal(t, LayerDimensions, it.Layer)
				require.Equal(t, Blue, it.Ink)
				if len(it.Chains) > 0 {
					require.Equal(t, Thin, it.Pen)
				}
			}
		})
	}
}

// The arrowheads stand exactly on what is measured.
func TestArrowsPointAtTheWork(t *testing.T) {
	for _, row := range []struct {
		name  string
		items []Item
		tips  []geometry.Point
	}{
		{"linear", Linear(point(0, 0), point(40, 0), 8, "40"), []geometry.Point{point(0, 8), point(40, 8)}},
		{"linear below", Linear(point(0, 0), point(40, 0), -8, "40"), []geometry.Point{point(0, -8), point(40, -8)}},
		{"linear on the work", Linear(point(0, 0), point(0, 40), 0, "40"), []geometry.Point{point(0, 0), point(0, 40)}},
		{"short linear", Linear(point(0, 0), point(2, 0), 8, "2"), []geometry.Point{point(0, 8), point(2, 8)}},
		{"radius", Radius(point(1, 1), 30, 0, "R 30"), []geometry.Point{point(31, 1)}},
		{"small radius", Radius(point(1, 1), 2, 0, "R 2"), []geometry.Point{point(3, 1)}},
	} {
		t.Run(row.name, func(t *testing.T) {
			got := tips(row.items)
			require.Len(t, got, len(row.tips))
			for i, want := range row.tips {
				require.InDelta(t, 0, want.Dist(got[i]), 1e-9)
			}
		})
	}
}

// A figure stands over the middle of its line and clear of it, and can be read
// from below or from the right whichever way the line runs.
func TestFiguresCanBeRead(t *testing.T) {
	for degrees := -180.0; degrees <= 180; degrees += 15 {
		way := geometry.Polar(60, geometry.Degrees(degrees))
		text := figure(t, Linear(geometry.Point{}, way, 10, "60.00 mm"))
		require.GreaterOrEqual(t, text.Turn.Degrees(), -90+1e-6)
		require.LessOrEqual(t, text.Turn.Degrees(), 90+1e-6)
		line := way.Times(0.5).Add(unit(way).Left().Times(10))
		require.InDelta(t, figureGap, text.At.Dist(line), 1e-9)
		above := text.At.Sub(line).Dot(geometry.Polar(1, text.Turn).Left())
		require.InDelta(t, figureGap, above, 1e-9)
	}
}

// Extension lines leave the work a gap and run past the dimension line.
func TestExtensionLines(t *testing.T) {
	items := Linear(point(0, 0), point(40, 0), -8, "40")
	first := items[0].Chains[0]
	require.InDelta(t, -extensionGap, first.Vertex(0).Y, 1e-12)
	require.InDelta(t, -8-extensionPast, first.Vertex(1).Y, 1e-12)
}

// A text too long for its line stands beyond it, not over the neighbours.
func TestLongFigure(t *testing.T) {
	text := figure(t, Linear(point(0, 0), point(4, 0), 8, "4.00 mm (0.157 in)"))
	require.Greater(t, text.Bounds().Min.X, 4.0)
}

func TestNothingToMeasure(t *testing.T) {
	require.Empty(t, Linear(point(1, 1), point(1, 1), 5, "0"))
	require.Empty(t, CentreLine(point(1, 1), point(1, 1)).Chains)
}
