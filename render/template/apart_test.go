package template

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/measure"
	"tipline/geometry/mount"
	"tipline/render"
)

// narrowest returns the least gap before a figure left of a place that ends a column and
// what stands before it in its line.
func narrowest(d *render.Drawing, left float64) float64 {
	least, texts := math.Inf(1), textsOf(d)
	for _, a := range texts {
		for _, b := range texts {
			inLine := math.Abs(a.At.Y-b.At.Y) < 0.1 && b.Align == render.Right && a.Bounds().Min.X < b.Bounds().Min.X && b.Bounds().Max.X < left
			if inLine {
				least = min(least, b.Bounds().Min.X-a.Bounds().Max.X)
			}
		}
	}
	return least
}

// What a setting is does not run up to its figure.
func TestScribedFiguresStandApart(t *testing.T) {
	units := []measure.Units{{Unit: measure.MM}, {Unit: measure.Inch}}
	drawn := 0
	for _, style := range []crossing.Style{crossing.Straight, crossing.Swept, crossing.Waisted} {
		for _, arms := range []int{3, 5, 8} {
			spec := scribedSpec(arms, style)
			if style == crossing.Swept {
				spec.Sweep, spec.ArmAtRim = geometry.Degrees(20), 1.8
			}
			w, ok := laid(t, 80, spec)
			if !ok {
				continue
			}
			drawn++
			for _, u := range units {
				d, err := Scribing(w, Style{Words: metric.Words, Units: u})
				require.NoError(t, err)
				require.GreaterOrEqual(t, narrowest(d, scribeFigures+1), 3.5, "%s, %d arms", style, arms)
			}
		}
	}
	require.Greater(t, drawn, 5)
}

// The holes' angles and chords are two columns, however long their figures.
func TestHolesFiguresStandApart(t *testing.T) {
	places := make([]mount.Place, 16)
	for i := range places {
		a := geometry.Degrees(177.75 + 11.13*float64(i))
		places[i] = mount.Place{Angle: a, At: geometry.Polar(60.123, geometry.Clock(a))}
	}
	for _, u := range []measure.Units{{Unit: measure.MM}, {Unit: measure.Inch}} {
		d := holeAngles("w", places, Style{Words: metric.Words, Units: u}).Drawing
		require.GreaterOrEqual(t, narrowest(d, math.Inf(1)), 2.0)
		require.LessOrEqual(t, d.Bounds().Width(), CardWidth-cardColumn+1)
	}
}
