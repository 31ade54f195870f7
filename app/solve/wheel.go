package solve

import (
	"slices"

	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry/measure"
)

// solveWheel works one wheel out, step by step in the order of the work. A step
// that fails leaves the steps that do not need it standing. One that belongs to a
// stack is left without its holes: the stack drills it. Before is the wheel as it
// was, nil where it is new: teeth that are made as they were are taken from it.
func solveWheel(part *job.Wheel, unit measure.Unit, stands standing, before *Wheel) *Wheel {
	r := &reader{part: part.ID, unit: unit}
	w := &Wheel{Part: part}
	w.solveBlank(r)
	w.making = making{part.Teeth, part.Cutter, part.Dividing, w.Hand, w.Material.Name}
	if before != nil && before.making == w.making {
		w.makeAs(r, before)
	} else {
		w.make(r)
	}
	w.checkBore(r)
	w.solveCrossing(r)
	w.solveMount(r, stands)
	w.worked = slices.Clone(r.findings)
	w.say(r)
	return w
}

// making is all that a wheel's teeth, their cutter and their dividing hang on.
type making struct {
	teeth          *job.Teeth
	cutter         *job.Cutter
	dividing       *job.Dividing
	hand, material string
}

// make works out the teeth, and how they are cut and divided.
func (w *Wheel) make(r *reader) {
	mark := len(r.findings)
	w.solveTeeth(r)
	w.solveCutter(r, w.Part.Cutter, w.Material.Name)
	if w.Cut != nil && w.Pointed() {
		w.depthFinding(r)
		w.bitLandFinding(r)
	}
	if w.Teeth != nil {
		w.solveDividing(r, w.Part.Dividing, w.Teeth.Count, w.Teeth.TipRadius)
	}
	w.made = slices.Clone(r.findings[mark:])
}

// makeAs takes the teeth, and how they are cut and divided, from another wheel.
func (w *Wheel) makeAs(r *reader, other *Wheel) {
	w.Teeth, w.Leaves, w.Trundle, w.Tooling, w.made = other.Teeth, other.Leaves, other.Trundle, other.Tooling, other.made
	r.findings = append(r.findings, w.made...)
}

// say puts together what there is to say of the wheel.
func (w *Wheel) say(r *reader) {
	w.crossingFindings(r)
	w.Findings = sorted(r.findings)
}

// Pointed reports whether the cutter makes the teeth.
func (w *Wheel) Pointed() bool {
	return w.Teeth != nil && (w.Teeth.Form == "pointed" || w.Teeth.Form == "ratchet")
}

// solveBlank reads what is asked of the blank.
func (w *Wheel) solveBlank(r *reader) {
	p := w.Part
	w.Thickness = r.length("thickness", p.Thickness, 0)
	w.Bore = r.length("bore", p.Bore, 0)
	w.Hand = r.choice("hand", p.Hand, "clockwise")
	if w.Hand == "" && !(p.Teeth != nil && (p.Teeth.Form.Text == "pointed" || p.Teeth.Form.Text == "ratchet")) {
		w.Hand = "clockwise" // teeth without a front are the same either way
	}
	if p.Blank != nil {
		w.Oversize = r.length("blank.oversize", p.Blank.Oversize, 0)
		r.choice("blank.holding", p.Blank.Holding, "")
	}
	w.solveMaterial(r)
}

func (w *Wheel) solveMaterial(r *reader) {
	name := w.Part.Material.Text
	if name == "" {
		name = "brass"
	}
	m, ok := tables.MaterialNamed(name)
	if !ok {
		var names []string
		for _, m := range tables.Materials() {
			names = append(names, m.Name)
		}
		r.find(Error, "material", "finding.no-such-choice", text("read", name), text("choices", list(names)))
		return
	}
	w.Material = m
}

// checkBore says when the bore leaves no wheel.
func (w *Wheel) checkBore(r *reader) {
	if w.Teeth != nil {
		r.fail("bore", w.Teeth.CheckBore(w.Bore))
	}
}
