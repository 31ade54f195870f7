package crossing

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// limit returns the Limit that laying out gives, nil where it can be laid out.
func limit(t *testing.T, b Blank, s Spec) *geometry.Limit {
	t.Helper()
	_, _, err := lay(b, s)
	if err == nil {
		return nil
	}
	var l *geometry.Limit
	require.True(t, errors.As(err, &l), "%v", err)
	return l
}

// put sets the field a limit names.
func put(t *testing.T, s *Spec, q geometry.Quantity, v float64) {
	t.Helper()
	switch q {
	case ofArms:
		s.Arms = int(v)
	case ofRim:
		s.Rim = v
	case ofHub:
		s.Hub = v
	case ofArmAtRim:
		s.ArmAtRim = v
	case ofArmAtHub:
		s.ArmAtHub = v
	case ofFilletAtRim:
		s.FilletAtRim = v
	case ofFilletAtHub:
		s.FilletAtHub = v
	case ofAllowance:
		s.Allowance = v
	case ofStartHole:
		s.StartHole = v
	case ofSweep:
		s.Sweep = geometry.Angle(v)
	case ofWaist:
		s.Waist = v
	case ofWaistAt:
		s.WaistAt = v
	case ofOuterRadius:
		s.OuterRadius = v
	default:
		require.Fail(t, "not a field of a crossing", "%s", q)
	}
}

// advice returns the value a limit says would do, and one a micrometre, or one
// arm, beyond it.
func advice(l *geometry.Limit) (would, beyond float64) {
	by := 1e-3
	if l.Quantity == ofArms {
		by = 1
	}
	if !math.IsInf(l.Max, 1) && l.Value > l.Max {
		return l.Max, l.Max + by
	}
	return l.Min, l.Min - by
}

// Whatever is asked for, what the refusal says would do does, and a micrometre more
// does not; and where several values are wrong at once, following the advice ends
// in a wheel.
func TestWhatARefusalSaysWouldDoDoes(t *testing.T) {
	r := trial.Rand(t, 52)
	english := words.English()
	refused, mended, several, islands := 0, 0, 0, 0
	for i := range trial.Count(10_000) {
		b, s := someCrossing(r)
		l := limit(t, b, s)
		if l == nil {
			continue
		}
		refused++
		for step := 0; l != nil; step++ {
			require.True(t, english.Has(l.Code), "no words for %s", l.Code)
			require.Less(t, step, 12, "case %d: %+v %+v: %v", i, b, s, l)
			if l.Code == "crossing.no-room" {
				require.Less(t, b.RootRadius-b.Bore/2, 3*geometry.LeastLength+0.02*b.RootRadius, "case %d: %+v %+v", i, b, s)
				break
			}
			if l.Code == "crossing.several-values" {
				require.NotEqual(t, Straight, s.Style, "case %d: %+v %+v", i, b, s)
				several++
				break
			}
			would, beyond := advice(l)
			require.NotEqual(t, would, l.Value, "case %d: %v", i, l)
			past := s
			put(t, &past, l.Quantity, beyond)
			if limit(t, b, past) == nil {
				require.False(t, s.Style == Straight && s.OuterRadius == 0, "case %d: %+v %+v: beyond %v builds", i, b, s, l)
				islands++
			}
			put(t, &s, l.Quantity, would)
			last := l
			if l = limit(t, b, s); l == nil && step == 0 {
				mended++
			}
			if l != nil && last.Quantity == l.Quantity {
				require.NotEqual(t, last.Code, l.Code, "case %d: %+v %+v: %v again", i, b, s, l)
			}
		}
	}
	require.LessOrEqual(t, 500*islands, refused, "beyond %d of %d limits there is room again", islands, refused)
	require.Less(t, 200*several, refused, "%d of %d refusals name no value", several, refused)
	require.Greater(t, 100*mended, 75*refused, "%d of %d refusals are mended by their own advice", mended, refused)
}

