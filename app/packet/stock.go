package packet

import (
	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/render"
	"tipline/render/sheet"
	"tipline/render/template"
)

// stock are the cards of what the job needs; none where some parts alone are printed.
func stock(r *solve.Result, o Options) []sheet.Sheet {
	if len(o.Parts) > 0 || !o.Takes(Stock) {
		return nil
	}
	var sheets []sheet.Sheet
	block := titleBlock(r, o.Style.Words.Say("template.kind.stock"))
	line := &render.Drawing{Title: r.Title(), Description: o.Style.Words.Say("cards.stock.line")}
	for _, d := range template.StockCards(r.Title(), StockGroups(r, o.Style.Words), o.room(line, block), o.Style) {
		sheets = append(sheets, sheet.Sheet{Drawing: d, Block: block})
	}
	return sheets
}

// StockGroups lists what the job needs by kind, a kind of which nothing is needed without
// rows.
func StockGroups(r *solve.Result, w words.Words) []template.StockGroup {
	u := solve.Units(r.Job, w)
	rows := map[solve.StockKind][]template.StockRow{}
	for _, g := range solve.Gather(solve.Stock(r)) {
		rows[g.Kind] = append(rows[g.Kind], template.StockRow{Item: g.Describe(w, u), For: g.For(w), Usual: g.Usual})
	}
	var groups []template.StockGroup
	for _, k := range solve.StockKinds() {
		groups = append(groups, template.StockGroup{Title: w.Say("stock.kind." + string(k)), Rows: rows[k]})
	}
	return groups
}

// room returns how high a card under that heading may be.
func (o Options) room(heading *render.Drawing, block sheet.TitleBlock) float64 {
	return o.Printing.Room(heading, template.CardWidth, o.Paper, block, o.Style) - 2*cardBelow
}

// cardBelow is what a card leaves free above and below itself, in millimetres.
const cardBelow = 1.0
