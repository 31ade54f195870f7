package mount

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

// Edge distances are by hand from M2: 1.5 diameters are 3 mm, clearance 2.2, tap
// drill 1.6 (threads.csv).
func TestWhatWillGoWrong(t *testing.T) {
	six := crossed(6, 20, 50, 6)
	thick := plain()
	thick.Thickness = 16.5
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
		{"near the bore", plain(), Collet{}, 3, 10, 0, "mount.near-bore", 6 + 6, math.Inf(1)},
		{"near the register", Seat{Root: 50, Tip: 54, Teeth: 60, Thickness: 1}, Collet{Register: 6}, 3, 10, 0, "mount.near-register", 6 + 6, math.Inf(1)},
		{"near the tooth spaces", plain(), Collet{}, 3, 46, 0, "mount.near-root", math.Inf(-1), 50 - 6},
		{"near the flange's edge", plain(), Collet{Flange: 20}, 3, 15, 0, "mount.near-flange", math.Inf(-1), 20 - 6},
		{"near the next", plain(), Collet{}, 12, 14, 0, "mount.near-next", (3 + 1.1) / math.Sin(math.Pi/12), math.Inf(1)},
		{"near a window", six, Collet{}, 6, 16, 30, "mount.near-window", math.Inf(-1), 20 - 6},
		{"deep", thick, Collet{}, 3, 20, 0, "mount.deep-hole", math.Inf(-1), 10},
		{"loose register", plain(), Collet{Register: 5.9}, 3, 20, 0, "mount.register-loose", 5.97, math.Inf(1)},
		{"a flange beyond the roots", plain(), Collet{Flange: 51}, 3, 20, 0, "mount.flange-beyond-root", math.Inf(-1), 50},
		{"a flange over the windows", six, Collet{Flange: 20.1}, 6, 13, 30, "mount.flange-over-windows", math.Inf(-1), 20},
		{"a single screw", plain(), Collet{}, 1, 20, 0, "mount.single-screw", 2, math.Inf(1)},
		{"five screws and six arms", six, Collet{}, 5, 13, 0, "mount.screws-off-symmetry", math.Inf(-1), math.Inf(1)},
		{"lopsided", six, Collet{}, 3, 13, 40, "mount.start-off-symmetry", 30 * math.Pi / 180, 60 * math.Pi / 180},
	} {
		t.Run(row.name, func(t *testing.T) {
			m, err := Fit(row.seat, row.collet, Screws{Count: row.count, Thread: thread(t, "M2"), Circle: row.circle, Start: at(row.start)})
			require.NoError(t, err)
			l := noteOf(m.Notes, row.code)
			require.NotNil(t, l, "%v", m.Notes)
			require.True(t, words.English().Has(l.Code))
			bounds(t, row.min, row.max, l)
		})
	}
}

func noteOf(notes []*geometry.Limit, code string) *geometry.Limit {
	for _, l := range notes {
		if l.Code == code {
			return l
		}
	}
	return nil
}

// On an arm there is metal beyond the hub: a hole may stand there, but is told.
func TestHolesOnTheArms(t *testing.T) {
	seat := crossed(6, 14, 80, 6)
	m, err := Fit(seat, Collet{}, Screws{Count: 6, Thread: thread(t, "UNM 0.50"), Circle: 20, Start: at(0)})
	require.NoError(t, err)
	l := noteOf(m.Notes, "mount.outside-hub")
	require.NotNil(t, l, "%v", m.Notes)
	require.InDelta(t, 14-m.Clear.MM, l.Max, 1e-9)
}

// A hub that leaves less than three diameters of ring has no place that is far
// enough from both its edges.
func TestNoPlaceFarFromBothEdges(t *testing.T) {
	m, err := Fit(plain(), Collet{Flange: 9.9}, Screws{Count: 1, Thread: thread(t, "UNM 1.00"), Circle: 7.9})
	require.NoError(t, err)
	bore, flange := noteOf(m.Notes, "mount.near-bore"), noteOf(m.Notes, "mount.near-flange")
	require.NotNil(t, bore)
	require.NotNil(t, flange)
	bounds(t, 9, math.Inf(1), bore)
	bounds(t, math.Inf(-1), 6.9, flange)
}

func TestSymmetryOfScrewsAndArms(t *testing.T) {
	six, five := crossed(6, 20, 50, 6), crossed(6, 20, 50, 5)
	for _, row := range []struct {
		name  string
		seat  Seat
		count int
		start float64
		alike bool
	}{
		{"as many, between the arms", six, 6, 30, true},
		{"as many, on the arms", six, 6, 0, true},
		{"half as many", six, 3, 30, true},
		{"two on six arms", six, 2, 60, true},
		{"twice as many", six, 12, 15, true},
		{"as many, off", six, 6, 10, false},
		{"five on five, an arm's half round", five, 5, 36, true},
		{"four on five", five, 4, 36, false},
		{"three on six, off", six, 3, 45, false},
	} {
		m, err := Fit(row.seat, Collet{}, Screws{Count: row.count, Thread: thread(t, "UNM 1.00"), Circle: 12, Start: at(row.start)})
		require.NoError(t, err, row.name)
		off := noteOf(m.Notes, "mount.screws-off-symmetry") != nil || noteOf(m.Notes, "mount.start-off-symmetry") != nil
		require.Equal(t, row.alike, !off, "%s: %v", row.name, m.Notes)
	}
}
