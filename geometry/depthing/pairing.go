package depthing

import (
	"math"
	"runtime"

	"tipline/geometry"
	"tipline/geometry/fault"
)

// pairing is one tooth and one leaf met at every step of the driver while they
// reach each other. All pairs in mesh are this one, a whole number of pitches on.
type pairing struct {
	teeth
	pitch       float64 // of the driver
	steps       int     // in a pitch
	tip         float64 // tip radius of the driver
	pitchRadius float64 // of the follower
	first       int     // step of blocks[0]
	blocks      []block
}

// sample meets the tooth and the leaf at every step where they can, in as many runs at
// a time as there are processors: each step is met by itself.
func (p *pairing) sample() {
	c, a, b := p.centres, p.tip, p.reach
	reach := math.Acos(math.Min(1, math.Max(-1, (c*c+a*a-b*b)/(2*c*a))))
	most := int(math.Ceil((reach/p.pitch + 1) * float64(p.steps)))
	p.first = -most
	p.blocks = make([]block, 2*most+1)
	runs := min(runtime.GOMAXPROCS(0), mostRuns)
	fault.Each(runs, func(r int) {
		for i := len(p.blocks) * r / runs; i < len(p.blocks)*(r+1)/runs; i++ {
			p.blocks[i] = p.meet(p.angle(p.first + i))
		}
	})
}

// mostRuns is how many runs of steps are met at a time at most: more would be too short
// to be worth their beginning.
const mostRuns = 4

func (p *pairing) angle(step int) float64 { return float64(step) * p.pitch / float64(p.steps) }

// at returns the block of a step, of whatever pitch.
func (p *pairing) at(step int) block {
	if i := step - p.first; i >= 0 && i < len(p.blocks) {
		return p.blocks[i]
	}
	return block{}
}

// mesh is every pair together at one step.
type mesh struct {
	push  touch   // the farthest on: the tooth that drives
	tooth int     // which it is, counted anticlockwise
	room  float64 // how far on the follower may stand at most
	pairs int
}

// together returns the mesh of a step 0 to steps − 1, and false where no tooth
// reaches a leaf. Leads of all pairs are told against the same ratio, so a pair k
// pitches behind has the lead the first had k pitches ago; behind it stands the
// leaf one follower's pitch on.
func (p *pairing) together(step int) (mesh, bool) {
	m := mesh{room: math.Inf(1)}
	found := false
	deepest := (-p.first)/p.steps + 2
	for k := -deepest; k <= deepest; k++ {
		b := p.at(step + k*p.steps)
		if !b.ok {
			continue
		}
		if !found || b.ahead.lead > m.push.lead {
			m.push, m.tooth = b.ahead, k
		}
		found = true
		m.room = math.Min(m.room, b.behind.lead+p.pitch*p.ratio)
	}
	for k := -deepest; k <= deepest; k++ {
		if b := p.at(step + k*p.steps); b.ok && (m.push.lead-b.ahead.lead)*p.pitchRadius <= touching {
			m.pairs++
		}
	}
	return m, found
}

// turn fills the table and what is read from it.
func (p *pairing) turn(t *Turn) error {
	t.Steps = make([]Step, p.steps)
	t.Backlash, t.BacklashMost = geometry.Angle(math.Inf(1)), 0
	least, most := math.Inf(1), math.Inf(-1)
	for i := range t.Steps {
		m, ok := p.together(i)
		if !ok {
			return geometry.Between("centres", t.Centres, 0, t.Centres, "depthing.lets-go")
		}
		s := p.step(i, m)
		t.Steps[i] = s
		if e := math.Abs(s.Speed/t.Mean - 1); e > t.WorstError {
			t.WorstError, t.WorstStep = e, i
		}
		t.Backlash = min(t.Backlash, s.Play)
		t.BacklashMost = max(t.BacklashMost, s.Play)
		least, most = math.Min(least, m.push.lead), math.Max(most, m.push.lead)
	}
	t.Lost = geometry.Angle(most - least)
	t.Fall = fall(t.Steps, p.pitch*p.ratio)
	t.PitchPlay = float64(t.Backlash) * p.pitchRadius
	return nil
}

// step tells a mesh in the fixed frame.
func (p *pairing) step(i int, m mesh) Step {
	driver := geometry.Angle(p.angle(i))
	own := geometry.Angle(p.angle(i + m.tooth*p.steps))
	at := m.push.at.Rotate(own)
	return Step{
		Driver: driver, Follower: -driver*geometry.Angle(p.ratio) - geometry.Angle(m.push.lead),
		Speed: p.speed(m.push, own), Tooth: -m.tooth, At: at, Pairs: m.pairs,
		Play: geometry.Angle(m.room - m.push.lead),
	}
}

// mostSpeed bounds, in mean speeds, what is told of a contact whose normal passes
// near the follower's centre.
const mostSpeed = 1000.0

// speed returns the turns of the follower to one of the driver while the two
// stay in touch: the surfaces keep together along their common normal, so the
// speeds are as the arms of that normal about the two centres.
func (p *pairing) speed(c touch, driver geometry.Angle) float64 {
	sin, cos := math.Sincos(float64(driver))
	f := geometry.Point{X: sin * p.centres, Y: cos * p.centres}
	arm, other := c.at.Cross(c.normal), -c.at.Sub(f).Cross(c.normal)
	if math.Abs(other)*mostSpeed*p.ratio <= math.Abs(arm) {
		return math.Copysign(mostSpeed*p.ratio, arm*other)
	}
	return arm / other
}

// fall returns how far the follower goes back at most from one step to the next.
func fall(steps []Step, pitch float64) geometry.Angle {
	var most geometry.Angle
	for i, s := range steps {
		next := steps[0].Follower - geometry.Angle(pitch)
		if i+1 < len(steps) {
			next = steps[i+1].Follower
		}
		most = max(most, next-s.Follower)
	}
	return most
}
