package solve

import (
	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/geometry/tooth"
	"tipline/render/template"
)

// Pinion is one pinion worked out. Lengths are in millimetres. What was not asked
// for or could not be built is nil, and where it could not, a finding says why.
type Pinion struct {
	Part      *job.Pinion
	Ratio     float64              // of its wheel's teeth to its leaves, that the leaves are made for; 0 for a lantern pinion
	Bore      float64              // diameter; 0 for none
	Thickness float64              // length of the leaves, or of the trundles between the shrouds; 0 where not said
	Leaves    *tooth.Wheel         // cut leaves; nil for a lantern pinion
	Lantern   *tooth.LanternPinion // nil for cut leaves
	Tooling
	Findings []Finding
}

// ID returns the pinion's id.
func (p *Pinion) ID() string { return p.Part.ID }

// Name returns what the pinion is called.
func (p *Pinion) Name() string { return named(p.Part.Name, p.Part.ID) }

// Said returns what there is to say of the pinion.
func (p *Pinion) Said() []Finding { return p.Findings }

// Template hands the pinion over to be drawn.
func (p *Pinion) Template() template.Wheel {
	return p.onto(template.Wheel{
		ID: p.ID(), Name: Shown(p.Part.Name), Bore: p.Bore, Thickness: p.Thickness, Teeth: p.Leaves, Lantern: p.Lantern,
	})
}

// usualPinionRatio is the ratio to its wheel that a pinion's leaves are made for
// where neither it nor a pair says one: the middle of what trains use (common
// practice, no source).
const usualPinionRatio = 7.5

// pinionMaterial is what pinions are cut from, of which the job says nothing
// (common practice, no source).
const pinionMaterial = "mild steel"

// solvePinion works one pinion out, step by step in the order of the work. Driver
// is the count of the wheel it is paired with, 0 where none is or several differ.
func solvePinion(part *job.Pinion, driver int, unit measure.Unit) *Pinion {
	r := &reader{part: part.ID, unit: unit}
	p := &Pinion{Part: part}
	p.Thickness = r.length("thickness", part.Thickness, 0)
	p.Bore = r.length("bore", part.Bore, 0)
	p.solveLeaves(r, driver)
	p.Findings = sorted(r.findings)
	return p
}

func (p *Pinion) solveLeaves(r *reader, driver int) {
	mark := len(r.findings)
	r.need(map[geometry.Quantity]job.Value{"form": p.Part.Form, "leaves": p.Part.Leaves, "module": p.Part.Module})
	form := r.choice("form", p.Part.Form, "")
	leaves, module := r.count("leaves", p.Part.Leaves, 0), r.length("module", p.Part.Module, 0)
	usual := usualPinionRatio
	if driver > 0 && leaves > 0 {
		usual = float64(driver) / float64(leaves)
	}
	trundle, ratio := r.length("trundle", p.Part.Trundle, 0), r.number("ratio", p.Part.Ratio, usual)
	switch {
	case !r.sound(mark):
	case form == "lantern":
		p.solveLantern(r, tooth.Lantern{Leaves: leaves, Module: module, Trundle: trundle})
	default:
		p.solveCut(r, tooth.Pinion{Leaves: leaves, Module: module, Ratio: ratio})
		if p.Leaves != nil && driver == 0 && p.Part.Ratio.Empty() {
			r.find(Note, "ratio", "pinion.usual-ratio", number("ratio", ratio, Fine))
		}
	}
}

// sameTrundle is how far, in mm, a drill may be from the trundles for a hole that
// they are pressed into (common practice, no source).
const sameTrundle = 0.02

// shroudFindings says how the shrouds are laid out and drilled.
func (p *Pinion) shroudFindings(r *reader) {
	l := p.Lantern
	code := "pinion.drill"
	if off := l.Drill.MM - l.TrundleDiameter; off > sameTrundle {
		code = "pinion.drill-large"
	} else if off < -sameTrundle {
		code = "pinion.drill-small"
	}
	r.find(Note, "trundle", code, number("trundle", l.TrundleDiameter, FineLength), text("drill", l.Drill.Name),
		number("size", l.Drill.MM, FineLength))
	r.find(Note, "leaves", "pinion.shroud", number("count", float64(len(l.Holes)), Count),
		number("circle", 2*l.PitchRadius, Length), number("step", l.Step, Length), number("shroud", l.Shroud, Length))
	if l.Between < l.TrundleDiameter/2 {
		r.find(Caution, "trundle", "pinion.thin-shroud", number("between", l.Between, Length))
	}
}

// solveLantern works out a lantern pinion, whose shrouds are divided and drilled.
func (p *Pinion) solveLantern(r *reader, l tooth.Lantern) {
	lantern, err := l.Pinion()
	if r.fail("leaves", err) {
		return
	}
	p.Lantern = &lantern
	r.fail("bore", lantern.CheckBore(p.Bore))
	p.shroudFindings(r)
	p.solveDividing(r, p.Part.Dividing, l.Leaves, lantern.PitchRadius)
}

// solveCut works out a pinion of cut leaves, as a wheel whose teeth are its
// leaves.
func (p *Pinion) solveCut(r *reader, c tooth.Pinion) {
	leaves, err := c.Wheel()
	if r.fail("leaves", err) {
		return
	}
	p.Leaves, p.Ratio = &leaves, c.Ratio
	r.fail("bore", leaves.CheckBore(p.Bore))
	p.solveSpaceForm(r, p.Part.Cutter, c.SpaceForm)
	p.solveCutter(r, p.Part.Cutter, pinionMaterial)
	p.solveDividing(r, p.Part.Dividing, leaves.Count, leaves.TipRadius)
}
