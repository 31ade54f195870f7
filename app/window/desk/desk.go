// Package desk is what the window works on: the job with its history, the part
// and step that are looked at, and what the job comes to. It knows no widgets, so
// that all the window does can be tried without one.
package desk

import (
	"context"
	"path/filepath"
	"slices"
	"strings"

	"tipline/app/appearance"
	"tipline/app/job"
	"tipline/app/language"
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

	// Aside, where it is set, does what takes long beside the window: it calls run
	// on another goroutine, and when that is over done on the window's.
	Aside func(run, done func())

	// Later, where it is set, calls do a moment later on any goroutine. With it an
	// unsaved job is kept as it is edited; without it none is.
	Later func(do func())

	// Language is where the choice of a language is kept, and what decides without one.
	Language language.Choice

	// Looks is where the choice of how the window looks is kept.
	Looks appearance.Choice

	words   words.Words
	recent  Recent
	history *job.History
	file    string // where the job is kept; empty until it is saved
	imprint imprint
	strayed bool // the file is no longer what was read or saved
	held    held
	solver  *solve.Solver
	solving *solving  // aside; nil for nothing
	saving  *saving   // aside; nil for nothing
	coming  *bringing // nil for nothing
	result  *solve.Result
	known   map[string]solve.Part // of the result, by id
	awaited map[string]bool       // those of the parts of which nothing is worked out yet, by id
	part    string
	step    Step // last gone to
	turn    float64
	lit     geometry.Quantity
	last    map[place]drawn
	places  places
	told    told
	packet  packetDesk
	draft   *job.Job // while a handle is dragged
	refused refused
	picking *picking
	rule    rule
	veiled  veiled
	photos  photos
	unsaved unsaved
	staged  staged
	moved   map[*job.Job]string // by what it led to, the part a step moved
	prints  prints
	sought  string          // in the rail
	unseen  []solve.Finding // photographs of the result's job that cannot be shown
}

// New returns a desk with an empty job in millimetres on it.
func New(w words.Words, recent Recent) *Desk {
	d := &Desk{Changed: func() {}, words: w, recent: recent}
	if recent.File != "" {
		d.unsaved.folder = filepath.Join(filepath.Dir(recent.File), "unsaved")
	}
	d.Begin()
	return d
}

// Another returns an empty desk of the same words and memory, for another window.
func (d *Desk) Another() *Desk {
	other := New(d.words, d.recent)
	other.Language, other.Looks = d.Language, d.Looks
	return other
}

// lay puts another job on the desk, solved unless it was.
func (d *Desk) lay(b *Brought) {
	if b.held != d.held {
		d.held.letGo()
	}
	d.history, d.file, d.imprint, d.held, d.strayed = b.history, b.file, b.imprint, b.held, false
	d.part, d.step, d.lit, d.turn = "", Crossing, "", 0
	d.last = map[place]drawn{}
	d.packet = packetDesk{}
	d.draft, d.refused, d.picking, d.photos = nil, refused{}, nil, photos{}
	d.rule, d.veiled.from, d.staged = rule{}, nil, nil
	d.moved = map[*job.Job]string{}
	d.sought, d.prints = "", d.recent.readPrints(b.file)
	d.stand(b)
}

// stand has a job that was brought be the one that is worked on.
func (d *Desk) stand(b *Brought) {
	d.giveWay()
	if d.solver = b.solver; b.result == nil {
		d.solver = new(solve.Solver)
		b.result = d.solver.Solve(context.Background(), d.Job())
	}
	d.keepCopy()
	d.take(b.result)
	d.show()
}

// work has the job solved as it now stands and says that something changed.
func (d *Desk) work() {
	d.keepCopy()
	d.solve()
	d.show()
}

// show makes sure that what is looked at is there, and says that something changed.
func (d *Desk) show() {
	if order := d.order(); d.kindOf(d.part) == noPart {
		d.part = ""
		if len(order) > 0 {
			d.part = order[0]
		}
	}
	if !d.HasPhotograph() {
		d.picking = nil
	}
	d.Changed()
}

// take makes what a job comes to the result that is shown.
func (d *Desk) take(r *solve.Result) {
	d.awaited = map[string]bool{}
	d.have(d.standing(d.looked(r)))
}

