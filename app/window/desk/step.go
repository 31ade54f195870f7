package desk

import (
	"slices"
	"strings"

	"tipline/app/job"
	"tipline/geometry"
)

// Step is one step of the work on a wheel.
type Step string

// The steps, in the order of the work.
const (
	Blank    Step = "blank"
	Cutter   Step = "cutter"
	Dividing Step = "dividing"
	Crossing Step = "crossing"
	Paper    Step = "paper"
)

// Steps lists the steps in the order of the work.
func Steps() []Step { return []Step{Blank, Cutter, Dividing, Crossing, Paper} }

// stepFields returns the fields of a step for a wheel with such teeth, in the
// order they are asked for. The fields of the paper are the job's and the
// printer's.
func stepFields(s Step, t *job.Teeth) []geometry.Quantity {
	switch s {
	case Blank:
		return slices.Concat([]geometry.Quantity{"name", "teeth.form", "teeth.count"}, sizeFields(t),
			[]geometry.Quantity{"bore", "thickness", "material", "hand", "blank.oversize", "blank.holding"})
	case Cutter:
		if formOf(t) == "measured" {
			return nil
		}
		return append(pointFields(t), "cutter.stock_width", "cutter.stock_thickness", "cutter.clearance", "cutter.ground",
			"cutter.swing", "cutter.enters")
	case Dividing:
		return []geometry.Quantity{"dividing.ratio", "dividing.circles", "dividing.direct"}
	case Crossing:
		return []geometry.Quantity{"crossing.arms", "crossing.placing", "crossing.rim", "crossing.hub",
			"crossing.arm_at_rim", "crossing.arm_at_hub", "crossing.fillet_at_rim", "crossing.fillet_at_hub",
			"crossing.allowance", "crossing.blade", "crossing.start_hole"}
	}
	return nil
}

func formOf(t *job.Teeth) string {
	if t == nil {
		return ""
	}
	return t.Form.Text
}

// sizeFields are what makes the size of the wheel.
func sizeFields(t *job.Teeth) []geometry.Quantity {
	switch formOf(t) {
	case "pointed", "ratchet":
		return []geometry.Quantity{"teeth.tip_diameter"}
	case "measured":
		return []geometry.Quantity{"teeth.tip_diameter", "teeth.root_diameter"}
	}
	fields := []geometry.Quantity{"teeth.module", "teeth.leaves"}
	if formOf(t) == "lantern driver" {
		fields = append(fields, "teeth.trundle")
	}
	return fields
}

// pointFields are what makes the form of a pointed tooth's cutter; other teeth
// have none.
func pointFields(t *job.Teeth) []geometry.Quantity {
	if form := formOf(t); form != "pointed" && form != "ratchet" {
		return nil
	}
	back := []geometry.Quantity{"teeth.back_radius"}
	if !t.BackAngle.Empty() || t.Solve.Text == "back_angle" {
		back = []geometry.Quantity{"teeth.back_angle", "teeth.back_fillet"}
	}
	return slices.Concat([]geometry.Quantity{"teeth.solve", "teeth.root_diameter", "teeth.land"}, back,
		[]geometry.Quantity{"teeth.undercut", "teeth.floor", "teeth.floor_slope", "teeth.corner_radius", "teeth.front_relief"})
}

// StepOf returns the step on which a field of the present part is found, false
// for a field that no step shows.
func (d *Desk) StepOf(field geometry.Quantity) (Step, bool) {
	w := d.Job().Wheel(d.part)
	if w == nil {
		return "", false
	}
	bare, _, _ := strings.Cut(string(field), "[")
	for _, s := range Steps() {
		if slices.Contains(stepFields(s, w.Teeth), geometry.Quantity(bare)) {
			return s, true
		}
	}
	return stepNamed(bare)
}

// stepNamed returns the step whose name begins a field's path.
func stepNamed(field string) (Step, bool) {
	group, _, _ := strings.Cut(field, ".")
	switch {
	case group == "teeth":
		return Blank, true
	case slices.Contains(Steps(), Step(group)):
		return Step(group), true
	}
	return "", false
}
