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
	tips := 2 * w.Teeth.TipRadius
	if w.Thickness > 0 {
		key := "cards.blank.thickness"
		if w.isPinion() {
			key = "cards.blank.leaves"
		}
		c.size("thickness", c.Say(key), w.Thickness)
	}
	if w.Bore > 0 {
		c.size("bore", c.Say("cards.blank.bore"), w.Bore)
	}
	if w.Oversize > 0 {
		c.size("blank.oversize", c.Say("cards.blank.turn", "oversize", s.Units.Length(w.Oversize)), tips+w.Oversize)
		c.size("teeth", c.Say("cards.blank.finish"), tips)
	} else {
		c.size("teeth", c.Say("cards.blank.tips"), tips)
	}
	if n := w.Teeth.Count; n%2 == 1 {
		c.size("teeth.count", c.Say("cards.blank.caliper"), caliper(w.Teeth.TipRadius, n))
	}
	c.beside(blankBeside(w, s))
	return c.Drawing, nil
}

// caliper returns what a caliper reads over the tips of a wheel with an odd count,
// where no tip stands opposite another: 2R cos(π/2N), plane geometry.
func caliper(radius float64, n int) float64 { return 2 * radius * math.Cos(math.Pi/float64(2*n)) }

// The radius, on paper, that a blank beside the card's figures reaches at most, and
// the radius below which it is enlarged.
const (
	besideRadius = 34.0
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
