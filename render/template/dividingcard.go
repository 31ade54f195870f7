package template

import (
	"fmt"
	"strconv"
	"strings"

	"tipline/geometry"
	"tipline/geometry/dividing"
	"tipline/render"
)

// DividingCard is the card for indexing a wheel: turns and holes, the two moves that do
// better where no circle is exact, and the angle of every tooth with a box to tick it
// off, or of the first of them where the card does not hold all: DividingTable has the
// rest. ErrNothing if the dividing is not worked out.
func DividingCard(w Wheel, s Style) (*render.Drawing, error) {
	if w.Dividing == nil || w.Dividing.Divisions < 1 {
		return nil, fmt.Errorf("dividing card of %s: %w", w.ID, ErrNothing)
	}
	c := dividingHead(w, s)
	plate := NewBoard(w.ID, s)
	drawPlate(plate, w, geometry.Point{}, cardPlate)
	c.beside(dividingFigures, plate.Drawing)
	c.angles(w)
	return c.Drawing, nil
}

// The radius of the hole circle on a dividing card, and where the figures left of it end.
const (
	cardPlate       = 15.0
	dividingFigures = 112.0
)

// dividingHead is a dividing card down to where its table starts.
func dividingHead(w Wheel, s Style) *card {
	a := w.Dividing
	c := newCard(w, s, s.Words.Say("cards.dividing.title", "name", w.title()), s.Words.Say("cards.dividing.line"))
	c.text(0, c.y-labelHeight, labelHeight, render.Black, false, "dividing", c.Say(divided(w), "n", a.Divisions, "ratio", a.Ratio))
	c.y -= 10
	c.large(0, "dividing", c.Say("cards.dividing.turns"), a.Turns)
	if a.Circle > 0 {
		c.large(26, "dividing", c.Say("cards.dividing.holes"), a.Holes)
		c.large(60, "dividing.circles", c.Say("cards.dividing.circle"), a.Circle)
	}
	c.y -= 25
	c.wide = dividingFigures
	c.dividingNotes(w)
	c.y = min(c.y-2, -dividingDown)
	return c
}

// dividingNotes says what there is to mind.
func (c *card) dividingNotes(w Wheel) {
	a := *w.Dividing
	if a.Circle == 0 {
		c.note(c.Say(wholeTurnsOf(w)))
	}
	if n := a.Sector(); n > 0 {
		c.note(c.Say("cards.dividing.arms", "holes", n-1, "total", n))
	}
	if a.Exact {
		c.note(c.Say("cards.dividing.exact"))
	} else {
		c.note(c.Say("cards.dividing.error", "error", c.Style.Units.Number(a.Error, 1)))
		c.note(c.Say("cards.dividing.first-only"))
	}
	if a.Compound != nil {
		c.compound(a)
	}
	if len(a.Direct) > 0 {
		c.note(c.Say("cards.dividing.direct", "n", a.Divisions, "plates", counts(a.Direct)))
	}
}

// compound says the two moves that come nearer than any circle alone, and in which
// order they come to the teeth.
func (c *card) compound(a dividing.Answer) {
	m := a.Compound
	c.y -= 1.2
	way := "cards.dividing.compound.on"
	if m.Backwards() {
		way = "cards.dividing.compound.back"
	}
	c.note(c.Say(way, "turns", m.Turns, "holes", m.First.Holes, "circle", m.First.Circle,
		"others", max(m.Second.Holes, -m.Second.Holes), "other", m.Second.Circle))
	if m.Exact {
		c.note(c.Say("cards.dividing.compound.exact"))
	} else {
		c.note(c.Say("cards.dividing.compound.error", "error", c.Style.Units.Number(m.Error, 1)))
	}
	if m.Every > 1 {
		order := a.Order()
		c.note(c.Say("cards.dividing.compound.every", "every", m.Every, "order", counts(order[:min(4, len(order))])))
	}
	if m.Backwards() {
		c.note(c.Say("dividing.compound-backwards"))
	}
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

// wholeTurnsOf returns the key for whole turns, for each of what is divided.
func wholeTurnsOf(w Wheel) string {
	switch {
	case w.Lantern != nil:
		return "cards.dividing.trundles.whole"
	case w.isPinion():
		return "cards.dividing.leaves.whole"
	}
	return "cards.dividing.ratio.whole"
}

// large writes a count in the largest figures with its name above.
func (c *card) large(x float64, q geometry.Quantity, label string, n int) {
	c.text(x, c.y-labelHeight, labelHeight, render.Black, false, q, label)
	c.text(x, c.y-labelHeight-4-largeHeight, largeHeight, render.Black, true, q, strconv.Itoa(n))
}

// largeHeight is the height of the figures that are read from across the bench.
const largeHeight = 10.0

// noteLine is how far apart lines of small text stand.
const noteLine = 4.0

// note writes a line of small text and moves on.
func (c *card) note(text string) {
	for _, line := range Wrap(text, 2.5, c.wide, false) {
		c.text(0, c.y-2.5, 2.5, render.Black, false, "", line)
		c.y -= noteLine
	}
}

func counts(ns []int) string {
	texts := make([]string, len(ns))
	for i, n := range ns {
		texts[i] = strconv.Itoa(n)
	}
	return strings.Join(texts, ", ")
}
