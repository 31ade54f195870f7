package solve

import (
	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
)

// solvePointed works out a pointed tooth, an escape wheel's or a ratchet's: the
// cutter makes it.
func (w *Wheel) solvePointed(r *reader, t *job.Teeth) {
	mark := len(r.findings)
	spec := w.pointedSpec(r, t)
	if !r.sound(mark) {
		return
	}
	cut, err := spec.Cut()
	if r.fail("teeth.count", err) {
		return
	}
	wheel, err := tooth.Pointed(cut, w.Hand)
	if r.fail("teeth.count", err) {
		return
	}
	wheel.Form = t.Form.Text
	w.Cut, w.Teeth = &cut, &wheel
}

// pointedSpec reads what a plan says of a pointed tooth.
func (w *Wheel) pointedSpec(r *reader, t *job.Teeth) cutter.Pointed {
	solve := solveFor(r, t)
	straight := !t.BackAngle.Empty() || solve == cutter.BackAngle
	needed := map[geometry.Quantity]job.Value{
		cutter.TipDiameter: t.TipDiameter, cutter.RootDiameter: t.RootDiameter, cutter.Land: t.Land,
	}
	if straight {
		needed[cutter.BackAngle] = t.BackAngle
	} else {
		needed[cutter.BackRadius] = t.BackRadius
	}
	delete(needed, solve)
	r.need(needed)
	stock := usualStock
	if c := w.Part.Cutter; c != nil {
		stock = r.length(cutter.StockWidth, c.StockWidth, usualStock)
	}
	return cutter.Pointed{
		Count:        r.count(cutter.Count, t.Count, 0),
		TipRadius:    r.length(cutter.TipDiameter, t.TipDiameter, 0) / 2,
		RootRadius:   r.length(cutter.RootDiameter, t.RootDiameter, 0) / 2,
		Undercut:     r.angle(cutter.Undercut, t.Undercut, 0),
		FrontRelief:  r.angle(cutter.FrontRelief, t.FrontRelief, 0),
		Floor:        r.length(cutter.Floor, t.Floor, 0),
		FloorSlope:   r.angle(cutter.FloorSlope, t.FloorSlope, 0),
		CornerRadius: r.length(cutter.CornerRadius, t.CornerRadius, 0),
		Straight:     straight,
		BackRadius:   r.length(cutter.BackRadius, t.BackRadius, 0),
		BackAngle:    r.angle(cutter.BackAngle, t.BackAngle, 0),
		BackFillet:   r.length(cutter.BackFillet, t.BackFillet, 0),
		Land:         r.length(cutter.Land, t.Land, 0),
		StockWidth:   stock,
		Solve:        solve,
	}
}

// solveFor returns the field to be worked out: the one named, else the one of
// root diameter, back and land that was left empty, else the root diameter.
func solveFor(r *reader, t *job.Teeth) geometry.Quantity {
	if !t.Solve.Empty() {
		return geometry.Quantity("teeth." + r.choice("teeth.solve", t.Solve, "root_diameter"))
	}
	switch {
	case t.RootDiameter.Empty():
		return cutter.RootDiameter
	case t.Land.Empty():
		return cutter.Land
	case t.BackRadius.Empty() && t.BackAngle.Empty():
		return cutter.BackRadius
	}
	return cutter.RootDiameter
}
