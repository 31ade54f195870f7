//go:build geos

package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"runtime"
	"strings"
	"time"

	"tipline/app/keep"
)

// machine is what was measured, and how often.
type machine struct {
	commit string
	turns  int
}

// row is one comparison: what takes how long, beside what, and the ratio wanted, at most
// or, with least, at least; none where goal is 0. With least the ratio is how many times
// faster ours is.
type row struct {
	what, beside, note string
	ours, theirs       string
	ratio, goal        float64
	least              bool
}

// met reports whether the goal is reached, where there is one.
func (r row) met() bool {
	return r.goal == 0 || r.least && r.ratio >= r.goal || !r.least && r.ratio <= r.goal
}

// page is the comparisons taken so far.
type page struct {
	machine
	rows  []row
	grown []grown
}

func (p *page) add(r row) {
	p.rows = append(p.rows, r)
	fmt.Printf("%s: %s, %s %s: %.2f\n", r.what, r.ours, r.beside, r.theirs, r.ratio)
}

// compare takes a comparison of two things and adds it.
func (p *page) compare(r row, ours, theirs func()) {
	us, them := beside(p.turns, ours, theirs)
	r.ours, r.theirs, r.ratio = told(us), told(them), float64(us)/float64(them)
	if r.least {
		r.ratio = 1 / r.ratio
	}
	p.add(r)
}

// told writes a time in three figures.
func told(d time.Duration) string {
	if d < time.Millisecond {
		return fmt.Sprintf("%.3g µs", float64(d)/1e3)
	}
	return milliseconds(float64(d) / 1e6)
}

func milliseconds(ms float64) string { return fmt.Sprintf("%.3g ms", ms) }

// equalError says what is compared with GEOS.
const equalError = `
Equal error: GEOS has polygons, and rounds corners, within the error said; making its polygons is not in its time. Ours keeps
arcs, true to 1e-9 mm (0.000001 µm), so what the areas differ by is GEOS' chords. To be as true as ours GEOS would take a
thousand times the chords that it takes at 1 µm, since they go as one over the root of the error; the goal is set where its
error is still a thousand times ours. The metal is inset by 0.05 mm all round.

`

// write writes the page.
func (p *page) write(name string) error {
	var b bytes.Buffer
	fmt.Fprintf(&b, "# How fast Tipline is\n\nMeasured by `sh app/speed.sh`, all in one run: medians of %d turns in which each side "+
		"runs by turns for at least %d ms. %s, %s, %d processors, commit %s; "+
		"other work on the machine as its load says: %s.\n\n", p.turns, long.Milliseconds(), processor(), runtime.Version(),
		runtime.GOMAXPROCS(0), p.commit, load())
	b.WriteString("| what | ours | beside | theirs | ratio | goal | reached | about it |\n| --- | ---: | --- | ---: | ---: | ---: | --- | --- |\n")
	for _, r := range p.rows {
		fmt.Fprintf(&b, "| %s | %s | %s | %s | %s | %s | %s | %s |\n", r.what, r.ours, r.beside, r.theirs, r.times(), r.wanted(), r.verdict(), r.note)
	}
	b.WriteString(equalError)
	b.WriteString("| wheels | worked out in | a wheel | held in memory |\n| ---: | ---: | ---: | ---: |\n")
	for _, g := range p.grown {
		fmt.Fprintf(&b, "| %d | %s | %s | %.2f MB |\n", g.wheels, told(g.took), told(g.each()), g.bytes/1e6)
	}
	b.WriteString("\n![ratios and growth](speed.svg)\n")
	return keep.Write(name, func(w io.Writer) error { _, err := b.WriteTo(w); return err })
}

func (r row) times() string {
	if r.least {
		return fmt.Sprintf("%.2f× as fast", r.ratio)
	}
	return fmt.Sprintf("%.2f×", r.ratio)
}

func (r row) wanted() string {
	switch {
	case r.goal == 0:
		return ""
	case r.least:
		return fmt.Sprintf("≥ %g×", r.goal)
	}
	return fmt.Sprintf("≤ %g×", r.goal)
}

func (r row) verdict() string {
	switch {
	case r.goal == 0:
		return ""
	case r.met():
		return "yes"
	}
	return "no"
}

// processor returns what the system calls its processor.
func processor() string {
	data, _ := os.ReadFile("/proc/cpuinfo")
	for line := range strings.Lines(string(data)) {
		if name, value, ok := strings.Cut(line, ":"); ok && strings.TrimSpace(name) == "model name" {
			return strings.TrimSpace(value)
		}
	}
	return runtime.GOARCH
}

// load returns how many programs have wanted a processor of late, this one among them,
// in the last 1, 5 and 15 minutes.
func load() string {
	data, err := os.ReadFile("/proc/loadavg")
	fields := strings.Fields(string(data))
	if err != nil || len(fields) < 3 {
		return "unknown"
	}
	return strings.Join(fields[:3], ", ")
}
