package desk

import (
	"errors"

	"tipline/app/printer"
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render/sheet"
)

// Bars are what is typed of a printer that is measured: its name, and how long the two
// bars of a sheet are that the chosen profile had shaped or none.
type Bars struct {
	Name, Across, Along string
	Shaped              bool
}

// Measured is what measured bars come to: why the name or a length will not do, empty
// where it will or nothing is typed yet, and what the profile does.
type Measured struct {
	Name, Across, Along string
	Line                string // empty until all will do
	profile             sheet.Profile
}

// Measure works out what measured bars come to.
func (d *Desk) Measure(b Bars) Measured {
	var m Measured
	across, one := d.barLength(b.Across, &m.Across)
	along, other := d.barLength(b.Along, &m.Along)
	if b.Across == "" || b.Along == "" || !one || !other {
		return m
	}
	var was sheet.Profile
	if b.Shaped {
		was, _ = d.profile()
	}
	var misprint *printer.Misprint
	p, err := printer.Measured(was, b.Name, d.paper().Name, across, along)
	switch {
	case errors.As(err, &misprint) && misprint.Limit.Quantity == "printing.up":
		m.Along = misprint.Say(d.words.Say, d.words.Comma())
	case errors.As(err, &misprint):
		m.Across = misprint.Say(d.words.Say, d.words.Comma())
	case err == nil && b.Name != "":
		m.Line, m.profile = d.printsSo(p), p
	}
	return m
}

// printsSo says how a printer prints.
func (d *Desk) printsSo(p sheet.Profile) string {
	if p.True() {
		return d.words.Say("measuring.true")
	}
	x, y := p.Errors(measure.Units{Comma: d.words.Comma()})
	return d.words.Say("measuring.line", "x", x, "y", y)
}

// barLength reads a bar's length, in the job's unit unless said. Where it cannot be read
// why says so; nothing typed is nothing wrong.
func (d *Desk) barLength(text string, why *string) (measure.Length, bool) {
	l, err := measure.ParseLength(text, d.Style().Units.Unit)
	var refusal *measure.Refusal
	if errors.As(err, &refusal) && text != "" {
		*why = d.words.Say(refusal.Code, "read", refusal.Read)
	}
	return l, err == nil
}

// KeepMeasured keeps the profile of measured bars and chooses it. The error says what
// will not do.
func (d *Desk) KeepMeasured(b Bars) error {
	m := d.Measure(b)
	switch {
	case m.Across != "" || m.Along != "":
		return &Refusal{"measuring.misprint", nil}
	case m.Line == "":
		return &Refusal{"measuring.missing", nil}
	}
	if err := printer.Usual().Save(m.profile); err != nil {
		return err
	}
	d.packet.printing.printer = m.profile.Name
	d.chose()
	return nil
}

// Shapes returns the name of the profile that shapes the sheets, empty for none.
func (d *Desk) Shapes() string {
	p, err := d.profile()
	if err != nil {
		return ""
	}
	return p.Name
}

// PrinterField is the field of the printer's profile.
const PrinterField geometry.Quantity = printerField

// PaperName returns what the paper that is chosen is called.
func (d *Desk) PaperName() string { return d.choiceLabel(paperField, d.paper().Name) }
