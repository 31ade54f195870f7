package desk

import (
	"strconv"

	"tipline/app/solve"
	"tipline/geometry/crossing"
)

// compare tells what the wheel comes to with other counts of arms, and uncrossed.
func (d *Desk) compare(w *solve.Wheel) Table {
	say, u := d.words.Say, d.Style().Units
	arms := w.Crossing.Spec.Arms
	whole := w.Crossing.Uncrossed
	t := Table{Title: say("compare.title"), Head: []string{say("compare.arms")}, Across: true}
	for _, row := range []string{"mass", "inertia", "windup", "removed", "section"} {
		t.Rows = append(t.Rows, []string{say("compare."+row, "unit", u.Name())})
	}
	for i, r := range solve.CompareArms(w, around(arms)) {
		if r.Arms == arms {
			t.Chosen = i + 1
		}
		t.column(strconv.Itoa(r.Arms), d.compared(r))
	}
	none := say("compare.none")
	t.column(say("compare.uncrossed"), []string{u.Number(whole.Mass, 1), u.Number(whole.Inertia, 0), none, none, none})
	return t
}

// compared writes what one count of arms comes to.
func (d *Desk) compared(r crossing.Row) []string {
	u, none := d.Style().Units, d.words.Say("compare.none")
	if r.Err != nil {
		return []string{none, none, none, none, none}
	}
	return []string{
		u.Number(r.Mass, 1), u.Number(r.Inertia, 0), u.Number(r.WindUp, 2), u.Number(100*r.RemovedShare, 0), u.Bare(r.Narrowest.Width),
	}
}

// column sets one more column of cells under a head.
func (t *Table) column(head string, cells []string) {
	t.Head = append(t.Head, head)
	for i := range t.Rows {
		t.Rows[i] = append(t.Rows[i], cells[i])
	}
}

// around returns the usual counts of arms, or where the wheel has another three
// about that.
func around(arms int) []int {
	least, most := 3, 12
	first := 4
	if arms < 4 || arms > 6 {
		first = min(max(arms-1, least), most-2)
	}
	return []int{first, first + 1, first + 2}
}

// CanSuggest reports whether the present step is one for which values to start from
// can be suggested.
func (d *Desk) CanSuggest() bool {
	w := d.wheel()
	return w != nil && d.at() == Crossing && w.Teeth != nil
}

// Suggest puts a crossing to start from into the present wheel's fields, in one step
// of undoing; false where there is no room for any.
func (d *Desk) Suggest() bool {
	d.catchUp()
	if !d.CanSuggest() {
		return false
	}
	list, ok := solve.SuggestCrossing(d.wheel(), d.Style().Units.Unit)
	if !ok {
		return false
	}
	j := d.Job()
	for _, v := range list {
		j = d.with(j, v.Field, v.Text)
	}
	if j != d.Job() {
		d.do(j)
	}
	return true
}
