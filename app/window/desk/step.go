package desk

import (
	"slices"
	"strings"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
)

// Step is one step of the work on a part.
type Step string

// The steps, in the order of the work.
const (
	Blank    Step = "blank"
	Shrouds  Step = "shrouds"
	Cutter   Step = "cutter"
	Dividing Step = "dividing"
	Crossing Step = "crossing"
	Mounting Step = "mounting"
	Depthing Step = "depthing"
	Train    Step = "train"
	Paper    Step = "paper"
)

// stepsOf are the steps that a kind of part goes through, in the order of the
// work.
var stepsOf = map[kind][]Step{
	noPart:  {Blank, Cutter, Dividing, Crossing, Mounting, Paper},
	wheel:   {Blank, Cutter, Dividing, Crossing, Mounting, Paper},
	pinion:  {Blank, Cutter, Dividing, Paper},
	lantern: {Shrouds, Dividing, Paper},
	pair:    {Depthing, Paper},
	train:   {Train, Paper},
	stack:   {Mounting, Paper},
}

// Steps lists the steps of the present part in the order of the work.
func (d *Desk) Steps() []Step { return stepsOf[d.kindOf(d.part)] }

// at returns the step that is looked at: the one gone to, or, where the present
// part has no such step, the one that shows the part itself.
func (d *Desk) at() Step {
	steps := d.Steps()
	if slices.Contains(steps, d.step) {
		return d.step
	}
	return shows(steps)
}

// shows returns which of the steps shows the part itself.
func shows(steps []Step) Step {
	if slices.Contains(steps, Crossing) {
		return Crossing
	}
	return steps[0]
}

// fieldsAt returns the fields of a step of the present part, in the order they are
// asked for. The fields of the paper are the job's and the printer's.
func (d *Desk) fieldsAt(s Step) []geometry.Quantity {
	var teeth *job.Teeth
	k := d.kindOf(d.part)
	if w := d.Job().Wheel(d.part); w != nil {
		teeth = w.Teeth
	}
	switch {
	case k == noPart:
		return nil
	case s == Blank && k == pinion:
		return []geometry.Quantity{"name", "form", "leaves", "module", "ratio", "bore", "thickness", "note"}
	case s == Blank:
		return slices.Concat([]geometry.Quantity{"name", "teeth.form", "teeth.count"}, sizeFields(teeth),
			[]geometry.Quantity{"bore", "thickness", "material"}, handField(teeth),
			[]geometry.Quantity{"blank.oversize", "blank.holding", "note"})
	case s == Cutter && formOf(teeth) == "measured":
		return nil
	case s == Cutter:
		return append(pointFields(teeth), cutterFields...)
	case s == Crossing:
		return crossingFields(d.Job().Wheel(d.part).Crossing)
	case s == Mounting && k == stack:
		return slices.Concat(mountFields, []geometry.Quantity{"misplacement", "id", "note"})
	}
	return plainFields[s]
}

var cutterFields = []geometry.Quantity{
	"cutter.stock_width", "cutter.stock_thickness", "cutter.clearance", "cutter.rake", "cutter.ground",
	"cutter.wheel_edge", "cutter.swing", "cutter.enters",
}

var mountFields = []geometry.Quantity{
	"mount.screws", "mount.thread", "mount.screw_circle", "mount.start",
	"mount.collet.bore", "mount.collet.register", "mount.collet.flange",
}

// plainFields are the fields of the steps that ask the same of every part.
var plainFields = map[Step][]geometry.Quantity{
	Shrouds:  {"name", "form", "leaves", "module", "trundle", "bore", "thickness", "note"},
	Dividing: {"dividing.ratio", "dividing.circles", "dividing.direct"},
	Mounting: mountFields,
	Depthing: {"wheel", "pinion", "centres", "id", "note"},
	Train:    {"from", "to", "hour", "turns", "id", "note"},
}

