package template

import (
	"fmt"
	"strconv"
	"strings"

	"tipline/geometry"
	"tipline/geometry/dividing"
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
	c := newCard(w, s, s.Words.Say("cards.dividing.title", "name", w.Name), s.Words.Say("cards.dividing.line"))
	c.text(0, c.y-labelHeight, labelHeight, render.Black, false, "dividing", c.Say("cards.dividing.ratio", "n", a.Divisions, "ratio", a.Ratio))
	c.y -= 12
	c.step("dividing", c.Say("cards.dividing.turns"), strconv.Itoa(a.Turns), "")
	if a.Circle > 0 {
		c.step("dividing", c.Say("cards.dividing.holes"), strconv.Itoa(a.Holes), "")
		c.step("dividing.circles", c.Say("cards.dividing.circle"), strconv.Itoa(a.Circle), "")
	} else {
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
	drawPlate(plate, w, geometry.Point{}, 30)
	c.beside(plate.Drawing)
	c.y = min(c.y, -plate.Drawing.Bounds().Height()-6)
	c.angles(w)
	return c.Drawing, nil
}

// note writes a line of small text and moves on.
func (c *card) note(text string) {
	for _, line := range wrap(text, 2.5, cardColumn-8, false) {
		c.text(0, c.y-2.5, 2.5, render.Black, false, "dividing", line)
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

// The angle table: columns and rows it may have, and how they stand.
const (
	angleColumns = 5
	angleRows    = 20
	angleColumn  = cardWidth / angleColumns
	angleRow     = 4.4
)

// angles writes the angle table, and the place of the pin where the steps are not
// all alike: for every tooth, or every k-th where they are too many.
func (c *card) angles(w Wheel) {
	table := w.Dividing.Table()
	every := 1
	for _, k := range []int{1, 2, 5, 10, 20, 50, 100, 200, 500, 1000} {
		if every = k; (len(table)+k-1)/k <= angleColumns*angleRows {
			break
		}
	}
	title := c.Say("cards.dividing.angles")
	if every > 1 {
		title = c.Say("cards.dividing.every", "k", every)
	}
	if !w.Dividing.Exact {
		title += c.Say("cards.dividing.places", "circle", w.Dividing.Circle)
	}
	c.rule(c.y)
	c.text(0, c.y-7, labelHeight, render.Black, true, "dividing", title)
	shown := (len(table) + every - 1) / every
	rows := (shown + angleColumns - 1) / angleColumns
	for i := range shown {
		at := geometry.Point{X: angleColumn * float64(i/rows), Y: c.y - 13.5 - angleRow*float64(i%rows)}
		c.angle(table[i*every], at, !w.Dividing.Exact)
	}
	c.y -= 13.5 + angleRow*float64(rows)
}

// angle writes one line of the angle table.
func (c *card) angle(r dividing.Row, at geometry.Point, place bool) {
	c.Write(Stroke{Layer: render.LayerText, Quantity: "dividing", Ink: render.Blue},
		render.Text{At: at.Add(geometry.Point{X: 7}), Height: 2.5, Align: render.Right, String: strconv.Itoa(r.Tooth)})
	reading := c.text(at.X+9.5, at.Y, 2.5, render.Black, false, "dividing", r.Reading.String())
	if place {
		c.text(at.X+9.5+reading.Width()+1.5, at.Y, heightNote, render.Grey, false, "dividing", fmt.Sprintf("%d+%d", r.Turns, r.Holes))
	}
}

// heightNote is the least height of lettering (ISO 3098).
const heightNote = 1.8
