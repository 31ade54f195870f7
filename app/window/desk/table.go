package desk

import (
	"tipline/app/solve"
	"tipline/geometry/cutter"
	"tipline/geometry/measure"
)

// Table is a small table of figures beside the fields. Chosen is the row that
// stands out, −1 for none, or where the table goes Across the column; the first cell
// of its rows then names them. A table without a head is one of names and values.
type Table struct {
	Title  string
	Head   []string
	Rows   [][]string
	Chosen int
	Across bool
}

// told are the tables of a place, and what they were made from.
type told struct {
	from  solve.Part
	step  Step
	units string
	list  []Table
}

// Tables returns what the present step tells in figures.
func (d *Desk) Tables() []Table {
	now := told{from: d.of(d.part), step: d.at(), units: d.Job().Units}
	if was := d.told; was.from != now.from || was.step != now.step || was.units != now.units {
		now.list = d.tables()
		d.told = now
	}
	return d.told.list
}

func (d *Desk) tables() []Table {
	switch p := d.of(d.part).(type) {
	case *solve.Wheel:
		if d.at() == Crossing && p.Crossing != nil {
			return []Table{d.compare(p)}
		}
	case *solve.Pair:
		if d.at() == Depthing && p.Turn != nil {
			return []Table{d.meshTable(p)}
		}
	case *solve.Stack:
		if d.at() == Mounting && p.Stacked != nil {
			return []Table{d.stackTable(p)}
		}
	}
	if t := tooling(d.of(d.part)); t != nil && d.at() == Dividing && t.Dividing != nil {
		return []Table{d.dividingTable(t.Dividing)}
	}
	if t := tooling(d.of(d.part)); t != nil && d.at() == Cutter && t.Cut != nil {
		return []Table{d.depthTable(*t.Cut)}
	}
	return nil
}

// meshTable tells how a pair turns.
func (d *Desk) meshTable(p *solve.Pair) Table {
	u, t := d.Style().Units, p.Turn
	table := Table{Title: d.words.Say("mesh.title"), Chosen: -1}
	for _, row := range []struct{ name, value string }{
		{"centres", u.Fine(t.Centres)},
		{"nominal", u.Fine(p.Nominal)},
		{"ratio", d.plain(t.Mean, 3) + " : 1"},
		{"backlash", u.Fine(t.PitchPlay)},
		{"contact", u.Number(t.Contact, 2)},
		{"error", u.Number(100*t.WorstError, 2) + " %"},
		{"approach", u.Angle(t.Approach)},
	} {
		table.Rows = append(table.Rows, []string{d.words.Say("mesh." + row.name), row.value})
	}
	return table
}

// depthRows is how many rows of the depth card are shown.
const depthRows = 9

// depthTable tells what land stands at each infeed, and how fast it goes.
func (d *Desk) depthTable(c cutter.Cut) Table {
	say, u := d.words.Say, d.Style().Units
	inch := u.Unit == measure.Inch
	decimals, mm, division := 3, 1.0, u.Number(0.01, 2)+" mm"
	if inch {
		decimals, mm, division = 4, measure.MMPerInch, u.Number(0.001, 3)+" in"
	}
	t := Table{
		Title: say("depth.title"), Chosen: depthRows - 1,
		Head: []string{say("depth.infeed", "unit", u.Name()), say("depth.land", "unit", u.Name()), say("depth.fall", "division", division)},
	}
	for _, row := range c.Depths(depthRows - 1) {
		fall := row.Fall.Hundredth
		if inch {
			fall = row.Fall.Thou
		}
		t.Rows = append(t.Rows, []string{
			u.Number(row.Infeed/mm, decimals), u.Number(max(row.Land, 0)/mm, decimals), u.Number(max(fall, 0)/mm, decimals+1),
		})
	}
	return t
}
