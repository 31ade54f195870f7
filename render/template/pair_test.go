package template

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/depthing"
	"tipline/geometry/tooth"
	"tipline/render"
)

// meshedPair is a wheel of that many teeth and its pinion, cut or a lantern,
// turned in mesh at a distance off the nominal one.
func meshedPair(t testing.TB, count, leaves int, lantern bool, off float64) Pair {
	t.Helper()
	const module = 0.6
	p := Pair{ID: "mesh", Name: "Wheel – Pinion"}
	p.Wheel, p.Pinion = Wheel{ID: "wheel"}, Wheel{ID: "pinion"}
	var err error
	if lantern {
		l, err := tooth.Lantern{Leaves: leaves, Module: module}.Pinion()
		require.NoError(t, err)
		p.Pinion.Lantern = &l
		w, err := tooth.LanternDriver{Count: count, Module: module, Leaves: leaves}.Wheel()
		require.NoError(t, err)
		p.Wheel.Teeth = &w
		p.Follower, err = depthing.Lantern(leaves, l.PitchRadius, l.TrundleDiameter)
		require.NoError(t, err)
	} else {
		w, err := tooth.Cycloidal{Count: count, Module: module, Leaves: leaves}.Wheel()
		require.NoError(t, err)
		p.Wheel.Teeth = &w
		l, err := tooth.Pinion{Leaves: leaves, Module: module, Ratio: float64(count) / float64(leaves)}.Wheel()
		require.NoError(t, err)
		p.Pinion.Teeth = &l
		p.Follower, err = depthing.Toothed(l.Outline, leaves, l.PitchRadius)
		require.NoError(t, err)
	}
	p.Driver, err = depthing.Toothed(p.Wheel.Teeth.Outline, count, p.Wheel.Teeth.PitchRadius)
	require.NoError(t, err)
	p.Nominal = p.Driver.PitchRadius + p.Follower.PitchRadius
	p.Turn, err = depthing.Mesh(p.Driver, p.Follower, p.Nominal+off, 500)
	require.NoError(t, err)
	return p
}

// pairs are wheels with cut and lantern pinions, few leaves and many, near and wide,
// and a pinion that drives.
func pairs(t testing.TB) map[string]Pair {
	drives := meshedPair(t, 45, 15, false, 0)
	drives.Wheel, drives.Pinion = drives.Pinion, drives.Wheel
	drives.Driver, drives.Follower = drives.Follower, drives.Driver
	var err error
	drives.Turn, err = depthing.Mesh(drives.Driver, drives.Follower, drives.Nominal, 200)
	require.NoError(t, err)
	return map[string]Pair{
		"80/8": meshedPair(t, 80, 8, false, 0), "60/6": meshedPair(t, 60, 6, false, 0), "84/12 wide": meshedPair(t, 84, 12, false, 0.05),
		"36/30": meshedPair(t, 36, 30, false, 0), "60/8 lantern": meshedPair(t, 60, 8, true, 0.03), "15/45": drives,
	}
}

// places are shares of a pitch at steps and between them.
var places = []float64{0, 0.1, 0.2345, 0.3333, 0.5, 0.62, 0.777, 0.9, 1}

func TestTheTeethTouchWhereTheViewSaysSo(t *testing.T) {
	for name, p := range pairs(t) {
		for _, turn := range places {
			m := newMeshing(NewBoard("mesh", metric), p, p.place(turn), meshSize)
			driver, follower := m.driver(), m.follower()
			wheel, err := m.outline(driver)
			require.NoError(t, err)
			_, off := nearest(wheel, m.place.at)
			require.Less(t, off, 2e-3, "%s at %v: driver", name, turn)
			off = math.Inf(1)
			for _, o := range m.outlines(follower) {
				_, one := nearest(o, m.place.at)
				off = math.Min(off, one)
			}
			require.Less(t, off, 2e-3, "%s at %v: follower", name, turn)
		}
	}
}

