package solve

import (
	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/depthing"
	"tipline/geometry/measure"
	"tipline/render/template"
)

// Pair is a wheel and its pinion in mesh. What could not be built is nil, and a
// finding says why.
type Pair struct {
	Part     *job.Pair
	Wheel    Made // what drives; nil where the job has no such part
	Pinion   Made // what is driven
	Driver   depthing.Gear
	Follower depthing.Gear
	Nominal  float64        // mm, the distance of centres at which the pitch circles touch
	Turn     *depthing.Turn // at the distance typed, else the nominal one
	Findings []Finding
}

// ID returns the pair's id.
func (p *Pair) ID() string { return p.Part.ID }

// Name returns what the pair is called: its parts' names.
func (p *Pair) Name() string {
	if p.Wheel == nil || p.Pinion == nil {
		return p.Part.ID
	}
	return p.Wheel.Name() + " – " + p.Pinion.Name()
}

// Said returns what there is to say of the pair.
func (p *Pair) Said() []Finding { return p.Findings }

// Template hands the pair over to be drawn, false where it does not mesh.
func (p *Pair) Template() (template.Pair, bool) {
	if p.Turn == nil {
		return template.Pair{}, false
	}
	return template.Pair{
		ID: p.ID(), Name: p.Name(), Wheel: p.Wheel.Template(), Pinion: p.Pinion.Template(),
		Driver: p.Driver, Follower: p.Follower, Nominal: p.Nominal, Turn: *p.Turn,
	}, true
}

// meshSteps is how many places of a pitch a pair is looked at in: the greatest
// error found is within a part in a thousand of that of ten times as many.
const meshSteps = 500

// solvePair turns one pair.
func solvePair(part *job.Pair, wheel, pinion Made, unit measure.Unit) *Pair {
	r := &reader{part: part.ID, unit: unit}
	p := &Pair{Part: part, Wheel: wheel, Pinion: pinion}
	p.mesh(r)
	p.Findings = sorted(r.findings)
	return p
}

func (p *Pair) mesh(r *reader) {
	mark := len(r.findings)
	p.Driver = r.gear("wheel", p.Part.Wheel, p.Wheel)
	p.Follower = r.gear("pinion", p.Part.Pinion, p.Pinion)
	if !r.sound(mark) {
		return
	}
	p.Nominal = p.Driver.PitchRadius + p.Follower.PitchRadius
	centres := r.length("centres", p.Part.Centres, p.Nominal)
	if !r.sound(mark) {
		return
	}
	turn, err := depthing.Mesh(p.Driver, p.Follower, centres, meshSteps)
	if !r.fail("centres", err) {
		p.Turn = &turn
	}
}

// gear returns a part as its neighbour in a pair meets it.
func (r *reader) gear(field geometry.Quantity, id string, m Made) depthing.Gear {
	if m == nil {
		r.find(Error, field, "pair.no-such-part", text("read", id))
		return depthing.Gear{}
	}
	t := m.Template()
	var g depthing.Gear
	var err error
	switch {
	case t.Lantern != nil:
		g, err = depthing.Lantern(len(t.Lantern.Holes), t.Lantern.PitchRadius, t.Lantern.TrundleDiameter)
	case t.Teeth == nil:
		r.find(Error, field, "pair.unbuilt", text("part", m.Name()))
	case t.Teeth.PitchRadius == 0:
		r.find(Error, field, "pair.no-pitch", text("part", m.Name()))
	default:
		g, err = depthing.Toothed(t.Teeth.Outline, t.Teeth.Count, t.Teeth.PitchRadius)
	}
	r.fail(field, err)
	return g
}
