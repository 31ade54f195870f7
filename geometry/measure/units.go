package measure

import (
	"math"
	"strconv"
	"strings"

	"tipline/geometry"
)

// Units is how lengths and angles are written: in millimetres or inches, inches
// as decimals or as the nearest 1/64, with a decimal point or comma. The zero
// Units writes millimetres with a point.
type Units struct {
	Unit      Unit
	Fractions bool // inches only
	Comma     bool
}

// MMPerInch is the international inch, exact by definition (1959).
const MMPerInch = 25.4

// Length writes a length given in millimetres: "2.60 mm", "0.102 in" or
// "13/64 in".
func (u Units) Length(mm float64) string { return u.Bare(mm) + " " + u.Name() }

// Bare writes a length given in millimetres without its unit. A length that is
// not nothing but under half of 1/64 in is written in decimals.
func (u Units) Bare(mm float64) string {
	switch {
	case u.Unit != Inch:
		return u.Number(mm, 2)
	case u.Fractions && (mm == 0 || math.Abs(mm) >= MMPerInch/128):
		return sixtyFourths(mm / MMPerInch)
	}
	return u.Number(mm/MMPerInch, 3)
}

// Fine writes a length given in millimetres one decimal finer, for settings:
// "3.473 mm" or "0.1367 in", never as a fraction.
func (u Units) Fine(mm float64) string {
	if u.Unit == Inch {
		return u.Number(mm/MMPerInch, 4) + " in"
	}
	return u.Number(mm, 3) + " mm"
}

// Both writes a length given in millimetres in both units, the maker's own
// first: "12.70 mm (0.500 in)".
func (u Units) Both(mm float64) string {
	return u.Length(mm) + " (" + u.Other().Length(mm) + ")"
}

// Other returns the other unit, in decimals, written with the same decimal point.
func (u Units) Other() Units {
	if u.Unit == Inch {
		return Units{Unit: MM, Comma: u.Comma}
	}
	return Units{Unit: Inch, Comma: u.Comma}
}

// List writes texts one after the other: with commas between, or with semicolons
// where numbers have a decimal comma.
func (u Units) List(texts []string) string {
	if u.Comma {
		return strings.Join(texts, "; ")
	}
	return strings.Join(texts, ", ")
}

// Name returns the unit's name as written after a length.
func (u Units) Name() string {
	if u.Unit == Inch {
		return "in"
	}
	return "mm"
}

// Angle writes an angle in degrees with as many decimals, two at most, as it
// needs: "12°", "5.5°".
func (u Units) Angle(a geometry.Angle) string {
	text := u.Number(a.Degrees(), 2)
	if strings.ContainsAny(text, ".,") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".,")
	}
	return text + "°"
}

// Number writes a number with that many decimals, 0 to 9; "–" stands for what is
// no number.
func (u Units) Number(v float64, decimals int) string {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return "–"
	}
	text := strconv.FormatFloat(v, 'f', min(max(decimals, 0), 9), 64)
	if strings.Trim(text, "-0.") == "" {
		text = strings.TrimPrefix(text, "-")
	}
	return u.pointed(text)
}

// pointed writes a number's text with the decimal mark.
func (u Units) pointed(text string) string {
	if u.Comma {
		return strings.Replace(text, ".", ",", 1)
	}
	return text
}

// sixtyFourths writes inches as the nearest 1/64 in lowest terms: "1 3/8".
func sixtyFourths(inches float64) string {
	n := math.Round(math.Abs(inches) * 64)
	if !(n < 1<<53) {
		return "–"
	}
	sign := ""
	if inches < 0 && n > 0 {
		sign = "-"
	}
	whole, top, bottom := int64(n)/64, int64(n)%64, int64(64)
	for top > 0 && top%2 == 0 {
		top, bottom = top/2, bottom/2
	}
	fraction := strconv.FormatInt(top, 10) + "/" + strconv.FormatInt(bottom, 10)
	switch {
	case top == 0:
		return sign + strconv.FormatInt(whole, 10)
	case whole == 0:
		return sign + fraction
	}
	return sign + strconv.FormatInt(whole, 10) + " " + fraction
}
