package template

import (
	"sort"

	"tipline/geometry"
	"tipline/render"
)

// callout is a note in the column left or right of a drawing, led to the place it
// speaks of.
type callout struct {
	at       geometry.Point // on the paper
	right    bool
	text     string
	quantity geometry.Quantity
	ink      render.Ink
}

// dot is the radius of the dot that ends a callout's line.
const dot = 0.3

// callouts are a drawing's notes, in columns that stand past millimetres off a box.
type callouts struct {
	notes []callout
	past  float64
}

// call adds a callout on the side of the box where its place lies nearer.
func (c *callouts) call(box geometry.Box, at geometry.Point, q geometry.Quantity, ink render.Ink, text string) {
	c.notes = append(c.notes, callout{at, at.X > box.Centre().X, text, q, ink})
}

// draw draws both columns; notes keep the order of their places from the top and
// stand clear of each other.
func (c *callouts) draw(b *Board, box geometry.Box) {
	for _, right := range []bool{false, true} {
		var column []callout
		for _, n := range c.notes {
			if n.right == right {
				column = append(column, n)
			}
		}
		sort.SliceStable(column, func(i, j int) bool { return column[i].at.Y > column[j].at.Y })
		heights := spread(column)
		x := box.Min.X - c.past
		if right {
			x = box.Max.X + c.past
		}
		for i, n := range column {
			n.draw(b, geometry.Point{X: x, Y: heights[i]})
		}
	}
}

// spread returns the heights of a column's notes: as near their places as leaves
// calloutGap between them.
func spread(column []callout) []float64 {
	heights := make([]float64, len(column))
	var low, high float64
	for i, n := range column {
		heights[i] = n.at.Y
		if i > 0 {
			heights[i] = min(heights[i], heights[i-1]-calloutGap)
		}
		low, high = min(low, heights[i]-n.at.Y), max(high, heights[i]-n.at.Y)
	}
	for i := range heights {
		heights[i] -= (low + high) / 2
	}
	return heights
}

// draw writes a note at a place of its column and leads it to its own.
func (n callout) draw(b *Board, at geometry.Point) {
	side, align := -1.0, render.Right
	if n.right {
		side, align = 1, render.Left
	}
	leader := Stroke{Layer: render.LayerDimensions, Quantity: n.quantity, Pen: render.Hair, Ink: n.ink}
	elbow := geometry.Point{X: at.X - 4*side, Y: at.Y}
	b.Line(leader, geometry.Line{From: geometry.Point{X: at.X - 1.2*side, Y: at.Y}, To: elbow}, geometry.Line{From: elbow, To: n.at})
	b.Circle(leader, n.at, dot)
	b.Write(Stroke{Layer: render.LayerText, Quantity: n.quantity, Ink: n.ink}, render.Text{
		At: at, Height: 2.5, Align: align, Centred: true, String: n.text,
	})
}
