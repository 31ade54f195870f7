package sheet

import (
	"tipline/geometry"
)

func chainOf(l geometry.Line) geometry.Chain { return geometry.ChainOf(l.Segment()) }

// dashed returns the dashes of n segments that follow each other: lengths are those
// of marks and gaps by turns, in millimetres, a mark first. Marks end where a
// segment does and go on with the next.
func dashed(n int, segment func(int) geometry.Segment, lengths []float64) []geometry.Chain {
	var chains []geometry.Chain
	at, left := 0, lengths[0]
	for i := range n {
		s := segment(i)
		whole := s.Length()
		for from := 0.0; whole-from > sameLength; {
			to := min(whole, from+left)
			if at%2 == 0 {
				chains = append(chains, geometry.ChainOf(s.Part(from/whole, to/whole)))
			}
			if left -= to - from; left <= sameLength {
				at = (at + 1) % len(lengths)
				left = lengths[at]
			}
			from = to
		}
	}
	return chains
}

// sameLength is the length in millimetres below which there is no dash to draw:
// coordinates agree to it inside the program.
const sameLength = 1e-9
