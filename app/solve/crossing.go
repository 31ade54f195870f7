package solve

import (
	"math"
	"slices"
	"strconv"

	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry"
	"tipline/geometry/crossing"
)

// solveCrossing lays the crossing out.
func (w *Wheel) solveCrossing(r *reader) {
	c := w.Part.Crossing
	if c == nil || w.Teeth == nil {
		return
	}
	mark := len(r.findings)
	there := r.need(map[geometry.Quantity]job.Value{
		"crossing.arms": c.Arms, "crossing.rim": c.Rim, "crossing.hub": c.Hub,
		"crossing.arm_at_rim": c.ArmAtRim, "crossing.arm_at_hub": c.ArmAtHub, "thickness": w.Part.Thickness,
	})
	spec := w.crossingSpec(r)
	if !there || !r.sound(mark) || w.Thickness == 0 || w.Material.Name == "" {
		return
	}
	l, err := crossing.Lay(w.crossingBlank(), spec)
	if r.fail("crossing.arms", err) {
		return
	}
	w.Crossing = &l
	w.crossingFindings(r)
}

func (w *Wheel) crossingBlank() crossing.Blank {
	return crossing.Blank{
		Count: w.Teeth.Count, TipRadius: w.Teeth.TipRadius, RootRadius: w.Teeth.RootRadius,
		Bore: w.Bore, Outline: w.Teeth.Solid(), Thickness: w.Thickness,
		Density: w.Material.Density, Young: w.Material.Young,
	}
}

func (w *Wheel) crossingSpec(r *reader) crossing.Spec {
	c := w.Part.Crossing
	if r.choice("crossing.style", c.Style, "straight") != "straight" && !c.Style.Empty() {
		r.find(Error, "crossing.style", "crossing.style-not-yet", text("read", c.Style.Text))
	}
	w.Blade = bladeOf(r, c.Blade)
	return crossing.Spec{
		Arms:         r.count("crossing.arms", c.Arms, 0),
		Placing:      crossing.Placing(r.choice("crossing.placing", c.Placing, string(crossing.OnTips))),
		Rim:          r.length("crossing.rim", c.Rim, 0),
		Hub:          r.length("crossing.hub", c.Hub, 0),
		ArmAtRim:     r.length("crossing.arm_at_rim", c.ArmAtRim, 0),
		ArmAtHub:     r.length("crossing.arm_at_hub", c.ArmAtHub, 0),
		FilletAtRim:  r.length("crossing.fillet_at_rim", c.FilletAtRim, 0),
		FilletAtHub:  r.length("crossing.fillet_at_hub", c.FilletAtHub, 0),
		Allowance:    r.length("crossing.allowance", c.Allowance, 0),
		StartHole:    r.length("crossing.start_hole", c.StartHole, w.Blade.StartHole),
		BladeTurning: turning(w.Blade),
	}
}

// turning returns the least radius a blade turns in, 0 where none is named.
func turning(b tables.Blade) float64 {
	if b.Name == "" {
		return 0
	}
	return b.Turning()
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

// crossingFindings says what is to be said of a crossing that can be made.
func (w *Wheel) crossingFindings(r *reader) {
	l := w.Crossing
	for _, note := range l.Notes {
		f := fromError(r.part, "", note)
		f.Severity = Caution
		r.findings = append(r.findings, f)
	}
	if w.Teeth.Count%l.Spec.Arms != 0 {
		w.dividesFinding(r)
	}
	r.find(Note, "crossing.arms", "crossing.figures",
		number("removed", l.RemovedShare, Percent), number("mass", l.Mass, Plain),
		number("inertia", l.Inertia, Count), number("windup", l.WindUp, Plain))
	w.armsFinding(r)
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
	var counts []string
	for _, n := range l.Divides {
		counts = append(counts, strconv.Itoa(n))
	}
	places := []Place{
		number("arms", float64(l.Spec.Arms), Count), number("teeth", float64(w.Teeth.Count), Count),
		text("counts", list(counts)),
		number("value", offTips(l), Angle), number("unbalance", l.Unbalance, Plain), number("heavy", l.Heavy.Degrees(), Degrees),
	}
	severity, some, none := Caution, "crossing.unbalanced", "crossing.unbalanced-and-none"
	if l.Spec.Placing == crossing.Equal {
		severity, some, none = Note, "crossing.off-tips", "crossing.off-tips-and-none"
	}
	if len(counts) == 0 {
		some = none
	}
	r.find(severity, "crossing.placing", some, places...)
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
