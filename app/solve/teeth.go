package solve

import (
	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/geometry/tooth"
)

// usualStock is the width of bit taken when none is given: 5/16 in, a size of
// tool bit sold everywhere (common practice, no source).
const usualStock = measure.MMPerInch * 5 / 16

// solveTeeth works out the teeth and, where a cutter makes them, the cutter.
func (w *Wheel) solveTeeth(r *reader) {
	t := w.Part.Teeth
	if t == nil {
		r.find(Error, "teeth.form", "finding.missing")
		return
	}
	if !r.need(map[geometry.Quantity]job.Value{"teeth.form": t.Form, "teeth.count": t.Count}) {
		return
	}
	switch r.choice("teeth.form", t.Form, "") {
	case "cycloidal":
		w.solveCycloidal(r, t)
	case "pointed", "ratchet":
		w.solvePointed(r, t)
	case "lantern driver":
		w.solveDriver(r, t)
	case "measured":
		w.solveMeasured(r, t)
	}
}

// trainTeeth reads what every train wheel is made from, and reports whether it can
// be read.
func (r *reader) trainTeeth(t *job.Teeth) (tooth.Cycloidal, bool) {
	mark := len(r.findings)
	r.need(map[geometry.Quantity]job.Value{"teeth.module": t.Module, "teeth.leaves": t.Leaves})
	c := tooth.Cycloidal{
		Count:  r.count("teeth.count", t.Count, 0),
		Module: r.length("teeth.module", t.Module, 0),
		Leaves: r.count("teeth.leaves", t.Leaves, 0),
	}
	return c, r.sound(mark)
}

func (w *Wheel) solveCycloidal(r *reader, t *job.Teeth) {
	c, ok := r.trainTeeth(t)
	if !ok {
		return
	}
	wheel, err := c.Wheel()
	if r.fail("teeth.count", err) {
		return
	}
	w.Teeth, w.Leaves = &wheel, c.Leaves
	w.solveSpaceForm(r, w.Part.Cutter, c.SpaceForm)
}

// solveDriver works out a wheel that drives a lantern pinion.
func (w *Wheel) solveDriver(r *reader, t *job.Teeth) {
	mark := len(r.findings)
	c, _ := r.trainTeeth(t)
	d := tooth.LanternDriver{Count: c.Count, Module: c.Module, Leaves: c.Leaves, Trundle: r.length("teeth.trundle", t.Trundle, 0)}
	if !r.sound(mark) {
		return
	}
	driving, err := d.Drive()
	if r.fail("teeth.count", err) {
		return
	}
	w.Driving = &driving
	w.Teeth, w.Leaves, w.Trundle = &driving.Wheel, c.Leaves, d.TrundleDiameter()
	r.find(Note, "teeth.trundle", "teeth.lantern-contact", number("trundle", d.TrundleDiameter(), FineLength),
		number("contact", driving.Contact, Plain), number("begins", float64(driving.Begins), Angle))
	w.solveSpaceForm(r, w.Part.Cutter, d.SpaceForm)
}

func (w *Wheel) solveMeasured(r *reader, t *job.Teeth) {
	mark := len(r.findings)
	r.need(map[geometry.Quantity]job.Value{"teeth.tip_diameter": t.TipDiameter, "teeth.root_diameter": t.RootDiameter})
	m := tooth.Measured{
		Count:      r.count("teeth.count", t.Count, 0),
		TipRadius:  r.length("teeth.tip_diameter", t.TipDiameter, 0) / 2,
		RootRadius: r.length("teeth.root_diameter", t.RootDiameter, 0) / 2,
	}
	if !r.sound(mark) {
		return
	}
	wheel, err := m.Wheel()
	if !r.fail("teeth.tip_diameter", err) {
		w.Teeth = &wheel
	}
}
