package template

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/render"
)

// How a deviation is drawn: how far from the flank the greatest one stands, in
// millimetres of paper, and the size in millimetres under which there is none to
// draw: half of the micrometre it is written to.
const (
	deviationHigh = 7.0
	noDeviation   = 5e-4
)

// deviation draws how far the flank that the bit leaves stands off the wanted one:
// from each place of the wanted flank a line square to it, enlarged by a round
// number that is named, towards the bit where metal is left on and into the tooth
// where it is missing. The worst place is rung.
func (e *enlargement) deviation(g *cutter.Ground) {
	if math.Abs(g.Worst.Off) < noDeviation {
		e.call(e.worstPlace(g), "cutter.bit", render.Green, e.Say("template.cutterview.no-deviation"))
		return
	}
	k := enlargedBy(deviationHigh / (math.Abs(g.Worst.Off) * e.scale))
	var spines []geometry.Line
	for _, run := range flankRuns(g.Along) {
		tops := make([]geometry.Vertex, len(run))
		for i, d := range run {
			foot := e.at(d.At)
			tops[i].Point = foot.Add(e.offFlank(run, i).Times(d.Off * e.scale * k))
			spines = append(spines, geometry.Line{From: foot, To: tops[i].Point})
		}
		e.outline(tops)
	}
	e.Line(Stroke{Layer: render.LayerDimensions, Quantity: "cutter.bit", Pen: render.Hair, Ink: render.Green}, spines...)
	key := "template.cutterview.left-on"
	if g.Worst.Off < 0 {
		key = "template.cutterview.missing"
	}
	e.mark(g.Worst.At, "cutter.bit", render.Green, e.Say(key,
		"deviation", e.Style.Units.Number(1000*math.Abs(g.Worst.Off), 0), "times", e.Style.Units.Number(k, 0)))
}

// worstPlace returns a place of the flank on the paper to speak of it at.
func (e *enlargement) worstPlace(g *cutter.Ground) geometry.Point {
	if len(g.Along) == 0 {
		return geometry.Point{}
	}
	return e.at(g.Along[len(g.Along)-1].At)
}

// outline draws the line through the ends of a run of deviations.
func (e *enlargement) outline(tops []geometry.Vertex) {
	kept := tops[:0:0]
	for _, v := range tops {
		if n := len(kept); n == 0 || !Same(kept[n-1].Point, v.Point) {
			kept = append(kept, v)
		}
	}
	if chain, err := geometry.NewChain(kept); err == nil {
		e.Open(Stroke{Layer: render.LayerDimensions, Quantity: "cutter.bit", Pen: render.Thin, Ink: render.Green}, chain)
	}
}

// enlargedBy returns the greatest of 1, 2 and 5 times a power of ten that is no more
// than most, at least 1.
func enlargedBy(most float64) float64 {
	if most <= 1 {
		return 1
	}
	decade := math.Pow(10, math.Floor(math.Log10(most)))
	for _, k := range []float64{5, 2} {
		if k*decade <= most {
			return k * decade
		}
	}
	return decade
}

// flankRuns cuts the deviations where the flanks are apart: at the floor between
// them, and where a piece begins again at a corner.
func flankRuns(all []cutter.Deviation) [][]cutter.Deviation {
	var runs [][]cutter.Deviation
	from := 0
	for i := 1; i <= len(all); i++ {
		if i == len(all) || i > from+1 && apart(all[i-2:i+1]) {
			runs = append(runs, all[from:i])
			from = i
		}
	}
	return runs
}

// apart reports whether the last of three places lies far further from the middle
// one than that from the first, or on it: a piece's places stand evenly.
func apart(three []cutter.Deviation) bool {
	before, after := three[1].At.Dist(three[0].At), three[2].At.Dist(three[1].At)
	return after > 2*before || after < before/2
}

// offFlank returns the unit vector on the paper that points from place i of a run
// square to the flank, into the bit, which lies to the left of its edge.
func (e *enlargement) offFlank(run []cutter.Deviation, i int) geometry.Point {
	way := e.at(run[min(i+1, len(run)-1)].At).Sub(e.at(run[max(i-1, 0)].At))
	if way.Norm() == 0 {
		return geometry.Point{}
	}
	in := way.Left()
	if e.mirror {
		in = in.Times(-1)
	}
	return in.Times(1 / in.Norm())
}
