package laws

import (
	"context"
	"math"
	"math/big"

	"tipline/app/job"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/render/template"
)

// mounting checks that screws stand evenly on their circle, clear of bore and root.
func (v *verdict) mounting(w *solve.Wheel) {
	m := w.Mounting
	r := m.Screws.Circle / 2
	v.holds(len(m.Places) == m.Screws.Count, "%s: %d screws of %d", w.ID(), len(m.Places), m.Screws.Count)
	v.holds(r-m.Clear.MM/2 >= w.Bore/2-near && r+m.Clear.MM/2 <= w.Teeth.RootRadius+near, "%s: screws at %v break out", w.ID(), r)
	for i, p := range m.Places {
		at := [2]float64{r * math.Sin(float64(p.Angle)), r * math.Cos(float64(p.Angle))}
		v.holds(math.Hypot(at[0]-p.At.X, at[1]-p.At.Y) < near, "%s: screw %d at %v and %v", w.ID(), i, p.At, p.Angle)
		off := math.Remainder(float64(p.Angle-m.Places[0].Angle)-2*math.Pi*float64(i)/float64(len(m.Places)), 2*math.Pi)
		v.holds(math.Abs(off) < 1e-9, "%s: screw %d is %v off", w.ID(), i, off)
	}
}

// stacks checks that one hole of the collet is the same hole in every wheel, and that
// the reference tips come in line.
func (v *verdict) stacks(r *solve.Result) {
	for _, s := range r.Stacks {
		v.holds(s.Stacked != nil || refused(r.Findings), "%s: no stack and no error", s.ID())
		if s.Stacked == nil {
			continue
		}
		v.built = append(v.built, "stack")
		for i, w := range s.Wheels {
			tip := 0
			if i < len(s.Part.Tips) {
				tip = wholeNumber(s.Part.Tips[i].Text)
			}
			stands := 2*math.Pi*float64(tip)/float64(w.Teeth.Count) + float64(s.Stacked.Turns[i])
			v.holds(math.Abs(math.Remainder(stands, 2*math.Pi)) < 1e-9, "%s: tip %d of %s stands at %v", s.ID(), tip, w.ID(), stands)
			if s.Stacked.OnWheel == nil {
				continue
			}
			for n, p := range s.Stacked.OnWheel[i] {
				off := math.Remainder(float64(p.Angle+s.Stacked.Turns[i]-s.Stacked.Mounting.Places[n].Angle), 2*math.Pi)
				v.holds(math.Abs(off) < 1e-9, "%s: hole %d of %s is %v from the collet's", s.ID(), n, w.ID(), off)
			}
		}
	}
}

// pairs checks that pitch circles touch at the nominal distance, and that a train's
// ratio is the product of its counts.
func (v *verdict) pairs(r *solve.Result) {
	for _, p := range r.Pairs {
		v.holds(p.Turn != nil || refused(r.Findings), "%s: no mesh and no error", p.ID())
		if p.Turn != nil {
			v.built = append(v.built, "pair")
			v.holds(p.Nominal > 0, "%s: centres %v", p.ID(), p.Nominal)
		}
	}
	for _, t := range r.Trains {
		v.holds(t.Way != nil || refused(r.Findings), "%s: no train and no error", t.ID())
		if t.Way == nil {
			continue
		}
		v.built = append(v.built, "train")
		ratio := big.NewRat(1, 1)
		for _, p := range t.Pairs {
			ratio.Mul(ratio, big.NewRat(int64(solve.TeethOf(p.Wheel)), int64(solve.TeethOf(p.Pinion))))
		}
		v.holds(ratio.Cmp(t.Way.Ratio) == 0, "%s: ratio %v, of its teeth %v", t.ID(), t.Way.Ratio, ratio)
	}
}

// otherHand solves the job with its wheels facing the other way: nothing that is
// weighed or set changes.
func (v *verdict) otherHand(j *job.Job, r *solve.Result) {
	turned := *j
	turned.Wheels = nil
	for _, w := range j.Wheels {
		c := *w
		switch w.Hand.Text {
		case "", "clockwise":
			c.Hand = job.Typed("anticlockwise")
		case "anticlockwise":
			c.Hand = job.Typed("clockwise")
		}
		turned.Wheels = append(turned.Wheels, &c)
	}
	other := solve.Solve(context.Background(), &turned)
	for i, w := range r.Wheels {
		o := other.Wheels[i]
		v.holds((w.Teeth == nil) == (o.Teeth == nil) && (w.Crossing == nil) == (o.Crossing == nil) && (w.Mounting == nil) == (o.Mounting == nil),
			"%s: can be made facing one way alone", w.ID())
		if w.Teeth != nil && o.Teeth != nil {
			v.same(w.ID()+" facing the other way: area of the teeth", w.Teeth.Outline.Area(), o.Teeth.Outline.Area())
		}
		if w.Cut != nil && o.Cut != nil {
			v.same(w.ID()+" facing the other way: infeed", w.Cut.Infeed, o.Cut.Infeed)
		}
		if w.Crossing != nil && o.Crossing != nil {
			v.same(w.ID()+" facing the other way: area", w.Crossing.Area, o.Crossing.Area)
			v.same(w.ID()+" facing the other way: inertia", w.Crossing.Inertia, o.Crossing.Inertia)
			v.same(w.ID()+" facing the other way: wind-up", w.Crossing.WindUp, o.Crossing.WindUp)
		}
	}
}

func (v *verdict) same(what string, a, b float64) {
	v.holds(math.Abs(a-b) <= 1e-9*math.Abs(a)+1e-12, "%s: %v is %v", what, a, b)
}

// drawn draws every template and card that the job's parts have, and looks for a line
// that runs out of any sheet.
func (v *verdict) drawn(r *solve.Result) {
	s := template.Style{Words: english(), Units: solve.Units(r.Job, english())}
	for _, p := range r.Parts() {
		for _, k := range packet.Kinds() {
			if !k.Needs(p) {
				continue
			}
			d, err := packet.Draw(r, p, k, 10, s)
			if err != nil {
				v.breaks("%s: its %s cannot be drawn: %v", p.ID(), k, err)
				continue
			}
			box := d.Bounds()
			v.holds(box.Width() >= 0 && box.Width() < 1e6 && box.Height() < 1e6, "%s: its %s measures %v × %v", p.ID(), k, box.Width(), box.Height())
		}
	}
}
