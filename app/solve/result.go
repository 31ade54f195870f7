// Package solve works a job out: geometry, figures and findings. It is the only
// place where a job becomes geometry; the window, the commands and the packet all
// read its Result.
package solve

import (
	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry/crossing"
	"tipline/geometry/mount"
	"tipline/geometry/tooth"
	"tipline/render/template"
)

// Result is a job worked out.
type Result struct {
	Job      *job.Job
	Wheels   []*Wheel  // as in the job, one for each
	Pinions  []*Pinion // likewise
	Pairs    []*Pair   // likewise
	Trains   []*Train  // likewise
	Stacks   []*Stack  // likewise
	Findings []Finding // of the job itself and then of every part
}

// Part is anything of a job that is worked out.
type Part interface {
	ID() string
	Name() string // its id where it has no name
	Said() []Finding
}

// Made is a part that is made: a wheel or a pinion.
type Made interface {
	Part
	Template() template.Wheel // hands it over to be drawn
}

// Wheel is one wheel worked out. Lengths are in millimetres. What was not asked
// for or could not be built is nil, and where it could not, a finding says why.
type Wheel struct {
	Part      *job.Wheel
	Hand      string  // "clockwise" or "anticlockwise"
	Bore      float64 // diameter; 0 for none
	Thickness float64
	Oversize  float64 // on the blank's diameter
	Material  tables.Material
	Blade     tables.Blade // zero unless the crossing names one
	Teeth     *tooth.Wheel
	Leaves    int            // of the pinion that train teeth are made for; 0 for other teeth
	Trundle   float64        // diameter of the trundles that teeth for a lantern pinion are made for; 0 for other teeth
	Driving   *tooth.Driving // how teeth for a lantern pinion drive; nil for other teeth
	Tooling
	Crossing  *crossing.Layout
	Uncrossed *crossing.Layout // the weight of a wheel that is not crossed; nil where it is
	Collet    mount.Collet     // zero where nothing is said of it
	Mounting  *mount.Mounting  // on its own collet or its stack's, in the wheel's own coordinates
	Stack     string           // the id of the stack whose mount is its own; empty for none
	Findings  []Finding

	spec   crossing.Spec // as asked, without the screws' holes
	asked  asked         // its own mount
	making making        // what its teeth are made from
	made   []Finding     // of the making
	worked []Finding     // all that does not hang on the holes of a stack
}

// ID returns the wheel's id.
func (w *Wheel) ID() string { return w.Part.ID }

// Name returns what the wheel is called.
func (w *Wheel) Name() string { return named(w.Part.Name, w.Part.ID) }

// Additions returns the maker's own holes, circles, lines and notes, without those
// that are left out.
func (w *Wheel) Additions() []crossing.Addition {
	var all []crossing.Addition
	for _, a := range w.spec.Additions {
		if a.Kind != crossing.LeftOut {
			all = append(all, a)
		}
	}
	return all
}

// Said returns what there is to say of the wheel.
func (w *Wheel) Said() []Finding { return w.Findings }

// Template hands the wheel over to be drawn.
func (w *Wheel) Template() template.Wheel {
	t := template.Wheel{
		ID: w.Part.ID, Name: Shown(w.Part.Name), Hand: w.Hand, Bore: w.Bore, Thickness: w.Thickness, Oversize: w.Oversize,
		Material: w.Material, Teeth: w.Teeth, Crossing: w.Crossing,
		Additions: w.spec.Additions, Collet: w.Collet, Mounting: w.Mounting,
	}
	if w.Mounting != nil {
		t.Thread = w.Mounting.Screws.Thread
	}
	return w.onto(t)
}

// Wheel returns the wheel with this id, or nil.
func (r *Result) Wheel(id string) *Wheel {
	for _, w := range r.Wheels {
		if w.Part.ID == id {
			return w
		}
	}
	return nil
}

// Parts returns everything worked out: wheels, pinions, pairs, trains, stacks, each
// as in the job.
func (r *Result) Parts() []Part {
	var all []Part
	for _, w := range r.Wheels {
		all = append(all, w)
	}
	for _, p := range r.Pinions {
		all = append(all, p)
	}
	for _, p := range r.Pairs {
		all = append(all, p)
	}
	for _, t := range r.Trains {
		all = append(all, t)
	}
	for _, s := range r.Stacks {
		all = append(all, s)
	}
	return all
}

// Part returns the part with this id, or nil.
func (r *Result) Part(id string) Part {
	for _, p := range r.Parts() {
		if p.ID() == id {
			return p
		}
	}
	return nil
}

// On returns the findings on the part with this id, those of the job itself for none.
func (r *Result) On(id string) []Finding {
	var fs []Finding
	for _, f := range r.Findings {
		if f.Part == id {
			fs = append(fs, f)
		}
	}
	return fs
}

// named returns a name, or the id where there is none, as it is shown.
func named(name, id string) string {
	if name == "" {
		return Shown(id)
	}
	return Shown(name)
}

// mostShown is how many letters of a text that its maker typed are shown where it names
// something: more than fits on any line, and few enough that a file of one endless name
// does not fill memory and paper.
const mostShown = 200

// Shown returns a text that its maker typed as it is shown: its beginning, if it is longer
// than any line.
func Shown(text string) string {
	letters := 0
	for i := range text {
		if letters == mostShown {
			return text[:i] + "…"
		}
		letters++
	}
	return text
}

// Title returns the job's title as it is shown.
func (r *Result) Title() string { return Shown(r.Job.Title) }

// Worst returns the gravest severity among the findings, and false when there
// are none.
func Worst(findings []Finding) (Severity, bool) {
	worst := Severity("")
	for _, f := range findings {
		if f.Severity.rank() > worst.rank() {
			worst = f.Severity
		}
	}
	return worst, worst != ""
}
