// Package solve works a job out: geometry, figures and findings. It is the only
// place where a job becomes geometry; the window, the commands and the packet all
// read its Result.
package solve

import (
	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry/crossing"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
	"tipline/geometry/tooth"
	"tipline/render/template"
)

// Result is a job worked out.
type Result struct {
	Job      *job.Job
	Wheels   []*Wheel  // as in the job, one for each
	Findings []Finding // of the job itself and then of every part
}

// Wheel is one wheel worked out. Lengths are in millimetres. What was not asked
// for or could not be built is nil, and where it could not, a finding says why.
type Wheel struct {
	Part      *job.Wheel
	Hand      string  // "clockwise" or "anticlockwise"
	Enters    string  // "back" where the rake face enters from the template's back, else "front"
	Bore      float64 // diameter; 0 for none
	Thickness float64
	Oversize  float64 // on the blank's diameter
	Material  tables.Material
	Blade     tables.Blade // zero unless the crossing names one
	Teeth     *tooth.Wheel
	Cut       *cutter.Cut
	Relief    *cutter.Relief
	Crossing  *crossing.Layout
	Dividing  *dividing.Answer
	Findings  []Finding
}

// Template hands the wheel over to be drawn.
func (w *Wheel) Template() template.Wheel {
	return template.Wheel{
		ID: w.Part.ID, Name: w.Part.Name, Hand: w.Hand, Enters: w.Enters,
		Bore: w.Bore, Thickness: w.Thickness, Oversize: w.Oversize, Material: w.Material,
		Teeth: w.Teeth, Cut: w.Cut, Relief: w.Relief, Crossing: w.Crossing, Dividing: w.Dividing,
	}
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
