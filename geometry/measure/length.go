package measure

import (
	"math/big"
	"strings"

	"tipline/assets/tables"
)

// Unit is the unit of a length that is written without one.
type Unit string

// The units of a job.
const (
	MM   Unit = "mm"
	Inch Unit = "in"
)

// Length is a length as it was typed, exact. The zero Length is 0 mm, typed as
// nothing.
type Length struct {
	text string
	unit Unit
	mm   *big.Rat
}

// MM returns the length in millimetres.
func (l Length) MM() float64 {
	mm, _ := l.Rat().Float64()
	return mm
}

// Rat returns the length in millimetres, exact; the caller may change it.
func (l Length) Rat() *big.Rat {
	if l.mm == nil {
		return new(big.Rat)
	}
	return new(big.Rat).Set(l.mm)
}

// Text returns what was typed, unchanged.
func (l Length) Text() string { return l.text }

// Unit returns the kind of unit it was typed in: Inch for inches, thousandths of
// an inch and drills, MM for all metric ones.
func (l Length) Unit() Unit {
	if l.unit == Inch {
		return Inch
	}
	return MM
}

// sizes are the units a length may be written in, in millimetres.
var sizes = map[string]struct {
	mm   *big.Rat
	unit Unit
}{
	"mm":     {big.NewRat(1, 1), MM},
	"cm":     {big.NewRat(10, 1), MM},
	"µm":     {big.NewRat(1, 1000), MM},
	"um":     {big.NewRat(1, 1000), MM},
	"in":     {big.NewRat(254, 10), Inch},
	"in.":    {big.NewRat(254, 10), Inch},
	"inch":   {big.NewRat(254, 10), Inch},
	"inches": {big.NewRat(254, 10), Inch},
	`"`:      {big.NewRat(254, 10), Inch},
	"thou":   {big.NewRat(254, 10000), Inch},
}

// longest bounds what is read as a length, 1 km in millimetres. What a field
// allows is less and is for the field to say.
var longest = big.NewRat(1_000_000, 1)

// ParseLength reads a length of nothing or more: a number of the given unit
// (12, 12.5, 12,5, 5/16, 1 3/8, 1-3/8, ⅜), or one with its own (mm, cm, µm, in,
// ", thou), or a drill's name (#60, F). A comma is a decimal comma. What has more
// than one meaning is refused: 1,234.5, two values, 1e3. The error is a
// *Refusal.
func ParseLength(text string, unit Unit) (Length, error) {
	length, err := ParsePlace(text, unit)
	if err != nil {
		return Length{}, err
	}
	if length.mm.Sign() < 0 || strings.HasPrefix(plain.Replace(strings.TrimSpace(text)), "-") {
		return Length{}, refuse(text, "measure.negative")
	}
	return length, nil
}

// ParsePlace reads a length as ParseLength does, and one with a minus before it:
// a place on a line that goes both ways.
func ParsePlace(text string, unit Unit) (Length, error) {
	tidied, refusal := tidy(text)
	if refusal != nil {
		return Length{}, refusal
	}
	if drill, is, ok := drillNamed(tidied); ok {
		return Length{text, Inch, inches(drill)}, nil
	} else if is {
		return Length{}, refuse(text, "measure.no-such-drill")
	}
	tidied, back := strings.CutPrefix(tidied, "-")
	number, rest, code := takeNumber(strings.TrimLeft(tidied, " "))
	if code == "" {
		number, unit, code = inUnit(number, strings.TrimLeft(rest, " "), unit)
	}
	if code != "" {
		return Length{}, refuse(text, code)
	}
	if back {
		number.Neg(number)
	}
	return Length{text, unit, number}, nil
}

// inUnit returns the number in millimetres by the unit that follows it, which is
// all that may.
func inUnit(number *big.Rat, name string, unit Unit) (*big.Rat, Unit, string) {
	if name == "" {
		name = string(unit)
	}
	size, ok := sizes[strings.ToLower(name)]
	if !ok && strings.ContainsAny(name, "0123456789") {
		return nil, "", "measure.two-values"
	}
	if !ok {
		return nil, "", "measure.unit"
	}
	number.Mul(number, size.mm)
	if number.Cmp(longest) > 0 {
		return nil, "", "measure.too-large"
	}
	return number, size.unit, ""
}

// drillNamed returns the drill a text names; is tells a text that can be nothing
// but a drill's name.
func drillNamed(text string) (drill tables.TwistDrill, is, ok bool) {
	number, isNumber := strings.CutPrefix(text, "#")
	isLetter := len(text) == 1 && 'A' <= text[0] && text[0] <= 'Z'
	if isNumber {
		text = "#" + strings.TrimLeft(number, " ")
	}
	if !isNumber && !isLetter {
		return drill, false, false
	}
	drill, ok = tables.DrillNamed(text)
	return drill, true, ok
}

func inches(d tables.TwistDrill) *big.Rat {
	size, _ := new(big.Rat).SetString(d.Inches)
	return size.Mul(size, sizes["in"].mm)
}
