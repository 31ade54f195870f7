//go:build geos

package main

import (
	"context"
	"fmt"
	"io"

	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/template"
)

// besideWriter measures the sample's packet, from its job to the last byte, beside PDF
// writers that are given the same pages drawn already: the program's own, and the canvas
// library's.
func besideWriter(p *page) error {
	j, err := sample()
	if err != nil {
		return err
	}
	paper, err := sheet.ParsePaper("a4")
	if err != nil {
		return err
	}
	o := packet.Options{Paper: paper, Style: template.Style{Words: words.English(), Units: solve.Units(j, words.English())}}
	ctx := context.Background()
	drawn, err := packet.Build(ctx, solve.Solve(ctx, j), o)
	if err != nil {
		return err
	}
	ready, err := libraryPages(drawn.Pages)
	if err != nil {
		return err
	}
	if err := writeByLibrary(io.Discard, ready); err != nil {
		return err
	}
	whole := func() {
		doc, run, err := packet.Plan(ctx, solve.Solve(ctx, j), o)
		if err == nil {
			_ = pdf.WriteEach(io.Discard, doc, run.Pages(ctx))
		}
	}
	note := fmt.Sprintf("%d pages", len(drawn.Pages))
	p.compare(row{what: "packet of the sample", beside: "the PDF writer alone", goal: 1.5, note: note},
		whole, func() { _ = pdf.Write(io.Discard, drawn) })
	p.compare(row{what: "packet of the sample", beside: "canvas' PDF writer alone", goal: 1.5, note: note + ", paths and lettering ready to be written"},
		whole, func() { _ = writeByLibrary(io.Discard, ready) })
	return nil
}
