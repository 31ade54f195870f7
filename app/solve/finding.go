package solve

import (
	"errors"
	"math"
	"sort"
	"strings"

	"tipline/app/job"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/measure"
	"tipline/geometry/mount"
)

// Severity says how bad a finding is.
type Severity string

// The severities.
const (
	Error   Severity = "error"   // cannot be made
	Caution Severity = "caution" // will go wrong
	Note    Severity = "note"    // worth knowing
)

func (s Severity) rank() int {
	return map[Severity]int{Note: 1, Caution: 2, Error: 3}[s]
}

// Finding is one thing the program has to say about a job. Its sentence is made
// last, from Code and Places.
type Finding struct {
	Severity Severity
	Part     string            // id of the part; empty for the job itself
	Field    geometry.Quantity // path within the part
	Code     string            // key of the catalogue
	Places   []Place           // what stands in the sentence's places
}

// Place is a number or a text that stands in a sentence.
type Place struct {
	Name  string
	Value float64
	Kind  Kind
	Text  string            // instead of a number
	Waits string            // id of the part that Text names and that must be mended first
	Of    string            // field whose word Text is, to be said in the maker's language
	Field geometry.Quantity // whose name is said
	Each  []Place           // several, as a list
	Bound Bound             // how it is rounded, so that it would do when typed back
}

// Bound says which way a number is rounded.
type Bound int

// The bounds.
const (
	Nearest    Bound = iota
	LeastOf          // up: nothing less would do
	GreatestOf       // down: nothing more would do
)

// Kind says how a number is written.
type Kind int

// The kinds of number.
const (
	Text       Kind = iota
	Length          // mm
	FineLength      // mm, a decimal finer
	Angle           // radians
	Degrees         // a direction in degrees, whole, 0 to 359
	Count           // a whole number
	Micrometre      // µm, whole
	Percent         // of a share 0 to 1
	Plain           // two decimals
	Fine            // up to four decimals, as many as it needs
)

// Sentence says the finding in the maker's language and units.
func (f Finding) Sentence(w words.Words, u measure.Units) string {
	args := []any{"label", called(f.Field, w)}
	for _, p := range f.Places {
		args = append(args, p.Name, p.said(w, u))
	}
	return w.Say(f.Code, args...)
}

// said writes the place in the maker's language and units.
func (p Place) said(w words.Words, u measure.Units) string {
	switch {
	case p.Of != "":
		return w.Choice(p.Of, p.Text)
	case p.Field != "":
		return called(p.Field, w)
	}
	return p.In(u)
}

// called returns what a field is called; its path where it has no name.
func called(path geometry.Quantity, w words.Words) string {
	known, ok := job.FieldAt(path)
	if key := "field." + string(known.Path); ok && w.Has(key) {
		return w.Say(key)
	}
	return string(path)
}

// In writes the place in the units.
func (p Place) In(u measure.Units) string {
	if p.Each != nil {
		var each []string
		for _, one := range p.Each {
			each = append(each, one.In(u))
		}
		return u.List(each)
	}
	switch p.Kind {
	case Length:
		return u.Length(p.bounded(u))
	case FineLength:
		return u.Fine(p.Value)
	case Angle:
		return u.Angle(geometry.Angle(p.Value))
	case Degrees:
		return u.Number(math.Mod(math.Round(p.Value)+360, 360), 0) + "°"
	case Count, Micrometre:
		return u.Number(p.Value, 0)
	case Percent:
		return u.Number(100*p.Value, 0)
	case Plain:
		return u.Number(p.Value, 2)
	case Fine:
		return strings.TrimRight(strings.TrimRight(u.Number(p.Value, 4), "0"), ".,")
	}
	return p.Text
}

// bounded returns a length as it is written in the units: in inches the last digit
// shown is a thousandth, or a 1/64.
func (p Place) bounded(u measure.Units) float64 {
	step := measure.MMPerInch / 1000
	if u.Fractions {
		step = measure.MMPerInch / 64
	}
	switch {
	case u.Unit != measure.Inch:
		return p.Value
	case p.Bound == LeastOf:
		return upTo(p.Value, step)
	case p.Bound == GreatestOf:
		return -upTo(-p.Value, step)
	}
	return p.Value
}

