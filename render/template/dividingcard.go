package template

import (
	"fmt"
	"strconv"
	"strings"

	"tipline/geometry"
	"tipline/render"
)

// DividingCard is the card for indexing a wheel: turns and holes, and the angle of
// every tooth, or of as many evenly chosen ones as the card holds. ErrNothing if
// the dividing is not worked out.
func DividingCard(w Wheel, s Style) (*render.Drawing, error) {
	a := w.Dividing
	if a == nil || a.Divisions < 1 {
		return nil, fmt.Errorf("dividing card of %s: %w", w.ID, ErrNothing)
	}
	c := newCard(w, s, s.Words.Say("cards.dividing.title", "name", w.title()), s.Words.Say("cards.dividing.line"))
	c.text(0, c.y-labelHeight, labelHeight, render.Black, false, "dividing", c.Say(divided(w), "n", a.Divisions, "ratio", a.Ratio))
	c.y -= 10
	c.large(0, "dividing", c.Say("cards.dividing.turns"), a.Turns)
	if a.Circle > 0 {
		c.large(26, "dividing", c.Say("cards.dividing.holes"), a.Holes)
		c.large(60, "dividing.circles", c.Say("cards.dividing.circle"), a.Circle)
	}
	c.y -= 25
	if a.Circle == 0 {
		c.note(c.Say("cards.dividing.whole"))
	}
	if n := a.Sector(); n > 0 {
		c.note(c.Say("cards.dividing.arms", "holes", n-1, "total", n))
	}
	if a.Exact {
		c.note(c.Say("cards.dividing.exact"))
	} else {
		c.note(c.Say("cards.dividing.error", "error", s.Units.Number(a.Error, 1)))
		c.note(c.Say("cards.dividing.first-only"))
	}
	if len(a.Direct) > 0 {
		c.note(c.Say("cards.dividing.direct", "n", a.Divisions, "plates", counts(a.Direct)))
	}
	plate := NewBoard(w.ID, s)
	drawPlate(plate, w, geometry.Point{}, 28)
	c.beside(plate.Drawing)
	c.y = -dividingDown
	c.angles(w)
	return c.Drawing, nil
}

// divided returns the catalogue's key for what is divided, and by which head.
func divided(w Wheel) string {
	switch {
	case w.Lantern != nil:
		return "cards.dividing.trundles"
	case w.isPinion():
		return "cards.dividing.leaves"
	}
	return "cards.dividing.ratio"
}

// large writes a count in the largest figures with its name above.
func (c *card) large(x float64, q geometry.Quantity, label string, n int) {
	c.text(x, c.y-labelHeight, labelHeight, render.Black, false, q, label)
	c.text(x, c.y-labelHeight-4-largeHeight, largeHeight, render.Black, true, q, strconv.Itoa(n))
}

// largeHeight is the height of the figures that are read from across the bench.
const largeHeight = 10.0

// note writes a line of small text and moves on.
func (c *card) note(text string) {
	for _, line := range Wrap(text, 2.5, cardColumn-8, false) {
		c.text(0, c.y-2.5, 2.5, render.Black, false, "", line)
		c.y -= 4.6
	}
}

func counts(ns []int) string {
	texts := make([]string, len(ns))
	for i, n := range ns {
		texts[i] = strconv.Itoa(n)
	}
	return strings.Join(texts, ", ")
}
