package solve

import (
	"math"
	"strconv"
	"strings"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/measure"
)

// Typed is a value as it is typed into a field.
type Typed struct {
	Field geometry.Quantity
	Text  string
}

// tidySteps are what suggested lengths are rounded to: the first at which the
// crossing can still be made is taken. In mm, and in parts of an inch.
var (
	tidySteps      = []float64{0.1, 0.05, 0.01}
	tidyInchShares = []int{64, 128, 1000}
)

// SuggestCrossing returns a crossing to start from, from the wheel's teeth, size and
// bore alone, as it is typed into a job of the unit: tidy lengths, of which the
// crossing can be made. False for a wheel without teeth or without room for any.
func SuggestCrossing(w *Wheel, unit measure.Unit) ([]Typed, bool) {
	if w.Teeth == nil {
		return nil, false
	}
	b := w.blank()
	if b.Thickness == 0 {
		b.Thickness = 1
	}
	if b.Density == 0 {
		b.Density, b.Young = 1, 1
	}
	asked := crossing.Suggest(b)
	for i, step := range tidySteps {
		if unit == measure.Inch {
			step = measure.MMPerInch / float64(tidyInchShares[i])
		}
		s := tidied(asked, step)
		if _, err := crossing.Lay(b, s); err == nil {
			return typed(s, unit, i), true
		}
	}
	return nil, false
}

// tidied returns the crossing with its lengths rounded to whole steps, the fillets
// and the allowance down.
func tidied(s crossing.Spec, step float64) crossing.Spec {
	for _, l := range []*float64{&s.Rim, &s.Hub, &s.ArmAtRim, &s.ArmAtHub} {
		*l = max(1, math.Round(*l/step)) * step
	}
	for _, l := range []*float64{&s.FilletAtRim, &s.FilletAtHub, &s.Allowance} {
		*l = math.Floor(*l/step+1e-9) * step
	}
	return s
}

func typed(s crossing.Spec, unit measure.Unit, tidy int) []Typed {
	length := func(mm float64) string { return tidyText(mm, unit, tidy) }
	return []Typed{
		{"crossing.arms", strconv.Itoa(s.Arms)},
		{"crossing.style", string(s.Style)},
		{"crossing.placing", string(s.Placing)},
		{"crossing.rim", length(s.Rim)},
		{"crossing.hub", length(s.Hub)},
		{"crossing.arm_at_rim", length(s.ArmAtRim)},
		{"crossing.arm_at_hub", length(s.ArmAtHub)},
		{"crossing.fillet_at_rim", length(s.FilletAtRim)},
		{"crossing.fillet_at_hub", length(s.FilletAtHub)},
		{"crossing.allowance", length(s.Allowance)},
	}
}

// tidyText writes a length of whole steps in the unit.
func tidyText(mm float64, unit measure.Unit, tidy int) string {
	if unit != measure.Inch {
		return strings.TrimSuffix(strconv.FormatFloat(mm, 'f', 2, 64), "0") + " mm"
	}
	share := tidyInchShares[tidy]
	parts := int(math.Round(mm / measure.MMPerInch * float64(share)))
	if share == 1000 || parts == 0 {
		return strconv.FormatFloat(float64(parts)/float64(share), 'f', -1, 64) + " in"
	}
	for parts%2 == 0 && share > 1 {
		parts, share = parts/2, share/2
	}
	switch whole, rest := parts/share, parts%share; {
	case rest == 0:
		return strconv.Itoa(whole) + " in"
	case whole == 0:
		return strconv.Itoa(rest) + "/" + strconv.Itoa(share) + " in"
	default:
		return strconv.Itoa(whole) + " " + strconv.Itoa(rest) + "/" + strconv.Itoa(share) + " in"
	}
}

// CompareArms works out the wheel's crossing with each of these counts of arms; none
// for a wheel that is not crossed.
func CompareArms(w *Wheel, counts []int) []crossing.Row {
	if w.Crossing == nil {
		return nil
	}
	return crossing.Compare(w.Crossing.Blank, w.Crossing.Spec, counts)
}
