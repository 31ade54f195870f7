package tables

import (
	"encoding/csv"
	"math"
	"os"
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

// reference returns the rows of a table of published values, by its columns'
// names; each has its source in its last column.
func reference(t *testing.T, name string) []row {
	file, err := os.Open("../../testdata/" + name)
	require.NoError(t, err)
	defer file.Close()
	records, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	var rows []row
	for _, record := range records[1:] {
		r := row{}
		for i, column := range records[0] {
			r[column] = record[i]
		}
		require.NotEmpty(t, r["source"])
		rows = append(rows, r)
	}
	require.NotEmpty(t, rows)
	return rows
}

// The copies print four decimals, fractions rounded to them.
func TestDrillsAgreeWithPrintedCopies(t *testing.T) {
	for _, r := range reference(t, "drills.csv") {
		d, ok := DrillNamed(r["drill"])
		require.True(t, ok, r["drill"])
		require.InDelta(t, r.number("diameter_in"), d.MM/25.4, 0.00005+1e-9, "%s in %s", r["drill"], r["source"])
	}
}

// What no copy was found for is marked in the table and named here: it rests on
// memory.
func TestDrillsThatRestOnMemory(t *testing.T) {
	var names []string
	for _, d := range drills() {
		if d.Status == "from memory" {
			names = append(names, d.Name)
		}
	}
	require.Equal(t, []string{"#5", "#6", "#11"}, names)
}

func TestPublishedTapDrills(t *testing.T) {
	for _, r := range reference(t, "threads.csv") {
		thread, ok := ThreadNamed(r["thread"])
		require.True(t, ok, r["thread"])
		switch r["kind"] {
		case "percent of thread":
			got := 100 * (thread.Major - r.number("drill_mm")) / (1.299038 * thread.Pitch)
			require.InDelta(t, r.number("percent"), got, 1, "%s: %s", r["thread"], r["drill"])
		case "tap":
			require.Equal(t, r.number("drill_mm"), thread.Tap, r["thread"])
		}
	}
}

// BS 93 as told in the rows' source: pitch 0.9 to the power of the number, major
// diameter 6 times the pitch to the power 1.2, both to two figures.
func TestBritishAssociationByItsRule(t *testing.T) {
	figures := func(v float64) float64 {
		rounded, err := strconv.ParseFloat(strconv.FormatFloat(v, 'g', 2, 64), 64)
		require.NoError(t, err)
		return rounded
	}
	for k := 0; k <= 16; k++ {
		thread, ok := ThreadNamed("BA " + strconv.Itoa(k))
		require.True(t, ok, k)
		pitch := math.Pow(0.9, float64(k))
		require.InDelta(t, figures(pitch), thread.Pitch, 1e-9, k)
		require.InDelta(t, figures(6*math.Pow(pitch, 1.2)), thread.Major, 1e-9, k)
	}
}

// An inch thread's major diameter is 0.060 + 0.013 in for each number (the rule in
// the row of 00-90), its pitch an inch over the threads.
func TestInchThreadsByTheirRule(t *testing.T) {
	checked := 0
	for _, r := range sheet("threads.csv") {
		if number := r["size"][0]; r["system"] == "UNC" || r["system"] == "UNF" {
			require.InDelta(t, 25.4*(0.060+0.013*float64(number-'0')), r.number("major_mm"), 1e-9, r["size"])
			require.InDelta(t, 25.4/r.number("tpi"), r.number("pitch_mm"), 1e-5, r["size"])
			checked++
		}
	}
	require.Equal(t, 13, checked)
}

// Every tap drill leaves a thread of usual depth: 50 to 90 parts in a hundred of
// the full one, which is 0.6 pitches deep for BA (BS 93) and 0.6495 for threads of
// 60° (Machinery's Handbook, the formula of the percentages): common practice, no
// source for the limits.
func TestTapDrillsLeaveAUsualThread(t *testing.T) {
	for _, thread := range Threads() {
		depth := 1.299038
		if thread.System == "BA" {
			depth = 1.2
		}
		share := (thread.Major - thread.Tap) / (depth * thread.Pitch)
		require.Greater(t, share, 0.5, thread.Name())
		require.Less(t, share, 0.9, thread.Name())
	}
}

func TestDrillFrom(t *testing.T) {
	all := drills()
	for mm := 0.05; mm < 12.7; mm += 0.013 {
		from := DrillFrom(mm)
		require.GreaterOrEqual(t, from.MM, mm)
		for _, d := range all {
			require.False(t, d.MM >= mm && d.MM < from.MM, "%s for %v", d.Name, mm)
		}
	}
	require.Equal(t, "1/2", DrillFrom(20).Name)
	require.Equal(t, "1/2", DrillFrom(math.NaN()).Name)
	require.Equal(t, "#60", DrillFrom(1.016).Name)
}
