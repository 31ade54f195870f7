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
		x := box.Min.X - c.past
		if right {
			x = box.Max.X + c.past
		}
		heights := cleared(b, column, x, spread(column))
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

// mostShift is how far a column of notes is moved up or down, in millimetres, to
// stand clear of what is written already.
const mostShift = 40

// cleared moves a column's heights, together and as little as will do, so that no
// note stands on a text of the drawing.
func cleared(b *Board, column []callout, x float64, heights []float64) []float64 {
	var written, notes []geometry.Box
	for _, it := range b.Drawing.Items {
		if it.Text != nil {
			written = append(written, it.Text.Bounds().Grow(0.5))
		}
	}
	for i, n := range column {
		notes = append(notes, n.lettering(geometry.Point{X: x, Y: heights[i]}).Bounds())
	}
	moved := make([]float64, len(heights))
	for step := range 2 * mostShift {
		by := float64((step + 1) / 2)
		if step%2 == 1 {
			by = -by
		}
		free := true
		for i, note := range notes {
			moved[i] = heights[i] + by
			up := geometry.Point{Y: by}
			free = free && standsClear(written, geometry.Box{Min: note.Min.Add(up), Max: note.Max.Add(up)})
		}
		if free {
			return moved
		}
	}
	return heights
}

// standsClear reports whether none of the boxes reaches into a box.
func standsClear(written []geometry.Box, box geometry.Box) bool {
	for _, other := range written {
		if other.Touches(box) {
			return false
		}
	}
	return true
}

// lettering returns what is written of a note at a place of its column.
func (n callout) lettering(at geometry.Point) render.Text {
	t := render.Text{At: at, Height: 2.5, Align: render.Right, Centred: true, String: n.text}
	if n.right {
		t.Align = render.Left
	}
	return t
}

// draw writes a note at a place of its column and leads it to its own.
func (n callout) draw(b *Board, at geometry.Point) {
	side := -1.0
	if n.right {
		side = 1
	}
	leader := Stroke{Layer: render.LayerDimensions, Quantity: n.quantity, Pen: render.Hair, Ink: n.ink}
	elbow := geometry.Point{X: at.X - 4*side, Y: at.Y}
	b.Line(leader, geometry.Line{From: geometry.Point{X: at.X - 1.2*side, Y: at.Y}, To: elbow}, geometry.Line{From: elbow, To: n.at})
	b.Circle(leader, n.at, dot)
	b.Write(Stroke{Layer: render.LayerText, Quantity: n.quantity, Ink: n.ink}, n.lettering(at))
}
