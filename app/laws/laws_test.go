package laws

import (
	"math/rand/v2"
	"runtime"
	"runtime/debug"
	"strconv"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// jobs is how many random jobs the full run takes, seed from which they come, and
// every how many of them -v tells how far the run is.
const (
	jobs = 1_000_000
	seed = 1871
	told = 50_000
)

// Every job, however senseless, is solved into sound geometry or refused with a field
// and a reason. A failure tells the number of the job in the run and shows the job:
// what of it failed is kept in testdata, where TestFoundJobs looks at it for good.
func TestEveryJobKeepsTheLaws(t *testing.T) {
	// A job leaves little behind: the memory is swept once for many of them.
	before := debug.SetGCPercent(800)
	t.Cleanup(func() { debug.SetGCPercent(before) })
	run := newRun()
	run.over(t, 0, trial.Count(jobs))
	for _, kind := range []string{
		"cycloidal", "lantern driver", "measured", "pointed", "ratchet", "clockwise", "anticlockwise", "straight", "swept",
		"waisted", "on tips", "equal", "cut", "relief", "bit", "dividing", "screws", "leaves", "lantern", "pair", "train", "stack",
	} {
		require.Positive(t, run.built[kind], "of %q none could be built", kind)
	}
	wheels := run.built["clockwise"] + run.built["anticlockwise"]
	crossed := run.built["straight"] + run.built["swept"] + run.built["waisted"]
	require.Greater(t, 2*wheels, trial.Count(jobs), "most wheels can be made")
	require.Greater(t, 4*crossed, wheels, "many can be crossed")
}

// run is many jobs looked at, and how often something of each kind was built.
type run struct {
	mutex sync.Mutex
	built map[string]int
}

func newRun() *run { return &run{built: map[string]int{}} }

// over looks at the jobs from one number to another on every processor, and stops
// where a few have failed.
func (r *run) over(t *testing.T, from, to int) {
	var next, done, failed atomic.Int64
	next.Store(int64(from))
	var all sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		all.Go(func() {
			for n := int(next.Add(1)) - 1; n < to && failed.Load() < 5; n = int(next.Add(1)) - 1 {
				if v := r.look(uint64(n)); len(v.broken) > 0 {
					failed.Add(1)
					t.Errorf("job %d of seed %d:\n%v", n, uint64(seed), v)
				}
				if so := done.Add(1); so%told == 0 {
					t.Logf("%d jobs of seed %d looked at", so, uint64(seed))
				}
			}
		})
	}
	all.Wait()
}

// look makes one job of the run and judges it.
func (r *run) look(number uint64) *verdict {
	m := makerOf(seed, number)
	v := judge(m.job(), rand.New(rand.NewPCG(seed+1, number)))
	r.mutex.Lock()
	defer r.mutex.Unlock()
	for _, kind := range v.built {
		r.built[kind]++
	}
	return v
}

// wholeNumber reads a count as it was typed, 0 where it is none.
func wholeNumber(text string) int {
	n, err := strconv.Atoi(strings.TrimSpace(text))
	if err != nil {
		return 0
	}
	return n
}

func BenchmarkJobs(b *testing.B) {
	r := newRun()
	n := uint64(0)
	for b.Loop() {
		r.look(n)
		n++
	}
}
