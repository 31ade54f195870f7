package printer

import (
	"errors"
	"math"

	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render/sheet"
)

// Measured returns the profile of a printer whose bars measured so, across and along, on
// a sheet that the profile was had shaped; the zero profile for none. Each of the two is
// of the 4 in bar where it was typed in inches, else of that of 100 mm; a length that is
// rather that of the other bar, read in the wrong unit, is refused. The error is a
// *Misprint or that of a profile that cannot be.
func Measured(was sheet.Profile, name, paper string, across, along measure.Length) (sheet.Profile, error) {
	x, err := barOf("printing.across", across)
	if err != nil {
		return sheet.Profile{}, err
	}
	y, err := barOf("printing.up", along)
	if err != nil {
		return sheet.Profile{}, err
	}
	p, err := was.Remeasured(name, paper, x, y)
	var limit *geometry.Limit
	switch {
	case !errors.As(err, &limit) || math.IsNaN(limit.Value):
		return p, err
	case limit.Quantity == "printing.up":
		return p, &Misprint{limit, along.Unit()}
	}
	return p, &Misprint{limit, across.Unit()}
}

// rather is how near the other bar's length one is refused as that bar's: as much as most
// printers err (common practice, no source). Read for each other the bars would make a
// profile that is out by 1.6 %; a printer that does err so is measured by its other bars.
const rather = 0.003

// barOf returns the bar that a length was measured of, by the unit it was typed in.
func barOf(q geometry.Quantity, l measure.Length) (sheet.Bar, error) {
	bar, other, code := sheet.BarMillimetres, sheet.BarInches, "printer.inch-bar"
	if l.Unit() == measure.Inch {
		bar, other, code = other, bar, "printer.mm-bar"
	}
	if math.Abs(l.MM()/other-1) < rather {
		return sheet.Bar{}, &Misprint{geometry.Refused(q, l.MM(), code), l.Unit()}
	}
	return sheet.Bar{Length: bar, Measured: l.MM()}, nil
}

// Misprint is the error of a bar that no printer prints so long or so short, or of a
// length that is rather the other bar's.
type Misprint struct {
	Limit *geometry.Limit // Quantity is "printing.across" or "printing.up"
	Unit  measure.Unit    // it was measured in
}

// Error says the refusal in English.
func (m *Misprint) Error() string { return m.Limit.Error() }

// Unwrap returns the limit.
func (m *Misprint) Unwrap() error { return m.Limit }

// Say returns the refusal, with what would do, as say, which says a text of the
// catalogue, says it; comma is whether numbers have a decimal comma.
func (m *Misprint) Say(say func(string, ...any) string, comma bool) string {
	u := measure.Units{Unit: m.Unit, Comma: comma}
	return say(m.Limit.Code, "value", u.Fine(m.Limit.Value), "min", u.Fine(m.Limit.Min), "max", u.Fine(m.Limit.Max))
}
