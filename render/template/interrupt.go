package template

import "tipline/geometry"

// textClear is how far a line that is interrupted for a text ends from it.
const textClear = 0.8

// interrupt breaks the sides of the stock, and the lines that dimension them, where a note
// above the form would stand on them.
func (e *enlargement) interrupt() {
	for i, it := range e.Drawing.Items {
		if it.Quantity != "cutter.stock_width" || it.Text != nil {
			continue
		}
		var left []geometry.Chain
		for _, c := range it.Chains {
			left = append(left, e.apartFromTops(c)...)
		}
		e.Drawing.Items[i].Chains = left
	}
}

// apartFromTops returns what is left of a line when the notes above the form are kept
// clear: the line itself where none stands on it.
func (e *enlargement) apartFromTops(c geometry.Chain) []geometry.Chain {
	var pieces []geometry.Segment
	for i := range c.Len() {
		pieces = append(pieces, c.Segment(i))
	}
	struck := false
	for _, top := range e.tops {
		left, cut := outside(pieces, top.Bounds().Grow(textClear))
		pieces, struck = left, struck || cut
	}
	if !struck {
		return []geometry.Chain{c}
	}
	chains := make([]geometry.Chain, len(pieces))
	for i, s := range pieces {
		chains[i] = geometry.ChainOf(s)
	}
	return chains
}

// outside returns the pieces of segments that lie outside a box, and whether any lay
// inside.
func outside(segments []geometry.Segment, box geometry.Box) (left []geometry.Segment, cut bool) {
	for _, s := range segments {
		for _, piece := range Split(s, Edges(box)) {
			if box.Contains(piece.At(0.5)) {
				cut = true
			} else {
				left = append(left, piece)
			}
		}
	}
	return left, cut
}
