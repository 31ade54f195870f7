package solve

import (
	"fmt"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/dividing"
)

// usualRatio is the worm ratio of a rotary table taken when none is given:
// common practice, no source.
const usualRatio = 60

// solveDividing works out the indexing of count teeth whose tips stand at a
// radius.
func (t *Tooling) solveDividing(r *reader, d *job.Dividing, count int, tipRadius float64) {
	if d == nil {
		return
	}
	mark := len(r.findings)
	head := dividing.Head{
		Ratio:   r.count("dividing.ratio", d.Ratio, usualRatio),
		Circles: r.counts("dividing.circles", d.Circles),
		Direct:  r.counts("dividing.direct", d.Direct),
	}
	if !r.sound(mark) {
		return
	}
	a, err := head.Divide(count, tipRadius)
	if r.fail("dividing.ratio", err) {
		return
	}
	t.Dividing = &a
	if !a.Exact {
		r.find(Caution, "dividing.circles", "dividing.inexact",
			number("value", a.Error, Micrometre), number("circle", float64(a.Circle), Count))
	}
}

// counts reads a list of whole numbers.
func (r *reader) counts(field geometry.Quantity, vs []job.Value) []int {
	var ns []int
	for i, v := range vs {
		ns = append(ns, r.count(geometry.Quantity(fmt.Sprintf("%s[%d]", field, i)), v, 0))
	}
	return ns
}
