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
	angleFew      = 10 // rows that are not counted in tens are fewer
	angleTop      = 11.5
	cardDown      = 178.0
	angleColumns  = 5
	placedColumns = 4
)

// angles writes the angle table, with the place of the pin where the steps are not
// all alike: every tooth in the order of cutting, or the first of them where they are
// too many for what is left of the card; the rest are DividingTable's.
func (c *card) angles(w Wheel) {
	table, rows := inOrder(w.Dividing), angleRows(angleTop-c.y)
	shown := table[:min(len(table), columnsOf(w.Dividing)*rows)]
	c.rule(c.y)
	for _, line := range Wrap(c.angleTitle(*w.Dividing, len(shown)), labelHeight, CardWidth, true) {
		c.text(0, c.y-7, labelHeight, render.Black, true, "dividing", line)
		c.y -= 5
	}
	c.y += 5 - angleTop
	c.table(shown, columnsOf(w.Dividing), rows, !w.Dividing.Exact)
}

// angleTitle says what a dividing card's angle table holds.
func (c *card) angleTitle(a dividing.Answer, shown int) string {
	title := c.Say("cards.dividing.angles")
	if shown < a.Divisions {
		title = c.Say("cards.dividing.first", "n", shown, "all", a.Divisions)
	}
	if !a.Exact {
		title += c.Say("cards.dividing.places", "circle", a.Circle)
	}
	return title + ordered(a, c.Style)
}

// ordered says that the teeth stand as they are cut, where that is not one after the
// other.
func ordered(a dividing.Answer, s Style) string {
	if a.Compound == nil || a.Compound.Every == 1 {
		return ""
	}
	return s.Words.Say("cards.dividing.order")
}

// inOrder returns the rows of the angle table in the order in which the teeth are cut.
func inOrder(a *dividing.Answer) []dividing.Row {
	table := a.Table()
	rows := make([]dividing.Row, len(table))
	for i, tooth := range a.Order() {
		rows[i] = table[tooth]
	}
	return rows
}

// angleRows returns how many rows of the table stand below so much of a card.
func angleRows(down float64) int {
	return max(1, int((cardDown-down-angleTen)/(angleRow+angleTen/10)))
}

func columnsOf(a *dividing.Answer) int {
	if a.Exact {
		return angleColumns
	}
	return placedColumns
}

// table writes rows of the angle table, column by column, whole tens in each where
// there is room for so many rows, a gap before every ten, and a box to tick for each.
func (c *card) table(rows []dividing.Row, columns, room int, places bool) {
	down := (len(rows) + columns - 1) / columns
	gap := 0.0
	if tens := (down + 9) / 10 * 10; down >= angleFew {
		gap = angleTen
		if tens <= room {
			down = tens
		}
	}
	y, low := c.y, c.y
	for i, r := range rows {
		switch {
		case i%down == 0:
			y = c.y
		case i%10 == 0:
			y -= gap
		}
		at := geometry.Point{X: CardWidth / float64(columns) * float64(i/down), Y: y}
		c.Rectangle(Stroke{Layer: render.LayerText, Quantity: "dividing", Pen: render.Thin}, at, at.Add(geometry.Point{X: angleBox, Y: angleBox}))
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

// DividingTable returns the cards that go on where the dividing card's table ends, as
// many as it takes; none when the dividing card has every tooth, or where the dividing
// is not worked out.
func DividingTable(w Wheel, s Style) []*render.Drawing {
	a := w.Dividing
	if a == nil || a.Divisions < 1 {
		return nil
	}
	from := columnsOf(a) * angleRows(angleTop-dividingHead(w, s).y)
	line := s.Words.Say("cards.dividing.table.line", "circle", a.Circle)
	if a.Circle == 0 {
		line = s.Words.Say("cards.dividing.table.whole")
	}
	table, size := inOrder(a), placedColumns*(angleRows(0)/10*10)
	var cards []*render.Drawing
	for ; from < len(table); from += size {
		c := newCard(w, s, s.Words.Say("cards.dividing.table", "name", w.title()), line+ordered(*a, s))
		c.y = -2.5
		c.table(table[from:min(from+size, len(table))], placedColumns, angleRows(0), true)
		cards = append(cards, c.Drawing)
	}
	return cards
}

// dividingDown is how far down the table starts on a dividing card.
const dividingDown = 52.0
