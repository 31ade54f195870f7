//go:build geos

// Command speed measures how fast Tipline is beside what it can be measured against, all
// in one run on one machine, and writes a page with a table and a plot of it. It is run
// by app/speed.sh and is no part of the program.
package main

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
)

// turns is how often each comparison is taken unless said otherwise.
const turns = 15

func main() {
	var m machine
	out := flag.String("out", "build", "folder of the page and the plot")
	program := flag.String("program", "build/tipline", "the program")
	starts := flag.String("starts", "", "what app/measure-start.sh printed; none leaves starts out")
	flag.IntVar(&m.turns, "turns", turns, "how often each comparison is taken")
	flag.StringVar(&m.commit, "commit", "unknown", "what is measured")
	flag.Parse()
	if err := measure(m, *out, *program, *starts); err != nil {
		fmt.Fprintln(os.Stderr, "speed:", err)
		os.Exit(1)
	}
}

// measure takes every comparison and writes the page and its plot.
func measure(m machine, out, program, starts string) error {
	p := &page{machine: m}
	for _, take := range []func(*page) error{
		besideGEOS,
		besideRasteriser,
		func(p *page) error { return besideBlank(p, starts) },
		besideWriter,
		func(p *page) error { return besideNothing(p, program) },
		growth,
	} {
		if err := take(p); err != nil {
			return err
		}
	}
	if err := p.plot(filepath.Join(out, "speed.svg")); err != nil {
		return err
	}
	return p.write(filepath.Join(out, "speed.md"))
}
