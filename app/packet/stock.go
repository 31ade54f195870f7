package packet

import (
	"tipline/app/solve"
	"tipline/render/sheet"
	"tipline/render/template"
)

// stock are the cards of what the job needs; none where some parts alone are printed.
func stock(r *solve.Result, o Options) []sheet.Sheet {
	if len(o.Parts) > 0 || !o.takes(Stock) {
		return nil
	}
	u := solve.Units(r.Job, o.Style.Words)
	rows := map[solve.StockKind][]template.StockRow{}
	for _, g := range solve.Gather(solve.Stock(r)) {
		row := template.StockRow{Item: g.Describe(o.Style.Words, u), For: g.For(o.Style.Words), Usual: g.Usual}
		rows[g.Kind] = append(rows[g.Kind], row)
	}
	var groups []template.StockGroup
	for _, k := range solve.StockKinds() {
		groups = append(groups, template.StockGroup{Title: o.Style.Words.Say("stock.kind." + string(k)), Rows: rows[k]})
	}
	var sheets []sheet.Sheet
	block := titleBlock(r, o.Style.Words.Say("template.kind.stock"))
	for _, d := range template.StockCards(r.Job.Title, groups, o.Style) {
		sheets = append(sheets, sheet.Sheet{Drawing: d, Block: block})
	}
	return sheets
}
