//go:build geos

package main

import (
	"errors"
	"fmt"
	"math"

	"github.com/twpayne/go-geos"

	"tipline/geometry"
)

// within is how far GEOS' polygons may lie from the arcs they stand for, in millimetres.
// The first is what the program's own files are true to. The second is still a thousand
// times what ours are: arcs, inset true to 1e-9 mm; but nearer to that GEOS takes minutes.
var within = []float64{1e-3, 1e-6}

// shrink is by how much the metal is inset, in millimetres.
const shrink = 0.05

// brass is a crossed wheel as both libraries have it: its metal, teeth outside, windows
// inside.
type brass struct {
	teeth   geometry.Outline
	windows []geometry.Outline
	polygon *geos.Geom
	chord   float64
	quarter int // chords of a quarter of a corner that GEOS rounds
}

func brassOf(teeth int, chord float64) (b brass, err error) {
	w, err := wheel(teeth)
	if err != nil {
		return b, err
	}
	b.teeth, b.chord, b.quarter = w.Teeth.Outline, chord, quarter(chord)
	rings := [][][]float64{ring(b.teeth, chord)}
	for _, window := range w.Crossing.Windows {
		b.windows = append(b.windows, window.Outline)
		rings = append(rings, ring(window.Outline, chord))
	}
	b.polygon = geos.NewPolygon(rings)
	return b, nil
}

func ring(o geometry.Outline, chord float64) [][]float64 {
	var coords [][]float64
	for _, p := range o.Flatten(chord) {
		coords = append(coords, []float64{p.X, p.Y})
	}
	return append(coords, coords[0])
}

// inset insets the metal: the teeth inwards, the windows outwards.
func (b brass) inset() (area float64, err error) {
	for i, o := range append([]geometry.Outline{b.teeth}, b.windows...) {
		d, sign := shrink, 1.0
		if i > 0 {
			d, sign = -shrink, -1
		}
		loops, err := o.Inset(d)
		if err != nil {
			return 0, err
		}
		for _, l := range loops {
			area += sign * l.Area()
		}
	}
	return area, nil
}

// quarter is into how many chords GEOS cuts a quarter of a circle of the inset's radius
// to keep within chord of it: the sagitta of a chord of angle 2δ is r(1 − cos δ).
func quarter(chord float64) int { return int(math.Ceil(math.Pi / 4 / math.Acos(1-chord/shrink))) }

func (b brass) area() float64 {
	area := b.teeth.Area()
	for _, w := range b.windows {
		area -= w.Area()
	}
	return area
}

func (b brass) valid() bool {
	for _, w := range b.windows {
		if !w.Simple() {
			return false
		}
	}
	return b.teeth.Simple()
}

// besideGEOS measures inset, area and validity of two wheels.
func besideGEOS(p *page) error {
	for _, teeth := range []int{60, 360} {
		for _, chord := range within {
			b, err := brassOf(teeth, chord)
			if err != nil {
				return err
			}
			if err := b.measure(p, fmt.Sprintf("a crossed wheel of %d teeth", teeth)); err != nil {
				return err
			}
		}
	}
	return nil
}

func (b brass) measure(p *page, name string) error {
	ours, err := b.inset()
	if err != nil {
		return err
	}
	if !b.valid() || !b.polygon.IsValid() {
		return errors.New(name + " is not valid")
	}
	library, goal := fmt.Sprintf("GEOS at %g µm", b.chord*1e3), 0.0
	if b.chord == within[1] {
		goal = 20
	}
	theirs := b.polygon.Buffer(-shrink, b.quarter).Area()
	p.compare(row{
		what: "inset of " + name, beside: library, goal: goal, least: true,
		note: fmt.Sprintf("area after it %.6f mm², GEOS %.6f mm²", ours, theirs),
	},
		func() { _, _ = b.inset() }, func() { b.polygon.Buffer(-shrink, b.quarter) })
	p.compare(row{
		what: "area of " + name, beside: library, least: true,
		note: fmt.Sprintf("%.6f mm², GEOS %.6f mm²", b.area(), b.polygon.Area()),
	}, func() { b.area() }, func() { b.polygon.Area() })
	p.compare(row{
		what: "validity of " + name, beside: library, least: true,
		note: fmt.Sprintf("%d segments, GEOS %d corners", b.segments(), b.corners()),
	}, func() { b.valid() }, func() { b.polygon.IsValid() })
	return nil
}

func (b brass) segments() int {
	n := b.teeth.Len()
	for _, w := range b.windows {
		n += w.Len()
	}
	return n
}

// corners returns how many corners GEOS' polygon has.
func (b brass) corners() int {
	n := 0
	for _, o := range append([]geometry.Outline{b.teeth}, b.windows...) {
		n += len(o.Flatten(b.chord))
	}
	return n
}
