package render

import (
	"iter"
	"math"

	"tipline/geometry"
)

// LongestPiece is the most that one piece of an arc turns in a file. One Bézier
// curve for 30° strays 4·10⁻⁷ of the radius outward from the circle, 0.015 µm at
// 40 mm; and there are readers of SVG that draw half a circle 21 µm wide at that
// size and these pieces truly.
const LongestPiece = geometry.Angle(math.Pi / 6)

// flat is the rise of an arc in millimetres under which it is its chord. The
// circle of a flatter one is so large that its centre tells nothing: at this rise
// over a chord of 10 mm, places worked out from the centre are still good to
// 1e-8 mm.
const flat = 1e-7

// Flat reports whether a segment is straight, or an arc that leaves its chord by
// less than 0.0001 µm.
func Flat(s geometry.Segment) bool {
	return math.Abs(s.Bulge)*s.From.Dist(s.To)/2 < flat
}

// Pieces returns a segment cut into equal parts of LongestPiece or less. The ends
// are the segment's own.
func Pieces(s geometry.Segment) iter.Seq[geometry.Segment] {
	return func(yield func(geometry.Segment) bool) {
		const rounding = 1e-9 // of a piece, so that a half circle is six and not seven
		sweep := geometry.Angle(4 * math.Atan(s.Bulge))
		count := math.Ceil(math.Abs(float64(sweep/LongestPiece)) - rounding)
		arc, curved := s.Arc()
		if !curved || count <= 1 {
			yield(s)
			return
		}
		piece := geometry.Segment{To: s.From, Bulge: math.Tan(float64(sweep) / count / 4), Quantity: s.Quantity}
		for i := 1.0; i <= count; i++ {
			piece.From, piece.To = piece.To, s.To
			if i < count {
				piece.To = arc.At(i / count)
			}
			if !yield(piece) {
				return
			}
		}
	}
}
