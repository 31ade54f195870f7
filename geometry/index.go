package geometry

import "math"

// index finds the segments near a place without looking at all of them: a grid of
// square cells, each with the numbers of the segments whose boxes touch it.
type index struct {
	boxes   []Box
	origin  Point
	cell    float64
	columns int
	rows    int
	cells   [][]int32
	seen    []int32 // the query in which a segment was last found
	query   int32
}

// fewSegments is up to how many segments looking at all of them is quicker.
const fewSegments = 24

func newIndex(boxes []Box) *index {
	x := &index{boxes: boxes}
	if len(boxes) <= fewSegments {
		return x
	}
	all := NoBox()
	for _, b := range boxes {
		all = all.Union(b)
	}
	x.origin = all.Min
	x.cell = math.Max(math.Sqrt(all.Width()*all.Height()/float64(len(boxes))), (all.Width()+all.Height())/float64(len(boxes)))
	x.columns = int(all.Width()/x.cell) + 1
	x.rows = int(all.Height()/x.cell) + 1
	x.cells = make([][]int32, x.columns*x.rows)
	x.seen = make([]int32, len(boxes))
	for i, b := range boxes {
		x.each(b, func(c int) { x.cells[c] = append(x.cells[c], int32(i)) })
	}
	return x
}

// each calls f with every cell the box touches.
func (x *index) each(b Box, f func(cell int)) {
	c0, c1 := x.column(b.Min.X), x.column(b.Max.X)
	r0, r1 := x.row(b.Min.Y), x.row(b.Max.Y)
	for r := r0; r <= r1; r++ {
		for c := c0; c <= c1; c++ {
			f(r*x.columns + c)
		}
	}
}

func (x *index) column(v float64) int {
	return min(max(int((v-x.origin.X)/x.cell), 0), x.columns-1)
}

func (x *index) row(v float64) int {
	return min(max(int((v-x.origin.Y)/x.cell), 0), x.rows-1)
}

// near calls f with the number of each segment whose box touches b, until f
// returns false.
func (x *index) near(b Box, f func(i int) bool) {
	if x.cells == nil {
		for i, s := range x.boxes {
			if s.Touches(b) && !f(i) {
				return
			}
		}
		return
	}
	x.query++
	going := true
	x.each(b, func(cell int) {
		for _, i := range x.cells[cell] {
			if !going || x.seen[i] == x.query {
				continue
			}
			x.seen[i] = x.query
			if x.boxes[i].Touches(b) {
				going = f(int(i))
			}
		}
	})
}

// boxesOf returns the box of each segment, grown by d.
func boxesOf(segments []Segment, d float64) []Box {
	boxes := make([]Box, len(segments))
	for i, s := range segments {
		boxes[i] = s.Bounds().Grow(d)
	}
	return boxes
}

// Segments returns the outline's segments in order.
func (o Outline) Segments() []Segment {
	ss := make([]Segment, o.Len())
	for i := range ss {
		ss[i] = o.Segment(i)
	}
	return ss
}
