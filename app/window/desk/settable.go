package desk

import (
	"strconv"
	"strings"

	"tipline/app/solve"
	"tipline/geometry/dividing"
)

// stackTable tells how the wheels of a stack are turned to each other, and what a
// misplacement makes of it.
func (d *Desk) stackTable(s *solve.Stack) Table {
	say, u := d.words.Say, d.Style().Units
	t := Table{Title: say("stack.title"), Chosen: -1}
	for i, w := range s.Wheels {
		t.Rows = append(t.Rows, []string{say("stack.turned", "name", w.Name()), u.Angle(s.Stacked.Turns[i].Turn())})
	}
	return t.and(say("stack.smaller-turns"), u.Angle(s.Stacked.Twist)).
		and(say("stack.larger-out"), u.Number(1000*s.Stacked.Error, 0)+" µm")
}

// and returns the table with one more name and value.
func (t Table) and(name, value string) Table {
	t.Rows = append(t.Rows, []string{name, value})
	return t
}

// dividingTable tells how the teeth are divided: with one move, with two where that
// is nearer, and with direct plates.
func (d *Desk) dividingTable(a *dividing.Answer) Table {
	say := d.words.Say
	t := Table{Title: say("divide.title"), Chosen: -1}
	t = t.and(say("divide.one"), d.move(a.Turns, dividing.Move{Holes: a.Holes, Circle: a.Circle})).
		and(say("divide.error"), d.out(a.Error, a.Exact))
	if c := a.Compound; c != nil && c.Error < a.Error {
		t = t.and(say("divide.first"), d.move(c.Turns, c.First)).
			and(say("divide.second"), d.move(0, c.Second)).
			and(say("divide.leads"), strconv.Itoa(c.Every)).
			and(say("divide.two-error"), d.out(c.Error, c.Exact))
	}
	var plates []string
	for _, p := range a.Direct {
		plates = append(plates, strconv.Itoa(p))
	}
	if len(plates) > 0 {
		t = t.and(say("divide.direct"), strings.Join(plates, ", "))
	}
	return t
}

// out writes an error at the tips in µm.
func (d *Desk) out(um float64, exact bool) string {
	if exact {
		return d.words.Say("divide.exact")
	}
	return d.Style().Units.Number(um, 1) + " µm"
}

// move writes turns and holes of one move of the crank; whole turns go without a
// circle.
func (d *Desk) move(turns int, m dividing.Move) string {
	holes := ""
	switch {
	case m.Holes < 0:
		holes = d.words.Say("divide.back", "holes", -m.Holes, "circle", m.Circle)
	case m.Circle > 0:
		holes = d.words.Say("divide.move", "holes", m.Holes, "circle", m.Circle)
	}
	switch {
	case turns == 0:
		return holes
	case turns == 1:
		return strings.TrimSpace(d.words.Say("divide.turn", "holes", holes))
	}
	return strings.TrimSpace(d.words.Say("divide.turns", "turns", turns, "holes", holes))
}
