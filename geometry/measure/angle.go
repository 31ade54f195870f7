package measure

import (
	"math"
	"math/big"
	"strings"

	"tipline/geometry"
)

// angleUnits are the units an angle may be written in, as parts of a degree; the
// rank says in what order they follow each other.
var angleUnits = map[string]struct {
	parts int64
	rank  int
}{
	"°": {1, 0}, "deg": {1, 0}, "deg.": {1, 0}, "degree": {1, 0}, "degrees": {1, 0},
	"'": {60, 1}, "min": {60, 1}, "min.": {60, 1},
	`"`: {3600, 2}, "sec": {3600, 2}, "sec.": {3600, 2},
}

// widest bounds what is read as an angle, ten turns in degrees. What a field
// allows is less and is for the field to say.
var widest = big.NewRat(3600, 1)

// ParseAngle reads an angle: a number of degrees (5, 5.5, 5,5, 22 1/2, 5°,
// 5 deg), degrees with minutes and seconds (5°30', 5 deg 30' 20"), or radians
// (0.1 rad). A minus before it turns it the other way. The error is a *Refusal.
func ParseAngle(text string) (geometry.Angle, error) {
	rest, refusal := tidy(text)
	if refusal != nil {
		return 0, refuse(text, angleCode(refusal.Code))
	}
	rest, back := strings.CutPrefix(rest, "-")
	degrees, code := angleOf(strings.TrimLeft(rest, " "))
	if code != "" {
		return 0, refuse(text, angleCode(code))
	}
	if back {
		degrees = -degrees
	}
	return geometry.Degrees(degrees), nil
}

// angleCode turns the code of a refused number into the one of an angle where
// the advice differs.
func angleCode(code string) string {
	switch code {
	case "measure.empty":
		return "measure.angle-empty"
	case "measure.not-a-value", "measure.two-numbers", "measure.too-long":
		return "measure.not-an-angle"
	}
	return code
}

// angleOf reads degrees, minutes and seconds in that order, each at most once.
func angleOf(text string) (float64, string) {
	total, rank, whole := new(big.Rat), -1, true
	for first := true; text != "" || first; first = false {
		number, rest, code := takeNumber(text)
		if code != "" {
			return 0, code
		}
		name, rest := takeUnit(strings.TrimLeft(rest, " "))
		if first && rest == "" && name == "rad" {
			return inRadians(number)
		}
		if first && rest == "" && name == "" {
			name = "°"
		}
		unit, ok := angleUnits[strings.ToLower(name)]
		switch {
		case !ok || unit.rank <= rank:
			return 0, "measure.angle-unit"
		case !whole:
			return 0, "measure.angle-broken"
		case !first && number.Cmp(big.NewRat(60, 1)) >= 0:
			return 0, "measure.angle-sixty"
		}
		whole, rank, text = number.IsInt(), unit.rank, strings.TrimLeft(rest, " ")
		total.Add(total, number.Mul(number, big.NewRat(1, unit.parts)))
	}
	if total.Cmp(widest) > 0 {
		return 0, "measure.angle-too-large"
	}
	degrees, _ := total.Float64()
	return degrees, ""
}

func inRadians(number *big.Rat) (float64, string) {
	radians, _ := number.Float64()
	degrees := radians * 180 / math.Pi
	if !(degrees <= 3600) {
		return 0, "measure.angle-too-large"
	}
	return degrees, ""
}

// takeUnit splits a text before its next digit or blank.
func takeUnit(text string) (name, rest string) {
	if end := strings.IndexAny(text, " 0123456789,-/"); end >= 0 {
		return text[:end], text[end:]
	}
	return text, ""
}
