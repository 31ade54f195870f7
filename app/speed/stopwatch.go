//go:build geos

package main

import (
	"slices"
	"time"
)

// long is how long one turn of one side lasts at least, so that the clock's own grain
// and one collection of garbage count for little.
const long = 30 * time.Millisecond

// beside runs two things by turns, so that what else the machine does falls on both, and
// returns the median time that each takes.
func beside(turns int, ours, theirs func()) (time.Duration, time.Duration) {
	many := [2]int{calls(ours), calls(theirs)}
	var took [2][]time.Duration
	for range turns {
		for side, run := range [2]func(){ours, theirs} {
			took[side] = append(took[side], timed(many[side], run))
		}
	}
	return median(took[0]), median(took[1])
}

// calls returns how many calls last long, after one that warms up.
func calls(run func()) int {
	run()
	return 1 + int(long/max(timed(1, run), 1))
}

// timed returns what one of many calls takes.
func timed(many int, run func()) time.Duration {
	begun := time.Now()
	for range many {
		run()
	}
	return time.Since(begun) / time.Duration(many)
}

// median returns the middle of some times.
func median(took []time.Duration) time.Duration {
	slices.Sort(took)
	return took[len(took)/2]
}
