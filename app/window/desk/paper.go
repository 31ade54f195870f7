package desk

import (
	"context"
	"io"
	"slices"
	"strconv"

	"tipline/app/keep"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
)

// The fields of the paper that are not the job's.
const (
	paperField  geometry.Quantity = "printing.paper"
	copiesField geometry.Quantity = "printing.copies"
)

// mostCopies is the most copies of a template that are printed.
const mostCopies = 50

// packetDesk is the packet as it would be printed.
type packetDesk struct {
	paper, copies string // as typed; empty for the usual
	printing      printing
	page          int
	laid          *solve.Result // what the pages were laid out from
	document      render.Document
	err           error
}

func (d *Desk) paperFields() []Field {
	fs := []Field{d.field("", "title"), d.field("", "maker"), d.field("", "number"), d.field("", "revised"), d.field("", "units")}
	var papers []Choice
	for _, p := range sheet.Papers() {
		papers = append(papers, Choice{p.Name, d.choiceLabel(paperField, p.Name)})
	}
	say := d.words.Say
	fs = append(fs,
		Field{Path: paperField, Label: say("field.printing.paper"), Text: d.paper().Name, Choices: papers},
		Field{Path: copiesField, Label: say("field.printing.copies"), Text: d.packet.copies, Empty: "1",
			Hint: say("help.printing.copies"), Refusal: d.copiesRefusal()})
	return append(fs, d.printingFields()...)
}

// setPacket takes what was typed in a field that is the printer's and not the
// job's.
func (d *Desk) setPacket(field geometry.Quantity, text string) bool {
	switch field {
	case paperField:
		d.packet.paper = text
	case copiesField:
		d.packet.copies = text
	default:
		if !d.packet.printing.set(field, text) {
			return false
		}
	}
	d.packet.laid = nil
	d.Changed()
	return true
}

// paper returns the paper chosen, else A4, or Letter for a job in inches.
func (d *Desk) paper() sheet.Paper {
	usual := "a4"
	if d.Job().Units == string(measure.Inch) {
		usual = "letter"
	}
	if p, err := sheet.ParsePaper(d.packet.paper); err == nil {
		return p
	}
	p, _ := sheet.ParsePaper(usual)
	return p
}

func (d *Desk) copies() (int, bool) {
	if d.packet.copies == "" {
		return 1, true
	}
	n, err := strconv.Atoi(d.packet.copies)
	return min(max(n, 1), mostCopies), err == nil && n >= 1 && n <= mostCopies
}

func (d *Desk) copiesRefusal() string {
	if _, ok := d.copies(); ok {
		return ""
	}
	return d.words.Say("window.copies", "max", mostCopies)
}

// layOut lays the packet out, unless it is laid out already.
func (d *Desk) layOut() (render.Document, error) {
	p := &d.packet
	if p.laid != d.result {
		copies, _ := d.copies()
		o := packet.Options{Paper: d.paper(), Copies: copies, Style: d.Style(), Printing: d.printed()}
		doc, err := packet.Build(context.Background(), d.result, o)
		if err == nil {
			p.document = doc
		}
		p.laid, p.err = d.result, err
	}
	p.page = min(max(p.page, 0), max(len(p.document.Pages)-1, 0))
	return p.document, p.err
}

// Pages returns how many pages the packet has and which is looked at, from 0.
func (d *Desk) Pages() (count, page int) {
	doc, _ := d.layOut()
	return len(doc.Pages), d.packet.page
}

// TurnTo looks at another page.
func (d *Desk) TurnTo(page int) {
	count, _ := d.Pages()
	d.packet.page = min(max(page, 0), max(count-1, 0))
	d.Changed()
}

// Page returns the sheet that is looked at, the zero box on other steps and when
// there is none.
func (d *Desk) Page() geometry.Box {
	if d.at() != Paper {
		return geometry.Box{}
	}
	doc, _ := d.layOut()
	if len(doc.Pages) == 0 {
		return geometry.Box{}
	}
	p := doc.Pages[d.packet.page]
	return geometry.Box{Max: geometry.Point{X: p.Width, Y: p.Height}}
}

func (d *Desk) pageDrawing() (*render.Drawing, bool) {
	doc, err := d.layOut()
	if len(doc.Pages) == 0 {
		return nil, false
	}
	return doc.Pages[d.packet.page].Drawing, err != nil
}

func (d *Desk) paperSummary() string {
	doc, err := d.layOut()
	if err != nil {
		return d.words.Say("summary.no-pages")
	}
	return d.words.Say("summary.paper", "pages", len(doc.Pages), "paper", d.choiceLabel(paperField, d.paper().Name))
}

// Print writes the packet as a PDF, and returns how many pages it has.
func (d *Desk) Print(name string) (pages int, err error) {
	d.catchUp()
	doc, err := d.layOut()
	if err != nil {
		return 0, err
	}
	doc.Pages = slices.Clone(doc.Pages)
	if err = keep.Write(name, func(w io.Writer) error { return pdf.Write(w, doc) }); err == nil {
		d.Printed()
	}
	return len(doc.Pages), err
}
