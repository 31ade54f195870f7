package desk

import (
	"tipline/app/solve"
	"tipline/render"
)

// place is where a drawing belongs.
type place struct {
	part string
	step Step
}

// drawn is the last good drawing of a place, and what it was drawn from.
type drawn struct {
	from    solve.Part
	units   string
	turn    float64 // of a pair
	drawing *render.Drawing
	stale   bool // the part has since become one that cannot be drawn
}

// Drawing returns the present step's drawing of the present part, and whether it
// is an older one because what was typed since cannot be drawn. It is nil when
// there never was one. On paper it is the present page, and while a photograph is
// being picked on that photograph.
func (d *Desk) Drawing() (drawing *render.Drawing, stale bool) {
	switch {
	case d.at() == Paper:
		return d.pageDrawing()
	case d.picking != nil:
		return d.picking.drawing, false
	}
	return d.drawn(d.part, d.at())
}

// look is what a part's small picture is made from.
type look struct {
	part  solve.Part
	units string
}

// Pictured returns what the small picture of a part is made from: while that is
// equal the picture is the same.
func (d *Desk) Pictured(part string) any { return look{d.of(part), d.Job().Units} }

// Picture returns the small picture of a part, nil when there is none.
func (d *Desk) Picture(part string) *render.Drawing {
	k := d.kindOf(part)
	if was := d.last[place{part, Depthing}].drawing; part == d.part && k == pair && was != nil {
		return was
	}
	drawing, _ := d.drawn(part, shows(stepsOf[k]))
	if k == train {
		return d.circles(part, drawing)
	}
	return drawing
}

// circles returns the picture of a train: its pitch circles as lines that a small
// picture keeps.
func (d *Desk) circles(part string, view *render.Drawing) *render.Drawing {
	if view == nil {
		return nil
	}
	at, of := place{part, pictured}, d.of(part)
	if was := d.last[at]; was.from == of {
		return was.drawing
	}
	small := &render.Drawing{Scale: view.Scale}
	for _, it := range view.Items {
		if it.Layer == render.LayerPitchCircle && len(it.Outlines) > 0 {
			it.Layer, it.Pen = render.LayerTeeth, render.Thin
			small.Add(it)
		}
	}
	d.last[at] = drawn{from: of, drawing: small}
	return small
}

// pictured stands for a step where there is a picture of its own.
const pictured Step = "picture"

func (d *Desk) drawn(part string, step Step) (*render.Drawing, bool) {
	p, at := d.of(part), place{part, step}
	if p == nil {
		return nil, false
	}
	now := drawn{from: p, units: d.Job().Units}
	if part == d.part {
		now.turn = d.turn
	}
	was := d.last[at]
	if sameMesh(was.from, now.from) && was.units == now.units && was.turn == now.turn {
		return was.drawing, was.stale
	}
	var err error
	if now.drawing, err = d.drawPart(p, step, d.Style()); err != nil || lacking(p, step) && was.drawing != nil {
		now.drawing, now.stale = was.drawing, was.drawing != nil
	}
	d.last[at] = now
	return now.drawing, now.stale
}

// sameMesh reports whether two parts are the same, or pairs that mesh as each other
// do: then one drawing serves both.
func sameMesh(a, b solve.Part) bool {
	p, isPair := a.(*solve.Pair)
	q, arePairs := b.(*solve.Pair)
	return a == b || isPair && arePairs && p.Turn != nil && p.Turn == q.Turn
}

// lacking reports whether a part lacks what the step is about, though the rest of it can
// be drawn.
func lacking(p solve.Part, step Step) bool {
	if c := cutterIn(p); step == Cutter && c != nil && c.Bit != nil && len(c.Bit.Chain) > 0 {
		return tooling(p).Ground == nil
	}
	w, ok := p.(*solve.Wheel)
	if !ok {
		return false
	}
	uncrossed := w.Part.Crossing != nil && w.Crossing == nil
	unmounted := w.Part.Mount != nil && w.Part.Mount.Screws.Text != "" && w.Mounting == nil
	return uncrossed && (step == Crossing || step == Mounting) || unmounted && step == Mounting
}
