package screen

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
	"tipline/render"
)

// drawnOf returns a drawing of outlines and chains on one layer.
func drawnOf(t testing.TB, layer render.Layer, outlines []geometry.Outline, chains ...geometry.Chain) *render.Drawing {
	t.Helper()
	return &render.Drawing{Scale: 1, Items: []render.Item{{Layer: layer, Pen: render.Thin, Outlines: outlines, Chains: chains}}}
}

func TestSnapsOfEveryKind(t *testing.T) {
	circle, err := geometry.Circle(geometry.Point{X: 20}, 5, "")
	require.NoError(t, err)
	line := geometry.ChainOf(geometry.Line{From: geometry.Point{X: -10}, To: geometry.Point{X: 10}}.Segment())
	across := geometry.ChainOf(geometry.Line{From: geometry.Point{X: 4, Y: -8}, To: geometry.Point{X: 4, Y: 6}}.Segment())
	s := SnapsOf(drawnOf(t, render.LayerWindows, []geometry.Outline{circle}, line, across))
	v := View{Scale: 10}
	for _, row := range []struct {
		name   string
		from   geometry.Point
		kind   Kind
		at     geometry.Point
		radius float64
	}{
		{"end", geometry.Point{X: -10.4, Y: 0.3}, End, geometry.Point{X: -10}, 0},
		{"middle", geometry.Point{X: 0.3, Y: 0.2}, Middle, geometry.Point{}, 0},
		{"crossing", geometry.Point{X: 4.3, Y: 0.2}, Crossing, geometry.Point{X: 4}, 0},
		{"centre of a circle", geometry.Point{X: 20.2, Y: 0.2}, Centre, geometry.Point{X: 20}, 0},
		{"on a line", geometry.Point{X: -6, Y: 0.2}, OnLine, geometry.Point{X: -6}, 0},
		{"on a circle", geometry.Point{X: 20, Y: 5.2}, OnLine, geometry.Point{X: 20, Y: 5}, 5},
		{"where a circle's halves join is no end", geometry.Point{X: 25.2}, OnLine, geometry.Point{X: 25}, 5},
	} {
		t.Run(row.name, func(t *testing.T) {
			got, ok := s.Near(v, v.ToPixel(row.from), 8)
			require.True(t, ok)
			require.Equal(t, row.kind, got.Kind)
			require.InDelta(t, 0, row.at.Dist(got.At), 1e-9)
			require.InDelta(t, row.radius, got.Radius, 1e-9)
			require.InDelta(t, row.from.Dist(row.at)*10, got.Distance, 1e-6)
		})
	}
	_, ok := s.Near(v, v.ToPixel(geometry.Point{X: -6, Y: 3}), 8)
	require.False(t, ok, "bare paper")
	_, ok = s.Near(View{}, Pixel{}, 8)
	require.False(t, ok)
	_, ok = Snaps{}.Near(v, Pixel{}, 8)
	require.False(t, ok)
}

// A centre line may be crossed and stood on, but where it ends means nothing.
func TestACentreLineHasNoEnds(t *testing.T) {
	line := geometry.ChainOf(geometry.Line{From: geometry.Point{X: -10}, To: geometry.Point{X: 10}}.Segment())
	across := geometry.ChainOf(geometry.Line{From: geometry.Point{X: 4, Y: -8}, To: geometry.Point{X: 4, Y: 6}}.Segment())
	d := drawnOf(t, render.LayerCentreLines, nil, line)
	d.Items[0].Pen = render.Centre
	d.Items = append(d.Items, drawnOf(t, render.LayerWindows, nil, across).Items...)
	s, v := SnapsOf(d), View{Scale: 10}
	for x, kind := range map[float64]Kind{-10: OnLine, 0: OnLine, 4: Crossing} {
		got, ok := s.Near(v, v.ToPixel(geometry.Point{X: x}), 5)
		require.True(t, ok)
		require.Equal(t, kind, got.Kind, "at %v", x)
	}
}

// Dimensions, letters and arrowheads are no places of the work.
func TestNothingSnapsToADimension(t *testing.T) {
	d := &render.Drawing{Scale: 1, Items: render.Linear(geometry.Point{}, geometry.Point{X: 30}, 5, "30 mm")}
	require.Equal(t, Snaps{}.places, SnapsOf(d).places)
}

// Every tooth has one tip, where its wheel says it stands.
func TestTipsAreThoseOfTheWheel(t *testing.T) {
	pointed := func(land float64, hand string) tooth.Wheel {
		cut, err := cutter.Pointed{
			Count: 30, TipRadius: 25, Undercut: geometry.Degrees(12), Floor: 0.5, FloorSlope: geometry.Degrees(12),
			FrontRelief: geometry.Degrees(5), CornerRadius: 0.15, BackRadius: 8, Land: land, StockWidth: 7.9375, Solve: cutter.RootDiameter,
		}.Cut()
		require.NoError(t, err)
		w, err := tooth.Pointed(cut, hand)
		require.NoError(t, err)
		return w
	}
	cycloidal := func(count int) tooth.Wheel {
		w, err := tooth.Cycloidal{Count: count, Module: 1, Leaves: 8}.Wheel()
		require.NoError(t, err)
		return w
	}
	for name, w := range map[string]tooth.Wheel{
		"cycloidal": cycloidal(84), "of 360 teeth": cycloidal(360), "pointed": pointed(0, tooth.Clockwise),
		"with a land": pointed(0.2, tooth.Clockwise), "with a land, the other hand": pointed(0.2, tooth.Anticlockwise),
	} {
		t.Run(name, func(t *testing.T) {
			s := SnapsOf(drawnOf(t, render.LayerTeeth, []geometry.Outline{w.Outline}))
			tips := 0
			for _, p := range s.places {
				if p.Kind == Tip {
					tips++
				}
			}
			require.Equal(t, w.Count, tips)
			v := View{Scale: 40}
			for i := range w.Count {
				want := geometry.Polar(w.TipRadius, w.Tip(i))
				got, ok := s.Near(v, v.ToPixel(want), 4)
				require.True(t, ok)
				require.Equal(t, Tip, got.Kind, "tip %d", i)
				require.InDelta(t, 0, want.Dist(got.At), 1e-6)
			}
		})
	}
}

