// Package solve works a job out: geometry, figures and findings. It is the only
// place where a job becomes geometry; the window, the commands and the packet all
// read its Result.
package solve

import (
	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
	"tipline/geometry/tooth"
)

// Severity says how bad a finding is.
type Severity string

// The severities.
const (
	Error   Severity = "error"   // cannot be made
	Caution Severity = "caution" // will go wrong
	Note    Severity = "note"    // worth knowing
)

// Finding is one thing the program has to say about a job. Its sentences are
// made by words and measure from Code, Value, Min, Max and Text.
type Finding struct {
	Severity Severity
	Part     string            // id of the part; empty for the job itself
	Field    geometry.Quantity // path within the part
	Code     string            // key of the catalogue
	Limit    *geometry.Limit   // the numbers, where there are any
	Text     string            // what was read, where a text could not be
}

// Result is a job worked out.
type Result struct {
	Job      *job.Job
	Wheels   []*Wheel // as in the job, one for each
	Findings []Finding
}

// Wheel is one wheel worked out. What could not be built is nil, and a finding
// says why.
type Wheel struct {
	Part      *job.Wheel
	Bore      float64 // diameter, mm; 0 for none
	Thickness float64
	Oversize  float64 // on the blank's diameter
	Material  tables.Material
	Teeth     *tooth.Wheel
	Cut       *cutter.Cut
	Relief    *cutter.Relief
	Crossing  *crossing.Layout
	Dividing  *dividing.Answer
	Findings  []Finding
}
