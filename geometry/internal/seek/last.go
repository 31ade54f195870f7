// Package seek narrows down the values at which something ends or is greatest.
package seek

import "math"

// mostHalvings reach the last digit of anything that is not smaller than the span
// it is sought in by sixty powers of ten.
const mostHalvings = 200

// Last returns the last value at which ok holds on the way from holds to fails,
// whichever is the greater: no farther than near from one at which it does not, or
// next to it where near is 0. On the way ok must cease to hold once only; it is not
// asked at either end. Where an end is no number, holds comes back.
func Last(holds, fails, near float64, ok func(float64) bool) float64 {
	for range mostHalvings {
		middle := holds + (fails-holds)/2
		if !(math.Abs(fails-holds) > near) || middle == holds || middle == fails {
			break
		}
		if ok(middle) {
			holds = middle
		} else {
			fails = middle
		}
	}
	return holds
}