func TestEachLimitNamesItsField(t *testing.T) {
	for _, c := range []struct {
		name string
		ask  func(*Blank, *Spec)
		of   geometry.Quantity
		code string
	}{
		{"two arms", func(b *Blank, s *Spec) { s.Arms = 2 }, ofArms, "crossing.arms-out-of-range"},
		{"thirteen arms", func(b *Blank, s *Spec) { s.Arms = 13 }, ofArms, "crossing.arms-out-of-range"},
		{"more arms than tips", func(b *Blank, s *Spec) { b.Count = 5 }, ofArms, "crossing.more-arms-than-teeth"},
		{"rim less than nothing", func(b *Blank, s *Spec) { s.Rim = -1 }, ofRim, "crossing.rim-too-thin"},
		{"rim beyond the bore", func(b *Blank, s *Spec) { s.Rim = 26 }, ofRim, "crossing.rim-too-wide"},
		{"hub of no size", func(b *Blank, s *Spec) { s.Hub = 0 }, ofHub, "crossing.hub-too-small"},
		{"hub inside the bore", func(b *Blank, s *Spec) { s.Hub = 5 }, ofHub, "crossing.hub-inside-bore"},
		{"hub up to the rim", func(b *Blank, s *Spec) { s.Hub = 51.2 }, ofHub, "crossing.hub-meets-rim"},
		{"hub nearly up to the rim", func(b *Blank, s *Spec) { s.Hub = 51 }, ofHub, "crossing.hub-too-large"},
		{"arms as wide as windows", func(b *Blank, s *Spec) { s.ArmAtRim = 30 }, ofArmAtRim, "crossing.arms-meet-at-rim"},
		{"arm of no width", func(b *Blank, s *Spec) { s.ArmAtHub = 0 }, ofArmAtHub, "crossing.arm-at-hub-too-thin"},
		{"huge rim fillets", func(b *Blank, s *Spec) { s.FilletAtRim = 9 }, ofFilletAtRim, "crossing.rim-fillets-overlap"},
		{"huge hub fillets", func(b *Blank, s *Spec) { s.FilletAtHub = 14 }, ofFilletAtHub, "crossing.fillet-at-hub-meets-rim"},
		{"fillet less than nothing", func(b *Blank, s *Spec) { s.FilletAtHub = -0.1 }, ofFilletAtHub, "crossing.fillet-negative"},
		{"allowance less than nothing", func(b *Blank, s *Spec) { s.Allowance = -0.1 }, ofAllowance, "crossing.allowance-negative"},
		{"start hole no number", func(b *Blank, s *Spec) { s.StartHole = math.NaN() }, ofStartHole, "crossing.start-hole-negative"},
		{"rim without end", func(b *Blank, s *Spec) { s.Rim = math.Inf(1) }, ofRim, "crossing.rim-too-thin"},
		{"no such style", func(b *Blank, s *Spec) { s.Style = "bent" }, ofStyle, "crossing.style-unknown"},
		{"swept by half a turn", func(b *Blank, s *Spec) { s.Style, s.Sweep = Swept, 3 }, ofSweep, "crossing.sweep-out-of-range"},
		{"swept by no number", func(b *Blank, s *Spec) { s.Style, s.Sweep = Swept, geometry.Angle(math.NaN()) }, ofSweep, "crossing.sweep-out-of-range"},
		{"swept too far", func(b *Blank, s *Spec) { s.Style, s.Sweep = Swept, 1.2 }, ofSweep, "crossing.sweep-too-far"},
		{"swept too far back", func(b *Blank, s *Spec) { s.Style, s.Sweep = Swept, -1.2 }, ofSweep, "crossing.sweep-too-far-back"},
		{"swept along the rim", func(b *Blank, s *Spec) { s.Style, s.Sweep = Swept, 0.9 }, ofSweep, "crossing.sweep-misses-rim"},
		{"swept back along the rim", func(b *Blank, s *Spec) { s.Style, s.Sweep = Swept, -0.9 }, ofSweep, "crossing.sweep-back-misses-rim"},
		{"no waist", func(b *Blank, s *Spec) { s.Style = Waisted }, ofWaist, "crossing.waist-too-thin"},
		{"a belly", func(b *Blank, s *Spec) { s.Style, s.Waist = Waisted, 2.3 }, ofWaist, "crossing.waist-not-narrowest"},
		{"waist in the hub", func(b *Blank, s *Spec) { s.Style, s.Waist, s.WaistAt = Waisted, 2, 6 }, ofWaistAt, "crossing.waist-inside-hub"},
		{"waist in the rim", func(b *Blank, s *Spec) { s.Style, s.Waist, s.WaistAt = Waisted, 2, 26 }, ofWaistAt, "crossing.waist-beyond-rim"},
		{"an arm that overhangs", func(b *Blank, s *Spec) { s.Style, s.Waist, s.WaistAt, s.ArmAtHub = Waisted, 1, 14, 2000 }, ofArmAtHub, "crossing.arm-at-hub-too-wide"},
		{"waist too far out", func(b *Blank, s *Spec) { s.Style, s.Waist, s.WaistAt = Waisted, 0.2, 24 }, ofWaistAt, "crossing.waist-too-far-out"},
		{"waist too far in", func(b *Blank, s *Spec) { s.Style, s.Waist, s.WaistAt = Waisted, 0.2, 8.5 }, ofWaistAt, "crossing.waist-too-far-in"},
		{"waist less than nothing from the centre", func(b *Blank, s *Spec) { s.Style, s.Waist, s.WaistAt = Waisted, 1, -3 }, ofWaistAt, "crossing.waist-at-negative"},
		{"outer edge less than nothing", func(b *Blank, s *Spec) { s.OuterRadius = -3 }, ofOuterRadius, "crossing.outer-radius-negative"},
		{"outer edge too small", func(b *Blank, s *Spec) { s.OuterRadius = 1 }, ofOuterRadius, "crossing.outer-radius-misses-arm"},
		{"no such placing", func(b *Blank, s *Spec) { s.Placing = "anyhow" }, ofPlacing, "crossing.placing-unknown"},
		{"no teeth", func(b *Blank, s *Spec) { b.Count = 0 }, "teeth.count", "crossing.blank-teeth"},
		{"no thickness", func(b *Blank, s *Spec) { b.Thickness = 0 }, "thickness", "crossing.blank-thickness"},
		{"tips inside the root", func(b *Blank, s *Spec) { b.TipRadius = 27 }, "teeth.tip_diameter", "crossing.blank-tips"},
		{"weightless", func(b *Blank, s *Spec) { b.Density = 0 }, "material", "crossing.blank-material"},
	} {
		t.Run(c.name, func(t *testing.T) {
			b, s := regulator()
			c.ask(&b, &s)
			l := limit(t, b, s)
			require.NotNil(t, l)
			require.Equal(t, c.of, l.Quantity, "%v", l)
			require.Equal(t, c.code, l.Code, "%v", l)
		})
	}
}

// What is said of a circle's field is its diameter, as the field has it.
func TestABlanksLimitsAreDiameters(t *testing.T) {
	b, s := regulator()
	b.TipRadius = b.RootRadius - 1
	l := limit(t, b, s)
	require.Equal(t, 2*b.TipRadius, l.Value)
	require.Equal(t, 2*b.RootRadius, l.Min)
	b.RootRadius = 0
	l = limit(t, b, s)
	require.Equal(t, geometry.Quantity("teeth.root_diameter"), l.Quantity)
	require.Equal(t, 2*geometry.LeastLength, l.Min)
}
