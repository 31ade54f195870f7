package tooth

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

// near is what coordinates agree to, in mm.
const near = 1e-9

// trains returns seeded train wheels over the whole range, and the usual ones.
func trains() []Cycloidal {
	list := []Cycloidal{{4, 1, 3}, {72, 0.8, 8}, {60, 0.6, 6}, {96, 0.5, 12}, {2000, 0.3, 2000}, {7, 0.01, 2000}}
	random := rand.New(rand.NewPCG(5, 1))
	for range 100 {
		list = append(list, Cycloidal{4 + random.IntN(400), 0.05 + 2*random.Float64(), 3 + random.IntN(60)})
	}
	return list
}

func TestCycloidalProportions(t *testing.T) {
	for _, c := range trains() {
		w, err := c.Wheel()
		require.NoError(t, err, "%+v", c)
		require.Equal(t, 5*c.Count, w.Outline.Len())
		pitch := float64(c.Count) * c.Module / 2
		for i := range c.Count {
			tip, left, leftRoot := w.Outline.Vertex(5*i), w.Outline.Vertex(5*i+1), w.Outline.Vertex(5*i+2)
			rightRoot, right, next := w.Outline.Vertex(5*i+3), w.Outline.Vertex(5*i+4), w.Outline.Vertex(5*i+5)
			require.InDelta(t, pitch+c.AddendumFactor()*c.Module, tip.Norm(), near, "%+v", c)
			require.InDelta(t, pitch, left.Norm(), near)
			require.InDelta(t, pitch, right.Norm(), near)
			require.InDelta(t, pitch-math.Pi/2*c.Module, leftRoot.Norm(), near)
			require.InDelta(t, w.RootRadius, rightRoot.Norm(), near)
			// Tooth and space are half a pitch each, flanks point at the centre.
			halfTooth, space := geometry.Angle(math.Pi)/2/geometry.Angle(c.Count), math.Pi/geometry.Angle(c.Count)
			require.InDelta(t, float64(halfTooth), float64((left.Direction() - tip.Direction()).Turn()), near/pitch+1e-14, "%+v %d", c, i)
			require.InDelta(t, float64(space), float64((right.Direction() - left.Direction()).Turn()), near/pitch+1e-14)
			require.InDelta(t, float64(halfTooth), float64((next.Direction() - right.Direction()).Turn()), near/pitch+1e-14)
			require.InDelta(t, 0, left.Cross(leftRoot.Point), near*pitch)
			require.InDelta(t, 0, right.Cross(rightRoot.Point), near*pitch)
			if i == 3 {
				break // the rest are turned copies, checked below
			}
		}
	}
}

func TestCycloidalArcs(t *testing.T) {
	for _, c := range trains() {
		w, err := c.Wheel()
		require.NoError(t, err)
		for _, i := range []int{0, 4, 5*c.Count - 1, 5 * (c.Count / 2)} {
			s := w.Outline.Segment(i)
			arc, ok := s.Arc()
			require.True(t, ok)
			require.InEpsilon(t, 1.40*c.TheoreticalAddendum()*c.Module, arc.Radius, 1e-9, "%+v", c)
			require.InDelta(t, arc.Radius, arc.Centre.Dist(s.From), near)
			require.InDelta(t, arc.Radius, arc.Centre.Dist(s.To), near)
			require.Positive(t, float64(arc.Sweep), "the tooth bulges outwards")
			require.Equal(t, geometry.Quantity("teeth.leaves"), s.Quantity)
		}
		root, ok := w.Outline.Segment(2).Arc()
		require.True(t, ok)
		require.InDelta(t, 0, root.Centre.Norm(), near*math.Max(1, c.RootRadius()*float64(c.Count)/100), "%+v", c)
		require.InDelta(t, w.RootRadius, root.Radius, near*math.Max(1, c.RootRadius()*float64(c.Count)/100))
	}
}

func TestOutlineNeverCrossesItself(t *testing.T) {
	for _, c := range trains() {
		w, err := c.Wheel()
		require.NoError(t, err)
		require.True(t, w.Outline.Simple(), "%+v", c)
		require.Positive(t, w.Outline.Area(), "%+v", c)
	}
}

// No arc reaches the middle of its space, so no two teeth meet.
func TestNeighbouringTeethStayApart(t *testing.T) {
	for _, c := range trains() {
		w, err := c.Wheel()
		require.NoError(t, err)
		arc, _ := w.Outline.Segment(0).Arc()
		for k := range 101 {
			p := arc.At(float64(k) / 100)
			off := float64((p.Direction() - math.Pi/2).Normal())
			require.Less(t, off, 0.9*math.Pi/float64(c.Count), "%+v", c)
			require.Greater(t, off, -near)
			require.LessOrEqual(t, p.Norm(), w.TipRadius+near)
			require.GreaterOrEqual(t, p.Norm(), w.PitchRadius-near, "%+v", c)
		}
	}
}

func TestTipsAreCountedClockwiseFromTwelve(t *testing.T) {
	c := Cycloidal{72, 0.8, 8}
	w, err := c.Wheel()
	require.NoError(t, err)
	require.Equal(t, "cycloidal", w.Form)
	require.InDelta(t, 0, w.Outline.Vertex(0).X, near)
	require.InDelta(t, w.TipRadius, w.Outline.Vertex(0).Y, near)
	for i := range c.Count {
		tip := w.Outline.Vertex(-5 * i)
		require.Less(t, geometry.Polar(w.TipRadius, w.Tip(i)).Dist(tip.Point), near)
	}
	require.Positive(t, w.Outline.Vertex(-5).X, "tip 1 stands to the right")
}

