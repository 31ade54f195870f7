package desk

import (
	"tipline/app/solve"
	"tipline/render"
	"tipline/render/template"
)

// place is where a drawing belongs.
type place struct {
	part string
	step Step
}

// drawn is the last good drawing of a place, and the wheel it was drawn from.
type drawn struct {
	from    *solve.Wheel
	units   string
	drawing *render.Drawing
	stale   bool // the wheel has since become one that cannot be drawn
}

// Drawing returns the present step's drawing of the present part, and whether it
// is an older one because what was typed since cannot be drawn. It is nil when
// there never was one. On paper it is the present page.
func (d *Desk) Drawing() (drawing *render.Drawing, stale bool) {
	if d.step == Paper {
		return d.pageDrawing()
	}
	return d.drawn(d.part, d.step)
}

// Picture returns the small picture of a part, nil when there is none.
func (d *Desk) Picture(part string) *render.Drawing {
	drawing, _ := d.drawn(part, Crossing)
	return drawing
}

func (d *Desk) drawn(part string, step Step) (*render.Drawing, bool) {
	w, at := d.result.Wheel(part), place{part, step}
	if w == nil {
		return nil, false
	}
	was := d.last[at]
	if was.from == w && was.units == d.Job().Units {
		return was.drawing, was.stale
	}
	now := drawn{from: w, units: d.Job().Units}
	var err error
	if now.drawing, err = draw(w, step, d.Style()); err != nil || lacking(w, step) && was.drawing != nil {
		now.drawing, now.stale = was.drawing, was.drawing != nil
	}
	d.last[at] = now
	return now.drawing, now.stale
}

func draw(w *solve.Wheel, step Step, s template.Style) (*render.Drawing, error) {
	t := w.Template()
	switch step {
	case Blank:
		return template.Blank(t, s)
	case Cutter:
		return template.CutterView(t, s)
	case Dividing:
		return template.DividingView(t, s)
	}
	return template.Crossing(t, s)
}

// lacking reports whether a wheel lacks what the step is about, though the rest
// of it can be drawn.
func lacking(w *solve.Wheel, step Step) bool {
	return step == Crossing && w.Part.Crossing != nil && w.Crossing == nil
}
