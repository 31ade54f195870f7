package template

import (
	"image"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/render"
	"tipline/render/screen"
)

// measured gives a wheel the bit that the change makes of the wanted form.
func measured(t testing.TB, w Wheel, change func([]cutter.Corner) []cutter.Corner) Wheel {
	t.Helper()
	edge, err := cutter.NewEdge(change(w.Cut.Form.Corners()))
	require.NoError(t, err)
	ground, err := w.Cut.Ground(edge)
	require.NoError(t, err)
	w.Ground = &ground
	return w
}

func asDrawn(c []cutter.Corner) []cutter.Corner { return c }

// worn moves the second half of an edge aside.
func worn(by float64) func([]cutter.Corner) []cutter.Corner {
	return func(c []cutter.Corner) []cutter.Corner {
		for i := len(c)/2 + 1; i < len(c); i++ {
			c[i].X += by
		}
		return c
	}
}

// The space that a bit ground as drawn leaves lies along the form: its front tip is
// the cut's, and its end on the tip circle.
func TestTheSpaceABitLeavesLiesInTheTooth(t *testing.T) {
	for name, w := range wheels(t) {
		t.Run(name, func(t *testing.T) {
			w := measured(t, w, asDrawn)
			space, err := spaceLeft(w.Ground)
			require.NoError(t, err)
			centre := geometry.Point{X: w.Cut.SetOver, Y: -w.Cut.Height()}
			first, last := space.Vertex(0).Point, space.Vertex(space.Len()).Point
			require.InDelta(t, w.Cut.TipRadius, first.Dist(centre), 1e-6)
			require.InDelta(t, w.Cut.TipRadius, last.Dist(centre), 1e-6)
			for _, p := range []geometry.Point{last, space.Segment(space.Len() / 2).At(0.5)} {
				near, _ := w.Cut.Form.Edge.Nearest(p)
				require.InDelta(t, 0, near.Dist(p), 1e-6, "on the form's edge")
			}
			if w.Cut.SetOver > 0 {
				require.InDelta(t, 0, first.X, 1e-6, "the face is the path of the foremost point")
			}
		})
	}
}

func TestCutterViewShowsTheBit(t *testing.T) {
	for _, row := range []struct {
		name   string
		change func([]cutter.Corner) []cutter.Corner
		says   string
	}{
		{"as drawn", asDrawn, "flanks as wanted"},
		{"too wide", worn(0.03), "missing"},
		{"too narrow", worn(-0.03), "left on"},
	} {
		for _, hand := range []string{"clockwise", "anticlockwise"} {
			t.Run(row.name+" "+hand, func(t *testing.T) {
				w := measured(t, pointedWheel(t, hand), row.change)
				d, err := CutterView(w, metric)
				require.NoError(t, err)
				texts := strings.Join(said(d), "\n")
				require.Contains(t, texts, row.says)
				require.Contains(t, texts, metric.Units.Fine(w.Ground.Cut.Land))
				require.Len(t, itemsOn(d, render.LayerForm, "cutter.bit"), 2)
			})
		}
	}
}

// The lines of a deviation stand into the tooth where metal is missing and into the
// bit where it is left on, as long as the deviation times the number said.
func TestDeviationsStandOffTheirOwnSide(t *testing.T) {
	for _, hand := range []string{"clockwise", "anticlockwise"} {
		for _, by := range []float64{0.03, -0.03} {
			w := measured(t, pointedWheel(t, hand), worn(by))
			e := newView(w, metric)
			e.deviation(w.Ground)
			form, err := w.Cut.Form.Outline()
			require.NoError(t, err)
			longest := 0.0
			for _, it := range itemsOn(e.Drawing, render.LayerDimensions, "cutter.bit") {
				if it.Pen != render.Hair {
					continue
				}
				for _, c := range it.Chains {
					from, to := c.Vertex(0).Point, c.Vertex(1).Point
					if from.Dist(to) < 0.5 {
						continue
					}
					longest = max(longest, from.Dist(to))
					require.Equal(t, by < 0, form.Contains(e.tool(from.Toward(to, 0.5))), "%s %v at %v", hand, by, from)
				}
			}
			require.Greater(t, longest, deviationHigh/2.6)
			require.LessOrEqual(t, longest, deviationHigh+1e-6)
		}
	}
}

