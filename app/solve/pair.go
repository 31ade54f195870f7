package solve

import (
	"sync"

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

	key     meshKey
	closest func() (float64, error) // centres at which it does not jam; worked out once, when it first jams
	foul    *geometry.Limit         // why it jams; nil where it does not
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
// error found is within a hundredth of that of twenty times as many.
const meshSteps = 250

// meshKey is what a mesh hangs on: an edit of anything else leaves it as it was.
type meshKey struct {
	gears   [2]gearKey // of the wheel and the pinion
	centres float64
}

// gearKey is what the outline of a part's teeth hangs on.
type gearKey struct {
	teeth                         *job.Teeth
	form, leaves, module, trundle string // of a pinion
	ratio                         float64
}

func gearKeyOf(m Made) gearKey {
	switch m := m.(type) {
	case *Wheel:
		return gearKey{teeth: m.Part.Teeth}
	case *Pinion:
		p := m.Part
		return gearKey{nil, p.Form.Text, p.Leaves.Text, p.Module.Text, p.Trundle.Text, m.Ratio}
	}
	return gearKey{}
}

// meshes are pairs by what their mesh hangs on, and by their gears alone.
type meshes struct {
	turned map[meshKey]*Pair
	geared map[[2]gearKey]*Pair
}

// meshesOf returns the pairs that were turned.
func meshesOf(pairs []*Pair) meshes {
	m := meshes{make(map[meshKey]*Pair, len(pairs)), make(map[[2]gearKey]*Pair, len(pairs))}
	for _, p := range pairs {
		if p.Turn != nil {
			m.turned[p.key], m.geared[p.key.gears] = p, p
		}
	}
	return m
}

// solvePair turns one pair, or takes the turn of one whose teeth and centres were
// the same, or the closest centres of one whose teeth were.
func solvePair(part *job.Pair, wheel, pinion Made, unit measure.Unit, known meshes) *Pair {
	r := &reader{part: part.ID, unit: unit}
	p := &Pair{Part: part, Wheel: wheel, Pinion: pinion}
	p.mesh(r, known)
	p.say(r)
	p.Findings = sorted(r.findings)
	return p
}

func (p *Pair) mesh(r *reader, known meshes) {
	mark := len(r.findings)
	p.Driver = r.gear("wheel", p.Part.Wheel, p.Wheel)
	p.Follower = r.gear("pinion", p.Part.Pinion, p.Pinion)
	if p.Part.Wheel == p.Part.Pinion && p.Wheel != nil {
		r.find(Error, "pinion", "pair.itself", text("part", p.Wheel.Name()))
	}
	if !r.sound(mark) {
		return
	}
	p.Nominal = p.Driver.PitchRadius + p.Follower.PitchRadius
	centres := r.length("centres", p.Part.Centres, p.Nominal)
	if !r.sound(mark) {
		return
	}
	p.key = meshKey{[2]gearKey{gearKeyOf(p.Wheel), gearKeyOf(p.Pinion)}, centres}
	if q := known.turned[p.key]; q != nil {
		p.Turn, p.closest, p.foul = q.Turn, q.closest, q.foul
		return
	}
	turn, err := depthing.Mesh(p.Driver, p.Follower, centres, meshSteps)
	if r.fail("centres", err) {
		return
	}
	if q := known.geared[p.key.gears]; q != nil {
		p.closest = q.closest
	} else {
		driver, follower := p.Driver, p.Follower
		p.closest = sync.OnceValues(func() (float64, error) { return depthing.Closest(driver, follower) })
	}
	p.Turn, p.foul = &turn, turn.Foul(p.closest)
}

// gear returns a part as its neighbour in a pair meets it.
func (r *reader) gear(field geometry.Quantity, id string, m Made) depthing.Gear {
	switch {
	case id == "":
		r.find(Error, field, "finding.missing")
		return depthing.Gear{}
	case m == nil:
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
		r.find(Error, field, "pair.unbuilt", waits(m))
	case t.Teeth.PitchRadius == 0:
		r.find(Error, field, "pair.no-pitch", text("part", m.Name()))
	default:
		g, err = depthing.Toothed(t.Teeth.Outline, t.Teeth.Count, t.Teeth.PitchRadius)
	}
	if err != nil {
		// What is wrong with a part's outline is told where the pair names the part.
		f := fromError(r.part, field, err)
		f.Field = field
		r.findings = append(r.findings, f)
	}
	return g
}