// Nothing of the one part stands inside the other by more than what outlines are
// fitted to.
func TestPartsDoNotRunIntoEachOther(t *testing.T) {
	for name, p := range pairs(t) {
		for _, turn := range places {
			m := newMeshing(NewBoard("mesh", metric), p, p.place(turn), meshSize)
			wheel, err := m.outline(m.driver())
			require.NoError(t, err)
			for _, o := range m.outlines(m.follower()) {
				for _, v := range o.Flatten(0.01) {
					if m.box.Contains(v) && wheel.Contains(v) {
						_, deep := nearest(wheel, v)
						require.Less(t, deep, 3e-3, "%s at %v", name, turn)
					}
				}
			}
		}
	}
}

// The line along which one part pushes the other stands square to the driver's
// flank, wherever that is not touched at a corner.
func TestThePushIsSquareToTheFlank(t *testing.T) {
	checked := 0
	for name, p := range pairs(t) {
		for i := 0; i < len(p.Turn.Steps); i += 7 {
			place := p.place(float64(i) / float64(len(p.Turn.Steps)))
			m := newMeshing(NewBoard("mesh", metric), p, place, meshSize)
			wheel, err := m.outline(m.driver())
			require.NoError(t, err)
			way := p.normal(place).Sub(place.at)
			s, inside := flankAt(wheel, place.at)
			if way.Norm() < 0.2 || !inside {
				continue
			}
			require.InDelta(t, 0, way.Dot(s)/way.Norm(), 2e-3, "%s, step %d", name, i)
			checked++
		}
	}
	require.Greater(t, checked, 100)
}

// flankAt returns the direction of an outline at a point on it, a unit vector, and
// whether no corner is near.
func flankAt(o geometry.Outline, p geometry.Point) (geometry.Point, bool) {
	best, least := 0, math.Inf(1)
	for i := range o.Len() {
		if at, _ := o.Segment(i).Nearest(p); at.Dist(p) < least {
			best, least = i, at.Dist(p)
		}
	}
	s := o.Segment(best)
	way := s.To.Sub(s.From)
	if arc, ok := s.Arc(); ok {
		way = p.Sub(arc.Centre).Left()
	}
	return way.Times(1 / way.Norm()), p.Dist(s.From) > 0.02 && p.Dist(s.To) > 0.02
}

func TestAPitchOnTheViewIsTheSame(t *testing.T) {
	for name, p := range pairs(t) {
		first, err := PairView(p, 0, metric)
		require.NoError(t, err)
		last, err := PairView(p, 1, metric)
		require.NoError(t, err)
		for _, layer := range []render.Layer{render.LayerTeeth, render.LayerTrundles} {
			require.InDelta(t, areaOn(first, layer), areaOn(last, layer), 1e-6, "%s, %s", name, layer)
		}
		before, err := PairView(p, -3, metric)
		require.NoError(t, err)
		require.Equal(t, dump(first), dump(before), "a share is held to 0 to 1")
		none, err := PairView(p, math.NaN(), metric)
		require.NoError(t, err)
		require.Equal(t, dump(first), dump(none))
	}
}

func areaOn(d *render.Drawing, layer render.Layer) float64 {
	area := 0.0
	for _, it := range d.Items {
		if it.Layer == layer {
			for _, o := range it.Outlines {
				area += math.Abs(o.Area())
			}
		}
	}
	return area
}

func TestThePictureKeepsWithinItsFrame(t *testing.T) {
	for name, p := range pairs(t) {
		for _, turn := range places {
			m := newMeshing(NewBoard("mesh", metric), p, p.place(turn), meshSize)
			m.draw()
			frame, b := m.frame().Grow(1e-6), m.Drawing.Bounds()
			require.True(t, frame.Contains(b.Min) && frame.Contains(b.Max), "%s at %v: %v in %v", name, turn, b, frame)
			require.LessOrEqual(t, math.Max(frame.Width(), frame.Height()), meshSize+1e-5)
		}
	}
}

