package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

func escapeCut(t testing.TB, count int, land float64) cutter.Cut {
	t.Helper()
	r := 20 * float64(count) / 30
	c, err := cutter.Pointed{
		Count: count, TipRadius: r, Undercut: geometry.Degrees(10), Floor: 0.6, FloorSlope: geometry.Degrees(8),
		FrontRelief: geometry.Degrees(4), CornerRadius: 0.1, BackRadius: 6, Land: land, Solve: cutter.RootDiameter,
	}.Cut()
	require.NoError(t, err)
	return c
}

func TestPointedWheelStandsOnItsTips(t *testing.T) {
	for _, land := range []float64{0, 0.25} {
		for _, hand := range []string{Clockwise, Anticlockwise} {
			w, err := Pointed(escapeCut(t, 30, land), hand)
			require.NoError(t, err)
			require.Equal(t, 30, w.Count)
			require.Greater(t, w.Outline.Area(), 0.0, "anticlockwise")
			require.True(t, w.Outline.Simple())
			for i := range w.Count {
				tip := geometry.Polar(w.TipRadius, w.Tip(i))
				_, there := vertexAt(w.Outline, tip)
				require.True(t, there, "tip %d", i)
			}
			bounds := w.Outline.Bounds()
			require.InDelta(t, w.TipRadius, bounds.Max.Y, 1e-9)
			least := math.Inf(1)
			for i := range w.Outline.Len() {
				p, _ := w.Outline.Segment(i).Nearest(geometry.Point{})
				least = math.Min(least, p.Norm())
			}
			require.InDelta(t, w.RootRadius, least, 1e-9)
		}
	}
}

func vertexAt(o geometry.Outline, p geometry.Point) (int, bool) {
	for i := range o.Len() {
		if o.Vertex(i).Dist(p) < 1e-9 {
			return i, true
		}
	}
	return 0, false
}

// The face at 12 o'clock leans by the undercut behind the radius, and there is
// air on the side the hand names and metal on the other.
func TestFacesPointTheirHand(t *testing.T) {
	for hand, way := range map[string]float64{Clockwise: 1, Anticlockwise: -1} {
		w, err := Pointed(escapeCut(t, 30, 0.25), hand)
		require.NoError(t, err)
		tip := geometry.Point{Y: w.TipRadius}
		i, ok := vertexAt(w.Outline, tip)
		require.True(t, ok)
		face := w.Outline.Segment(i)
		if face.Quantity != cutter.Undercut {
			face = w.Outline.Segment(i - 1).Reverse()
		}
		require.Equal(t, cutter.Undercut, face.Quantity)
		inward := face.To.Sub(face.From)
		lean := math.Atan2(inward.X, -inward.Y)
		require.InDelta(t, -way*10*math.Pi/180, lean, 1e-12, hand)
		middle := face.From.Toward(face.To, 0.5)
		require.False(t, w.Outline.Contains(middle.Add(geometry.Point{X: way * 0.01})), hand)
		require.True(t, w.Outline.Contains(middle.Sub(geometry.Point{X: way * 0.01})), hand)
	}
}

func TestPointedSpaceStandsHalfAPitchOn(t *testing.T) {
	for _, hand := range []string{Clockwise, Anticlockwise} {
		w, err := Pointed(escapeCut(t, 30, 0), hand)
		require.NoError(t, err)
		ends := []geometry.Point{w.Space.Vertex(0).Point, w.Space.Vertex(w.Space.Len()).Point}
		tips := []geometry.Point{geometry.Polar(w.TipRadius, w.Tip(0)), geometry.Polar(w.TipRadius, w.Tip(1))}
		require.InDelta(t, 0, ends[0].Dist(tips[0]), 1e-9, hand)
		require.InDelta(t, 0, ends[1].Dist(tips[1]), 1e-9, hand)
	}
}

// The wheel is the disc less its spaces: by Green's theorem along one space and
// one land.
func TestPointedWheelArea(t *testing.T) {
	w, err := Pointed(escapeCut(t, 30, 0.25), Clockwise)
	require.NoError(t, err)
	const steps = 20000
	var twice float64
	last := w.Space.Vertex(0).Point
	for i := range w.Space.Len() {
		g := w.Space.Segment(i)
		for k := 1; k <= steps; k++ {
			p := g.At(float64(k) / steps)
			twice += p.Cross(last)
			last = p
		}
	}
	want := 30 * (twice + w.TipRadius*0.25) / 2
	require.InDelta(t, want, w.Outline.Area(), 1e-5)
}

func TestPointedRefusesAnUnknownHand(t *testing.T) {
	_, err := Pointed(escapeCut(t, 30, 0.25), "left")
	require.ErrorContains(t, err, "left")
	_, err = Pointed(cutter.Cut{Count: 30, TipRadius: 10}, Clockwise)
	require.ErrorIs(t, err, cutter.ErrNoSpace)
}

func BenchmarkPointed(b *testing.B) {
	for b.Loop() {
		if _, err := Pointed(escapeCut(b, 360, 0.25), Clockwise); err != nil {
			b.Fatal(err)
		}
	}
}

// A ratchet, front along the radius, for either hand: the one is the other in the
// mirror, corner by corner and arc by arc, and so is its space.
func TestTheOtherHandIsTheMirrorImage(t *testing.T) {
	for _, count := range []int{9, 24, 60} {
		cut, err := cutter.Pointed{
			Count: count, TipRadius: float64(count) / 2, Floor: 0.2, Straight: true, BackAngle: geometry.Degrees(50),
			BackFillet: 0.1, Land: 0.3, Solve: cutter.RootDiameter,
		}.Cut()
		require.NoError(t, err)
		for _, c := range []cutter.Cut{cut, escapeCut(t, 30, 0.25), escapeCut(t, 30, 0)} {
			one, err := Pointed(c, Clockwise)
			require.NoError(t, err)
			other, err := Pointed(c, Anticlockwise)
			require.NoError(t, err)
			require.Equal(t, one.Outline.Len(), other.Outline.Len())
			require.InDelta(t, one.Outline.Area(), other.Outline.Area(), near)
			require.Greater(t, other.Outline.Area(), 0.0, "both run anticlockwise")
			for i := range one.Outline.Len() {
				s := one.Outline.Segment(i)
				at, ok := vertexAt(other.Outline, s.To.Mirror())
				require.True(t, ok, "%d of %d", i, c.Count)
				m := other.Outline.Segment(at)
				require.Less(t, s.From.Mirror().Dist(m.To), near)
				require.InDelta(t, s.Bulge, m.Bulge, near)
				require.Equal(t, s.Quantity, m.Quantity)
			}
			back := other.Space.Mirror().Reverse().Rotate(-geometry.FullTurn / geometry.Angle(c.Count))
			for i := range one.Space.Len() {
				require.Less(t, one.Space.Segment(i).From.Dist(back.Segment(i).From), near)
				require.InDelta(t, one.Space.Segment(i).Bulge, back.Segment(i).Bulge, near)
			}
			require.Equal(t, one.TipRadius, other.TipRadius)
			require.Equal(t, one.RootRadius, other.RootRadius)
		}
	}
}
