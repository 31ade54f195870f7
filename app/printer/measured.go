package printer

import (
	"errors"
	"math"

	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render/sheet"
)

// Measured returns the profile of a printer whose bars measured so, across and along, on
// a sheet that the profile was had shaped; the zero profile for none. The bars are those
// of 4 in where the length across was typed in inches, else those of 100 mm. The error
// is a *Misprint or that of a profile that cannot be.
func Measured(was sheet.Profile, name, paper string, across, along measure.Length) (sheet.Profile, error) {
	bar := sheet.BarMillimetres
	if across.Unit() == measure.Inch {
		bar = sheet.BarInches
	}
	p, err := was.Remeasured(name, paper, bar, across.MM(), along.MM())
	var limit *geometry.Limit
	if !errors.As(err, &limit) || math.IsNaN(limit.Value) {
		return p, err
	}
	return p, &Misprint{limit, across.Unit()}
}

// Misprint is the error of a bar that no printer prints so long or so short.
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
