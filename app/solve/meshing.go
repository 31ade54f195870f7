package solve

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/tooth"
)

// sameSize is how far, in mm, two sizes that must be one may differ: what files are
// written to.
const sameSize = 1e-3

// sameDepth is how far, in modules, leaves made for another ratio may be from the
// depth that the pair's asks for: an eighth of the standard's clearance under the
// wheel's tips (common practice, no source).
const sameDepth = 0.05

// say says what is to be said of a pair: whether its parts are made for each other,
// and how they mesh.
func (p *Pair) say(r *reader) {
	if w, l := p.parts(); w != nil && l != nil && w.Teeth != nil {
		p.checkModules(r)
		p.checkLeaves(r, w, l)
		p.checkTrundles(r, w, l)
		p.checkDepth(r, w, l)
	}
	switch {
	case p.Turn == nil:
	case p.foul != nil:
		r.fail("centres", p.foul)
	default:
		p.meshFindings(r)
	}
}

// parts returns the pair's wheel and its pinion, whichever drives; nil where it
// has none.
func (p *Pair) parts() (*Wheel, *Pinion) {
	w, wheelDrives := p.Wheel.(*Wheel)
	l, ok := p.Pinion.(*Pinion)
	if !wheelDrives {
		w, _ = p.Pinion.(*Wheel)
		l, ok = p.Wheel.(*Pinion)
	}
	if !ok {
		return w, nil
	}
	return w, l
}

func (p *Pair) checkModules(r *reader) {
	module := func(radius float64, count int) float64 { return 2 * radius / float64(max(count, 1)) }
	wheel, pinion := module(p.Driver.PitchRadius, p.Driver.Count), module(p.Follower.PitchRadius, p.Follower.Count)
	if wheel > 0 && pinion > 0 && math.Abs(wheel-pinion) > sameSize {
		r.find(Caution, "pinion", "pair.modules-differ", number("driver", wheel, Length), number("follower", pinion, Length))
	}
}

// checkLeaves says when the wheel's teeth are made for another count of leaves.
func (p *Pair) checkLeaves(r *reader, w *Wheel, l *Pinion) {
	if has := TeethOf(l); has > 0 && w.Leaves > 0 && has != w.Leaves {
		r.find(Caution, "wheel", "pair.other-leaves", text("wheel", w.Name()), text("pinion", l.Name()),
			number("made", float64(w.Leaves), Count), number("has", float64(has), Count))
	}
}

// checkTrundles says when trundles meet teeth made for leaves, the other way
// round, or teeth made for trundles of another thickness.
func (p *Pair) checkTrundles(r *reader, w *Wheel, l *Pinion) {
	names := []Place{text("wheel", w.Name()), text("pinion", l.Name())}
	switch {
	case l.Lantern != nil && w.Trundle == 0:
		r.find(Caution, "wheel", "pair.leaves-meet-trundles", names...)
	case l.Leaves != nil && w.Trundle > 0:
		r.find(Caution, "wheel", "pair.trundles-meet-leaves", names...)
	case l.Lantern != nil && math.Abs(l.Lantern.TrundleDiameter-w.Trundle) > sameSize:
		r.find(Caution, "wheel", "pair.other-trundles", append(names,
			number("made", w.Trundle, FineLength), number("has", l.Lantern.TrundleDiameter, FineLength))...)
	}
}

// checkDepth says when the leaves are made for a ratio far from the pair's.
func (p *Pair) checkDepth(r *reader, w *Wheel, l *Pinion) {
	if l.Leaves == nil {
		return
	}
	leaves := l.Leaves.Count
	ratio := float64(w.Teeth.Count) / float64(leaves)
	has, wants := tooth.Pinion{Leaves: leaves, Ratio: l.Ratio}.Dedendum(), tooth.Pinion{Leaves: leaves, Ratio: ratio}.Dedendum()
	if math.Abs(has-wants) > sameDepth {
		r.find(Caution, "pinion", "pair.other-ratio", text("pinion", l.Name()),
			number("made", l.Ratio, Fine), number("has", ratio, Fine))
	}
}

// meshFindings says how a pair that turns does so.
func (p *Pair) meshFindings(r *reader) {
	t := p.Turn
	r.find(Note, "centres", "pair.figures", number("centres", t.Centres, Length), number("ratio", t.Mean, Fine),
		number("error", 100*t.WorstError, Plain), number("contact", t.Contact, Plain), number("backlash", t.PitchPlay, Length))
	if off := t.Centres - p.Nominal; math.Abs(off) > sameSize {
		code := "pair.centres-wide"
		if off < 0 {
			code = "pair.centres-deep"
		}
		r.find(Note, "centres", code, number("off", math.Abs(off), Length), number("nominal", p.Nominal, Length))
	}
	switch {
	case t.Approach > leastApproach:
		r.find(Note, "pinion", "pair.approach", number("approach", float64(t.Approach), Angle),
			text("driver", p.Wheel.Name()))
	default:
		r.find(Note, "pinion", "pair.after")
	}
	p.roughFinding(r)
	if t.Contact < 1 {
		r.find(Caution, "centres", "pair.lets-go", number("action", t.Contact, Plain))
	}
}

// rough is the share by which the speed may stray from even before the teeth are felt
// to grate (common practice, no source).
const rough = 0.2

// roughFinding says when a pair runs roughly, and what would do.
func (p *Pair) roughFinding(r *reader) {
	if p.Turn.WorstError <= rough {
		return
	}
	code := "pair.rough"
	if math.Abs(p.Turn.Centres-p.Nominal) > sameSize {
		code = "pair.rough-off-centres"
	}
	r.find(Caution, "centres", code, number("error", p.Turn.WorstError, Percent), number("most", rough, Percent),
		number("nominal", p.Nominal, Length))
}

// leastApproach is the least approach that is told: a hundredth of a degree, the
// last digit that an angle is written to.
const leastApproach = geometry.Angle(math.Pi / 180 / 100)
