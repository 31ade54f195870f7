package template

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// Every row's figures are what the cut says, in millimetres and in inches, at
// distances from depth that are round in the maker's unit.
func TestDepthCardRows(t *testing.T) {
	for _, row := range []struct {
		name string
		s    Style
		left []float64 // mm, some of the rows
	}{
		{"mm", metric, []float64{1, 0.5, 0.1, 0.01}}, {"in", inches, []float64{1.27, 0.254, 0.0254}},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := pointedWheel(t, "clockwise")
			d, err := DepthCard(w, row.s)
			require.NoError(t, err)
			texts := said(d)
			for _, left := range row.left {
				at := w.Cut.DepthAt(w.Cut.Infeed - left)
				for _, mm := range []float64{left, at.Infeed, at.Radial, at.Land, at.Fall.Hundredth} {
					require.Contains(t, texts, fineBare(metric.Units, mm))
				}
				for _, mm := range []float64{left, at.Infeed, at.Radial, at.Land, at.Fall.Thou, at.RadialFall.Thou} {
					require.Contains(t, texts, fineBare(inches.Units, mm))
				}
			}
			require.Contains(t, texts, row.s.Units.Fine(w.Cut.Infeed))
			require.Contains(t, texts, row.s.Units.Fine(w.Cut.Land))
			require.Contains(t, strings.Join(texts, " "), row.s.Words.Say("cards.depth.along")+" mm in "+row.s.Words.Say("cards.depth.radial"))
		})
	}
}

// Without set-over both dials read alike, and one is enough.
func TestDepthCardOfACentredCutterHasOneDial(t *testing.T) {
	d, err := DepthCard(trainWheel(t, 72, 6), metric)
	require.NoError(t, err)
	require.NotContains(t, strings.Join(said(d), " "), metric.Words.Say("cards.depth.radial"))
	require.Contains(t, said(d), metric.Words.Say("cards.depth.dial"))
}

func TestDepthRowsEndAtDepthAndAreFinerThere(t *testing.T) {
	for _, s := range []Style{metric, inches} {
		for name, w := range wheels(t) {
			rows := depthRows(w.Cut, s.Units)
			require.Zero(t, rows[0].Infeed, name)
			require.Zero(t, rows[len(rows)-1].Left, name)
			require.GreaterOrEqual(t, len(rows), 6)
			require.LessOrEqual(t, len(rows), mostDepths+1)
			for i := 2; i < len(rows); i++ {
				require.Less(t, rows[i].Left, rows[i-1].Left)
				require.LessOrEqual(t, rows[i].Land, rows[i-1].Land+1e-9)
			}
		}
	}
}

// A curve is drawn where its values stand, and no further than the frame.
func TestPlotDrawsValuesInItsFrame(t *testing.T) {
	b := NewBoard("w", metric)
	frame := geometry.Box{Min: geometry.Point{X: 10, Y: 20}, Max: geometry.Point{X: 110, Y: 70}}
	p := newPlot(b, frame, newAxis(0, 10, 1, 5, true, "x"), newAxis(-2, 2, 1, 4, true, "y"), "q")
	require.Equal(t, geometry.Point{X: 60, Y: 45}, p.at(5, 0))
	b.Drawing.Items = nil
	p.curve(Stroke{Layer: render.LayerText}, []geometry.Point{{X: 0, Y: -9}, {X: 2, Y: 1}, {X: 4, Y: 1}, {X: 6, Y: 9}, {X: 8, Y: 0}, {X: 20, Y: 0}})
	require.Len(t, b.Drawing.Items, 2, "in two runs, for it leaves the frame between")
	for _, it := range b.Drawing.Items {
		box := it.Chains[0].Bounds()
		require.True(t, frame.Grow(1e-9).Contains(box.Min) && frame.Grow(1e-9).Contains(box.Max))
	}
}

func TestAxesHaveRoundTicks(t *testing.T) {
	for _, row := range []struct {
		name           string
		from, to, unit float64
		whole          bool
		step           float64
		decimals       int
		ticks          int
	}{
		{"mm", 0, 2.276, 1, false, 0.5, 1, 5},
		{"inches", 0, 2.276, 25.4, false, 0.02, 2, 5},
		{"rounded out", 0.21, 0.279, 1, true, 0.02, 2, 5},
		{"nothing", 3, 3, 1, true, 0.2, 1, 6},
		{"backwards", 3, 2, 1, true, 0.2, 1, 6},
		{"a rounding", 3, 3 + 4e-15, 1, true, 0.2, 1, 6},
		{"a rounding off nought", 0, 1e-300, 1, true, 0.2, 1, 6},
		{"large", 0, 1200, 1, true, 500, 0, 4},
	} {
		t.Run(row.name, func(t *testing.T) {
			a := newAxis(row.from, row.to, row.unit, 5, row.whole, "")
			require.InDelta(t, row.step, a.step, 1e-12)
			require.Equal(t, row.decimals, a.decimals)
			require.Len(t, a.ticks(), row.ticks)
			for _, v := range a.ticks() {
				require.InDelta(t, math.Round(v/row.step), v/row.step, 1e-6)
			}
		})
	}
}

func BenchmarkDepthCard(b *testing.B) {
	w := pointedWheel(b, "clockwise")
	b.ReportAllocs()
	for b.Loop() {
		if _, err := DepthCard(w, metric); err != nil {
			b.Fatal(err)
		}
	}
}