// crossingFields are the fields of a crossing: of those that one style alone has
// only that style's.
func crossingFields(c *job.Crossing) []geometry.Quantity {
	own := map[string][]geometry.Quantity{
		"swept":   {"crossing.sweep"},
		"waisted": {"crossing.waist", "crossing.waist_at"},
	}
	style := ""
	if c != nil {
		style = c.Style.Text
	}
	return slices.Concat(
		[]geometry.Quantity{"crossing.arms", "crossing.style"}, own[style],
		[]geometry.Quantity{
			"crossing.placing", "crossing.rim", "crossing.hub",
			"crossing.arm_at_rim", "crossing.arm_at_hub", "crossing.fillet_at_rim", "crossing.fillet_at_hub",
			"crossing.outer_radius", "crossing.allowance", "crossing.blade", "crossing.start_hole",
		})
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

// handField is which way the teeth lean, which is asked of those that have a front and a
// back.
func handField(t *job.Teeth) []geometry.Quantity {
	if !leaning(t) {
		return nil
	}
	return []geometry.Quantity{"hand"}
}

// leaning reports whether the teeth have a front and a back.
func leaning(t *job.Teeth) bool { return formOf(t) == "pointed" || formOf(t) == "ratchet" }

// pointFields are what makes the form of a pointed tooth's cutter; other teeth
// have none.
func pointFields(t *job.Teeth) []geometry.Quantity {
	if !leaning(t) {
		return nil
	}
	back := []geometry.Quantity{"teeth.back_radius"}
	if !t.BackAngle.Empty() || t.Solve.Text == "back_angle" {
		back = []geometry.Quantity{"teeth.back_angle", "teeth.back_fillet"}
	}
	return slices.Concat([]geometry.Quantity{"teeth.solve", "teeth.root_diameter", "teeth.land"}, back,
		[]geometry.Quantity{"teeth.undercut", "teeth.floor", "teeth.floor_slope", "teeth.corner_radius", "teeth.front_relief"})
}

// places are the fields that the steps of a part show, for one state of the job.
type places struct {
	result *solve.Result
	job    *job.Job
	part   string
	step   map[geometry.Quantity]Step
	extra  map[Step][]geometry.Quantity // that a step shows because of what is said of them
}

// StepOf returns the step on which a field of the present part is found, false
// for a field that no step shows.
func (d *Desk) StepOf(field geometry.Quantity) (Step, bool) {
	bare, _, _ := strings.Cut(string(field), "[")
	if s, ok := d.placed()[geometry.Quantity(bare)]; ok {
		return s, true
	}
	step, ok := stepNamed(bare)
	return step, ok && slices.Contains(d.Steps(), step)
}

// placed returns on which step of the present part each field is shown, the first
// of several.
func (d *Desk) placed() map[geometry.Quantity]Step {
	if p := &d.places; p.result != d.result || p.job != d.Job() || p.part != d.part {
		*p = places{result: d.result, job: d.Job(), part: d.part, step: map[geometry.Quantity]Step{}}
		for _, s := range slices.Backward(d.Steps()) {
			for _, f := range d.fieldsAt(s) {
				p.step[f] = s
			}
		}
		d.placeTroubled(p)
	}
	return d.places.step
}

// placeTroubled gives the fields that no step shows, but of which there is an error or a
// caution, a place on the step they belong to, so that they can be mended: a wheel keeps
// what it needed before its teeth or arms were of another kind.
func (d *Desk) placeTroubled(p *places) {
	part := d.of(p.part)
	if part == nil {
		return
	}
	p.extra = map[Step][]geometry.Quantity{}
	for _, f := range part.Said() {
		_, shown := p.step[f.Field]
		if known, ok := job.FieldAt(f.Field); !ok || shown || f.Severity == solve.Note || inSection(known.Path) {
			continue
		}
		step, _ := stepNamed(string(f.Field))
		if !slices.Contains(d.Steps(), step) {
			step = d.Steps()[0]
		}
		p.step[f.Field] = step
		p.extra[step] = append(p.extra[step], f.Field)
	}
}

// inSection reports whether a field is not a row of its step but stands in a list beside
// the rows.
func inSection(field geometry.Quantity) bool {
	for _, section := range []string{"cutter.bit.", "additions.", "parts", "wheels", "tips"} {
		if strings.HasPrefix(string(field), section) {
			return true
		}
	}
	return false
}

// stepNamed returns the step whose name begins a field's path.
func stepNamed(field string) (Step, bool) {
	group, _, _ := strings.Cut(field, ".")
	switch {
	case group == "teeth":
		return Blank, true
	case group == "parts": // of an arbor
		return Train, true
	case group == "additions":
		return Crossing, true
	case group == "mount", group == "wheels", group == "tips":
		return Mounting, true
	}
	return Step(group), true
}