func TestRoundEnlargements(t *testing.T) {
	for most, want := range map[float64]float64{0.3: 1, 1.9: 1, 2: 2, 4.9: 2, 7: 5, 35: 20, 99: 50, 100: 100} {
		require.Equal(t, want, enlargedBy(most))
	}
}

// A wall that turns back under itself and a heel that rubs are marked by name.
func TestCutterViewMarksWhatGoesWrong(t *testing.T) {
	w := measured(t, pointedWheel(t, "clockwise"), func(c []cutter.Corner) []cutter.Corner {
		n := len(c)
		back := c[n-1]
		arc := c[n-2]
		return append(c[:n-2], cutter.Corner{X: arc.X * 0.62, Y: 1.2}, cutter.Corner{X: arc.X * 0.5, Y: 1.4}, back)
	})
	require.NotEmpty(t, w.Ground.Undercut)
	relief, err := w.Cut.Relieve(geometry.Degrees(6), 6, 12)
	require.NoError(t, err)
	require.Less(t, relief.HeelLimit, min(relief.Thickness, relief.UsableThickness))
	w.Relief = &relief
	d, err := CutterView(w, metric)
	require.NoError(t, err)
	require.Contains(t, said(d), metric.Words.Say("template.cutterview.undercut"))
	require.Contains(t, said(d), metric.Words.Say("template.cutterview.heel-rubs", "depth", metric.Units.Length(relief.HeelLimit)))
	e := newView(w, metric)
	rung := itemsOn(d, render.LayerDimensions, "cutter.swing")[0].Outlines[0].Bounds().Centre()
	require.InDelta(t, 0, rung.Dist(e.at(relief.HeelAt)), 1e-9)
	deep, err := w.Cut.Relieve(geometry.Degrees(12), 2, 60)
	require.NoError(t, err)
	w.Relief = &deep
	d, err = CutterView(w, metric)
	require.NoError(t, err)
	require.Empty(t, itemsOn(d, render.LayerDimensions, "cutter.swing"), "a heel that clears is not marked")
}

// With a photograph under it nothing is filled, and the photograph is enlarged with
// the form.
func TestCutterViewLiesOnThePhotograph(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	w.Photograph = &render.Picture{Image: image.NewRGBA(image.Rect(0, 0, 10, 10)), Transform: render.Similarity{Scale: 0.01, Turn: 0.1}}
	d, err := CutterView(w, metric)
	require.NoError(t, err)
	shown := 0
	for _, it := range d.Items {
		if it.Picture != nil {
			shown++
			require.InDelta(t, 0.01*d.Scale, it.Picture.Transform.Scale, 1e-12)
		}
		if it.Layer == render.LayerForm || it.Layer == render.LayerTeeth {
			require.Equal(t, render.NoFill, it.Fill)
		}
	}
	require.Equal(t, 1, shown)
	require.InDelta(t, 0.01, w.Photograph.Transform.Scale, 0)
}

func TestBitsInBothUnitsStandClear(t *testing.T) {
	for name, w := range wheels(t) {
		w = measured(t, w, worn(0.02))
		for _, s := range []Style{metric, inches} {
			d, err := CutterView(w, s)
			require.NoError(t, err)
			texts := textsOf(d)
			for i, a := range texts {
				require.False(t, math.IsNaN(a.At.X))
				for _, b := range texts[i+1:] {
					require.False(t, a.Bounds().Grow(-0.05).Touches(b.Bounds().Grow(-0.05)), "%s: %q stands on %q", name, a.String, b.String)
				}
			}
		}
	}
}

// One frame of the window's view of a cutter: worked into a drawing and painted.
func BenchmarkCutterViewFrame(b *testing.B) {
	w := measured(b, pointedWheel(b, "clockwise"), worn(0.02))
	dst := image.NewRGBA(image.Rect(0, 0, 1200, 800))
	painter := screen.Painter{Theme: screen.Light()}
	b.ReportAllocs()
	for b.Loop() {
		d, err := CutterView(w, metric)
		if err != nil {
			b.Fatal(err)
		}
		painter.Paint(dst, d, screen.Fit(d.Bounds(), 1200, 800, 20))
	}
}
