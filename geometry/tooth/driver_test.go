package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// refusal returns the limit that a wheel for a lantern pinion is refused with.
func refusal(t *testing.T, d LanternDriver) *geometry.Limit {
	t.Helper()
	_, err := d.Drive()
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit, "%+v", d)
	return limit
}

// with returns the wheel with one of its values put to something else.
func (d LanternDriver) with(q geometry.Quantity, v float64) LanternDriver {
	switch q {
	case driverModule:
		d.Module = v
	case driverTrundle:
		d.Trundle = v
	case driverPlay:
		d.Play = v
	case driverLeaves:
		d.Leaves = int(v)
	default:
		d.Count = int(v)
	}
	return d
}

func TestDriverThatCannotBeIsRefused(t *testing.T) {
	for _, row := range []struct {
		name     string
		d        LanternDriver
		quantity geometry.Quantity
		code     string
	}{
		{"too many teeth", LanternDriver{2001, 0.1, 8, 0, 0}, "teeth.count", "tooth.count"},
		{"two trundles", LanternDriver{80, 1, 2, 0, 0}, driverLeaves, "tooth.leaves"},
		{"too many trundles", LanternDriver{80, 1, 2001, 0, 0}, driverLeaves, "tooth.leaves"},
		{"no module", LanternDriver{80, 0, 8, 0, 0}, driverModule, "tooth.module"},
		{"module is no number", LanternDriver{80, math.NaN(), 8, 0, 0}, driverModule, "tooth.module"},
		{"tips larger than anything", LanternDriver{80, 24.9, 8, 0, 0}, driverModule, "tooth.module"},
		{"endless module", LanternDriver{80, math.Inf(1), 8, 0, 0}, driverModule, "tooth.module"},
		{"trundles meet", LanternDriver{80, 1, 8, 3.06, 0}, driverTrundle, "tooth.driver-trundles-meet"},
		{"trundle less than nothing", LanternDriver{80, 1, 8, -1, 0}, driverTrundle, "tooth.driver-trundles-meet"},
		{"trundle is no number", LanternDriver{80, 1, 8, math.NaN(), 0}, driverTrundle, "tooth.driver-trundles-meet"},
		{"play less than nothing", LanternDriver{80, 1, 8, 0, -1}, driverPlay, "tooth.driver-play"},
		{"endless play", LanternDriver{80, 1, 8, 0, math.Inf(1)}, driverPlay, "tooth.driver-play"},
		{"thin teeth", LanternDriver{80, 1, 8, 0, 2}, driverPlay, "tooth.driver-play-most"},
		{"spaces past the centre", LanternDriver{3, 1, 60, 2.9, 0}, driverTrundle, "tooth.driver-no-root"},
		{"nothing between spaces", LanternDriver{5, 1, 30, 3, 0}, driverTrundle, "tooth.driver-no-tooth"},
		{"pointed too soon", LanternDriver{80, 1, 8, 2.4, 0}, driverTrundle, "tooth.driver-contact"},
		{"three trundles", LanternDriver{80, 1, 3, 0, 0}, driverLeaves, "tooth.driver-leaves"},
		{"three by three", LanternDriver{3, 1, 3, 0, 0}, driverLeaves, "tooth.driver-leaves"},
	} {
		t.Run(row.name, func(t *testing.T) {
			limit := refusal(t, row.d)
			require.Equal(t, row.code, limit.Code)
			require.Equal(t, row.quantity, limit.Quantity)
			require.False(t, math.IsNaN(limit.Value) || math.IsInf(limit.Value, 0))
			require.True(t, words.English().Has(limit.Code))
			_, err := obeyed(row.d, limit).Drive()
			require.NoError(t, err, "what would do does: %v", limit)
		})
	}
}

// obeyed returns the wheel with what it was told would do. More leaves, or a
// larger module, are told for the thinnest trundles there are.
func obeyed(d LanternDriver, l *geometry.Limit) LanternDriver {
	if math.IsInf(l.Max, 1) {
		return d.with(l.Quantity, l.Min).with(driverTrundle, geometry.LeastLength)
	}
	return d.with(l.Quantity, l.Max)
}

