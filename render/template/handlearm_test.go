package template

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/crossing"
)

// A swept arm, a waisted one with and without a place for its waist, and windows
// with outer edges of their own radius.
func TestHandlesOfBentArms(t *testing.T) {
	for _, row := range []struct {
		name string
		ask  func(*crossing.Spec)
		want map[geometry.Quantity]float64
	}{
		{
			"swept", func(s *crossing.Spec) { s.Style, s.Sweep = crossing.Swept, geometry.Degrees(20) },
			map[geometry.Quantity]float64{"crossing.sweep": float64(geometry.Degrees(20))},
		},
		{
			"swept the other way", func(s *crossing.Spec) { s.Style, s.Sweep = crossing.Swept, geometry.Degrees(-15) },
			map[geometry.Quantity]float64{"crossing.sweep": float64(geometry.Degrees(-15))},
		},
		{
			"waisted", func(s *crossing.Spec) { s.Style, s.Waist = crossing.Waisted, 1.5 },
			map[geometry.Quantity]float64{"crossing.waist": 1.5},
		},
		{
			"waisted there", func(s *crossing.Spec) { s.Style, s.Waist, s.WaistAt = crossing.Waisted, 1.6, 18 },
			map[geometry.Quantity]float64{"crossing.waist": 1.6},
		},
		{"outer edges", func(s *crossing.Spec) { s.OuterRadius = 18 }, map[geometry.Quantity]float64{"crossing.outer_radius": 18}},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := trainWheel(t, 72, 6)
			spec := w.Crossing.Spec
			row.ask(&spec)
			lay, err := crossing.Lay(w.Crossing.Blank, spec)
			require.NoError(t, err)
			w.Crossing = &lay
			want := map[geometry.Quantity]float64{
				"bore": w.Bore, "crossing.rim": spec.Rim, "crossing.hub": spec.Hub, "crossing.arm_at_rim": spec.ArmAtRim,
				"crossing.arm_at_hub": spec.ArmAtHub, "crossing.fillet_at_rim": spec.FilletAtRim,
				"crossing.fillet_at_hub": spec.FilletAtHub, "crossing.allowance": spec.Allowance, "crossing.start_hole": spec.StartHole,
			}
			for q, v := range row.want {
				want[q] = v
			}
			handles := CrossingHandles(w)
			require.ElementsMatch(t, keys(want), quantities(handles))
			for _, h := range handles {
				standsAt(t, h, want[h.Quantity])
				onWindow(t, w, h)
			}
		})
	}
}

// standsAt checks that a handle stands at its value and, where it is a distance, is measured
// over it.
func standsAt(t *testing.T, h Handle, want float64) {
	t.Helper()
	got, err := h.Value(h.At)
	require.NoError(t, err)
	require.InDelta(t, want, got, 1e-9, "%s where it stands", h.Quantity)
	if span := h.Span[0].Dist(h.Span[1]); span > 0 {
		require.InDelta(t, want, span, 1e-9, "%s is measured over what it is", h.Quantity)
	}
}

// onWindow checks that what has its place on the window's line stands there.
func onWindow(t *testing.T, w Wheel, h Handle) {
	t.Helper()
	switch h.Quantity {
	case "crossing.waist", "crossing.outer_radius", "crossing.fillet_at_rim", "crossing.fillet_at_hub":
		near, _ := w.Crossing.Windows[len(w.Crossing.Windows)-1].Outline.Nearest(h.At)
		require.InDelta(t, 0, near.Dist(h.At), 1e-5, "%s stands on its line", h.Quantity)
	}
}

func TestADraggedWaistSetsItsPlaceWhereItHasOne(t *testing.T) {
	w := trainWheel(t, 72, 6)
	spec := w.Crossing.Spec
	spec.Style, spec.Waist, spec.WaistAt = crossing.Waisted, 1.6, 18
	lay, err := crossing.Lay(w.Crossing.Blank, spec)
	require.NoError(t, err)
	w.Crossing = &lay
	for _, h := range CrossingHandles(w) {
		if h.Quantity == "crossing.waist" {
			settings, err := h.Set(h.At.Add(geometry.Point{X: -0.1, Y: 1}))
			require.NoError(t, err)
			require.Equal(t, geometry.Quantity("crossing.waist_at"), settings[1].Quantity)
			require.InDelta(t, 1.8, settings[0].Value, 1e-9)
			require.InDelta(t, 19, settings[1].Value, 1e-9)
			_, err = h.Set(geometry.Point{Y: 1 / zero})
			require.ErrorIs(t, err, ErrNowhere)
		}
	}
}
