package desk

import (
	"strconv"

	"tipline/app/packet"
	"tipline/geometry"
	"tipline/geometry/measure"
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
	chosen        chosen
	page          int
	laid          *order  // what the pages were last asked to be laid out from
	laying        *laying // aside; nil for nothing
	leaves        []leaf  // as last laid out
	err           error
}

func (d *Desk) paperFields() []Field {
	var papers []Choice
	for _, p := range sheet.Papers() {
		papers = append(papers, Choice{p.Name, d.choiceLabel(paperField, p.Name)})
	}
	say := d.words.Say
	fs := []Field{
		d.chosenField(),
		{Path: paperField, Label: say("field.printing.paper"), Text: d.paper().Name, Choices: papers, Hint: d.paperHint()},
		{
			Path: copiesField, Label: say("field.printing.copies"), Text: d.packet.copies, Empty: "1",
			Hint: say("help.printing.copies"), Refusal: d.copiesRefusal(),
		},
	}
	fs = append(fs, d.printingFields()...)
	for _, of := range []geometry.Quantity{"title", "maker", "number", "revised", UnitsField} {
		fs = append(fs, d.field("", of))
	}
	return fs
}

// UnitsField is the unit of the job.
const UnitsField geometry.Quantity = "units"

// UnitChoices lists the units that the job's lengths may be in.
func (d *Desk) UnitChoices() []Choice { return d.field("", UnitsField).Choices }

// turned reports whether the last step that stands is that of another unit, and how many
// other fields it changed.
func (d *Desk) turned() (others int, ok bool) {
	_, stand := d.history.Steps()
	if stand == 0 || d.draft != nil {
		return 0, false
	}
	step := d.history.Step(stand)
	return len(step) - 1, len(step) > 0 && step[0].Field == UnitsField
}

// paperHint says why the paper is what it is where none was chosen: another unit has
// another.
func (d *Desk) paperHint() string {
	if d.packet.paper != "" {
		return ""
	}
	_, unit := d.Unit()
	if _, ok := d.turned(); ok {
		return d.words.Say("paper.turned", "paper", d.choiceLabel(paperField, d.paper().Name), "unit", unit)
	}
	return d.words.Say("paper.usual", "unit", unit)
}

// unitsHint says what became of the bare lengths where another unit was just chosen, else
// what the unit is for.
func (d *Desk) unitsHint() string {
	if n, ok := d.turned(); ok && n > 0 {
		_, stand := d.history.Steps()
		return d.words.Say("units.kept", "count", n, "unit", d.history.After(stand-1).Unit())
	}
	return d.words.Say("help.units")
}

// setPacket takes what was typed in a field that is the printer's and not the
// job's.
func (d *Desk) setPacket(field geometry.Quantity, text string) bool {
	switch field {
	case paperField:
		d.packet.paper = text
	case copiesField:
		d.packet.copies = text
	case WhatField:
		d.packet.chosen.what = text
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
	if d.Job().Unit() == measure.Inch {
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

// options are those of the packet as it is chosen.
func (d *Desk) options() packet.Options {
	copies, _ := d.copies()
	o := packet.Options{Paper: d.paper(), Copies: copies, Style: d.Style(), Printing: d.printed()}
	o.Parts, o.Kinds = d.chosenParts(), d.packet.chosen.kinds()
	return o
}

func (d *Desk) paperSummary() string {
	d.layOut()
	p := &d.packet
	paper := d.choiceLabel(paperField, d.paper().Name)
	switch of, n := len(p.leaves), d.Printing(); {
	case d.layingOut() && of == 0:
		return d.words.Say("summary.laying")
	case p.err != nil:
		return d.words.Say("summary.no-pages")
	case n < of:
		return d.words.Say("summary.paper-of", "pages", n, "of", of, "paper", paper)
	default:
		return d.words.Say("summary.paper", "pages", of, "paper", paper)
	}
}
