package desk

import (
	"math"
	"strconv"
	"strings"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// The steps that values are dragged and nudged in.
const (
	stepMM      = 0.01
	stepInch    = 0.0005
	stepDegrees = 0.1
)

// stepped writes a value in millimetres or radians in the unit that stands in a
// field, to the nearest step.
func (d *Desk) stepped(path geometry.Quantity, old string, value float64) string {
	if known, _ := job.FieldAt(path); known.Kind == job.Angle {
		return number(math.Round(geometry.Angle(value).Degrees()/stepDegrees)*stepDegrees, 1) + tail(old, "°", " deg", "°")
	}
	if d.unitIn(old) == measure.Inch {
		return number(math.Round(value/measure.MMPerInch/stepInch)*stepInch, 4) + tail(old, `"`, " in", `"`)
	}
	return number(math.Round(value/stepMM)*stepMM, 2) + tail(old, "", " mm", "")
}

// unitIn returns the unit of a length as it stands in a field.
func (d *Desk) unitIn(text string) measure.Unit {
	if l, err := measure.ParsePlace(text, d.Style().Units.Unit); err == nil {
		return l.Unit()
	}
	return d.Style().Units.Unit
}

// number writes a number with so many decimals at most.
func number(v float64, decimals int) string {
	text := strconv.FormatFloat(v, 'f', decimals, 64)
	if text = strings.TrimRight(strings.TrimRight(text, "0"), "."); text == "-0" || text == "" {
		return "0"
	}
	return text
}

// isBare reports whether a text is a number without a unit.
func isBare(text string) bool {
	return text != "" && strings.Trim(text, "0123456789., /-⁄") == ""
}

// withUnit returns what stands in a field, a bare length or angle with the unit it is in.
func (d *Desk) withUnit(path geometry.Quantity, text string) string {
	known, _ := job.FieldAt(path)
	switch {
	case !isBare(text):
	case known.Kind == job.Length:
		_, unit := d.Unit()
		return text + " " + unit
	case known.Kind == job.Angle:
		return text + "°"
	}
	return text
}

// tail returns the unit to write after a number: the sign where the old text has
// it, nothing where the old text is a bare number, else the name.
func tail(old, sign, name, with string) string {
	switch {
	case sign != "" && strings.Contains(old, sign):
		return with
	case isBare(old):
		return ""
	}
	return name
}

// Nudge moves the value of a field by steps, as dragging does; false where it is
// no number that can be.
func (d *Desk) Nudge(part string, path geometry.Quantity, by int) bool {
	text, _ := d.Job().Text(part, path)
	known, _ := job.FieldAt(path)
	fresh, ok := d.nudged(known, text, by)
	if ok && fresh != text {
		d.Type(part, path, fresh)
	}
	return ok
}

func (d *Desk) nudged(known job.Field, text string, by int) (string, bool) {
	switch known.Kind {
	case job.Count:
		n, err := measure.ParseCount(text)
		return strconv.Itoa(within(n+by, known)), err == nil
	case job.Angle:
		a, err := measure.ParseAngle(text)
		a += geometry.Degrees(float64(by) * stepDegrees)
		return d.stepped(known.Path, text, min(max(float64(a), known.Min), known.Max)), err == nil
	case job.Length:
		l, err := measure.ParsePlace(text, d.Style().Units.Unit)
		if err != nil {
			return "", false
		}
		step := stepMM
		if l.Unit() == measure.Inch {
			step = stepInch * measure.MMPerInch
		}
		return d.stepped(known.Path, text, min(max(l.MM()+float64(by)*step, known.Min), known.Max)), true
	}
	return "", false
}

func within(n int, known job.Field) int { return min(max(n, int(known.Min)), int(known.Max)) }
