// Package guide makes the guide's pictures: drawings of the sample job as the program draws
// it, so that they cannot go stale.
package guide

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"sync"

	"tipline/app/job"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// Picture is a drawing and the box of it that is seen.
type Picture struct {
	Drawing *render.Drawing
	Seen    geometry.Box
}

// wide is how wide on paper a picture of a part of a drawing is, in millimetres.
const wide = 120

// round is what is seen round a whole drawing.
const round = 2

// sample is the sample job, worked out when the first picture is asked for.
var sample = sync.OnceValues(func() (*solve.Result, error) {
	text, err := samples.Read(samples.First)
	if err != nil {
		return nil, err
	}
	j, err := job.Read(bytes.NewReader(text))
	if err != nil {
		return nil, err
	}
	return solve.Solve(context.Background(), j), nil
})

// Draw makes the picture of a name in a language.
func Draw(name string, w words.Words) (Picture, error) {
	shot, ok := shots[name]
	if !ok {
		return Picture{}, fmt.Errorf("guide: there is no picture %q", name)
	}
	r, err := sample()
	if err != nil {
		return Picture{}, fmt.Errorf("guide: %w", err)
	}
	d, err := shot.draw(r, template.Style{Words: w, Units: solve.Units(r.Job, w)})
	if err != nil {
		return Picture{}, fmt.Errorf("guide: %s: %w", name, err)
	}
	return shot.frame(d)
}

// draw draws all that the shot is taken of.
func (s shot) draw(r *solve.Result, style template.Style) (*render.Drawing, error) {
	p := r.Part(s.part)
	if p == nil {
		return nil, fmt.Errorf("the sample has no part %q", s.part)
	}
	made, isMade := p.(solve.Made)
	pair, isPair := p.(*solve.Pair)
	switch {
	case s.of == viewBlank && isMade:
		return template.Blank(made.Template(), style)
	case s.of == viewPinion && isMade:
		return template.PinionView(made.Template(), style)
	case s.of == viewCutter && isMade:
		wanted := made.Template()
		wanted.Ground = nil
		return template.CutterView(wanted, style)
	case s.of == viewBit && isMade:
		return template.CutterView(made.Template(), style)
	case s.of == viewDividing && isMade:
		return template.DividingView(made.Template(), style)
	case s.of == viewPair && isPair:
		if t, ok := pair.Template(); ok {
			return template.PairView(t, s.turn, style)
		}
	}
	scale := s.scale
	if scale == 0 {
		scale = 1
	}
	return packet.Draw(r, p, s.of, scale, style)
}

// frame lights what the shot is about and looks at it from as near as it says.
func (s shot) frame(d *render.Drawing) (Picture, error) {
	var lit []geometry.Segment
	for _, q := range s.lit {
		made := segmentsOf(d, q)
		if len(made) == 0 {
			return Picture{}, fmt.Errorf("guide: nothing of %s is drawn by %s", s.part, q)
		}
		lit = append(lit, made...)
	}
	copied := *d
	copied.Items = append([]render.Item(nil), d.Items...)
	copied.Items = append(copied.Items, glow(lit)...)
	if s.near == 0 {
		return Picture{&copied, copied.Bounds().Grow(round)}, nil
	}
	at := geometry.Point{X: s.x, Y: s.y}
	scale := wide / (2 * s.near)
	half := geometry.Point{X: wide / 2, Y: wide / 2 * s.tall()}
	placed := copied.Placed(at.Times(-scale), scale, 0)
	return Picture{placed, geometry.Box{Min: half.Times(-1), Max: half}}, nil
}

// tall returns how tall the shot is as a share of its width.
func (s shot) tall() float64 {
	if s.high == 0 {
		return 0.62
	}
	return s.high
}

// segmentsOf returns the lines that a quantity made.
func segmentsOf(d *render.Drawing, q geometry.Quantity) (all []geometry.Segment) {
	for i := range d.Items {
		it := &d.Items[i]
		take := func(n int, segment func(int) geometry.Segment) {
			for k := range n {
				s := segment(k)
				if s.Quantity == q || s.Quantity == "" && it.Quantity == q {
					all = append(all, s)
				}
			}
		}
		for _, o := range it.Outlines {
			take(o.Len(), o.Segment)
		}
		for _, c := range it.Chains {
			take(c.Len(), c.Segment)
		}
	}
	return all
}

// glow returns lines that stand out over the others, those that run on joined.
func glow(lit []geometry.Segment) []render.Item {
	if len(lit) == 0 {
		return nil
	}
	item := render.Item{Layer: render.LayerDimensions, Pen: render.Visible, Ink: render.Red}
	for _, s := range lit {
		if s.From != s.To && !math.IsNaN(s.Bulge) {
			item.Chains = append(item.Chains, geometry.ChainOf(s))
		}
	}
	return []render.Item{item}
}
