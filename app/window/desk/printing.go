package desk

import (
	"errors"
	"slices"

	"tipline/app/printer"
	"tipline/geometry"
	"tipline/render/sheet"
)

// The fields of how the paper is printed.
const (
	printerField geometry.Quantity = "printing.printer"
	sharedField  geometry.Quantity = "printing.shared"
	lookField    geometry.Quantity = "printing.look"
)

// What may share a sheet: what follows each other of one part, templates of several
// parts too, or nothing.
const (
	filled   = "filled"
	together = "together"
	apart    = "apart"
)

// looks are the ways to print a template, by the words they are chosen by.
var looks = map[string]sheet.Look{
	"as drawn": {}, "mirrored": {Mirrored: true}, "outlines": {OutlinesOnly: true},
	"thin": {Thin: true}, "punch": {Punch: true}, "black": {BlackOnly: true},
}

// lookOrder is the order they are offered in.
var lookOrder = []string{"as drawn", "outlines", "thin", "black", "punch", "mirrored"}

// printing is how the sheets are printed, as chosen; each empty for the usual.
type printing struct {
	printer, shared, look string
	queue                 string // of the system, that sheets were last sent to
}

// set takes what was chosen in a field of printing, and reports whether it is one.
func (p *printing) set(field geometry.Quantity, text string) bool {
	switch field {
	case printerField:
		p.printer = text
	case sharedField:
		p.shared = text
	case lookField:
		p.look = text
	default:
		return false
	}
	return true
}

// printingFields are the choices of printer, of sharing sheets and of the look.
func (d *Desk) printingFields() []Field {
	p := d.packet.printing
	return []Field{
		{
			Path: printerField, Label: d.words.Say("field.printing.printer"), Text: p.printer, Choices: d.printers(),
			Hint: d.words.Say("help.printing.printer"), Refusal: d.printerRefusal(),
		},
		{
			Path: sharedField, Label: d.words.Say("field.printing.shared"), Text: usual(p.shared, filled),
			Choices: d.labelled(sharedField, filled, together, apart),
		},
		{
			Path: lookField, Label: d.words.Say("field.printing.look"), Text: usual(p.look, lookOrder[0]),
			Choices: d.labelled(lookField, lookOrder...),
		},
	}
}

// printers are the printers that were measured with the present paper, and none.
func (d *Desk) printers() []Choice {
	choices := []Choice{{"", d.words.Say("choice.printing.printer.none")}}
	known, _ := printer.Usual().List() // what cannot be read is not offered
	for _, p := range known {
		if p.Paper == d.paper().Name {
			choices = append(choices, Choice{p.Name, p.Name})
		}
	}
	chosen := d.packet.printing.printer
	if chosen != "" && !slices.ContainsFunc(choices, func(c Choice) bool { return c.Value == chosen }) {
		choices = append(choices, Choice{chosen, chosen})
	}
	return choices
}

func (d *Desk) labelled(field geometry.Quantity, values ...string) []Choice {
	var cs []Choice
	for _, v := range values {
		cs = append(cs, Choice{v, d.choiceLabel(field, v)})
	}
	return cs
}

// printed returns how the sheets are printed. A printer that was not measured with
// the present paper shapes nothing.
func (d *Desk) printed() sheet.Options {
	p := d.packet.printing
	o := sheet.Options{Together: p.shared == together, Apart: p.shared == apart, Look: looks[usual(p.look, lookOrder[0])]}
	o.Profile, _ = d.profile()
	return o
}

func (d *Desk) profile() (sheet.Profile, error) {
	if d.packet.printing.printer == "" {
		return sheet.Profile{}, nil
	}
	return printer.Usual().Load(d.packet.printing.printer, d.paper().Name)
}

// printerRefusal says why the chosen printer shapes nothing.
func (d *Desk) printerRefusal() string {
	var refusal *printer.Refusal
	if _, err := d.profile(); errors.As(err, &refusal) {
		return refusal.Say(d.words.Say)
	}
	return ""
}

func usual(text, otherwise string) string {
	if text == "" {
		return otherwise
	}
	return text
}
