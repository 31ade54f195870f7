package solve

import (
	"math"
	"slices"
	"strconv"

	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/measure"
)

// solveCrossing lays the crossing out, without the screws' holes; a wheel that is
// not crossed is weighed as it is. Additions that cannot be read, or lie off the
// wheel, are left out.
func (w *Wheel) solveCrossing(r *reader) {
	w.spec.Additions = r.additions(w.Part.Additions)
	if w.Teeth != nil {
		r.onWheel(w.spec.Additions, w.Teeth.TipRadius)
	}
	mark := len(r.findings)
	if c := w.Part.Crossing; c != nil {
		r.need(map[geometry.Quantity]job.Value{
			"crossing.arms": c.Arms, "crossing.rim": c.Rim, "crossing.hub": c.Hub,
			"crossing.arm_at_rim": c.ArmAtRim, "crossing.arm_at_hub": c.ArmAtHub, "thickness": w.Part.Thickness,
		})
		additions := w.spec.Additions
		w.spec = w.crossingSpec(r, c)
		w.spec.Additions = additions
	}
	if w.Teeth == nil || w.Thickness == 0 || w.Material.Name == "" || !r.sound(mark) {
		return
	}
	r.fail("crossing.arms", w.lay(nil))
}

// lay lays the crossing out, or weighs the wheel that is not crossed, with the
// screws' holes. What stands already is left where it fails.
func (w *Wheel) lay(screws []crossing.Hole) error {
	spec, lay, into := w.spec, crossing.Solid, &w.Uncrossed
	if w.Part.Crossing != nil {
		lay, into = crossing.Lay, &w.Crossing
	}
	spec.Screws = screws
	l, err := lay(w.blank(), spec)
	if err == nil {
		*into = &l
	}
	return err
}

// blank returns what the crossing is cut in.
func (w *Wheel) blank() crossing.Blank {
	return crossing.Blank{
		Count: w.Teeth.Count, TipRadius: w.Teeth.TipRadius, RootRadius: w.Teeth.RootRadius,
		Bore: w.Bore, Outline: w.Teeth.Solid(), Thickness: w.Thickness,
		Density: w.Material.Density, Young: w.Material.Young,
	}
}

func (w *Wheel) crossingSpec(r *reader, c *job.Crossing) crossing.Spec {
	w.Blade = bladeOf(r, c.Blade)
	s := crossing.Spec{
		Arms:        r.count("crossing.arms", c.Arms, 0),
		Placing:     crossing.Placing(r.choice("crossing.placing", c.Placing, string(crossing.OnTips))),
		Style:       crossing.Style(r.choice("crossing.style", c.Style, string(crossing.Straight))),
		Rim:         r.length("crossing.rim", c.Rim, 0),
		Hub:         r.length("crossing.hub", c.Hub, 0),
		ArmAtRim:    r.length("crossing.arm_at_rim", c.ArmAtRim, 0),
		ArmAtHub:    r.length("crossing.arm_at_hub", c.ArmAtHub, 0),
		FilletAtRim: r.length("crossing.fillet_at_rim", c.FilletAtRim, 0),
		FilletAtHub: r.length("crossing.fillet_at_hub", c.FilletAtHub, 0),
		OuterRadius: r.length("crossing.outer_radius", c.OuterRadius, 0),
		Allowance:   r.length("crossing.allowance", c.Allowance, 0),
		StartHole:   r.length("crossing.start_hole", c.StartHole, w.Blade.StartHole),
	}
	if w.Blade.Name != "" {
		s.BladeTurning, s.BladePitch = w.Blade.Turning(), measure.MMPerInch/w.Blade.TeethPerInch
	}
	r.styled(c, &s)
	return s
}

// styled reads what one style of arm alone is made by, and says which of it another
// style leaves unused.
func (r *reader) styled(c *job.Crossing, s *crossing.Spec) {
	for _, f := range []struct {
		field geometry.Quantity
		value job.Value
		style crossing.Style
		must  bool
		read  func(geometry.Quantity, job.Value)
	}{
		{
			"crossing.sweep", c.Sweep, crossing.Swept, true,
			func(q geometry.Quantity, v job.Value) { s.Sweep = r.angle(q, v, 0) },
		},
		{
			"crossing.waist", c.Waist, crossing.Waisted, true,
			func(q geometry.Quantity, v job.Value) { s.Waist = r.length(q, v, 0) },
		},
		{
			"crossing.waist_at", c.WaistAt, crossing.Waisted, false,
			func(q geometry.Quantity, v job.Value) { s.WaistAt = r.length(q, v, 0) },
		},
	} {
		switch {
		case s.Style == f.style && f.value.Empty() && f.must:
			r.missing(f.field)
		case s.Style != f.style && s.Style != "" && !f.value.Empty():
			r.find(Note, "crossing.style", "crossing.style-unused", field("field", f.field),
				choice("style", "crossing.style", string(s.Style)), choice("other", "crossing.style", string(f.style)))
		}
		f.read(f.field, f.value)
	}
}

