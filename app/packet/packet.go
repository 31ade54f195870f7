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
	Copies int      // of each template, cards once; 0 is 1
	Parts  []string // ids of the parts to print, of whatever kind; all when empty
	Kinds  []Kind   // of the sheets to print; all when empty
	Style  template.Style

	Printing sheet.Options // the printer's profile, the templates' look, whether they share sheets
}

// Build lays out the whole packet: cover, what to get in, the sheets of each wheel and
// pinion in the order of the work, those of the pairs, trains and stacks, and the
// cautions. A sheet that cannot be drawn is left out, and the cover says what is
// missing. It gives way when ctx is done.
func Build(ctx context.Context, r *solve.Result, o Options) (render.Document, error) {
	doc, run, err := Plan(ctx, r, o)
	if err != nil {
		return render.Document{}, err
	}
	return drawn(ctx, doc, run)
}

// Plan plans the packet that Build draws: the document, still without pages, and the
// run that draws them one at a time.
func Plan(ctx context.Context, r *solve.Result, o Options) (render.Document, *sheet.Run, error) {
	c, err := planContents(ctx, r, o)
	if err != nil {
		return render.Document{}, nil, err
	}
	doc := document(r, o)
	if !o.Takes(Cover) {
		doc.Bookmarks = c.bookmarks(0)
		return doc, c.run, nil
	}
	front := &sheet.Run{}
	for range 2 { // the numbers, that go by how many sheets the cover takes, do not change how many
		if front, err = sheet.Plan(ctx, cover(r, c, front.Len(), o), o.Paper, o.Style, o.Printing); err != nil {
			return render.Document{}, nil, err
		}
	}
	first := render.Bookmark{Title: o.Style.Words.Say("template.kind.cover"), Page: 1}
	doc.Bookmarks = append([]render.Bookmark{first}, c.bookmarks(front.Len())...)
	return doc, c.run.Behind(front), nil
}

// Printed returns the parts that are printed, in the order of the work.
func (o Options) Printed(r *solve.Result) []solve.Part {
	return slices.DeleteFunc(r.Parts(), func(p solve.Part) bool { return len(o.Parts) > 0 && !slices.Contains(o.Parts, p.ID()) })
}

// Takes reports whether sheets of a kind are printed.
func (o Options) Takes(k Kind) bool { return len(o.Kinds) == 0 || slices.Contains(o.Kinds, k) }

// One lays out a single template, or a card with those on which it goes on. It gives
// way when ctx is done.
func One(ctx context.Context, r *solve.Result, p solve.Part, k Kind, scale float64, o Options) (render.Document, error) {
	sh, err := Sheet(r, p, k, scale, o.Style)
	if err != nil {
		return render.Document{}, err
	}
	sheets := []sheet.Sheet{sh}
	if k.IsCard() {
		more, err := k.more(p, sh.Block, o.Style)
		if err != nil {
			return render.Document{}, err
		}
		sheets = append(sheets, more...)
	}
	for i := range sheets {
		if k == Depthing {
			sheets[i].With = shares(p)
		}
	}
	run, err := sheet.Plan(ctx, sheets, o.Paper, o.Style, o.Printing)
	if err != nil {
		return render.Document{}, err
	}
	return drawn(ctx, document(r, o), run)
}

// partSheets returns the sheets of one part in the order of the work.
func partSheets(r *solve.Result, p solve.Part, o Options) ([]sheet.Sheet, error) {
	var sheets []sheet.Sheet
	for _, k := range Kinds() {
		if !o.Takes(k) || !k.prints(p) {
			continue
		}
		sh, err := Sheet(r, p, k, 1, o.Style)
		if k.Scales() && err == nil {
			sh, err = enlarged(r, p, k, o)
		}
		if err != nil {
			return nil, err
		}
		sheets = append(sheets, slices.Repeat([]sheet.Sheet{sh}, o.copiesOf(k))...)
		if k == Depthing && p != o.firstPair(r) {
			continue // how a pair is set in mesh is said once
		}
		more, err := k.more(p, sh.Block, o.Style)
		if err != nil {
			return nil, err
		}
		sheets = append(sheets, more...)
	}
	for i := range sheets {
		sheets[i].With = shares(p)
	}
	return sheets, nil
}

// firstPair returns the first pair whose card is printed; nil where none is.
func (o Options) firstPair(r *solve.Result) solve.Part {
	for _, p := range o.Printed(r) {
		if Depthing.Needs(p) {
			return p
		}
	}
	return nil
}

// shares returns what a part's sheets may share paper with: one another, and those of a
// pair or of a train with those of the others.
func shares(p solve.Part) string {
	switch p.(type) {
	case *solve.Pair:
		return string(Depthing)
	case *solve.Train:
		return string(Train)
	}
	return "of " + p.ID()
}

// copiesOf returns how many times a sheet is printed: a card once.
func (o Options) copiesOf(k Kind) int {
	if k.IsCard() {
		return 1
	}
	return max(1, o.Copies)
}

// document returns the document that a job's sheets belong to.
func document(r *solve.Result, o Options) render.Document {
	return render.Document{
		Title: r.Title(), Subject: o.Style.Words.Say("packet.subject"), Author: solve.Shown(r.Job.Maker),
		Language: o.Style.Words.Language(),
	}
}

// drawn returns the document with the pages that a run draws.
func drawn(ctx context.Context, doc render.Document, run *sheet.Run) (render.Document, error) {
	for page, err := range run.Pages(ctx) {
		if err != nil {
			return render.Document{}, err
		}
		doc.Pages = append(doc.Pages, page)
	}
	return doc, nil
}
