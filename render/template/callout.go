package template

import (
	"sort"

	"tipline/geometry"
	"tipline/render"
)

// callout is a note in the column left or right of an enlargement, led to the
// place it speaks of.
type callout struct {
	at       geometry.Point // on the paper
	right    bool
	text     string
	quantity geometry.Quantity
	ink      render.Ink
}

// call adds a callout on the side of the paper where its place lies nearer.
func (e *enlargement) call(at geometry.Point, q geometry.Quantity, ink render.Ink, text string) {
	right := at.X > e.box().Centre().X
	e.notes = append(e.notes, callout{at, right, text, q, ink})
}

// drawCallouts draws both columns; notes keep the order of their places from the
// top and stand clear of each other.
func (e *enlargement) drawCallouts() {
	for _, right := range []bool{false, true} {
		var column []callout
		for _, n := range e.notes {
			if n.right == right {
				column = append(column, n)
			}
		}
		sort.SliceStable(column, func(i, j int) bool { return column[i].at.Y > column[j].at.Y })
		heights := spread(column)
		for i, n := range column {
			e.drawCallout(n, heights[i])
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

// drawCallout writes a note at that height and leads it to its place.
func (e *enlargement) drawCallout(n callout, height float64) {
	x, side, align := e.box().Min.X-columnPast, -1.0, render.Right
	if n.right {
		x, side, align = e.box().Max.X+columnPast, 1, render.Left
	}
	leader := Stroke{Layer: render.LayerDimensions, Quantity: n.quantity, Pen: render.Hair, Ink: n.ink}
	edge := geometry.Point{X: x - 1.2*side, Y: height}
	elbow := geometry.Point{X: x - 4*side, Y: height}
	e.Line(leader, geometry.Line{From: edge, To: elbow}, geometry.Line{From: elbow, To: n.at})
	e.Write(Stroke{Layer: render.LayerText, Quantity: n.quantity, Ink: n.ink}, render.Text{
		At: geometry.Point{X: x, Y: height}, Height: 2.5, Align: align, Centred: true, String: n.text,
	})
}
