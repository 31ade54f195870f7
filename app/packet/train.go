package packet

import (
	"math/big"
	"slices"

	"tipline/app/solve"
	"tipline/render/template"
)

// TrainOf hands a train over to be drawn, false where it could not be worked out or
// where neither part of one of its pairs has a size yet.
func TrainOf(r *solve.Result, t *solve.Train) (template.Train, bool) {
	if !pictured(t) {
		return template.Train{}, false
	}
	of := template.Train{
		ID: t.ID(), Ratio: t.Way.Ratio, Reverse: t.Way.Reverse, PerHour: t.PerHour, Beat: t.Beat,
		Arbors: []template.Arbor{{Name: nameOf(r, t.Part.From), Turns: big.NewRat(1, 1)}},
	}
	at := arborOf(r, t.Part.From)
	for _, p := range t.Pairs {
		near, far := p.Wheel, p.Pinion
		if arborOf(r, near.ID()) != at {
			near, far = far, near
		}
		at = arborOf(r, far.ID())
		last := &of.Arbors[len(of.Arbors)-1]
		driven := toothed(far)
		last.Driver = toothed(near)
		sizeBoth(&last.Driver, &driven)
		next := template.Arbor{Name: at, Driven: driven, Turns: big.NewRat(int64(last.Driver.Count), int64(driven.Count))}
		next.Turns.Mul(next.Turns, last.Turns)
		last.Centres = last.Driver.Radius + driven.Radius
		if p.Turn != nil {
			last.Centres = p.Turn.Centres
		}
		of.Arbors = append(of.Arbors, next)
	}
	of.Arbors[len(of.Arbors)-1].Name = nameOf(r, t.Part.To)
	if t.Escape != nil && toothed(t.Escape).Radius > 0 {
		of.Arbors[len(of.Arbors)-1].Driver = toothed(t.Escape)
	}
	return of, true
}

// nameOf returns what a part is called, or an arbor by its id.
func nameOf(r *solve.Result, id string) string {
	if p := r.Part(id); p != nil {
		return p.Name()
	}
	return id
}

// arborOf returns the arbor that a part stands on, or the id itself: a part on no
// arbor is one of its own.
func arborOf(r *solve.Result, id string) string {
	for _, a := range r.Job.Arbors {
		if slices.Contains(a.Parts, id) {
			return a.ID
		}
	}
	return id
}

// toothed returns a wheel or pinion as a train shows it.
func toothed(m solve.Made) template.Toothed {
	t := m.Template()
	_, leaves := m.(*solve.Pinion)
	of := template.Toothed{Name: m.Name(), Count: solve.TeethOf(m), Leaves: leaves}
	switch {
	case t.Lantern != nil:
		of.Radius = t.Lantern.PitchRadius
	case t.Teeth != nil:
		of.Radius = t.Teeth.PitchRadius
		if of.Radius == 0 {
			of.Radius = t.Teeth.TipRadius
		}
	}
	return of
}

// pictured reports whether a train has been worked out and every pair of it has a part
// with a size.
func pictured(t *solve.Train) bool {
	return t.Way != nil && !slices.ContainsFunc(t.Pairs, func(p *solve.Pair) bool {
		return toothed(p.Wheel).Radius == 0 && toothed(p.Pinion).Radius == 0
	})
}

// sizeBoth gives a part that could not be built the size at which it would mesh with the
// other.
func sizeBoth(one, other *template.Toothed) {
	if one.Radius == 0 {
		one, other = other, one
	}
	if other.Radius == 0 {
		other.Radius = one.Radius * float64(other.Count) / float64(one.Count)
	}
}
