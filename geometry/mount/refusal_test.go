package mount

import (
	"errors"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/tables"
	"tipline/assets/words"
	"tipline/geometry"
)

func limitOf(t *testing.T, err error) *geometry.Limit {
	var l *geometry.Limit
	require.ErrorAs(t, err, &l)
	require.True(t, words.English().Has(l.Code), l.Code)
	return l
}

// Each bound is by hand from M2: clearance 2.2, tap drill 1.6 (threads.csv).
func TestHolesThatBreakOut(t *testing.T) {
	six := crossed(6, 14, 50, 6)
	holed := plain()
	holed.Holes = []Hole{{geometry.Point{Y: 20}, 1, 4}, {geometry.Point{Y: 10}, 3, 7}}
	for _, row := range []struct {
		name     string
		seat     Seat
		collet   Collet
		count    int
		circle   float64
		start    float64
		code     string
		min, max float64
	}{
		{"the bore", plain(), Collet{}, 3, 7, 0, "mount.breaks-bore", 6 + 2.2, math.Inf(1)},
		{"the root circle", plain(), Collet{}, 3, 49, 0, "mount.breaks-root", math.Inf(-1), 50 - 2.2},
		{"the next hole", plain(), Collet{}, 20, 9, 0, "mount.breaks-next", 2.2 / math.Sin(math.Pi/20), math.Inf(1)},
		{"the register", Seat{Root: 50, Tip: 54, Teeth: 60, Thickness: 1}, Collet{Register: 8}, 3, 9, 0, "mount.breaks-register", 8 + 1.6, math.Inf(1)},
		{"the flange", plain(), Collet{Flange: 16}, 3, 15, 0, "mount.breaks-flange", math.Inf(-1), 16 - 1.6},
		{"a window", six, Collet{}, 6, 15, 30, "mount.breaks-window", math.Inf(-1), 14 - 2.2},
		{"another hole", holed, Collet{}, 1, 19, 0, "mount.breaks-hole", math.Inf(-1), 2 * (10 - 1.5 - 1.1 - 0.01)},
		{"another hole, from outside", holed, Collet{}, 1, 21, 0, "mount.breaks-hole-inside", 2 * (10 + 1.5 + 1.1 + 0.01), math.Inf(1)},
		{"the centre, where no bore is said", Seat{Root: 50, Tip: 54, Teeth: 60, Thickness: 1}, Collet{}, 1, 0.01, 0, "mount.breaks-centre", 2.2, math.Inf(1)},
		{"the bore, on the way out of the register", plain(), Collet{Register: 6}, 3, 2, 0, "mount.breaks-bore", 8.2, math.Inf(1)},
	} {
		t.Run(row.name, func(t *testing.T) {
			screws := Screws{Count: row.count, Thread: thread(t, "M2"), Circle: row.circle, Start: at(row.start)}
			_, err := Fit(row.seat, row.collet, screws)
			l := limitOf(t, err)
			require.Equal(t, row.code, l.Code)
			require.Equal(t, geometry.Quantity("mount.screw_circle"), l.Quantity)
			var struck *Struck
			if errors.As(err, &struck) {
				require.Equal(t, 7, struck.Addition)
			}
			bounds(t, row.min, row.max, l)
		})
	}
}

// bounds checks a limit's bounds to 2 nm and a tenth: a hole is still clear of an
// edge that it comes within a nanometre of.
func bounds(t *testing.T, low, high float64, l *geometry.Limit) {
	for _, b := range [][2]float64{{low, l.Min}, {high, l.Max}} {
		if math.IsInf(b[0], 0) {
			require.Equal(t, b[0], b[1])
		} else {
			require.InDelta(t, b[0], b[1], 2.2e-9)
		}
	}
}

// A bore, a flange and the tooth spaces leave a ring for the holes; when it is
// narrower than a hole, no circle will do.
func TestScrewsThatFindNoCircle(t *testing.T) {
	seat := plain()
	for _, row := range []struct {
		name     string
		thread   string
		count    int
		flange   float64
		quantity geometry.Quantity
		code     string
		max      float64
	}{
		// On circles up to 16 − 1.6 the chord must be 2.2: 2.2/sin(π/n) ≤ 14.4 to n = 20.
		{"too many", "M2", 24, 16, "mount.screws", "mount.too-many-screws", 20},
		// Circles from 6 + clearance to 12 − tap: M2.5 (2.7, 2.05) is the largest.
		{"too thick", "M5", 1, 12, "mount.thread", "mount.thread-too-large", 3},
	} {
		t.Run(row.name, func(t *testing.T) {
			screws := Screws{Count: row.count, Thread: thread(t, row.thread), Circle: 10}
			_, err := Fit(seat, Collet{Flange: row.flange}, screws)
			l := limitOf(t, err)
			require.Equal(t, row.quantity, l.Quantity)
			require.Equal(t, row.code, l.Code)
			require.Equal(t, row.max, l.Max)
		})
	}
	_, err := Fit(seat, Collet{Flange: 6.1}, Screws{Count: 3, Thread: thread(t, "M2"), Circle: 10})
	require.Equal(t, "mount.no-room", limitOf(t, err).Code)
}

