package sheet

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/template"
)

// Lengths of the bars on every sheet, in millimetres: what FromBars is told was
// measured.
const (
	BarMillimetres = 100.0
	BarInches      = 4 * measure.MMPerInch
)

// MostError is how far a printer's lengths may be out, as a share: makers of laser
// printers allowed themselves 2 to 3 % (comp.laser-printers, June 1988 and 22 June
// 1990). Bars that are further out were printed by a program that fitted the page
// to the paper, and such a scale is not the printer's.
const MostError = 0.03

// Profile is what one printer does with one paper: X and Y are how long it prints
// what should be 1, across and up the paper as the paper is named, on its short
// side as a rule. The zero Profile is none and corrects nothing.
type Profile struct {
	Name  string // of the printer, as its owner calls it
	Paper string // the paper's name
	X, Y  float64
}

// FromBars returns the profile of a printer whose bars of a length, BarMillimetres
// or BarInches, measured x across and y up a sheet that no profile had shaped. A
// measure that is more than MostError out is refused with a *geometry.Limit.
func FromBars(name, paper string, bar, x, y float64) (Profile, error) {
	return Profile{}.Remeasured(name, paper, Bar{bar, x}, Bar{bar, y})
}

// Bar is a bar as it was measured. Length is what it should be, BarMillimetres or
// BarInches.
type Bar struct{ Length, Measured float64 }

// Remeasured returns the profile by a bar across and one up a sheet that p had shaped.
func (p Profile) Remeasured(name, paper string, across, up Bar) (Profile, error) {
	byX, byY := p.stretch(false).Factors()
	next := Profile{name, paper, across.Measured / across.Length / byX, up.Measured / up.Length / byY}
	if !printable(next.X) {
		return Profile{}, fitted("printing.across", across.Measured, across.Length*byX)
	}
	if !printable(next.Y) {
		return Profile{}, fitted("printing.up", up.Measured, up.Length*byY)
	}
	return next, nil
}

// printable reports whether a printer can err so.
func printable(scale float64) bool {
	const rounding = 1e-9 // so that exactly MostError will do
	return math.Abs(scale-1) <= MostError+rounding
}

func fitted(q geometry.Quantity, measured, bar float64) *geometry.Limit {
	return geometry.Between(q, measured, bar*(1-MostError), bar*(1+MostError), "printer.fitted")
}

// None reports whether the profile is none.
func (p Profile) None() bool { return p == Profile{} }

// Check refuses a profile that no printer can have; none is none.
func (p Profile) Check() error {
	if p.None() {
		return nil
	}
	_, err := FromBars(p.Name, p.Paper, 1, p.X, p.Y)
	return err
}

// stretch returns what the profile makes of a page, which lies turned or as the
// paper is named.
func (p Profile) stretch(turned bool) render.Stretch {
	switch {
	case p.None():
		return render.Stretch{}
	case turned:
		return render.Stretch{X: 1 / p.Y, Y: 1 / p.X}
	}
	return render.Stretch{X: 1 / p.X, Y: 1 / p.Y}
}

// said returns what the title block calls the profile.
func (p Profile) said(s template.Style) string {
	if p.None() {
		return s.Words.Say("sheet.profile.none")
	}
	return p.Name
}

// foot adds to the line of caution by how much the profile's printer errs.
func (p Profile) foot(caution string, s template.Style) string {
	if p.None() {
		return caution
	}
	x, y := p.Errors(s.Units)
	return s.Words.Say("sheet.profile.foot", "name", p.Name, "x", x, "y", y) + " " + caution
}

// Errors writes by how many hundredths the printer errs across the paper and along
// it, signed.
func (p Profile) Errors(u measure.Units) (across, along string) {
	return percent(p.X, u), percent(p.Y, u)
}

// True reports whether the printer errs by nothing that Errors would write.
func (p Profile) True() bool { return isTrue(p.X) && isTrue(p.Y) }

// isTrue reports whether a scale is 1 to the two places that percent writes.
func isTrue(scale float64) bool { return math.Abs(100*(scale-1)) < 0.005 }

// percent writes by how much a scale is off 1.
func percent(scale float64, u measure.Units) string {
	text := u.Number(math.Abs(100*(scale-1)), 2)
	switch {
	case isTrue(scale):
		return text
	case scale < 1:
		return "−" + text
	}
	return "+" + text
}

// givenUp is how far, in millimetres, the drawing's upper and right margins give way to a
// correction before the room for the drawing does: what printers are out as a rule, 0.4 %
// of 400 mm, and little enough that the corner crosses stay clear.
const givenUp = 1.6

// holds returns the paper that the layout may use, and how far its margins give way: a
// page that is stretched is drawn on less, so that nothing of it is moved off the sheet.
func (l lying) holds() (paper Paper, given geometry.Point) {
	x, y := l.against.Factors()
	paper = Paper{l.paper.Name, l.paper.Width / max(1, x), l.paper.Height / max(1, y)}
	return paper, geometry.Point{X: min(givenUp, l.paper.Width-paper.Width), Y: min(givenUp, l.paper.Height-paper.Height)}
}
