package packet

import (
	"context"
	"slices"

	"tipline/app/solve"
	"tipline/render"
	"tipline/render/sheet"
	"tipline/render/template"
)

// Options say what is printed and on what.
type Options struct {
	Paper  sheet.Paper
	Copies int    // of each template, cards once; 0 is 1
	Wheel  string // id of the one part to print; all when empty
	Style  template.Style
}

// Build lays out the whole packet: cover, the sheets of each wheel in the order of
// the work, and the cautions. A sheet that cannot be drawn is left out, and the
// cover says what is missing. It gives way when ctx is done.
func Build(ctx context.Context, r *solve.Result, o Options) (render.Document, error) {
	sheets := []sheet.Sheet{cover(r, o)}
	for _, w := range r.Wheels {
		if o.Wheel != "" && w.Part.ID != o.Wheel {
			continue
		}
		if err := ctx.Err(); err != nil {
			return render.Document{}, err
		}
		of, err := wheelSheets(r, w, o)
		if err != nil {
			return render.Document{}, err
		}
		sheets = append(sheets, of...)
	}
	sheets = append(sheets, sheet.Sheet{
		Drawing: template.Cautions(o.Style), Block: titleBlock(r, o.Style.Words.Say("template.kind.cautions")),
	})
	return document(r, sheets, o)
}

// One lays out a single template or card.
func One(r *solve.Result, w *solve.Wheel, k Kind, scale float64, o Options) (render.Document, error) {
	sh, err := Sheet(r, w, k, scale, o.Style)
	if err != nil {
		return render.Document{}, err
	}
	return document(r, []sheet.Sheet{sh}, o)
}

// wheelSheets returns the sheets of one wheel in the order of the work.
func wheelSheets(r *solve.Result, w *solve.Wheel, o Options) ([]sheet.Sheet, error) {
	var sheets []sheet.Sheet
	for _, k := range Kinds() {
		if !k.Needs(w) {
			continue
		}
		sh, err := Sheet(r, w, k, 1, o.Style)
		if k == Grinding && err == nil {
			sh, err = enlarged(r, w, o)
		}
		if err != nil {
			return nil, err
		}
		sheets = append(sheets, slices.Repeat([]sheet.Sheet{sh}, o.copiesOf(k))...)
		if k == Dividing {
			for _, more := range template.DividingTable(w.Template(), o.Style) {
				sheets = append(sheets, sheet.Sheet{Drawing: more, Block: sh.Block})
			}
		}
	}
	return sheets, nil
}

// copiesOf returns how many times a sheet is printed: a card once.
func (o Options) copiesOf(k Kind) int {
	if k.IsCard() {
		return 1
	}
	return max(1, o.Copies)
}

// scales are the enlargements of ISO 5455, the greatest first.
var scales = []float64{50, 20, 10, 5, 2, 1}

// enlarged returns the grinding template at the greatest scale that fits on one
// sheet.
func enlarged(r *solve.Result, w *solve.Wheel, o Options) (sheet.Sheet, error) {
	var sh sheet.Sheet
	var err error
	for _, scale := range scales {
		sh, err = Sheet(r, w, Grinding, scale, o.Style)
		if err != nil || sheet.Fits(sh.Drawing, o.Paper, sh.Block, o.Style) {
			break
		}
	}
	return sh, err
}

func document(r *solve.Result, sheets []sheet.Sheet, o Options) (render.Document, error) {
	pages, err := sheet.Lay(sheets, o.Paper, o.Style)
	if err != nil {
		return render.Document{}, err
	}
	return render.Document{
		Title: r.Job.Title, Subject: o.Style.Words.Say("packet.subject"), Author: r.Job.Maker,
		Language: o.Style.Words.Language(), Pages: pages,
	}, nil
}