func TestValuesThatCannotBe(t *testing.T) {
	good := Screws{Count: 4, Thread: thread(t, "M2"), Circle: 14}
	nan, inf := math.NaN(), math.Inf(1)
	for name, row := range map[string]struct {
		seat     func(*Seat)
		collet   Collet
		screws   func(*Screws)
		quantity geometry.Quantity
	}{
		"no screws":             {screws: func(s *Screws) { s.Count = 0 }, quantity: "mount.screws"},
		"too many screws":       {screws: func(s *Screws) { s.Count = 25 }, quantity: "mount.screws"},
		"no thread":             {screws: func(s *Screws) { s.Thread = tables.Thread{} }, quantity: "mount.thread"},
		"thread is no number":   {screws: func(s *Screws) { s.Thread.Major = nan }, quantity: "mount.thread"},
		"no tap drill":          {screws: func(s *Screws) { s.Thread.Tap = 0 }, quantity: "mount.thread"},
		"no circle":             {screws: func(s *Screws) { s.Circle = 0 }, quantity: "mount.screw_circle"},
		"circle is no number":   {screws: func(s *Screws) { s.Circle = nan }, quantity: "mount.screw_circle"},
		"start is endless":      {screws: func(s *Screws) { a := geometry.Angle(inf); s.Start = &a }, quantity: "mount.start"},
		"register in the bore":  {collet: Collet{Bore: 4, Register: 4}, quantity: "mount.collet.register"},
		"register too large":    {collet: Collet{Register: 6.1}, quantity: "mount.collet.register"},
		"flange too small":      {collet: Collet{Flange: 6}, quantity: "mount.collet.flange"},
		"negative collet":       {collet: Collet{Bore: -1}, quantity: "mount.collet.bore"},
		"flange is no number":   {collet: Collet{Flange: nan}, quantity: "mount.collet.flange"},
		"no root circle":        {seat: func(s *Seat) { s.Root = 0 }, quantity: "teeth.root_diameter"},
		"tips inside the roots": {seat: func(s *Seat) { s.Tip = 40 }, quantity: "teeth.tip_diameter"},
		"no thickness":          {seat: func(s *Seat) { s.Thickness = nan }, quantity: "thickness"},
		"no teeth":              {seat: func(s *Seat) { s.Teeth = 0 }, quantity: "teeth.count"},
		"endless hole":          {seat: func(s *Seat) { s.Holes = []Hole{{Diameter: inf}} }, quantity: "additions"},
		"arm nowhere":           {seat: func(s *Seat) { s.Arms = []geometry.Angle{geometry.Angle(nan)} }, quantity: "crossing.arms"},
	} {
		t.Run(name, func(t *testing.T) {
			seat, screws := plain(), good
			if row.seat != nil {
				row.seat(&seat)
			}
			if row.screws != nil {
				row.screws(&screws)
			}
			_, err := Fit(seat, row.collet, screws)
			l := limitOf(t, err)
			require.Equal(t, row.quantity, l.Quantity)
			require.False(t, math.IsNaN(l.Value) || math.IsInf(l.Value, 0))
		})
	}
}

// Any numbers at all, sound or absurd, give an answer or a Limit.
func FuzzFit(f *testing.F) {
	f.Add(6.0, 14.0, 50.0, 3.0, 6.0, 12.0, 4, 10.0, 0.5)
	f.Add(math.NaN(), 1e300, -1.0, 0.0, math.Inf(1), 1e-300, 24, 1e-9, math.Inf(-1))
	f.Add(0.0, 0.0, 10_000.0, 0.0, 0.0, 0.0, 24, 5000.0, 1e6)
	f.Fuzz(func(t *testing.T, bore, hub, root, register, flange, circle float64, count int, hole, start float64) {
		angle := geometry.Angle(start)
		seat := Seat{Bore: bore, Hub: hub, Root: root, Tip: root + 1, Teeth: count, Thickness: 1, Holes: []Hole{{At: geometry.Point{X: hole}, Diameter: hole}}}
		screws := Screws{Count: count, Thread: thread(t, "BA 10"), Circle: circle, Start: &angle}
		m, err := Fit(seat, Collet{Register: register, Flange: flange}, screws)
		if err != nil {
			limitOf(t, err)
			return
		}
		require.False(t, math.IsNaN(m.Edge) || math.IsInf(m.Edge, 0))
	})
}
