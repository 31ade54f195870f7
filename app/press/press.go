// Package press hands a PDF to the system: to its print command, where there is one,
// or to the viewer that opens PDFs. It starts programs without a shell and only when
// it is asked to.
package press

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"strings"
	"time"
	"unicode/utf8"

	"tipline/render/sheet"
)

// Sheets are what is sent to be printed.
type Sheets struct {
	File  string // whole name of a PDF
	Title string // of the print job; empty for none
	Queue string // the printer's name in the system; empty for the usual one
	Paper sheet.Paper
}

// patience is how long a program that was told to end, or the list of printers, is
// waited for. The list comes at once unless the printers' server cannot be reached.
const patience = 5 * time.Second

// CanPrint reports whether the system has a print command.
func CanPrint() bool { return has(printCommand) }

// The commands of CUPS and of the systems before it.
const (
	printCommand = "lp"
	listCommand  = "lpstat"
)

func has(program string) bool {
	_, err := exec.LookPath(program)
	return err == nil
}

// Queues lists the printers that the system knows, in its order; none where it does
// not say. It gives way when ctx is done.
func Queues(ctx context.Context) []string {
	ctx, stop := context.WithTimeout(ctx, patience)
	defer stop()
	if said, err := run(ctx, listCommand, "-e"); err == nil { // a name a line
		return firstWords(said, "")
	}
	said, err := run(ctx, listCommand, "-p") // as older ones can: printer NAME is idle
	if err != nil {
		return nil
	}
	return firstWords(said, "printer ")
}

// firstWords returns the first word after a beginning, of each line that has it.
func firstWords(lines, beginning string) []string {
	var words []string
	for line := range strings.Lines(lines) {
		rest, ok := strings.CutPrefix(line, beginning)
		if fields := strings.Fields(rest); ok && len(fields) > 0 && utf8.ValidString(fields[0]) {
			words = append(words, fields[0])
		}
	}
	return words
}

// Print sends sheets to a printer as they are, one to a side and not scaled, and
// returns what the print command answered, on one line. The error is a *Refusal, or
// that of ctx when it is done: then it is not known whether sheets will come.
func Print(ctx context.Context, s Sheets) (answer string, err error) {
	said, err := run(ctx, printCommand, s.arguments()...)
	return oneLine(said), err
}

// arguments are those of lp: its options print-scaling, media and sides are CUPS's, and
// a system before it passes them over.
// Source: the manual page lp(1) of CUPS 2.4, and PWG 5100.13 for print-scaling, from
// memory.
func (s Sheets) arguments() []string {
	args := []string{"-c"}
	if s.Queue != "" {
		args = append(args, "-d", s.Queue)
	}
	if title := oneLine(s.Title); title != "" {
		args = append(args, "-t", title)
	}
	return append(args, "-o", "print-scaling=none", "-o", "media="+media(s.Paper), "-o", "sides=one-sided", s.File)
}

// media returns what CUPS calls a paper.
func media(p sheet.Paper) string {
	if named := (map[string]string{"a4": "A4", "a3": "A3", "letter": "Letter", "legal": "Legal", "tabloid": "Tabloid"})[p.Name]; named != "" {
		return named
	}
	return fmt.Sprintf("Custom.%gx%gmm", p.Width, p.Height)
}

// run runs a program until it ends or ctx is done, and returns what it printed. Its
// messages are in plain English, so that they can be read.
func run(ctx context.Context, program string, args ...string) (said string, err error) {
	c := exec.CommandContext(ctx, program, args...)
	var out, fault bytes.Buffer
	c.Stdout, c.Stderr, c.WaitDelay = &out, &fault, patience
	c.Env = append(os.Environ(), "LC_ALL=C")
	err = c.Run()
	switch {
	case err == nil:
		return out.String(), nil
	case ctx.Err() != nil:
		return "", ctx.Err()
	case errors.Is(err, exec.ErrNotFound):
		return "", &Refusal{Code: "press.missing", Program: program}
	}
	if why := reason(program, fault.String()); why != "" {
		return "", &Refusal{Code: "press.refused", Program: program, Reason: why}
	}
	return "", &Refusal{Code: "press.failed", Program: program}
}

// reason is what a program itself said of its failure: the line behind its name, or the
// only one. What else came, such as warnings of what it is written in, says nothing to who
// wants to print.
func reason(program, said string) string {
	for line := range strings.Lines(said) {
		if _, its, ok := strings.Cut(line, program+": "); ok {
			return strings.TrimRight(strings.TrimPrefix(oneLine(its), "Error - "), ".")
		}
	}
	if said = strings.TrimSpace(said); !strings.Contains(said, "\n") {
		return strings.TrimRight(oneLine(said), ".")
	}
	return ""
}

// longestAnswer is how much of what a program says is passed on.
const longestAnswer = 300

// oneLine returns a text on one line, cut where it is too long.
func oneLine(text string) string {
	line := []rune(strings.ToValidUTF8(strings.Join(strings.Fields(text), " "), "?"))
	if len(line) > longestAnswer {
		return string(line[:longestAnswer]) + "…"
	}
	return string(line)
}
