package cutter

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// comparison holds the flanks of a wanted cut against what a bit leaves, each in
// its own tool frame.
type comparison struct {
	wanted, bit     Cut
	wantedAt, bitAt ruler
	flanks          sweep // the wanted edge at depth from tip to tip, without the floor
}

// places is at how many places along each piece of an edge the deviation is told.
// Between two of them it is then closed in on, as a share of the piece: to topNear
// about the greatest, which is flat there, to endNear where it ceases to count.
const (
	places  = 16
	topNear = 2e-5
	endNear = 2e-7
)

// newComparison returns the comparison of a wanted cut and a bit's.
func newComparison(wanted, bit Cut) comparison {
	k := comparison{wanted: wanted, bit: bit}
	k.wantedAt = wanted.edge().ruler(func(s geometry.Segment) bool { return !wanted.floor(s) })
	k.bitAt = bit.edge().ruler(func(geometry.Segment) bool { return true })
	for _, s := range wanted.tipToTip(wanted.Height()) {
		if !wanted.floor(s) {
			k.flanks = append(k.flanks, s)
		}
	}
	return k
}

// tipToTip returns the edge of what is cut away with the wheel's centre h below
// the form, in the tool frame.
func (c Cut) tipToTip(h float64) sweep {
	return c.edge().space(c.SetOver, h, c.TipRadius).moved(geometry.Point{X: c.SetOver, Y: -h})
}

// onRoot is how near the root circle, in mm, a piece must run all along to be a
// floor: what a bit can hardly be measured to.
const onRoot = 1e-3

// floor reports whether a piece of the wanted edge is the floor of the space: it
// was made as one, or lies on the root circle.
func (c Cut) floor(g geometry.Segment) bool {
	if g.Quantity == Floor {
		return true
	}
	centre := geometry.Point{X: c.SetOver, Y: -c.Height()}
	for _, t := range [3]float64{0, 0.5, 1} {
		if math.Abs(g.At(t).Dist(centre)-c.RootRadius) > onRoot {
			return false
		}
	}
	return true
}

// lift is how far up the bit's edge lies over the wanted form at an infeed, with
// the wheel's centre in the same place.
func (k comparison) lift(infeed float64) float64 {
	return k.bit.TouchHeight - infeed - k.wanted.Height()
}

// atFlank returns the deviation at a place of the wanted flank.
func (k comparison) atFlank(p geometry.Point, lift float64) float64 {
	p.Y -= lift
	off, _ := k.bitAt.dist(p)
	if k.bitAt.cutAway(p) {
		return -off
	}
	return off
}

// atBit returns the deviation at a place of the bit's edge, and false where the
// wanted floor lies nearer than the flanks.
func (k comparison) atBit(q geometry.Point, lift float64) (float64, bool) {
	q.Y += lift
	off, flank := k.wantedAt.dist(q)
	if k.wantedAt.cutAway(q) {
		return off, flank
	}
	return -off, flank
}

// along returns the deviation at places along the wanted flanks.
func (k comparison) along(lift float64) []Deviation {
	list := make([]Deviation, 0, len(k.flanks)*(places+1))
	for _, s := range k.flanks {
		for i := range places + 1 {
			p := s.At(float64(i) / places)
			list = append(list, Deviation{p, k.atFlank(p, lift)})
		}
	}
	return list
}

// worst returns the greatest deviation at an infeed, by size: of the wanted
// flanks from what the bit leaves, and of what it leaves from the wanted flanks.
func (k comparison) worst(infeed float64) Deviation {
	lift := k.lift(infeed)
	most := greatest(k.flanks, func(p geometry.Point) (float64, bool) { return k.atFlank(p, lift), true })
	left := k.bit.tipToTip(k.bit.TouchHeight - infeed)
	other := greatest(left, func(q geometry.Point) (float64, bool) { return k.atBit(q, lift) })
	if math.Abs(other.Off) > math.Abs(most.Off) {
		other.At.Y += lift
		return other
	}
	return most
}

// greatest returns the greatest deviation along an edge, by size, of those that
// count. It is looked for at places along each piece; then where from one place to
// the next it ceases to count; and about every place that stands out among its
// neighbours, unless it is less than the greatest by more than the way to the
// next place: a distance changes by no more than the way gone.
func greatest(edge sweep, off func(geometry.Point) (float64, bool)) Deviation {
	var most Deviation
	for _, g := range edge {
		sizeAt := func(t float64) float64 {
			p := g.At(t)
			v, counts := off(p)
			if !counts {
				return -1
			}
			if math.Abs(v) > math.Abs(most.Off) {
				most = Deviation{p, v}
			}
			return math.Abs(v)
		}
		var size [places + 1]float64
		for n := range size {
			size[n] = sizeAt(float64(n) / places)
			if n > 0 && (size[n] < 0) != (size[n-1] < 0) {
				brink(float64(n-1)/places, float64(n)/places, endNear, sizeAt)
			}
		}
		for n, v := range size {
			lo, hi := max(n-1, 0), min(n+1, places)
			if v+g.Length()/places > math.Abs(most.Off) && v >= size[lo] && v >= size[hi] {
				sizeAt(seek.Top(float64(lo)/places, float64(hi)/places, topNear, sizeAt))
			}
		}
	}
	return most
}

// brink looks between two places, of which one counts, until as near as asked to
// where that ends.
func brink(from, to, near float64, sizeAt func(float64) float64) {
	counts := sizeAt(from) >= 0
	seek.Last(from, to, near, func(t float64) bool { return (sizeAt(t) >= 0) == counts })
}
