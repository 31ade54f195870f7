package template

import (
	"math"
	"slices"
	"sort"

	"tipline/geometry"
)

// Edges returns the four edges of a box.
func Edges(box geometry.Box) []geometry.Line {
	c := box.Corners()
	return []geometry.Line{{From: c[0], To: c[1]}, {From: c[1], To: c[2]}, {From: c[2], To: c[3]}, {From: c[3], To: c[0]}}
}

// Split cuts a segment wherever it meets one of the lines.
func Split(s geometry.Segment, lines []geometry.Line) []geometry.Segment {
	cuts := []float64{0, 1}
	for _, l := range lines {
		for _, m := range geometry.Meet(s, l.Segment()) {
			cuts = append(cuts, min(max(m.S, 0), 1))
		}
	}
	return parts(s, cuts)
}

// parts returns the pieces of a segment between shares of its length.
func parts(s geometry.Segment, cuts []float64) []geometry.Segment {
	sort.Float64s(cuts)
	var pieces []geometry.Segment
	for i := 1; i < len(cuts); i++ {
		if cuts[i] > cuts[i-1] {
			pieces = append(pieces, s.Part(cuts[i-1], cuts[i]))
		}
	}
	return pieces
}

// splitBy cuts a segment wherever it meets an outline.
func splitBy(s geometry.Segment, o geometry.Outline) []geometry.Segment {
	cuts := []float64{0, 1}
	for i := range o.Len() {
		for _, m := range geometry.Meet(s, o.Segment(i)) {
			cuts = append(cuts, min(max(m.S, 0), 1))
		}
	}
	return parts(s, cuts)
}

// ClipOutline cuts an outline to the box, one edge after another; where it
// leaves and comes back it runs along the edge. False when nothing is left.
func ClipOutline(o geometry.Outline, box geometry.Box) (geometry.Outline, bool) {
	far := 2 * (box.Width() + box.Height() + o.Bounds().Width() + o.Bounds().Height())
	for _, e := range Edges(box) {
		along := e.To.Sub(e.From).Times(far / e.From.Dist(e.To))
		line := geometry.Line{From: e.From.Sub(along), To: e.To.Add(along)}
		var vs []geometry.Vertex
		for i := range o.Len() {
			for _, part := range left(o.Segment(i), line) {
				if n := len(vs); n > 0 && Same(vs[n-1].Point, part.From) {
					vs = vs[:n-1]
				}
				vs = append(vs, geometry.Vertex{Point: part.From, Bulge: part.Bulge, Quantity: part.Quantity}, geometry.Vertex{Point: part.To})
			}
		}
		if n := len(vs); n > 1 && Same(vs[n-1].Point, vs[0].Point) {
			vs = vs[:n-1]
		}
		next, err := geometry.NewOutline(vs)
		if err != nil {
			return geometry.Outline{}, false
		}
		o = next
	}
	return o, true
}

// left returns the parts of a segment to the left of a line, which ends beyond it.
func left(s geometry.Segment, line geometry.Line) []geometry.Segment {
	least, most := sides(s.Bounds(), line)
	if most < 0 {
		return nil
	}
	if least >= 0 {
		return []geometry.Segment{s}
	}
	return slices.DeleteFunc(Split(s, []geometry.Line{line}), func(part geometry.Segment) bool { return side(part.At(0.5), line) < 0 })
}

// side is positive left of a line.
func side(p geometry.Point, line geometry.Line) float64 {
	return line.To.Sub(line.From).Cross(p.Sub(line.From))
}

// sides returns between what a box's points lie beside a line.
func sides(b geometry.Box, line geometry.Line) (least, most float64) {
	least, most = math.Inf(1), math.Inf(-1)
	for _, corner := range b.Corners() {
		s := side(corner, line)
		least, most = min(least, s), max(most, s)
	}
	return least, most
}

// sameWithin is the distance below which two ends are one point: coordinates agree
// to it inside the program.
const sameWithin = 1e-9

// Same reports whether two ends are one point.
func Same(p, q geometry.Point) bool { return p.Dist(q) <= sameWithin }
