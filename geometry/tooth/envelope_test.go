package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// mesh is a lantern pinion beside its wheel, turned by the ratio of their counts
// and nothing else: an oracle that knows no epicycloid.
type mesh struct {
	count, leaves          int
	module, trundle, backs float64 // trundle's radius; backs, how far the wheel is held back along the pitch circle
}

func meshOf(d LanternDriver, backs float64) mesh {
	return mesh{d.Count, d.Leaves, d.Module, d.TrundleDiameter() / 2, backs}
}

// trundleAt returns where trundle k stands, seen from the wheel, tip 0 at 12
// o'clock, when the wheel has turned clockwise by a from where the middle of the
// space to the left of tip 0 and trundle 0 are both on the line of centres. The
// pinion stands above the wheel.
func (m mesh) trundleAt(k int, a float64) geometry.Point {
	wheel, pinion := m.module*float64(m.count)/2, m.module*float64(m.leaves)/2
	own := a*float64(m.count)/float64(m.leaves) + 2*math.Pi*float64(k)/float64(m.leaves)
	// From below the pinion's centre, turning against the wheel.
	p := geometry.Point{X: pinion * math.Sin(own), Y: wheel + pinion - pinion*math.Cos(own)}
	return p.Rotate(geometry.Angle(a + math.Pi/float64(m.count) + m.backs/wheel))
}

func drivers() []LanternDriver {
	return []LanternDriver{
		{80, 1, 8, 0, 0},
		{80, 0.6, 8, 0, 0},
		{60, 0.2, 6, 0, 0},
		{96, 0.8, 12, 0, 0},
		{30, 2, 10, 2.5, 0.3},
		{400, 1, 6, 0, 0},
		{80, 20, 8, 0, 0},
		{12, 1, 20, 0.9, 0},
		{3, 5, 60, 0.2, 0},
		{80, 1, 8, 0.02, 0},
		{100, 1, 5, 0, 0.01},
	}
}

func driving(t testing.TB, d LanternDriver) Driving {
	t.Helper()
	g, err := d.Drive()
	require.NoError(t, err, "%+v", d)
	return g
}

// leftFlank returns the acting flank of the tooth to the left of the space that
// follows tip 0 anticlockwise, outwards.
func leftFlank(g Driving) []geometry.Segment {
	n := (g.Wheel.Space.Len() - 3) / 2
	space := g.Wheel.Space.Rotate(geometry.FullTurn / geometry.Angle(g.Wheel.Count))
	flank := make([]geometry.Segment, 0, n)
	for i := n - 1; i >= 0; i-- {
		flank = append(flank, space.Segment(i).Reverse())
	}
	return flank
}

// Trundle 0, its centre turned past the line of centres in small steps and the
// wheel held against it, touches every point of the flank and cuts into none, by
// 2 µm.
func TestFlankIsWhatATrundleLeaves(t *testing.T) {
	for _, d := range drivers() {
		g := driving(t, d)
		m := meshOf(d, d.SidePlay()/2)
		const steps = 8000
		// From before the line of centres until well after the flank's end.
		first, last := -float64(g.Begins), 1.2*float64(g.Ends)
		path := make([]geometry.Point, steps+1)
		for i := range path {
			path[i] = m.trundleAt(0, first+(last-first)*float64(i)/steps)
		}
		for _, s := range leftFlank(g) {
			for k := range 13 {
				p := s.At(float64(k) / 12)
				gap := math.Inf(1)
				for _, c := range path {
					gap = math.Min(gap, p.Dist(c)-m.trundle)
				}
				require.InDelta(t, 0, gap, 0.002, "%+v at %v", d, p)
			}
		}
	}
}

