// Package trial says how many random cases a test takes and from which seed.
package trial

import (
	"math/rand/v2"
	"os"
	"slices"
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

// Some returns all of the cases when TIPLINE_FULL is 1, else n of them drawn from the
// seed, in their order.
func Some[T any](t testing.TB, seed uint64, n int, all []T) []T {
	t.Helper()
	if Count(2) == 2 || n >= len(all) {
		return all
	}
	drawn := Rand(t, seed).Perm(len(all))[:n]
	slices.Sort(drawn)
	some := make([]T, n)
	for i, at := range drawn {
		some[i] = all[at]
	}
	return some
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