// have makes a result the one that is shown. Where the part that is looked at is no more,
// its neighbour is looked at.
func (d *Desk) have(r *solve.Result) {
	known := partsOf(r)
	if d.part != "" && known[d.part] == nil {
		d.part, d.turn = d.neighbour(func(id string) bool { return known[id] != nil }), 0
	}
	d.result, d.known = r, known
}

// of returns what a part comes to, nil for none of the id.
func (d *Desk) of(id string) solve.Part { return d.known[id] }

// Words returns the catalogue the desk speaks with.
func (d *Desk) Words() words.Words { return d.words }

// Job returns the job as it now stands, with what is being dragged.
func (d *Desk) Job() *job.Job {
	if d.draft != nil {
		return d.draft
	}
	return d.history.Job()
}

// Result returns what the job comes to.
func (d *Desk) Result() *solve.Result { return d.result }

// Style returns how text is made for this job.
func (d *Desk) Style() template.Style {
	return template.Style{Words: d.words, Units: solve.Units(d.Job(), d.words)}
}

// Part returns the id of the part that is looked at, empty in a job without any.
func (d *Desk) Part() string { return d.part }

// Choose looks at another part.
func (d *Desk) Choose(part string) {
	if part != d.part && d.kindOf(part) != noPart {
		d.leave()
		d.part, d.turn = part, 0
		d.Changed()
	}
}

// Turn looks at the part by places further down, no further than the ends.
func (d *Desk) Turn(by int) {
	order := d.Found()
	if i := slices.Index(order, d.part); i >= 0 {
		d.Choose(order[min(max(i+by, 0), len(order)-1)])
	}
}

// Step returns the step that is looked at.
func (d *Desk) Step() Step { return d.at() }

// Go looks at another step of the present part.
func (d *Desk) Go(step Step) {
	if step != d.at() && slices.Contains(d.Steps(), step) {
		d.leave()
		d.step = step
		d.Changed()
	}
}

// leave ends what was going on at a place.
func (d *Desk) leave() {
	if d.draft != nil {
		d.draft = nil
		d.solve()
	}
	d.lit, d.refused, d.picking, d.rule = "", refused{}, nil, rule{}
	d.history.EndRun()
}

// Mesh returns how far the present pair is turned, as a share of the driver's
// pitch from 0 to 1; false on any other step, and where nothing can be turned.
func (d *Desk) Mesh() (turn float64, ok bool) {
	p, isPair := d.of(d.part).(*solve.Pair)
	return d.turn, isPair && p.Turn != nil && d.at() == Depthing
}

// TurnMesh turns the present pair. Only the drawing changes, so Changed is not
// called.
func (d *Desk) TurnMesh(to float64) { d.turn = min(max(to, 0), 1) }

// Light lights the lines that a field made; an empty field puts the light out.
func (d *Desk) Light(field geometry.Quantity) {
	if field != d.lit {
		d.lit, d.refused = field, refused{}
		d.history.EndRun()
		d.Changed()
	}
}

// LitField returns the field that is lit, empty for none.
func (d *Desk) LitField() geometry.Quantity { return d.lit }

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
	"form":                "leaves",
	"mount.thread":        "mount.screws",
	"mount.start":         "mount.screws",
}

// LitText returns what stands in the field that is lit, as typed or worked out, a bare
// number with its unit. A bit's
// corners are marked by themselves, so there it is nothing until one is dragged.
func (d *Desk) LitText() string {
	if strings.HasPrefix(string(d.lit), "cutter.bit.chain[") && !d.Dragging() {
		return ""
	}
	if worked := d.worked(d.lit); worked != "" {
		return worked
	}
	text, _ := d.Job().Text(d.part, d.lit)
	switch _, grave := d.refusal(d.part, d.lit); {
	case grave && text != "":
		return "× " + text // the drawing is of an older value
	case slices.Contains([]geometry.Quantity{"wheel", "pinion", "from", "to", "hour"}, d.lit):
		return d.Name(text)
	}
	return d.withUnit(d.lit, text)
}

func (d *Desk) wheel() *solve.Wheel {
	w, _ := d.of(d.part).(*solve.Wheel)
	return w
}