// A trundle is first driven where the flank begins and last at the tooth's tip:
// the oracle watches the distance of flank and trundle over the turn.
func TestContactBeginsAndEndsWhereItIsSaid(t *testing.T) {
	for _, d := range drivers() {
		g := driving(t, d)
		m := meshOf(d, d.SidePlay()/2)
		flank := leftFlank(g)
		gap := func(a float64) float64 {
			c, least := m.trundleAt(0, a), math.Inf(1)
			for _, s := range flank {
				p, _ := s.Nearest(c)
				least = math.Min(least, p.Dist(c)-m.trundle)
			}
			return least
		}
		between := float64(g.Ends - g.Begins)
		for k := range 101 {
			require.InDelta(t, 0, gap(float64(g.Begins)+between*float64(k)/100), 0.002, "%+v", d)
		}
		require.Greater(t, gap(float64(g.Ends)+0.2*between), 0.002, "%+v", d)
		pitch := 2 * math.Pi / float64(d.Count)
		require.InDelta(t, g.Contact, between/pitch, 1e-9)
		require.GreaterOrEqual(t, g.Contact, 1.0)
	}
}

// The whole pinion, turned through a pitch with the wheel held either way by half
// the play, is cut by no tooth; and with a hundredth of a module more it is.
func TestPinionRunsThroughTheWheel(t *testing.T) {
	for _, d := range drivers() {
		if d.Count > 100 {
			continue // the same curve as a smaller wheel's, and slow to measure
		}
		g := driving(t, d)
		for _, side := range []float64{1, -1} {
			half := d.SidePlay() / 2
			require.GreaterOrEqual(t, leastGap(g, meshOf(d, side*half)), -0.002, "%+v", d)
			require.Less(t, leastGap(g, meshOf(d, side*(half+0.01*d.Module))), -0.005*d.Module, "%+v", d)
		}
	}
}

// leastGap returns the least distance of trundles and wheel over a pitch, less
// than 0 where they overlap.
func leastGap(g Driving, m mesh) float64 {
	least := math.Inf(1)
	const steps = 60
	pitch := 2 * math.Pi / float64(m.count)
	for i := range steps {
		for k := range m.leaves {
			c := m.trundleAt(k, pitch*float64(i)/steps)
			if c.Norm() > g.Wheel.TipRadius+m.trundle {
				continue
			}
			p, _ := g.Wheel.Outline.Nearest(c)
			gap := p.Dist(c)
			if g.Wheel.Outline.Contains(c) {
				gap = -gap
			}
			least = math.Min(least, gap-m.trundle)
		}
	}
	return least
}

// The epicycloid's radius of curvature is 4b·sin θ·(a+b)/(a+2b), θ being half the
// pinion's turn, and the parallel curve's is less by the trundle's radius:
// Encyclopaedia Britannica, 11th ed., Mechanics (Applied), ss. 51 and 52. Each pair
// of arcs, over equal turns of the pinion, turns by as much as the curve, and is as
// long as that radius makes it.
func TestFlankCurvesAsTheEncyclopaediaSays(t *testing.T) {
	rows := publishedIn(t, "pinions.csv", "EB11")
	require.Contains(t, rows[0]["value"], "parallel curve inside the epicycloid, offset = pin radius")
	require.Contains(t, rows[1]["value"], "external 4 r sin(th) (R+r)/(R+2r)")
	for _, d := range drivers() {
		g := driving(t, d)
		a, b := d.Module*float64(d.Count)/2, d.Module*float64(d.Leaves)/2
		flank := leftFlank(g)
		pairs := len(flank) / 2
		for i := range pairs {
			half := func(i int) float64 { // θ
				return float64(g.Begins+(g.Ends-g.Begins)*geometry.Angle(i)/geometry.Angle(pairs)) * a / b / 2
			}
			turned, length := 0.0, 0.0
			for _, s := range flank[2*i : 2*i+2] {
				arc, ok := s.Arc()
				require.True(t, ok)
				require.Positive(t, float64(arc.Sweep), "the tooth, on the left, bulges")
				turned += float64(arc.Sweep)
				length += s.Length()
			}
			turn := (1 + 2*b/a) * (half(i+1) - half(i))
			require.InDelta(t, turn, turned, 1e-7, "%+v", d)
			whole := 4 * b * (a + b) / (a + 2*b) * (1 + 2*b/a) * (math.Cos(half(i)) - math.Cos(half(i+1)))
			require.InDelta(t, whole-d.TrundleDiameter()/2*turn, length, 0.002, "%+v", d)
		}
	}
}
