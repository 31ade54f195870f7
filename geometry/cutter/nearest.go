package cutter

import (
	"cmp"
	"math"
	"slices"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// How the infeed that comes nearest is sought: over a range, first at steps, then
// closed in on between two of them.
const (
	infeedSteps = 24
	infeedNear  = 1e-3     // as a share of a step
	infeedLooks = 5        // of the steps that seem best, looked at all along
	roughPlaces = 10       // along each piece while seeking
	roughNear   = 1.0 / 64 // as a share of the way from one of them to the next
)

// asGood is by how much in mm another infeed must come nearer than the one that
// was set: a tenth of what a bit can be ground to.
const asGood = 1e-4

// nearest returns the infeed at which the greatest deviation is least, and what
// it is there. A flank that lies at an angle to the infeed is put right by feeding
// up to its deviation over the sine of that angle, so that eight times the
// deviation reaches those at 7° and more; nearer the infeed's own direction
// feeding hardly moves it.
func (k comparison) nearest(set Deviation) (infeed float64, off Deviation) {
	d := k.bit.Infeed
	deepest := k.bit.TouchHeight - k.bit.edge().touch(k.bit.SetOver, shallowestCut*k.bit.TipRadius)
	reach := 8 * math.Abs(set.Off)
	least, most := math.Max(d-reach, d/infeedSteps), math.Min(d+reach, deepest)
	if reach < asGood || most <= least {
		return d, set
	}
	rough, step := k.rough(most), (most-least)/infeedSteps
	var steps [infeedSteps + 1]tried
	for i := range steps {
		at := least + float64(i)*step
		steps[i] = tried{at, rough(at)}
	}
	slices.SortFunc(steps[:], func(a, b tried) int { return cmp.Compare(a.off, b.off) })
	at := steps[0].infeed
	closed := seek.Top(math.Max(at-step, least), math.Min(at+step, most), infeedNear*step, func(d float64) float64 { return -rough(d) })
	infeed, off = d, set
	for _, t := range append(steps[:infeedLooks:infeedLooks], tried{infeed: closed}) {
		if w := k.worst(t.infeed); math.Abs(w.Off) < math.Abs(off.Off)-asGood {
			infeed, off = t.infeed, w
		}
	}
	return infeed, off
}

// tried is an infeed and its greatest deviation as far as it was looked for.
type tried struct{ infeed, off float64 }

// rough returns the greatest deviation over infeed, at a few places only, for
// infeeds as far as the deepest.
func (k comparison) rough(deepest float64) func(infeed float64) float64 {
	wanted := k.flanks.run()
	bit := k.bit.tipToTip(k.bit.TouchHeight - deepest).run()
	return func(infeed float64) float64 {
		lift, most := k.lift(infeed), 0.0
		for _, p := range wanted {
			most = max(most, math.Abs(k.atFlank(p, lift)))
		}
		size := k.sizeAtBit(infeed)
		before := -1.0
		for i, q := range bit {
			v := size(q)
			if i > 0 && (v < 0) != (before < 0) {
				brink(0, 1, roughNear, func(t float64) float64 {
					v := size(bit[i-1].Toward(q, t))
					most = max(most, v)
					return v
				})
			}
			most, before = max(most, v), v
		}
		return most
	}
}

// sizeAtBit returns the deviation's size over the places of the bit's edge at an
// infeed, −1 where none counts: outside the blank and by the floor.
func (k comparison) sizeAtBit(infeed float64) func(geometry.Point) float64 {
	lift := k.lift(infeed)
	centre := geometry.Point{X: k.bit.SetOver, Y: infeed - k.bit.TouchHeight}
	return func(q geometry.Point) float64 {
		if out := q.Sub(centre); out.Dot(out) > k.bit.TipRadius*k.bit.TipRadius {
			return -1
		}
		v, counts := k.atBit(q, lift)
		if !counts {
			return -1
		}
		return math.Abs(v)
	}
}

// run returns a few points along every piece.
func (s sweep) run() []geometry.Point {
	points := make([]geometry.Point, 0, len(s)*(roughPlaces+1))
	for _, g := range s {
		for i := range roughPlaces + 1 {
			points = append(points, g.At(float64(i)/roughPlaces))
		}
	}
	return points
}
