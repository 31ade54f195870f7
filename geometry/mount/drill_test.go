package mount

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/tables"
	"tipline/geometry/trial"
)

// The rule for threads without a tabled clearance drill lies between the
// millimetres and the number or letter drill that a printed table of BA threads
// gives; for 1 BA an inch fraction comes in between.
func TestPublishedClearanceDrills(t *testing.T) {
	for _, row := range trial.Of(t, trial.Reference(t, "threads.csv"), "kind", "clearance") {
		d := clearance(thread(t, row["thread"]))
		low, err := strconv.ParseFloat(row["drill_mm"], 64)
		require.NoError(t, err)
		high, ok := tables.DrillNamed(row["drill"])
		require.True(t, ok, row["drill"])
		require.True(t, low <= d.MM && d.MM <= high.MM, "%s: %+v", row["thread"], d)
		require.True(t, d.Assumed)
	}
}

func TestDrillsForTheScrew(t *testing.T) {
	for _, row := range []struct {
		thread              string
		clear, tap, starter Drill
	}{
		// threads.csv; starters are centre drills of ISO 866, from memory.
		{"M2", Drill{MM: 2.2}, Drill{MM: 1.6}, Drill{MM: 1.25, Assumed: true}},
		{"UNF 0-80", Drill{Name: "#52", MM: 1.613}, Drill{Name: "3/64", MM: 1.191}, Drill{MM: 1, Assumed: true}},
		{"BA 10", Drill{Name: "#50", MM: 1.778, Assumed: true}, Drill{MM: 1.4}, Drill{MM: 1.25, Assumed: true}},
		{"UNM 0.30", Drill{Name: "#82", MM: 0.3175, Assumed: true}, Drill{MM: 0.245}, Drill{Assumed: true}},
	} {
		t.Run(row.thread, func(t *testing.T) {
			m, err := Fit(plain(), Collet{}, Screws{Count: 3, Thread: thread(t, row.thread), Circle: 16})
			require.NoError(t, err)
			require.Equal(t, row.tap, m.Tap)
			require.Equal(t, row.starter, m.Starter)
			require.Equal(t, row.clear.Name, m.Clear.Name)
			require.InDelta(t, row.clear.MM, m.Clear.MM, 1e-9)
			require.Equal(t, row.clear.Assumed, m.Clear.Assumed)
		})
	}
}

func TestEveryThreadHasItsDrills(t *testing.T) {
	for _, thread := range tables.Threads() {
		d := clearance(thread)
		require.Greater(t, d.MM, thread.Major, thread.Name())
		require.Less(t, d.MM, 1.17*thread.Major, thread.Name())
		require.Less(t, starter(thread).MM, thread.Tap, thread.Name())
	}
}
