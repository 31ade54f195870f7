package laws

import (
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
)

// often is how many times a found job is judged: the dearer laws are asked of one job in
// 64 at random, so that none is left out of this many.
const often = 640

// What the random jobs once found keeps the laws: each row is what was left of a job
// when all that did not matter was taken out, and says what it broke.
func TestFoundJobs(t *testing.T) {
	for _, row := range []struct{ file, broke string }{
		{"level-land", "the depth card's plot had no end of ticks, a rounding apart, and filled the memory"},
		{"low-teeth", "between corners the straight floor falls below the middle of the teeth, which the law did not see"},
		{"low-teeth-by-their-backs", "as above, where a back is the floor and comes lowest anywhere along it"},
		{"screw-on-the-centre", "a single screw's hole stood over the centre of a wheel whose bore was not said"},
		{"nearly-round-window", "the polygon that a window is measured by had too few lines for an arc of 292°"},
		{"overhanging-arm", "the narrowest place of an arm was said to be an end, though the waist was narrower"},
		{"hole-by-a-wide-arc", "the polygon that a start hole must be inside of strayed from the arc beside it by more than the hole did"},
	} {
		t.Run(row.file, func(t *testing.T) {
			j, err := job.Load("testdata/" + row.file + ".tipline")
			require.NoError(t, err)
			for seed := range uint64(often) {
				v := judge(j, rand.New(rand.NewPCG(seed, 0)))
				require.Empty(t, v.broken, row.broke)
				require.NotEmpty(t, v.built, "nothing of it can be built, so that it shows nothing")
			}
		})
	}
}
