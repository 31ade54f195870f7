package command

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	printers "tipline/app/printer"
	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/template"
)

// paper returns the paper asked for, or the usual one.
func (c *call) paper(usual string) (sheet.Paper, error) {
	name, given := c.flags["paper"]
	if !given {
		name = usual
	}
	paper, err := sheet.ParsePaper(name)
	if err != nil {
		return paper, refuse("command.paper", "read", name)
	}
	return paper, nil
}

// printing is how sheets of the paper are printed.
func (c *call) printing(paper sheet.Paper) (sheet.Options, error) {
	look, err := c.look()
	if err != nil {
		return sheet.Options{}, err
	}
	o := sheet.Options{Look: look}
	_, o.Together = c.flags["together"]
	_, o.Apart = c.flags["apart"]
	if o.Together && o.Apart {
		return o, refuse("command.either")
	}
	if name, given := c.flags["printer"]; given {
		o.Profile, err = printers.Usual().Load(name, paper.Name)
	}
	return o, err
}

// looks are the ways to print a template that -look names.
var looks = []string{"mirrored", "outlines", "thin", "punch", "black"}

// look is the look asked for, several with commas between.
func (c *call) look() (sheet.Look, error) {
	value, given := c.flags["look"]
	if !given {
		return sheet.Look{}, nil
	}
	asked := strings.Split(value, ",")
	for _, word := range asked {
		if !slices.Contains(looks, word) {
			return sheet.Look{}, refuse("command.look", "value", value, "choices", strings.Join(looks, ", "))
		}
	}
	has := func(word string) bool { return slices.Contains(asked, word) }
	return sheet.Look{Mirrored: has("mirrored"), OutlinesOnly: has("outlines"), Thin: has("thin"), Punch: has("punch"), BlackOnly: has("black")}, nil
}

// printerCommand lists the printers that were measured, writes the sheet to measure
// one with, or keeps what its bars measured and then writes the sheet if that is asked too.
func printerCommand(c *call) (int, error) {
	name, out := strings.Join(c.others, ""), c.flags["out"]
	_, across := c.flags["across"]
	_, along := c.flags["along"]
	switch {
	case across || along:
		if !across || !along || name == "" {
			return Nothing, refuse("command.both-bars")
		}
		if code, err := c.keepPrinter(name); err != nil || out == "" {
			return code, err
		}
		fallthrough
	case out != "":
		return untilStopped(out, func(ctx context.Context) (int, error) { return c.writeTestSheet(ctx, name) })
	}
	return c.listPrinters(name)
}

// listPrinters prints a line for each profile, of one printer if it is named.
func (c *call) listPrinters(name string) (int, error) {
	list, err := printers.Usual().List()
	if err != nil {
		return Nothing, err
	}
	if name != "" {
		list = slices.DeleteFunc(list, func(p sheet.Profile) bool { return !strings.EqualFold(p.Name, name) })
	}
	if len(list) == 0 {
		fmt.Fprintln(c.out, c.words.Say("command.printer.none"))
	}
	for _, p := range list {
		fmt.Fprintln(c.out, c.sayPrinter("command.printer.line", p))
	}
	return Done, nil
}

func (c *call) sayPrinter(key string, p sheet.Profile) string {
	x, y := p.Errors(measure.Units{Comma: c.words.Comma()})
	return c.words.Say(key, "name", p.Name, "paper", p.Paper, "x", x, "y", y)
}

// keepPrinter keeps the profile of the bars that measured so.
func (c *call) keepPrinter(name string) (int, error) {
	paper, err := c.paper("a4")
	if err != nil {
		return Nothing, err
	}
	x, err := c.length("across")
	if err != nil {
		return Nothing, err
	}
	y, err := c.length("along")
	if err != nil {
		return Nothing, err
	}
	var was sheet.Profile
	if _, again := c.flags["again"]; again {
		if was, err = printers.Usual().Load(name, paper.Name); err != nil {
			return Nothing, err
		}
	}
	p, err := printers.Measured(was, name, paper.Name, x, y)
	if err != nil {
		return Nothing, err
	}
	if err := printers.Usual().Save(p); err != nil {
		return Nothing, err
	}
	key := "command.printer.kept"
	if p.True() {
		key = "command.printer.true"
	}
	_, err = fmt.Fprintln(c.out, c.sayPrinter(key, p))
	return Done, err
}

// length reads the value of a flag that is a length, in millimetres unless said.
func (c *call) length(name string) (measure.Length, error) {
	l, err := measure.ParseLength(c.flags[name], measure.MM)
	if err != nil {
		return l, refuse("command.length", "flag", name, "value", c.flags[name])
	}
	return l, nil
}

// writeTestSheet writes the sheet that a printer is measured with, as its profile
// shapes it if the printer is named and was measured before.
func (c *call) writeTestSheet(ctx context.Context, name string) (int, error) {
	paper, err := c.paper("a4")
	if err != nil {
		return Nothing, err
	}
	var o sheet.Options
	plain := false
	if name != "" {
		o.Profile, err = printers.Usual().Load(name, paper.Name)
		var refusal *printers.Refusal
		if plain = errors.As(err, &refusal) && refusal.Code == "printer.unknown"; err != nil && !plain {
			return Nothing, err
		}
	}
	s := template.Style{Words: c.words}
	pages, err := sheet.LayContext(ctx, []sheet.Sheet{sheet.TestSheet(paper, s)}, paper, s, o)
	if err != nil {
		return Nothing, c.drawing(err)
	}
	doc := render.Document{Title: c.words.Say("sheet.test"), Language: c.words.Language(), Pages: pages}
	if err := c.write(ctx, c.flags["out"], func(w io.Writer) error { return pdf.Write(w, doc) }); err != nil {
		return Nothing, err
	}
	if _, err = fmt.Fprintln(c.out, c.words.Say("command.written", "file", c.flags["out"], "pages", len(pages))); err == nil && plain {
		_, err = fmt.Fprintln(c.out, c.words.Say("command.printer.plain", "name", name, "paper", paper.Name))
	}
	return Done, err
}