func bladeOf(r *reader, v job.Value) tables.Blade {
	if v.Empty() {
		return tables.Blade{}
	}
	b, ok := tables.BladeNamed(v.Text)
	if !ok {
		var names []string
		for _, b := range tables.Blades() {
			names = append(names, b.Name)
		}
		r.find(Error, "crossing.blade", "finding.no-such-choice", text("read", v.Text), text("choices", list(names)))
	}
	return b
}

// crossingFindings says what is to be said of a crossing that can be made, or of
// the additions on a wheel that is not crossed.
func (w *Wheel) crossingFindings(r *reader) {
	l := w.Crossing
	if l == nil {
		if w.Uncrossed != nil {
			r.notes(w.Uncrossed.Notes)
			r.balanceFinding("additions[0].radius", w.Uncrossed)
		}
		return
	}
	heavyBy := geometry.Quantity("additions[0].radius")
	if w.Teeth.Count%l.Spec.Arms != 0 {
		w.dividesFinding(r)
		heavyBy = "crossing.placing"
	}
	r.notes(l.Notes)
	r.balanceFinding(heavyBy, l)
	r.find(Note, "crossing.arms", "crossing.figures",
		number("removed", l.RemovedShare, Percent), number("mass", l.Mass, Plain),
		number("inertia", l.Inertia, Count), number("windup", l.WindUp, Plain))
	w.armsFinding(r)
}

// slight is the unbalance, in g·mm, that is not worth a hole: it would be written as
// nothing.
const slight = 0.005

// balanceFinding says how heavy one side is, on the field that makes it so, and
// which hole would balance it.
func (r *reader) balanceFinding(field geometry.Quantity, l *crossing.Layout) {
	if l.Balance == nil || l.Unbalance < slight {
		return
	}
	r.find(Note, field, "crossing.balance-hole", number("unbalance", l.Unbalance, Plain),
		number("heavy", l.Heavy.Degrees(), Degrees), number("diameter", l.Balance.Diameter, Length),
		number("radius", l.Balance.Radius, Length))
}

// notes keeps what geometry notes of a thing that can be made.
func (r *reader) notes(notes []*geometry.Limit) {
	for _, note := range notes {
		f := fromError(r.part, "", note)
		f.Severity = Caution
		r.findings = append(r.findings, f)
	}
}

// armsFinding says where the arms stand and how dividers step from one to the
// next.
func (w *Wheel) armsFinding(r *reader) {
	l := w.Crossing
	chords := places(len(l.Windows), Length, func(i int) float64 { return l.Windows[i].Chord })
	stand := text("tips", tips(l))
	switch {
	case offTips(l) > 0:
		off := places(len(l.Arms), Angle, func(i int) float64 { return float64(l.Arms[i].Deviation) })
		r.find(Note, "crossing.arms", "crossing.near-tips", stand, several("off", off), chords[0].named("chord"))
	case len(distinct(chords)) == 1:
		r.find(Note, "crossing.arms", "crossing.tips", stand, chords[0].named("chord"))
	default:
		r.find(Note, "crossing.arms", "crossing.tips-vary", stand, several("chords", chords))
	}
}

// alike is how far apart, in mm or radians, two figures may lie and still be
// written as one: a tenth of the last digit shown.
const alike = 1e-3

// distinct returns the places whose values differ from those before them.
func distinct(all []Place) []Place {
	var some []Place
	for _, p := range all {
		if !slices.ContainsFunc(some, func(q Place) bool { return math.Abs(p.Value-q.Value) < alike }) {
			some = append(some, p)
		}
	}
	return some
}

// dividesFinding says what becomes of arms whose number does not divide the
// teeth: how far they stand from the tips, or how heavy one side is.
func (w *Wheel) dividesFinding(r *reader) {
	l := w.Crossing
	near := l.Divides
	said := []Place{
		number("arms", float64(l.Spec.Arms), Count), number("teeth", float64(w.Teeth.Count), Count),
		several("counts", places(len(near), Count, func(i int) float64 { return float64(near[i]) })),
		number("value", offTips(l), Angle), number("unbalance", l.Unbalance, Plain), number("heavy", l.Heavy.Degrees(), Degrees),
	}
	severity, some, none := Caution, "crossing.unbalanced", "crossing.unbalanced-and-none"
	if l.Spec.Placing == crossing.Equal {
		severity, some, none = Note, "crossing.off-tips", "crossing.off-tips-and-none"
	} else if l.Unbalance < slight {
		severity, some, none = Note, "crossing.uneven", "crossing.uneven-and-none"
	}
	if len(near) == 0 {
		some = none
	}
	r.find(severity, "crossing.arms", some, said...)
}

// offTips returns the most by which an arm stands off its tip, in radians.
func offTips(l *crossing.Layout) float64 {
	worst := 0.0
	for _, a := range l.Arms {
		worst = max(worst, math.Abs(float64(a.Deviation)))
	}
	return worst
}

func tips(l *crossing.Layout) string {
	var names []string
	for _, a := range l.Arms {
		names = append(names, strconv.Itoa(a.Tip))
	}
	return list(names)
}
