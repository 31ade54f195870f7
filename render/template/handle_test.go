package template

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/crossing"
)

// quantities lists the fields that handles set.
func quantities(handles []Handle) []geometry.Quantity {
	var list []geometry.Quantity
	for _, h := range handles {
		list = append(list, h.Quantity)
	}
	return list
}

// dragged checks that a handle stands at its present value, that pulled along way
// it gives ever greater values, and that it refuses what is no point.
func dragged(t *testing.T, h Handle, want float64, way geometry.Point) {
	t.Helper()
	got, err := h.Value(h.At)
	require.NoError(t, err)
	require.InDelta(t, want, got, 1e-9, "%s where it stands", h.Quantity)
	before := math.Inf(-1)
	for i := -10; i <= 10; i++ {
		v, err := h.Value(h.At.Add(way.Times(float64(i) * 0.02)))
		require.NoError(t, err)
		require.Greater(t, v, before, "%s dragged by %d", h.Quantity, i)
		before = v
	}
	_, err = h.Set(geometry.Point{X: math.NaN()})
	require.ErrorIs(t, err, ErrNowhere)
}

func TestCrossingHandlesStandWhereTheirDimensionsAre(t *testing.T) {
	for name, w := range wheels(t) {
		t.Run(name, func(t *testing.T) {
			spec := w.Crossing.Spec
			want := map[geometry.Quantity]float64{
				"bore": w.Bore, "crossing.rim": spec.Rim, "crossing.hub": spec.Hub, "crossing.arm_at_rim": spec.ArmAtRim,
				"crossing.arm_at_hub": spec.ArmAtHub, "crossing.fillet_at_rim": spec.FilletAtRim,
				"crossing.fillet_at_hub": spec.FilletAtHub, "crossing.allowance": spec.Allowance, "crossing.start_hole": spec.StartHole,
			}
			handles := CrossingHandles(w)
			require.Len(t, handles, len(want))
			for _, h := range handles {
				dragged(t, h, want[h.Quantity], outward(h))
				require.InDelta(t, want[h.Quantity], h.Span[0].Dist(h.Span[1]), 1e-9, "%s is measured over what it is", h.Quantity)
				near, _ := w.Crossing.Windows[len(w.Crossing.Windows)-1].Outline.Nearest(h.At)
				switch h.Quantity {
				case "bore", "crossing.allowance", "crossing.start_hole":
				default:
					require.InDelta(t, 0, near.Dist(h.At), 1e-9, "%s stands on its line", h.Quantity)
				}
			}
		})
	}
}

// outward is the way in which a crossing's handle is pulled to make it greater.
func outward(h Handle) geometry.Point {
	way := h.At.Times(1 / h.At.Norm())
	switch h.Quantity {
	case "crossing.rim", "crossing.fillet_at_rim", "crossing.start_hole":
		return way.Times(-1)
	case "crossing.arm_at_rim", "crossing.arm_at_hub", "crossing.allowance":
		return geometry.Point{X: -1}
	}
	return way
}

// A rim, a fillet and an arm dragged somewhere and laid out anew run through the
// place they were dragged to.
func TestWhatIsDraggedFollowsThePointer(t *testing.T) {
	w := trainWheel(t, 72, 6)
	dragged := 0
	for _, h := range CrossingHandles(w) {
		spec := w.Crossing.Spec
		to := h.At.Add(outward(h).Times(0.15))
		settings, err := h.Set(to)
		require.NoError(t, err)
		field := map[geometry.Quantity]*float64{
			"crossing.rim": &spec.Rim, "crossing.hub": &spec.Hub, "crossing.arm_at_rim": &spec.ArmAtRim,
			"crossing.arm_at_hub": &spec.ArmAtHub, "crossing.fillet_at_rim": &spec.FilletAtRim, "crossing.fillet_at_hub": &spec.FilletAtHub,
		}[settings[0].Quantity]
		if field == nil {
			continue
		}
		dragged++
		*field = settings[0].Value
		lay, err := crossing.Lay(w.Crossing.Blank, spec)
		require.NoError(t, err)
		near, _ := lay.Windows[len(lay.Windows)-1].Outline.Nearest(to)
		require.InDelta(t, 0, near.Dist(to), 0.01, "%s", h.Quantity)
	}
	require.Equal(t, 6, dragged)
}

// Without roundings the fillets' handles stand in the corners; where the window
// ends in one arc the hub has its handle on the arm.
func TestHandlesOfSharpAndOfPointedWindows(t *testing.T) {
	w := trainWheel(t, 72, 6)
	spec := w.Crossing.Spec
	spec.FilletAtRim, spec.FilletAtHub = 0, 0
	lay, err := crossing.Lay(w.Crossing.Blank, spec)
	require.NoError(t, err)
	w.Crossing = &lay
	require.Subset(t, quantities(CrossingHandles(w)), []geometry.Quantity{"crossing.fillet_at_rim", "crossing.fillet_at_hub"})
	for _, h := range CrossingHandles(w) {
		if h.Quantity == "crossing.fillet_at_rim" || h.Quantity == "crossing.fillet_at_hub" {
			v, err := h.Value(h.At)
			require.NoError(t, err)
			require.InDelta(t, 0, v, 1e-9)
		}
	}
	spec.FilletAtRim, spec.FilletAtHub, spec.Arms = 0.6, 4, 12
	lay, err = crossing.Lay(w.Crossing.Blank, spec)
	require.NoError(t, err)
	w.Crossing = &lay
	require.Contains(t, quantities(CrossingHandles(w)), geometry.Quantity("crossing.hub"))
	for _, h := range CrossingHandles(w) {
		if h.Quantity == "crossing.fillet_at_hub" {
			dragged(t, h, 4, outward(h))
		}
	}
}

func TestNoHandleWithoutAPlace(t *testing.T) {
	require.Empty(t, CrossingHandles(Wheel{}))
}
