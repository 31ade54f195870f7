package solve

import (
	"math/big"
	"slices"
	"strconv"
	"strings"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// reader reads the fields of one part as the maker typed them and keeps a finding
// for each that cannot be read.
type reader struct {
	part     string
	unit     measure.Unit
	findings []Finding
}

func (r *reader) find(s Severity, field geometry.Quantity, code string, places ...Place) {
	r.findings = append(r.findings, Finding{s, r.part, field, code, places})
}

// fail keeps an error of geometry; nil is no finding.
func (r *reader) fail(field geometry.Quantity, err error) bool {
	if err != nil {
		r.findings = append(r.findings, fromError(r.part, field, err))
	}
	return err != nil
}

// length reads a length in millimetres; a field left empty has the value absent
// and is no finding.
func (r *reader) length(field geometry.Quantity, v job.Value, absent float64) float64 {
	if v.Empty() {
		return absent
	}
	l, err := measure.ParsePlace(v.Text, r.unit)
	if r.fail(field, err) || !r.within(field, l.MM()) {
		return absent
	}
	return l.MM()
}

// angle reads an angle; a field left empty has the value absent.
func (r *reader) angle(field geometry.Quantity, v job.Value, absent geometry.Angle) geometry.Angle {
	if v.Empty() {
		return absent
	}
	a, err := measure.ParseAngle(v.Text)
	if r.fail(field, err) || !r.within(field, float64(a)) {
		return absent
	}
	return a
}

// count reads a whole number; a field left empty has the value absent.
func (r *reader) count(field geometry.Quantity, v job.Value, absent int) int {
	if v.Empty() {
		return absent
	}
	n, err := measure.ParseCount(v.Text)
	if below, not := strconv.Atoi(strings.TrimSpace(v.Text)); not == nil && below < 0 {
		n, err = below, nil
	}
	if r.fail(field, err) || !r.within(field, float64(n)) {
		return absent
	}
	return n
}

// number reads a plain number; a field left empty has the value absent.
func (r *reader) number(field geometry.Quantity, v job.Value, absent float64) float64 {
	exact := r.ratio(field, v, nil)
	if exact == nil {
		return absent
	}
	n, _ := exact.Float64()
	return n
}

// ratio reads a plain number, exact; a field left empty has the value absent.
func (r *reader) ratio(field geometry.Quantity, v job.Value, absent *big.Rat) *big.Rat {
	if v.Empty() {
		return absent
	}
	exact, err := measure.ParseRatio(v.Text)
	if r.fail(field, err) {
		return absent
	}
	if n, _ := exact.Float64(); !r.within(field, n) {
		return absent
	}
	return exact
}

// choice reads one of the words the field allows; a field left empty has the
// value absent.
func (r *reader) choice(field geometry.Quantity, v job.Value, absent string) string {
	if v.Empty() {
		return absent
	}
	f, _ := job.FieldAt(field)
	if !slices.Contains(f.Choices, v.Text) {
		r.find(Error, field, "finding.no-such-choice", text("read", v.Text), text("choices", list(f.Choices)))
		return ""
	}
	return v.Text
}

// within keeps a finding when a value lies outside what its field allows.
func (r *reader) within(field geometry.Quantity, v float64) bool {
	f, ok := job.FieldAt(field)
	numeric := ok && f.Kind != job.Text && f.Kind != job.Choice
	if !numeric || (v >= f.Min && v <= f.Max) {
		return true
	}
	r.findings = append(r.findings, fromError(r.part, field, geometry.Between(field, v, f.Min, f.Max, "finding.out-of-range")))
	return false
}

// need keeps a finding for each field left empty and reports whether all are
// there.
func (r *reader) need(fields map[geometry.Quantity]job.Value) bool {
	all := true
	for _, f := range job.Fields() {
		v, asked := fields[f.Path]
		if asked && v.Empty() {
			r.missing(f.Path)
			all = false
		}
	}
	return all
}

// missing keeps a finding for a field left empty, once however many steps need it.
func (r *reader) missing(field geometry.Quantity) {
	said := func(f Finding) bool { return f.Field == field && f.Code == "finding.missing" }
	if !slices.ContainsFunc(r.findings, said) {
		r.find(Error, field, "finding.missing")
	}
}

// sound reports whether no error has been found since the mark.
func (r *reader) sound(mark int) bool {
	for _, f := range r.findings[mark:] {
		if f.Severity == Error {
			return false
		}
	}
	return true
}

func list(words []string) string {
	s := ""
	for i, w := range words {
		if i > 0 {
			s += ", "
		}
		s += w
	}
	return s
}