// A card's picture of the mesh is at the greatest standard scale that has room, which the
// card says; what is measured on it is that many times the work.
func TestDepthingCardIsToScale(t *testing.T) {
	for name, p := range pairs(t) {
		card, err := DepthingCard(p, metric)
		require.NoError(t, err)
		fits := math.Min(84/p.shown().Width(), 64/p.shown().Height())
		scale, err := strconv.ParseFloat(strings.TrimSuffix(DepthingScale(p, metric), " : 1"), 64)
		require.NoError(t, err)
		require.Contains(t, []float64{1, 2, 5, 10, 20, 50, 100}, scale, "ISO 5455, %s", name)
		require.LessOrEqual(t, scale, fits, name)
		require.Greater(t, 2.5*scale, fits, name)
		require.Contains(t, said(card), fmt.Sprintf("Scale %g : 1", scale))
		require.True(t, slices.ContainsFunc(card.Items, func(it render.Item) bool {
			return it.Layer == render.LayerDimensions && it.Pen == render.Hair && len(it.Outlines) == 1 &&
				math.Abs(it.Outlines[0].Bounds().Width()-scale*p.shown().Width()) < 1e-9
		}), "the frame of %s is as wide as the work in it, %g times", name, scale)
	}
	for most, want := range map[float64]float64{10.71: 10, 9.99: 5, 5: 5, 1: 1, 0.9: 0.5, 0.2: 0.2} {
		require.InEpsilon(t, want, standardScale(most), 1e-12, "%g", most)
	}
	require.Equal(t, "1 : 5", scaleText(standardScale(0.3), metric))
}

func TestPairSheetsStandClear(t *testing.T) {
	for name, p := range pairs(t) {
		for unit, s := range map[string]Style{"mm": metric, "in": inches} {
			for _, turn := range places {
				d, err := PairView(p, turn, s)
				require.NoError(t, err)
				requireClear(t, d, "%s at %v in %s", name, turn, unit)
				require.NotContains(t, strings.Join(append(said(d), d.Title, d.Description), " "), "‹")
			}
			card, err := DepthingCard(p, s)
			require.NoError(t, err)
			requireClear(t, card, "card of %s in %s", name, unit)
			require.NotContains(t, strings.Join(append(said(card), card.Title, card.Description), " "), "‹")
			require.Zero(t, card.Scale)
			require.LessOrEqual(t, card.Bounds().Width(), CardWidth+2)
			require.LessOrEqual(t, card.Bounds().Height(), 88.0, "two stand on a sheet")
			require.Contains(t, said(card), s.Units.Fine(p.Turn.Centres))
		}
	}
}

func TestDepthingStepsStandClear(t *testing.T) {
	for _, s := range []Style{metric, inches} {
		card := DepthingSteps(s)
		requireClear(t, card, "steps")
		require.LessOrEqual(t, card.Bounds().Width(), CardWidth)
		require.NotContains(t, strings.Join(said(card), " "), "‹")
	}
}

func TestAPairThatJamsSaysSo(t *testing.T) {
	p := meshedPair(t, 80, 8, false, 0)
	d, err := DepthingCard(p, metric)
	require.NoError(t, err)
	require.NotContains(t, said(d), metric.Words.Say("cards.depthing.jams"))
	p.Turn.DriverClearance = -0.1
	d, err = DepthingCard(p, metric)
	require.NoError(t, err)
	require.Contains(t, said(d), metric.Words.Say("cards.depthing.jams"))
	d, err = PairView(p, 0, metric)
	require.NoError(t, err)
	require.Contains(t, said(d), metric.Words.Say("template.pairview.jams"))
}

func TestAPairThatWasNotTurned(t *testing.T) {
	_, err := PairView(Pair{ID: "mesh"}, 0, metric)
	require.ErrorIs(t, err, ErrNothing)
	_, err = DepthingCard(Pair{ID: "mesh"}, metric)
	require.ErrorIs(t, err, ErrNothing)
}

func BenchmarkPairView(b *testing.B) {
	p := meshedPair(b, 80, 8, false, 0)
	b.ReportAllocs()
	for i := 0; b.Loop(); i++ {
		_, err := PairView(p, float64(i%500)/500, metric)
		require.NoError(b, err)
	}
}
