package seek

import "math"

// Top returns where f, which rises to one greatest value between from and to and
// falls again, has it, within near of it: by golden section, so that each step
// looks at one place more (Kiefer, Sequential Minimax Search for a Maximum, Proc.
// Amer. Math. Soc. 4, 1953, from memory). Near its top a smooth f hardly changes:
// half the digits of a float64 is as near as the place can be told.
func Top(from, to, near float64, f func(float64) float64) float64 {
	low, high := to-(to-from)/math.Phi, from+(to-from)/math.Phi
	atLow, atHigh := f(low), f(high)
	for to-from > near && low < high {
		if atLow >= atHigh {
			to, high, atHigh = high, low, atLow
			low = to - (to-from)/math.Phi
			atLow = f(low)
		} else {
			from, low, atLow = low, high, atHigh
			high = from + (to-from)/math.Phi
			atHigh = f(high)
		}
	}
	return (from + to) / 2
}
