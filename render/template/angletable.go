package template

import (
	"fmt"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/dividing"
	"tipline/render"
)

// How the angle table stands on a card: the height of a row, how far down a card
// may reach, and the columns without and with the places of the pin.
const (
	angleRow      = 4.1
	angleTen      = 1.4 // more after every tenth
	angleBox      = 2.6
	angleTop      = 13.5
	cardDown      = 178.0
	angleColumns  = 5
	placedColumns = 4
)

// angles writes the angle table, with the place of the pin where the steps are not
// all alike: every tooth, or every k-th where they are too many for what is left
// of the card.
func (c *card) angles(w Wheel) {
	table, columns := w.Dividing.Table(), columnsOf(w.Dividing)
	rows := angleRows(angleTop - c.y)
	every := evenly(len(table), columns*rows)
	title := c.Say("cards.dividing.angles")
	if every > 1 {
		title = c.Say("cards.dividing.every", "k", every)
	}
	if !w.Dividing.Exact {
		title += c.Say("cards.dividing.places", "circle", w.Dividing.Circle)
	}
	c.rule(c.y)
	for _, line := range Wrap(title, labelHeight, cardWidth, true) {
		c.text(0, c.y-7, labelHeight, render.Black, true, "dividing", line)
		c.y -= 5
	}
	c.y += 5
	var shown []dividing.Row
	for i := 0; i < len(table); i += every {
		shown = append(shown, table[i])
	}
	c.y -= angleTop
	c.table(shown, columns, rows, !w.Dividing.Exact, every == 1)
}

// angleRows returns how many rows of the table stand below so much of a card.
func angleRows(down float64) int {
	return max(1, int((cardDown-down-angleTen)/(angleRow+angleTen/10)))
}

// evenly returns the least round k such that every k-th of n is no more than room.
func evenly(n, room int) int {
	for _, k := range []int{1, 2, 5, 10, 20, 50, 100, 200, 500} {
		if (n+k-1)/k <= room {
			return k
		}
	}
	return 1000
}

func columnsOf(a *dividing.Answer) int {
	if a.Exact {
		return angleColumns
	}
	return placedColumns
}

// table writes rows of the angle table, column by column, whole tens in each where
// there is room for so many rows, a gap before every ten, and a box to tick where every
// tooth has its row.
func (c *card) table(rows []dividing.Row, columns, room int, places, boxes bool) {
	down := (len(rows) + columns - 1) / columns
	if tens := (down + 9) / 10 * 10; tens <= room {
		down = tens
	}
	y, low := c.y, c.y
	for i, r := range rows {
		switch {
		case i%down == 0:
			y = c.y
		case r.Tooth%10 == 0 && boxes:
			y -= angleTen
		}
		at := geometry.Point{X: cardWidth / float64(columns) * float64(i/down), Y: y}
		if boxes {
			c.Rectangle(Stroke{Layer: render.LayerText, Quantity: "dividing", Pen: render.Thin}, at, at.Add(geometry.Point{X: angleBox, Y: angleBox}))
		}
		c.angle(r, at.Add(geometry.Point{X: angleBox}), places)
		y -= angleRow
		low = min(low, y)
	}
	c.y = low
}

// angle writes one line of the angle table.
func (c *card) angle(r dividing.Row, at geometry.Point, place bool) {
	c.Write(Stroke{Layer: render.LayerText, Quantity: "dividing", Ink: render.Blue},
		render.Text{At: at.Add(geometry.Point{X: 7}), Height: 2.5, Align: render.Right, String: strconv.Itoa(r.Tooth)})
	c.text(at.X+9, at.Y, 2.5, render.Black, false, "dividing", r.Reading.String())
	if place {
		c.text(at.X+30, at.Y, 2.2, render.Grey, false, "dividing", fmt.Sprintf("%d + %d", r.Turns, r.Holes))
	}
}

// DividingTable returns the cards that list every tooth's angle and the place of
// the pin, as many as it takes; none when the dividing card has them all. It gives
// none either where the dividing is not worked out.
func DividingTable(w Wheel, s Style) []*render.Drawing {
	a := w.Dividing
	if a == nil || a.Divisions < 1 {
		return nil
	}
	room := columnsOf(a) * angleRows(angleTop-dividingHead(w, s).y)
	if a.Divisions <= room {
		return nil
	}
	line := s.Words.Say("cards.dividing.table.line", "circle", a.Circle)
	if a.Circle == 0 {
		line = s.Words.Say("cards.dividing.table.whole")
	}
	table, size := a.Table(), placedColumns*(angleRows(0)/10*10)
	var cards []*render.Drawing
	for from := 0; from < len(table); from += size {
		c := newCard(w, s, s.Words.Say("cards.dividing.table", "name", w.title()), line)
		c.y = -2.5
		c.table(table[from:min(from+size, len(table))], placedColumns, angleRows(0), true, true)
		cards = append(cards, c.Drawing)
	}
	return cards
}

// dividingDown is how far down the table starts on a dividing card.
const dividingDown = 78.0
