package command

import (
	"context"
	"errors"
	"fmt"
	"io"
	"slices"
	"strings"

	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/template"
)

// mostCopies is the most copies of a template that are printed.
const mostCopies = 50

// packetCommand writes the whole packet, or one part's.
func packetCommand(c *call) (int, error) {
	out, err := c.needed("out")
	if err != nil {
		return Nothing, err
	}
	copies, err := c.number("copies", 1, mostCopies, 1)
	if err != nil {
		return Nothing, err
	}
	if copies != float64(int(copies)) {
		return Nothing, refuse("command.whole", "flag", "copies", "value", c.flags["copies"], "min", 1, "max", mostCopies)
	}
	return untilStopped(out, func(ctx context.Context) (int, error) {
		r, err := c.solved(ctx)
		if err != nil {
			return Nothing, err
		}
		o, err := c.options(r)
		if err != nil {
			return Nothing, err
		}
		if o.Kinds, err = c.sheetKinds(); err != nil {
			return Nothing, err
		}
		if id := c.flags["wheel"]; id != "" {
			o.Parts = []string{id}
		}
		o.Copies = int(copies)
		return c.writePacket(ctx, r, o, out)
	})
}

// planned is a packet before its pages are drawn.
type planned struct {
	doc render.Document
	run *sheet.Run
}

func (c *call) writePacket(ctx context.Context, r *solve.Result, o packet.Options, out string) (int, error) {
	said, err := c.printed(r, c.flags["wheel"])
	if err != nil {
		return Nothing, err
	}
	told, clear := c.progress()
	defer clear()
	o.Printing.Progress = told
	plan, err := unlessStopped(ctx, func() (p planned, err error) {
		p.doc, p.run, err = packet.Plan(ctx, r, o)
		return p, err
	})
	switch {
	case err != nil:
		return Nothing, c.drawing(err)
	case plan.run.Len() == 0:
		return Nothing, refuse("command.no-sheets")
	}
	as, err := c.format(out, "pdf", "zip")
	if err != nil {
		return Nothing, err
	}
	write := func(w io.Writer) error { return pdf.WriteEach(w, plan.doc, plan.run.Pages(ctx)) }
	if as == "zip" {
		write = func(w io.Writer) error { return archive(ctx, w, c.folder(r.Title()), r, o, plan.doc, plan.run) }
	}
	if err := c.write(ctx, out, write); err != nil {
		return Nothing, err
	}
	if _, err := fmt.Fprintln(c.out, c.words.Say("command.written", "file", out, "pages", plan.run.Len())); err != nil {
		return Nothing, err
	}
	return verdict(said), nil
}

// printed returns the findings on what is to be printed. It refuses a job without
// parts, a part that is not there and one of which nothing can be printed.
func (c *call) printed(r *solve.Result, id string) ([]solve.Finding, error) {
	if id == "" {
		if len(r.Parts()) == 0 {
			return nil, refuse("command.no-parts")
		}
		return r.Findings, nil
	}
	p, err := partNamed(r, id)
	if err != nil {
		return nil, err
	}
	if !slices.ContainsFunc(packet.Kinds(), func(k packet.Kind) bool { return k.Needs(p) }) {
		return nil, c.unbuildable(r, p, "")
	}
	return r.On(id), nil
}

// partNamed returns the part with the id.
func partNamed(r *solve.Result, id string) (solve.Part, error) {
	if p := r.Part(id); p != nil {
		return p, nil
	}
	var ids []string
	for _, p := range r.Parts() {
		ids = append(ids, p.ID())
	}
	if len(ids) == 0 {
		return nil, refuse("command.no-parts")
	}
	return nil, refuse("command.no-part", "id", id, "ids", strings.Join(ids, ", "))
}

// unbuildable says why a part, or a step of it, cannot be built: its first error
// on the step, else its first error that is on no other step.
func (c *call) unbuildable(r *solve.Result, p solve.Part, step string) error {
	faults := slices.DeleteFunc(r.On(p.ID()), func(f solve.Finding) bool {
		return f.Severity != solve.Error || step != "" && ofAnother(step, f.Field)
	})
	if len(faults) == 0 {
		return unasked(p)
	}
	worst := faults[0]
	for _, f := range faults {
		if step != "" && strings.HasPrefix(string(f.Field), step+".") {
			worst = f
			break
		}
	}
	return refuse("command.cannot-build", "id", p.ID(), "field", worst.Field,
		"reason", worst.Sentence(c.words, solve.Units(r.Job, c.words)))
}

// ofAnother reports whether a field belongs to a step of the work other than this one,
// which can be drawn without it.
func ofAnother(step string, field geometry.Quantity) bool {
	of, _, within := strings.Cut(string(field), ".")
	return within && of != step && slices.Contains([]string{"cutter", "dividing", "crossing", "mount"}, of)
}

// options are how the job is printed: on A4 for a job in millimetres, Letter for
// one in inches, unless said otherwise.
func (c *call) options(r *solve.Result) (packet.Options, error) {
	usual := "a4"
	if r.Job.Units == string(measure.Inch) {
		usual = "letter"
	}
	paper, err := c.paper(usual)
	if err != nil {
		return packet.Options{}, err
	}
	printing, err := c.printing(paper)
	return packet.Options{Paper: paper, Style: c.style(r), Printing: printing}, err
}

func (c *call) style(r *solve.Result) template.Style {
	return template.Style{Words: c.words, Units: solve.Units(r.Job, c.words)}
}

// drawing says an error of drawing.
func (c *call) drawing(err error) error {
	var paper *sheet.Refusal
	switch {
	case errors.Is(err, context.Canceled):
		return err
	case errors.As(err, &paper):
		if paper.Code == "paper.size" {
			return refuse("command.paper", "read", paper.Read)
		}
		return refuse(paper.Code, "read", paper.Read)
	}
	return refuse("command.undrawable", "reason", err)
}
