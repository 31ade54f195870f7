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
	r.dividingFindings(a)
}

// dividingFindings says that no circle divides exactly, and how two moves would come
// nearer.
func (r *reader) dividingFindings(a dividing.Answer) {
	if !a.Exact {
		r.find(Caution, "dividing.circles", "dividing.inexact",
			number("value", a.Error, Micrometre), number("circle", float64(a.Circle), Count))
	}
	if c := a.Compound; c != nil && c.Error < a.Error {
		code := "dividing.compound"
		if c.Exact {
			code = "dividing.compound-exact"
		}
		r.find(Note, "dividing.circles", code, number("turns", float64(c.Turns), Count),
			number("holes", float64(c.First.Holes), Count), number("circle", float64(c.First.Circle), Count),
			number("then", float64(c.Second.Holes), Count), number("other", float64(c.Second.Circle), Count),
			number("value", c.Error, Micrometre))
		if c.Every > 1 {
			r.find(Note, "dividing.circles", "dividing.compound-every", number("every", float64(c.Every), Count))
		}
	}
}

// oneWay is what every maker must mind at the crank, said once of a whole job; and
// what comes with a second move that goes backwards.
func oneWay(answers []*dividing.Answer) []Finding {
	var fs []Finding
	said := map[string]bool{}
	for _, a := range answers {
		for _, key := range a.Advice() {
			if !said[key] {
				said[key], fs = true, append(fs, Finding{Note, "", "", key, nil})
			}
		}
	}
	return fs
}

// counts reads a list of whole numbers.
func (r *reader) counts(field geometry.Quantity, vs []job.Value) []int {
	var ns []int
	for i, v := range vs {
		ns = append(ns, r.count(geometry.Quantity(fmt.Sprintf("%s[%d]", field, i)), v, 0))
	}
	return ns
}