func TestASectionsCornersAreNoTips(t *testing.T) {
	square, err := geometry.NewOutline([]geometry.Vertex{{Point: geometry.Point{}}, {Point: geometry.Point{X: 2}}, {Point: geometry.Point{X: 2, Y: 2}}, {Point: geometry.Point{Y: 2}}})
	require.NoError(t, err)
	for _, p := range SnapsOf(drawnOf(t, render.LayerTeeth, []geometry.Outline{square})).places {
		require.NotEqual(t, Tip, p.Kind)
	}
}

// What the search finds is what looking at everything finds.
func TestSnappingAgainstLookingAtEverything(t *testing.T) {
	const seed1, seed2 = 17, 23
	random := rand.New(rand.NewPCG(seed1, seed2))
	place := func() geometry.Point { return geometry.Point{X: 100 * random.Float64(), Y: 100 * random.Float64()} }
	kinds := map[Kind]int{}
	for round := range 30 {
		chains := make([]geometry.Chain, 20)
		for i := range chains {
			c, err := geometry.NewChain([]geometry.Vertex{{Point: place(), Bulge: random.Float64() - 0.5}, {Point: place()}, {Point: place()}})
			require.NoError(t, err)
			chains[i] = c
		}
		s, v := SnapsOf(drawnOf(t, render.LayerWindows, nil, chains...)), View{Scale: 5 + 10*random.Float64()}
		for range 60 {
			at := place()
			got, ok := s.Near(v, v.ToPixel(at), 9)
			want := everything(chains, at)
			want.Distance *= v.Scale
			if got.Kind == OnLine {
				require.Greater(t, want.Distance, 9.0)
				want = onLines(chains, at)
				want.Distance *= v.Scale
			}
			require.Equal(t, want.Distance <= 9, ok, "seed (%d, %d), round %d, %+v, %+v", seed1, seed2, round, want, got)
			if ok {
				kinds[got.Kind]++
				require.InDelta(t, want.Distance, got.Distance, 1e-4, "seed (%d, %d), round %d", seed1, seed2, round)
			}
		}
	}
	for _, k := range []Kind{OnLine, Crossing, End, Middle, Centre} {
		require.Positive(t, kinds[k], "of the kind %d", k)
	}
}

func segmentsOf(chains []geometry.Chain) []geometry.Segment {
	var all []geometry.Segment
	for _, c := range chains {
		for i := range c.Len() {
			all = append(all, c.Segment(i))
		}
	}
	return all
}

// onLines is how near any line lies.
func onLines(chains []geometry.Chain, at geometry.Point) Snap {
	best := Snap{Distance: math.Inf(1)}
	for _, s := range segmentsOf(chains) {
		best.Distance = min(best.Distance, s.Dist(at))
	}
	return best
}

// everything is how near any place is that has a name; where none lies within reach, a
// line's.
func everything(chains []geometry.Chain, at geometry.Point) Snap {
	best := Snap{Distance: math.Inf(1)}
	all := segmentsOf(chains)
	near := func(p geometry.Point) { best.Distance = min(best.Distance, p.Dist(at)) }
	for i, s := range all {
		near(s.From)
		near(s.To)
		near(s.At(0.5))
		if a, ok := s.Arc(); ok {
			near(a.Centre)
		}
		for _, r := range all[i+1:] {
			for _, m := range geometry.Meet(s, r) {
				near(m.At)
			}
		}
	}
	return best
}

// One move of the pointer over a wheel of 360 teeth seen whole, where most lines lie
// within reach, and from near.
func BenchmarkSnap360Teeth(b *testing.B) {
	w, err := tooth.Cycloidal{Count: 360, Module: 0.4, Leaves: 8}.Wheel()
	require.NoError(b, err)
	d := crossed(b, 60)
	d.Items = append(d.Items, render.Item{Layer: render.LayerTeeth, Pen: render.Visible, Outlines: []geometry.Outline{w.Outline}})
	s := SnapsOf(d)
	for name, scale := range map[string]float64{"from afar": 1, "from near": 40} {
		v := View{Scale: scale}
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				s.Near(v, v.ToPixel(geometry.Polar(w.TipRadius-0.3, 0.3)), 10)
			}
		})
	}
	b.Run("made ready", func(b *testing.B) {
		for b.Loop() {
			SnapsOf(d)
		}
	})
}