// Random wheels are built whole, or refused with a value that would do and is the
// most that would: a µm beyond is refused as well.
func TestWhatADriverIsToldWouldDoDoes(t *testing.T) {
	r := trial.Rand(t, 31)
	refused := 0
	for range trial.Count(20_000) {
		d := LanternDriver{
			Count: 3 + r.IntN(120), Module: math.Exp(7*r.Float64() - 4.6), Leaves: 3 + r.IntN(20),
		}
		d.Trundle, d.Play = geometry.LeastLength+r.Float64()*2.5*d.Module, r.Float64()*r.Float64()*2*d.Module
		g, err := d.Drive()
		if err == nil {
			require.GreaterOrEqual(t, g.Contact, 1.0, "%+v", d)
			require.LessOrEqual(t, g.Off, geometry.FitTolerance, "%+v", d)
			require.True(t, g.Wheel.Outline.Simple(), "%+v", d)
			continue
		}
		refused++
		limit := refusal(t, d)
		if !math.IsInf(limit.Max, 1) {
			_, err = d.with(limit.Quantity, limit.Max+1e-3).Drive()
			require.Error(t, err, "%+v: %v", d, limit)
		}
		// Two values may be to blame, and are told one after the other.
		first := d
		for range 4 {
			d = obeyed(d, limit)
			if _, err = d.Drive(); err == nil {
				break
			}
			limit = refusal(t, d)
		}
		require.NoError(t, err, "%+v", first)
	}
	require.Positive(t, refused)
}

// The oracle measures the curve at five thousand places against all of the arcs.
func TestOffIsHowFarTheArcsLieFromTheCurve(t *testing.T) {
	for _, d := range drivers() {
		g, a := driving(t, d), d.action()
		flank := a.fitted(a.from, a.to)
		chain, err := geometry.NewChain(flank.vertices)
		require.NoError(t, err)
		worst := 0.0
		for i := range 5001 {
			p := a.at(a.from + (a.to-a.from)*float64(i)/5000)
			q, _ := chain.Nearest(p)
			worst = math.Max(worst, p.Dist(q))
		}
		require.LessOrEqual(t, worst, 1.02*g.Off+1e-9, "%+v", d)
		require.GreaterOrEqual(t, worst, 0.98*g.Off-1e-9, "%+v", d)
		require.LessOrEqual(t, worst, 1.02*geometry.FitTolerance, "%+v", d)
	}
}

func TestDriverSpaceFormLeavesTheSpace(t *testing.T) {
	for _, d := range drivers() {
		g := driving(t, d)
		cut, err := d.SpaceForm(0)
		require.NoError(t, err, "%+v", d)
		require.Zero(t, cut.SetOver)
		require.InDelta(t, g.Wheel.RootRadius, cut.RootRadius, 1e-6, "%+v", d)
		require.InDelta(t, g.Land, cut.Land, 1e-6, "%+v", d)
		left, err := cut.Space()
		require.NoError(t, err)
		require.Equal(t, g.Wheel.Space.Len(), left.Len(), "%+v", d)
		for i := range left.Len() {
			want, got := g.Wheel.Space.Segment(i), left.Segment(i)
			// A left space starts where tip 0, the end of a land, stands at 12 o'clock.
			turn := want.From.Direction() - got.From.Direction()
			require.InDelta(t, g.Land/g.Wheel.TipRadius/2, math.Abs(float64(turn)), 1e-6, "%+v %d", d, i)
			require.Less(t, want.From.Dist(got.From.Rotate(turn)), 1e-6, "%+v %d", d, i)
		}
	}
	_, err := LanternDriver{80, 1, 8, 0, 0}.SpaceForm(0.5)
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit)
	require.Equal(t, geometry.Quantity("cutter.stock_width"), limit.Quantity)
	_, err = LanternDriver{80, 1, 8, 0, 0}.SpaceForm(limit.Min + near)
	require.NoError(t, err)
	_, err = LanternDriver{}.SpaceForm(0)
	require.Error(t, err)
}

func BenchmarkDrive(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := (LanternDriver{80, 1, 8, 0, 0}).Drive(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkFlank(b *testing.B) {
	a := LanternDriver{80, 1, 8, 0, 0}.action()
	b.ReportAllocs()
	for b.Loop() {
		a.fitted(a.from, a.to)
	}
}
