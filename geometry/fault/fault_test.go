package fault

import (
	"errors"
	"sync/atomic"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestAFaultSaysWhatAndWhere(t *testing.T) {
	require.Nil(t, Caught(func() {}))
	var none []int
	f := Caught(func() { none[3]++ })
	require.Regexp(t, `^runtime error: index out of range \[3\] with length 0 \(fault/fault_test\.go:\d+\)$`, f.String())
	f = Caught(func() { panic(errors.New("two\n lines")) })
	require.Regexp(t, `^two lines \(fault/fault_test\.go:\d+\)$`, f.String())
	require.Same(t, f, Caught(func() { panic(f) }))
}

// The fault of one of several is caught where they were asked for; the others are done.
func TestAFaultBesideOthers(t *testing.T) {
	for _, bad := range []int{0, 1, 4} {
		var done atomic.Int64
		f := Caught(func() {
			Each(5, func(i int) {
				if i == bad {
					panic("one fails")
				}
				done.Add(1)
			})
		})
		require.NotNil(t, f)
		require.Equal(t, "one fails", f.What)
		require.EqualValues(t, 4, done.Load())
	}
	Each(0, func(int) { t.Error("there is nothing to do") })
}

func TestAllAreDoneOnce(t *testing.T) {
	for _, n := range []int{0, 1, 2, 1000} {
		done := make([]atomic.Int64, n)
		All(n, func(i int) { done[i].Add(1) })
		for i := range done {
			require.EqualValues(t, 1, done[i].Load(), "%d of %d", i, n)
		}
	}
	f := Caught(func() {
		All(1000, func(i int) {
			if i == 500 {
				panic("one of many")
			}
		})
	})
	require.NotNil(t, f)
	require.Equal(t, "one of many", f.What)
}
