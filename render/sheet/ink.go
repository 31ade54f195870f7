package sheet

import (
	"math"

	"tipline/geometry"
	"tipline/render"
)

// inkCell is the grid in millimetres on which it is counted where a drawing has lines and
// texts.
const inkCell = 0.5

// ink tells how many cells of a box hold lines or texts of a drawing, by the sums of all
// cells to the left of each and below.
type ink struct {
	corner geometry.Point
	across int // cells, and one more
	sums   []int
}

// inkOf counts what of a drawing lies in a box. What is only filled does not count.
func inkOf(d *render.Drawing, box geometry.Box) ink {
	k := ink{corner: box.Min, across: int(math.Ceil(box.Width()/inkCell)) + 1}
	k.sums = make([]int, k.across*(int(math.Ceil(box.Height()/inkCell))+1))
	for _, it := range d.Items {
		if it.Text != nil {
			k.fill(it.Text.Bounds())
		}
		if it.Pen == render.NoPen {
			continue
		}
		for _, o := range it.Outlines {
			k.line(o.Len(), o.Segment)
		}
		for _, c := range it.Chains {
			k.line(c.Len(), c.Segment)
		}
	}
	for i := range k.sums {
		if i >= k.across && i%k.across > 0 {
			k.sums[i] += k.sums[i-1] + k.sums[i-k.across] - k.sums[i-k.across-1]
		}
	}
	return k
}

// cell returns the column and row, from 1, of the cell in which a point lies.
func (k ink) cell(p geometry.Point) (column, row int) {
	at := p.Sub(k.corner).Times(1 / inkCell)
	column = min(max(int(math.Floor(at.X))+1, 1), k.across-1)
	return column, min(max(int(math.Floor(at.Y))+1, 1), len(k.sums)/k.across-1)
}

// fill marks every cell of a box.
func (k ink) fill(box geometry.Box) {
	left, low := k.cell(box.Min)
	right, high := k.cell(box.Max)
	for row := low; row <= high; row++ {
		for column := left; column <= right; column++ {
			k.sums[row*k.across+column] = 1
		}
	}
}

// line marks the cells that n segments run through.
func (k ink) line(n int, segment func(int) geometry.Segment) {
	for i := range n {
		s := segment(i)
		steps := math.Ceil(2 * s.Length() / inkCell)
		for j := 0.0; j <= steps; j++ {
			column, row := k.cell(s.At(j / max(1, steps)))
			k.sums[row*k.across+column] = 1
		}
	}
}

// under returns how many cells are marked where a register mark stands.
func (k ink) under(at geometry.Point) int {
	reach := geometry.Point{X: registerReach, Y: registerReach}
	left, low := k.cell(at.Sub(reach))
	right, high := k.cell(at.Add(reach))
	upper := func(row, column int) int { return k.sums[row*k.across+column] }
	return upper(high, right) - upper(low-1, right) - upper(high, left-1) + upper(low-1, left-1)
}
