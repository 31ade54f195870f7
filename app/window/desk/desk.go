// Package desk is what the window works on: the job with its history, the part
// and step that are looked at, and what the job comes to. It knows no widgets, so
// that all the window does can be tried without one.
package desk

import (
	"context"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render/screen"
	"tipline/render/template"
)

// Desk holds one job being worked on. It is for one goroutine, the window's.
type Desk struct {
	// Changed is called after every change of what the desk shows.
	Changed func()

	words   words.Words
	recent  Recent
	history *job.History
	file    string // where the job is kept; empty until it is saved
	solver  solve.Solver
	result  *solve.Result
	part    string
	step    Step
	lit     geometry.Quantity
	last    map[place]drawn
	packet  packetDesk
}

// New returns a desk with an empty job in millimetres on it.
func New(w words.Words, recent Recent) *Desk {
	d := &Desk{Changed: func() {}, words: w, recent: recent}
	d.lay(job.NewHistory(job.New("mm")), "")
	return d
}

// lay puts another job on the desk.
func (d *Desk) lay(h *job.History, file string) {
	d.history, d.file = h, file
	d.part, d.step, d.lit = "", Crossing, ""
	d.last = map[place]drawn{}
	d.packet = packetDesk{}
	d.work()
}

// work solves the job as it now stands and says that something changed.
func (d *Desk) work() {
	d.result = d.solver.Solve(context.Background(), d.Job())
	if d.Job().Wheel(d.part) == nil {
		d.part = d.firstPart()
	}
	d.Changed()
}

func (d *Desk) firstPart() string {
	if wheels := d.Job().Wheels; len(wheels) > 0 {
		return wheels[0].ID
	}
	return ""
}

// Words returns the catalogue the desk speaks with.
func (d *Desk) Words() words.Words { return d.words }

// Job returns the job as it now stands.
func (d *Desk) Job() *job.Job { return d.history.Job() }

// Result returns what the job comes to.
func (d *Desk) Result() *solve.Result { return d.result }

// Style returns how text is made for this job.
func (d *Desk) Style() template.Style {
	return template.Style{Words: d.words, Units: solve.Units(d.Job())}
}

// Part returns the id of the part that is looked at, empty in a job without any.
func (d *Desk) Part() string { return d.part }

// Choose looks at another part.
func (d *Desk) Choose(part string) {
	if part != d.part && d.Job().Wheel(part) != nil {
		d.part, d.lit = part, ""
		d.history.EndRun()
		d.Changed()
	}
}

// Turn looks at the part by places further down, no further than the ends.
func (d *Desk) Turn(by int) {
	wheels := d.Job().Wheels
	for i, w := range wheels {
		if w.ID == d.part {
			d.Choose(wheels[min(max(i+by, 0), len(wheels)-1)].ID)
			return
		}
	}
}

// Step returns the step that is looked at.
func (d *Desk) Step() Step { return d.step }

// Go looks at another step.
func (d *Desk) Go(step Step) {
	if step != d.step {
		d.step, d.lit = step, ""
		d.history.EndRun()
		d.Changed()
	}
}

// Light lights the lines that a field made; an empty field puts the light out.
func (d *Desk) Light(field geometry.Quantity) {
	if field != d.lit {
		d.lit = field
		d.history.EndRun()
		d.Changed()
	}
}

// Lit returns which lines are lit.
func (d *Desk) Lit() screen.Lit {
	if other, ok := shownBy[d.lit]; ok {
		return screen.Lit{Part: d.part, Quantity: other}
	}
	return screen.Lit{Part: d.part, Quantity: d.lit}
}

// shownBy names the lines that show a field which makes none of its own.
var shownBy = map[geometry.Quantity]geometry.Quantity{
	"crossing.arm_at_hub": "crossing.arm_at_rim",
	"crossing.placing":    "crossing.arms",
	"crossing.blade":      "crossing.allowance",
	"teeth.floor_slope":   "teeth.floor",
	"teeth.back_fillet":   "teeth.back_angle",
}

// LitText returns what stands in the field that is lit, as typed or worked out.
func (d *Desk) LitText() string {
	if worked := d.worked(d.lit); worked != "" {
		return worked
	}
	text, _ := d.Job().Text(d.part, d.lit)
	return text
}

func (d *Desk) wheel() *solve.Wheel { return d.result.Wheel(d.part) }
