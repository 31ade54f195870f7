package packet

import (
	"math/big"
	"slices"
	"strconv"
	"strings"

	"tipline/app/solve"
	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/sheet"
	"tipline/render/template"
)

// cover is the packet's first sheet, or sheets: the parts and the pairs with their
// figures and the sheets they are on, on which sheets the rest is, what cannot be printed,
// and the findings, the gravest first. behind is how many sheets the cover takes.
func cover(r *solve.Result, c *contents, behind int, o Options) []sheet.Sheet {
	var lacking, errors, cautions []string
	for _, p := range o.Printed(r) {
		if missing := missing(p, o.Style); missing != "" {
			lacking = append(lacking, missing)
		}
		errors = append(errors, sentences(r, p.ID(), p.Name(), solve.Error, o.Style)...)
		cautions = append(cautions, sentences(r, p.ID(), p.Name(), solve.Caution, o.Style)...)
	}
	for _, id := range o.besides(r) {
		errors = append(errors, sentences(r, id, id, solve.Error, o.Style)...)
		cautions = append(cautions, sentences(r, id, id, solve.Caution, o.Style)...)
	}
	var sheets []sheet.Sheet
	say := o.Style.Words.Say
	block := titleBlock(r, say("template.kind.cover"))
	first := o.room(&render.Drawing{Title: r.Title()}, block)
	room := o.room(&render.Drawing{Title: r.Title(), Description: say("cards.cover.on")}, block)
	for _, d := range template.Cover(r.Title(), tables(r, c, behind, o), slices.Concat(lacking, errors, cautions), first, room, o.Style) {
		sheets = append(sheets, sheet.Sheet{Drawing: d, Block: block})
	}
	return sheets
}

// tables are the cover's: the parts, the pairs, and what else is behind it.
func tables(r *solve.Result, c *contents, behind int, o Options) []template.Table {
	say, u := o.Style.Words.Say, o.Style.Units
	parts := template.Table{Title: say("packet.parts"), Columns: columns(o.Style, "part", "teeth", "tips", "root", "arms", "mass")}
	pairs := template.Table{Title: say("packet.pairs"), Columns: columns(o.Style, "pair", "centres", "ratio", "backlash", "contact")}
	also := template.Table{Title: say("packet.also"), Columns: columns(o.Style, "title", "sheets"), Halves: true}
	told := map[string]bool{}
	for _, p := range o.Printed(r) {
		on := c.on(subject{part: p.ID()}, behind)
		switch p := p.(type) {
		case solve.Made:
			parts.Rows, told[p.ID()] = append(parts.Rows, append(figures(p, u), on)), true
		case *solve.Pair:
			pairs.Rows, told[p.ID()] = append(pairs.Rows, append(meshFigures(p, u), on)), true
		}
	}
	also.Rows = c.besides(told, behind)
	if len(c.sheets) > 0 {
		parts.Columns, pairs.Columns = append(parts.Columns, also.Columns[1]), append(pairs.Columns, also.Columns[1])
	}
	return []template.Table{parts, pairs, also}
}

// besides returns the ids of what findings stand on besides the parts: the job itself, which
// has none, and its arbors; nothing where some parts alone are printed.
func (o Options) besides(r *solve.Result) []string {
	if len(o.Parts) > 0 {
		return nil
	}
	ids := []string{""}
	for _, a := range r.Job.Arbors {
		ids = append(ids, a.ID)
	}
	return ids
}

// sentences are the findings of a severity on what has that id, which it is called by its
// name.
func sentences(r *solve.Result, id, name string, severity solve.Severity, s template.Style) []string {
	var list []string
	for _, f := range r.On(id) {
		sentence := f.Placed(name, f.Sentence(s.Words, s.Units), s.Words)
		if f.Severity == severity {
			list = append(list, sentence)
		}
	}
	return list
}

// columns returns the names of a table's columns.
func columns(s template.Style, names ...string) template.Row {
	var row template.Row
	for _, name := range names {
		row = append(row, s.Words.Say("packet.column."+name))
	}
	return row
}

// missing says which sheets a part should have and has not.
func missing(p solve.Part, s template.Style) string {
	var names []string
	for _, k := range Kinds() {
		if k.asked(p) && !k.Needs(p) {
			names = append(names, s.Words.Say("template.kind."+string(k)))
		}
	}
	if len(names) == 0 {
		return ""
	}
	return s.Words.Say("packet.missing", "part", p.Name(), "sheets", strings.Join(names, ", "))
}

// unknown stands in a table where there is no figure.
const unknown = "–"

// figures are a wheel's or pinion's row of the cover's table.
func figures(m solve.Made, u measure.Units) template.Row {
	row := template.Row{m.Name(), unknown, unknown, unknown, unknown, unknown}
	t := m.Template()
	switch {
	case t.Teeth != nil:
		row[1], row[2], row[3] = strconv.Itoa(t.Teeth.Count), u.Length(2*t.Teeth.TipRadius), u.Length(2*t.Teeth.RootRadius)
	case t.Lantern != nil:
		row[1], row[2] = strconv.Itoa(len(t.Lantern.Holes)), u.Length(t.Lantern.Shroud)
	}
	if c := t.Crossing; c != nil {
		row[4], row[5] = strconv.Itoa(c.Spec.Arms), u.Number(c.Mass, 1)+" g"
	}
	return row
}

// meshFigures are a pair's row of the cover's table.
func meshFigures(p *solve.Pair, u measure.Units) template.Row {
	if p.Turn == nil {
		return template.Row{p.Name(), unknown, unknown, unknown, unknown}
	}
	t := p.Turn
	ratio := u.Ratio(big.NewRat(int64(p.Driver.Count), int64(p.Follower.Count)))
	return template.Row{p.Name(), u.Fine(t.Centres), ratio, u.Length(t.PitchPlay), u.Number(t.Contact, 2)}
}
