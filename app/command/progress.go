package command

import (
	"fmt"
	"io"
	"os"
	"strings"
)

// longRun is how many sheets a file has at least for which it is told how far it is.
const longRun = 20

// terminal returns what stands for a terminal that someone looks at, nil where a writer is
// none.
func terminal(w io.Writer) io.Writer {
	f, ok := w.(*os.File)
	if !ok {
		return nil
	}
	if info, err := f.Stat(); err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return nil
	}
	return w
}

// progress returns what tells how many sheets are drawn, each time over what it told
// before, nil where there is no terminal; and what clears the line.
func (c *call) progress() (told func(done, total int), clear func()) {
	if c.terminal == nil {
		return nil, func() {}
	}
	width := 0
	write := func(line string) {
		now := len([]rune(line))
		fmt.Fprintf(c.terminal, "\r%s%s", line, strings.Repeat(" ", max(width-now, 0)))
		width = now
	}
	told = func(done, total int) {
		if total >= longRun {
			write(c.words.Say("working.sheet", "n", done, "m", total))
		}
	}
	return told, func() {
		if width > 0 {
			write("")
			fmt.Fprint(c.terminal, "\r")
		}
	}
}
