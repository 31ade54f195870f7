package render

import (
	"math"
	"slices"

	"tipline/geometry"
)

// How waste is hatched in every output: the lines' distance in millimetres, their
// direction, and their pen.
const (
	WasteSpacing = 1.6
	WasteAngle   = geometry.Angle(math.Pi / 4)
	WastePen     = Hair
)

const mostRows = 100_000

// WasteLines returns the lines that hatch the item, nil unless it is waste.
func (it Item) WasteLines() []geometry.Line {
	if it.Fill != Waste {
		return nil
	}
	return Hatch(it.Outlines, WasteSpacing, WasteAngle)
}

// Hatch returns the parallel lines that hatch the inside of the outlines, by the
// even-odd rule and cut exactly at their lines and arcs. One line of the set runs
// through the origin, so that areas hatched apart match; spacing is in
// millimetres and must be positive, else nothing is hatched; nor is an outline
// that would take more than mostRows lines, a hundred times what any sheet needs.
func Hatch(outlines []geometry.Outline, spacing float64, angle geometry.Angle) []geometry.Line {
	if !(spacing > 0) || math.IsInf(spacing, 1) {
		return nil
	}
	rows := make(map[int][]float64)
	for _, o := range outlines {
		if box := o.Bounds(); math.Hypot(box.Width(), box.Height()) > mostRows*spacing {
			continue
		}
		for i := range o.Len() {
			for _, climb := range climbs(o.Segment(i).Rotate(-angle)) {
				climb.cross(rows, spacing)
			}
		}
	}
	return hatchLines(rows, spacing, angle)
}

// hatchLines pairs the crossings of each row and turns the rows back.
func hatchLines(rows map[int][]float64, spacing float64, angle geometry.Angle) []geometry.Line {
	order := make([]int, 0, len(rows))
	for row := range rows {
		order = append(order, row)
	}
	slices.Sort(order)
	var lines []geometry.Line
	for _, row := range order {
		crossings, y := rows[row], float64(row)*spacing
		slices.Sort(crossings)
		for i := 0; i+1 < len(crossings); i += 2 {
			from, to := geometry.Point{X: crossings[i], Y: y}, geometry.Point{X: crossings[i+1], Y: y}
			if from != to {
				lines = append(lines, geometry.Line{From: from.Rotate(angle), To: to.Rotate(angle)})
			}
		}
	}
	return lines
}

// climb is a piece of an outline along which y only rises or only falls: a line,
// or an arc on one side of its centre.
type climb struct {
	low, high geometry.Point
	arc       geometry.Arc
	side      float64 // of the centre: +1 right, −1 left, 0 for a line
}

// climbs cuts a segment where it is level, at the top and bottom of its circle.
func climbs(s geometry.Segment) []climb {
	arc, ok := s.Arc()
	if !ok || Flat(s) {
		return []climb{newClimb(s.From, s.To, arc, 0)}
	}
	start, end := float64(arc.Start), float64(arc.Start+arc.Sweep)
	if start > end {
		start, end = end, start
	}
	ends := []geometry.Point{s.From, s.To}
	if arc.Sweep < 0 {
		ends[0], ends[1] = s.To, s.From
	}
	var pieces []climb
	at, from := start, ends[0]
	for k := math.Floor(start/math.Pi-0.5) + 1; ; k++ {
		level := (k + 0.5) * math.Pi // 12 and 6 o'clock by turns
		if level >= end {
			break
		}
		top := geometry.Point{X: arc.Centre.X, Y: arc.Centre.Y + math.Copysign(arc.Radius, math.Sin(level))}
		pieces = append(pieces, newClimb(from, top, arc, math.Cos((at+level)/2)))
		at, from = level, top
	}
	return append(pieces, newClimb(from, ends[1], arc, math.Cos((at+end)/2)))
}

func newClimb(a, b geometry.Point, arc geometry.Arc, side float64) climb {
	if a.Y > b.Y {
		a, b = b, a
	}
	if side != 0 {
		side = math.Copysign(1, side)
	}
	return climb{a, b, arc, side}
}

// cross notes where the rows meet the climb. A row through the lower end counts
// and one through the upper end does not, so a row through a corner is met once
// where the outline passes and twice or never where it turns back.
func (c climb) cross(rows map[int][]float64, spacing float64) {
	first, last := math.Ceil(c.low.Y/spacing), math.Ceil(c.high.Y/spacing)-1
	for row := first; row <= last; row++ {
		rows[int(row)] = append(rows[int(row)], c.at(row*spacing))
	}
}

// at returns x at height y, between the low and the high end.
func (c climb) at(y float64) float64 {
	if c.side == 0 {
		return c.low.X + (c.high.X-c.low.X)*(y-c.low.Y)/(c.high.Y-c.low.Y)
	}
	h := y - c.arc.Centre.Y
	return c.arc.Centre.X + c.side*math.Sqrt(max(0, c.arc.Radius*c.arc.Radius-h*h))
}