// text makes a place of a text, as it is shown.
func text(name, s string) Place { return Place{Name: name, Text: Shown(s)} }

// choice and its like make places.
func choice(name, of, word string) Place            { return Place{Name: name, Text: Shown(word), Of: of} }
func field(name string, of geometry.Quantity) Place { return Place{Name: name, Field: of} }
func number(name string, v float64, k Kind) Place   { return Place{Name: name, Value: v, Kind: k} }

// atLeast and atMost make places of bounds.
func atLeast(name string, v float64, k Kind) Place {
	return Place{Name: name, Value: upTo(v, k.step()), Kind: k, Bound: LeastOf}
}

func atMost(name string, v float64, k Kind) Place {
	return Place{Name: name, Value: -upTo(-v, k.step()), Kind: k, Bound: GreatestOf}
}

func several(name string, each []Place) Place { return Place{Name: name, Each: each} }

// named returns the place under another name.
func (p Place) named(name string) Place { p.Name = name; return p }

// places makes n places of one kind.
func places(n int, k Kind, value func(i int) float64) []Place {
	ps := make([]Place, n)
	for i := range ps {
		ps[i] = number("", value(i), k)
	}
	return ps
}

// limitPlaces writes a limit's numbers as the field they belong to is written. A
// bound is rounded towards the side that is allowed, so that the value shown
// would do when typed back.
func limitPlaces(l *geometry.Limit) []Place {
	kind := kindOf(l.Quantity)
	return []Place{number("value", l.Value, kind), atLeast("min", l.Min, kind), atMost("max", l.Max, kind)}
}

// steps are the smallest differences the sentences show.
func (k Kind) step() float64 {
	switch k {
	case Length:
		return 0.01
	case Angle:
		return float64(geometry.Degrees(0.1))
	case Fine:
		return 1e-4
	}
	return 1
}

// upTo returns the whole number of steps that is at least v.
func upTo(v, step float64) float64 {
	if math.IsInf(v, 0) {
		return v
	}
	return math.Ceil(v/step-1e-9) * step
}

// kindOf returns how a field's values are written.
func kindOf(field geometry.Quantity) Kind {
	f, ok := job.FieldAt(field)
	if !ok || field == "crossing.blade" { // of a blade the sheet's thickness is told
		return Length
	}
	switch f.Kind {
	case job.Angle:
		return Angle
	case job.Count, job.Text:
		return Count
	case job.Number:
		return Fine
	}
	return Length
}

// fromError makes a finding of an error of geometry, measure or the job.
func fromError(part string, field geometry.Quantity, err error) Finding {
	var limit *geometry.Limit
	if errors.As(err, &limit) {
		if limit.Quantity != "" {
			field = limit.Quantity
		}
		return Finding{Error, part, field, limit.Code, append(limitPlaces(limit), otherPlace(err)...)}
	}
	var refusal *measure.Refusal
	if errors.As(err, &refusal) {
		return Finding{Error, part, field, refusal.Code, []Place{text("read", refusal.Read)}}
	}
	var jobs *job.Refusal
	if errors.As(err, &jobs) {
		return Finding{Error, part, field, jobs.Code, []Place{text("value", jobs.Value), choice("reason", "system", jobs.Reason())}}
	}
	return Finding{Error, part, field, "finding.unbuildable", []Place{text("reason", err.Error())}}
}

// otherPlace names the addition that an error of geometry is about besides its field's
// own, as they are counted from 1.
func otherPlace(err error) []Place {
	var meeting *crossing.Meeting
	var struck *mount.Struck
	switch {
	case errors.As(err, &meeting):
		return []Place{number("other", float64(meeting.Other+1), Count)}
	case errors.As(err, &struck):
		return []Place{number("other", float64(struck.Addition+1), Count)}
	}
	return nil
}

// sorted puts the gravest findings first and keeps the order of the work within
// each severity.
func sorted(fs []Finding) []Finding {
	sort.SliceStable(fs, func(i, j int) bool { return fs[i].Severity.rank() > fs[j].Severity.rank() })
	return fs
}
