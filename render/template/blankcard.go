package template

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// BlankCard is the card for turning a wheel's or pinion's blank, or a lantern
// pinion's shrouds. ErrNothing if there are no teeth to turn a blank for.
func BlankCard(w Wheel, s Style) (*render.Drawing, error) {
	if w.Lantern != nil {
		return shroudBlankCard(w, s), nil
	}
	if w.Teeth == nil {
		return nil, fmt.Errorf("blank card of %s: %w", w.ID, ErrNothing)
	}
	c := newCard(w, s, s.Words.Say("cards.blank.title", "name", w.title()), s.Words.Say("cards.blank.line"))
	c.twoColumns(sizeColumn, blankSteps(w, s))
	c.beside(2*sizeColumn, blankBeside(w, s))
	return c.Drawing, nil
}

// blankSteps are the sizes a blank is turned to, in their order.
func blankSteps(w Wheel, s Style) []func(*card) {
	var steps []func(*card)
	size := func(q geometry.Quantity, mm float64, key string, args ...any) {
		steps = append(steps, func(c *card) { c.size(q, c.Say("cards.blank."+key, args...), mm) })
	}
	tips := 2 * w.Teeth.TipRadius
	if w.Thickness > 0 {
		key := "thickness"
		if w.isPinion() {
			key = "leaves"
		}
		size("thickness", w.Thickness, key)
	}
	if w.Bore > 0 {
		size("bore", w.Bore, "bore")
	}
	if w.Oversize > 0 {
		size("blank.oversize", tips+w.Oversize, "turn", "oversize", s.Units.Length(w.Oversize))
		size("teeth", tips, "finish")
	} else {
		size("teeth", tips, "tips")
	}
	if n := w.Teeth.Count; n%2 == 1 {
		size("teeth.count", caliper(w.Teeth.TipRadius, n), "caliper")
	}
	return steps
}

// caliper returns what a caliper reads over the tips of a wheel with an odd count,
// where no tip stands opposite another: 2R cos(π/2N), plane geometry.
func caliper(radius float64, n int) float64 { return 2 * radius * math.Cos(math.Pi/float64(2*n)) }

// The radius, on paper, that a blank beside the card's figures reaches at most, and
// the radius below which it is enlarged.
const (
	besideRadius = 14.0
	smallBlank   = 12.0
)

// besideScale returns at what scale a blank is drawn beside the card's figures.
func besideScale(radius float64) float64 {
	if radius < smallBlank {
		return viewScale(radius, besideRadius)
	}
	return min(1, besideRadius/radius)
}

// blankBeside draws the blank as it stands beside the card's figures, no larger
// than the column.
func blankBeside(w Wheel, s Style) *render.Drawing {
	b := NewBoard(w.ID, s)
	r := w.Teeth.TipRadius + w.Oversize/2
	k := besideScale(r)
	small := w
	teeth := *w.Teeth
	teeth.TipRadius *= k
	small.Teeth, small.Bore, small.Oversize = &teeth, w.Bore*k, w.Oversize*k
	blankFace(b, small, r*k)
	b.Add("blank.oversize", render.Linear(geometry.Point{X: -r * k}, geometry.Point{X: r * k}, r*k+8, diameter(b, 2*r))...)
	return b.Drawing
}
