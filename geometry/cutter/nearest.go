package cutter

import (
	"math"

	"tipline/geometry"
)

// How the infeed that comes nearest is sought: over a range, first at steps, then
// closed in on to a share of 0.618 to the power of infeedCloser.
const (
	infeedSteps  = 24
	infeedCloser = 16
	roughPlaces  = 10 // along each piece while seeking
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
	rough := k.rough(most)
	step := (most - least) / infeedSteps
	at, lowest := d, rough(d)
	for i := range infeedSteps + 1 {
		if v := rough(least + float64(i)*step); v < lowest {
			at, lowest = least+float64(i)*step, v
		}
	}
	closed := golden(math.Max(at-step, least), math.Min(at+step, most), infeedCloser, func(d float64) float64 { return -rough(d) })
	infeed, off = d, set
	for _, d := range [2]float64{at, closed} {
		if w := k.worst(d); math.Abs(w.Off) < math.Abs(off.Off)-asGood {
			infeed, off = d, w
		}
	}
	return infeed, off
}

// rough returns the greatest deviation over infeed, at a few places only, for
// infeeds as far as the deepest.
func (k comparison) rough(deepest float64) func(infeed float64) float64 {
	wanted := k.flanks.run()
	bit := k.bit.tipToTip(k.bit.TouchHeight - deepest).run()
	return func(infeed float64) float64 {
		lift, most := k.lift(infeed), 0.0
		for _, p := range wanted {
			most = math.Max(most, math.Abs(k.atFlank(p, lift)))
		}
		centre := geometry.Point{X: k.bit.SetOver, Y: infeed - k.bit.TouchHeight}
		for _, q := range bit {
			if out := q.Sub(centre); out.Dot(out) > k.bit.TipRadius*k.bit.TipRadius {
				continue
			}
			if v, counts := k.atBit(q, lift); counts {
				most = math.Max(most, math.Abs(v))
			}
		}
		return most
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
