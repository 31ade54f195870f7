package packet

import (
	"tipline/app/solve"
	"tipline/render/sheet"
	"tipline/render/template"
)

// stock are the cards of what the job needs; none where one part alone is printed.
func stock(r *solve.Result, o Options) []sheet.Sheet {
	if o.Wheel != "" {
		return nil
	}
	u := solve.Units(r.Job)
	rows := map[solve.StockKind][]template.StockRow{}
	for _, i := range solve.Stock(r) {
		rows[i.Kind] = listed(rows[i.Kind], i.Kind, template.StockRow{Item: i.Describe(o.Style.Words, u), For: i.For(o.Style.Words), Usual: i.Usual})
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

// listed adds a row to those of its kind. A tool that serves several times is got in
// once.
func listed(rows []template.StockRow, kind solve.StockKind, row template.StockRow) []template.StockRow {
	tool := kind == solve.Drill || kind == solve.Tap
	if last := len(rows) - 1; tool && last >= 0 && rows[last].Item == row.Item && rows[last].Usual == row.Usual {
		if rows[last].For != row.For {
			rows[last].For += "; " + row.For
		}
		return rows
	}
	return append(rows, row)
}
