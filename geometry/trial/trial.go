// Package trial says how many random cases a test takes and from which seed.
package trial

import (
	"math/rand/v2"
	"os"
	"testing"
)

// Count returns how many of full cases a test runs: all of them when
// TIPLINE_FULL is 1, else the first 2 %, at least one.
func Count(full int) int {
	if os.Getenv("TIPLINE_FULL") == "1" {
		return full
	}
	return max(1, full*2/100)
}

// Rand returns a source of random numbers from a fixed seed and prints the seed
// when the test fails.
func Rand(t testing.TB, seed uint64) *rand.Rand {
	t.Helper()
	t.Cleanup(func() {
		if t.Failed() {
			t.Logf("seed %d", seed)
		}
	})
	return rand.New(rand.NewPCG(seed, 0))
}
