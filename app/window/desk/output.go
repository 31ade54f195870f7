package desk

import (
	"context"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/adrg/xdg"

	"tipline/app/keep"
	"tipline/app/packet"
	"tipline/app/press"
	"tipline/app/solve"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
)

// Output is sheets that can be written or printed, as they were chosen.
type Output struct {
	title string
	file  string // offered for the PDF
	paper sheet.Paper
	parts []string // whose sheets they are
	write func(ctx context.Context, w io.Writer, told func(done, total int)) (pages int, err error)
}

// Refusal is an error that is said in the catalogue's words.
type Refusal struct {
	code string
	args []any
}

// Say returns the refusal as say, which says a text of the catalogue, says it.
func (r *Refusal) Say(say func(string, ...any) string) string { return say(r.code, r.args...) }

// Error names the refusal.
func (r *Refusal) Error() string { return r.code }

// Packet returns what is chosen of the packet.
func (d *Desk) Packet() Output {
	d.catchUp()
	r, o, off := d.result, d.options(), d.packet.chosen.off
	parts := o.Parts
	if len(parts) == 0 {
		parts = d.order()
	}
	return Output{d.Title(), d.FileName(".pdf"), o.Paper, parts, func(ctx context.Context, w io.Writer, told func(done, total int)) (int, error) {
		o.Printing.Progress = told
		return writeChosen(ctx, w, r, o, off)
	}}
}

// writeChosen writes the pages of a packet that are not left out, and returns how many
// they are.
func writeChosen(ctx context.Context, w io.Writer, r *solve.Result, o packet.Options, off map[leafName]bool) (pages int, err error) {
	doc, run, err := packet.Plan(ctx, r, o)
	if err != nil {
		return 0, err
	}
	names := naming{}
	err = pdf.WriteEach(w, doc, func(yield func(render.Page, error) bool) {
		for page, err := range run.Pages(ctx) {
			if err == nil && off[names.of(page)] {
				continue
			}
			pages++
			if !yield(page, err) {
				return
			}
		}
		if pages == 0 {
			yield(render.Page{}, &Refusal{code: "printing.nothing"})
		}
	})
	return pages, err
}

// TestSheet returns the sheet that a printer is measured with, on the present paper: as
// the chosen profile shapes it, or as it is.
func (d *Desk) TestSheet(shaped bool) Output {
	paper, style := d.paper(), d.Style()
	o := sheet.Options{}
	if shaped {
		o.Profile, _ = d.profile()
	}
	title := d.words.Say("sheet.test")
	return Output{title, title + " " + paper.Name + ".pdf", paper, nil, func(ctx context.Context, w io.Writer, told func(done, total int)) (int, error) {
		o.Progress = told
		pages, err := sheet.LayContext(ctx, []sheet.Sheet{sheet.TestSheet(paper, style)}, paper, style, o)
		if err != nil {
			return 0, err
		}
		return len(pages), pdf.Write(w, render.Document{Title: title, Language: style.Words.Language(), Pages: pages})
	}}
}

// FileName returns the name that is offered for the sheets' PDF.
func (o Output) FileName() string { return o.file }

// Paper returns the name of the paper they are laid out for.
func (o Output) Paper() string { return o.paper.Name }

// into writes the sheets into a file, whole or not at all.
func (o Output) into(ctx context.Context, name string, told func(done, total int)) (pages int, err error) {
	err = keep.Write(name, func(w io.Writer) error {
		pages, err = o.write(ctx, w, told)
		return errors.Join(err, ctx.Err())
	})
	var path *fs.PathError
	switch {
	case ctx.Err() != nil:
		return 0, ctx.Err()
	case errors.As(err, &path):
		return 0, &Refusal{"told.unwritten", []any{"file", name, "reason", err}}
	}
	return pages, err
}

// Export writes the sheets into a file beside the window. told is called there with how
// many sheets are drawn, and over at the window when all is done or nothing is: the
// error of a stopped export is context.Canceled, and of any the old file is whole. It
// returns what stops it.
func (d *Desk) Export(o Output, name string, told func(done, total int), over func(pages int, err error)) (stop func()) {
	var pages int
	return d.beside(func(ctx context.Context) (err error) {
		pages, err = o.into(ctx, name, told)
		return err
	}, func(err error) {
		d.remember(o, err)
		over(pages, err)
	})
}

// remember keeps in mind whose sheets were written or printed, unless they were not.
func (d *Desk) remember(o Output, err error) {
	if err == nil && len(o.parts) > 0 {
		d.Printed(o.parts...)
	}
}

// beside runs something beside the window and then over at it. It returns what stops it.
func (d *Desk) beside(run func(context.Context) error, over func(error)) (stop func()) {
	ctx, cancel := context.WithCancel(context.Background())
	var err error
	work, done := func() { err = run(ctx) }, func() { cancel(); over(err) }
	if d.Aside == nil {
		work()
		done()
	} else {
		d.Aside(work, done)
	}
	return cancel
}

// Sent is what became of sheets that were to be printed.
type Sent struct {
	Pages  int
	Answer string // of the print command; empty where the viewer has them
	File   string // that the viewer has open; empty where they were printed
}

// Print has the sheets printed beside the window by one of the system's printers, "" for
// the usual one; where the system has no print command it opens them in the viewer. told
// and over are called as by Export; told(0, 0) says that the system has the sheets.
func (d *Desk) Print(o Output, queue string, told func(done, total int), over func(Sent, error)) (stop func()) {
	d.packet.printing.queue = queue
	var sent Sent
	return d.beside(func(ctx context.Context) (err error) {
		sent, err = o.send(ctx, queue, told)
		return err
	}, func(err error) {
		d.remember(o, err)
		over(sent, err)
	})
}

// send writes the sheets into the user's cache folder and hands them to the system.
func (o Output) send(ctx context.Context, queue string, told func(done, total int)) (Sent, error) {
	file := filepath.Join(xdg.CacheHome, "tipline", o.file)
	if err := os.MkdirAll(filepath.Dir(file), 0o700); err != nil {
		return Sent{}, &Refusal{"told.unwritten", []any{"file", file, "reason", err}}
	}
	pages, err := o.into(ctx, file, told)
	if err != nil {
		return Sent{}, err
	}
	told(0, 0)
	if !press.CanPrint() {
		if err := press.Open(ctx, file); err != nil {
			return Sent{}, errors.Join(err, os.Remove(file))
		}
		return Sent{Pages: pages, File: file}, nil
	}
	answer, err := press.Print(ctx, press.Sheets{File: file, Title: o.title, Queue: queue, Paper: o.paper})
	return Sent{Pages: pages, Answer: answer}, errors.Join(err, os.Remove(file))
}

// Queues lists the system's printers beside the window. It returns what stops it.
func (d *Desk) Queues(over func([]string)) (stop func()) {
	var list []string
	return d.beside(func(ctx context.Context) error {
		list = press.Queues(ctx)
		return nil
	}, func(error) { over(list) })
}

// Queue returns the printer that sheets were last sent to, else that of the chosen
// profile's name.
func (d *Desk) Queue() string { return usual(d.packet.printing.queue, d.packet.printing.printer) }

// CanPrint reports whether the system has a print command.
func CanPrint() bool { return press.CanPrint() }