func TestOutlineRunsAnticlockwiseAndIsItsOwnMirror(t *testing.T) {
	for _, c := range trains() {
		w, err := c.Wheel()
		require.NoError(t, err)
		back := w.Outline.Mirror().Reverse()
		var twice float64
		for i := range w.Outline.Len() {
			twice += w.Outline.Vertex(i).Cross(w.Outline.Vertex(i + 1).Point)
			// Reversed, tip 0 is the last vertex.
			require.Less(t, back.Vertex(i-1).Dist(w.Outline.Vertex(i).Point), 1e-9*math.Max(1, w.TipRadius))
		}
		require.Greater(t, twice/2, math.Pi*w.RootRadius*w.RootRadius*0.3)
	}
}

func TestSpaceRunsFromTip0ToTip1(t *testing.T) {
	for _, c := range trains() {
		w, err := c.Wheel()
		require.NoError(t, err)
		require.Equal(t, 5, w.Space.Len())
		require.Less(t, geometry.Polar(w.TipRadius, w.Tip(0)).Dist(w.Space.Vertex(0).Point), near)
		require.Less(t, geometry.Polar(w.TipRadius, w.Tip(1)).Dist(w.Space.Vertex(5).Point), near)
		for i := range 5 {
			// Outline segments −1 … −5, run the other way.
			want := w.Outline.Segment(-1 - i).Reverse()
			got := w.Space.Segment(i)
			require.Less(t, want.From.Dist(got.From), near)
			require.Less(t, want.To.Dist(got.To), near)
			require.InDelta(t, want.Bulge, got.Bulge, 1e-12)
			require.Equal(t, want.Quantity, got.Quantity)
		}
	}
}

func TestCycloidalThatCannotBeIsRefused(t *testing.T) {
	for _, row := range []struct {
		name     string
		c        Cycloidal
		quantity geometry.Quantity
		code     string
		min, max float64
	}{
		{"no teeth", Cycloidal{0, 1, 8}, "teeth.count", "tooth.count", 3, 2000},
		{"negative count", Cycloidal{-72, 1, 8}, "teeth.count", "tooth.count", 3, 2000},
		{"too many", Cycloidal{2001, 1, 8}, "teeth.count", "tooth.count", 3, 2000},
		{"spaces past the centre", Cycloidal{3, 1, 8}, "teeth.count", "tooth.no-root", 4, 2000},
		{"two leaves", Cycloidal{72, 1, 2}, "teeth.leaves", "tooth.leaves", 3, 2000},
		{"no module", Cycloidal{72, 0, 8}, "teeth.module", "tooth.module", 0.01, 26.68},
		{"module is no number", Cycloidal{72, math.NaN(), 8}, "teeth.module", "tooth.module", 0.01, 26.68},
		{"endless module", Cycloidal{72, math.Inf(1), 8}, "teeth.module", "tooth.module", 0.01, 26.68},
		{"larger than anything", Cycloidal{72, 27, 8}, "teeth.module", "tooth.module", 0.01, 26.68},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := row.c.Wheel()
			var limit *geometry.Limit
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.quantity, limit.Quantity)
			require.Equal(t, row.code, limit.Code)
			require.InDelta(t, row.min, limit.Min, 1e-12)
			require.InDelta(t, row.max, limit.Max, 0.05)
			require.False(t, math.IsNaN(limit.Value) || math.IsInf(limit.Value, 0))
			require.True(t, words.English().Has(limit.Code))
		})
	}
	require.Zero(t, Cycloidal{}.AddendumFactor())
}

// What a limit says would do does.
func TestLargestModuleIsBuilt(t *testing.T) {
	for _, c := range trains() {
		c.Module = 5000
		_, err := c.Wheel()
		var limit *geometry.Limit
		require.ErrorAs(t, err, &limit)
		c.Module = limit.Max
		w, err := c.Wheel()
		require.NoError(t, err)
		require.InDelta(t, 1000, w.TipRadius, near)
	}
}

// The oracle is a polygon with every arc cut in two hundred.
func TestAreaOfTheTeeth(t *testing.T) {
	for _, c := range trains()[:20] {
		w, err := c.Wheel()
		require.NoError(t, err)
		var twice float64
		last := w.Outline.Vertex(0).Point
		for i := range w.Outline.Len() {
			s := w.Outline.Segment(i)
			for k := 1; k <= 200; k++ {
				next := s.From.Toward(s.To, float64(k)/200)
				if arc, ok := s.Arc(); ok {
					next = arc.At(float64(k) / 200)
				}
				twice += last.Cross(next)
				last = next
			}
		}
		require.InEpsilon(t, twice/2, w.Outline.Area(), 1e-5, "%+v", c)
	}
}

func BenchmarkWheel(b *testing.B) {
	c := Cycloidal{Count: 360, Module: 0.4, Leaves: 12}
	for b.Loop() {
		if _, err := c.Wheel(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkInset(b *testing.B) {
	w, err := Cycloidal{Count: 360, Module: 0.4, Leaves: 12}.Wheel()
	require.NoError(b, err)
	for b.Loop() {
		if _, err := w.Outline.Inset(0.05); err != nil {
			b.Fatal(err)
		}
	}
}
