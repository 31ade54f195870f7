package depthing

import (
	"math"

	"tipline/geometry"
)

// fewestSteps and mostSteps bound the steps of a mesh in one pitch.
const (
	fewestSteps = 8
	mostSteps   = 100_000
)

// touching is how far, in mm along the follower's pitch circle, a pair may stand
// open and still count as in contact: what the outlines of teeth are fitted and
// written to.
const touching = 1e-3

// Step is one place of the turning pair. The driver's centre is the origin and
// the follower's stands at 12 o'clock of it. Turned anticlockwise by Driver the
// driver's tooth 0, and turned by half a turn and Follower and moved to its centre
// the follower's, are where they are in the step.
type Step struct {
	Driver   geometry.Angle // anticlockwise, 0 to a pitch
	Follower geometry.Angle // less than nothing: it turns the other way
	Speed    float64        // turns of the follower to one of the driver, at this moment; ±1000 times the mean at most
	Tooth    int            // of the driver that pushes, counted clockwise from tooth 0; the leaf is as many the other way from the follower's tooth 0
	At       geometry.Point // where it touches
	Pairs    int            // teeth in contact to 1 µm
	Play     geometry.Angle // how far the follower can be turned on
}

// Turn is a pair turned through one pitch, driver anticlockwise and pushing, the
// follower held back by its load. What comes after one pitch repeats.
type Turn struct {
	Mean    float64 // turns of the follower to one of the driver
	Centres float64 // mm
	Steps   []Step

	WorstError float64        // greatest |Speed/Mean − 1| of any step
	WorstStep  int            // where it is
	Fall       geometry.Angle // how far the follower falls back at most when a tooth lets go
	Lost       geometry.Angle // greatest error of the follower's place, end to end

	Contact  float64        // contact ratio: the arc of action, approach and recess, in pitches
	Approach geometry.Angle // driver's turn from first contact to the line of centres; 0 when wholly after it
	Recess   geometry.Angle // driver's turn from the line of centres until its tip is reached, the pair alone

	Backlash     geometry.Angle // least play of the follower
	BacklashMost geometry.Angle // greatest play of the follower
	PitchPlay    float64        // mm, Backlash at the follower's pitch circle

	DriverClearance   float64 // mm, from the driver's tips to the follower's floor; under 0 they meet
	FollowerClearance float64 // mm, from the follower's tips to the driver's floor; under 0 they meet
}

// Jams reports whether the pair cannot turn: tips meet a floor, or the teeth find
// no room in their spaces.
func (t Turn) Jams() bool {
	return t.DriverClearance < 0 || t.FollowerClearance < 0 || t.Backlash < 0
}

// Mesh turns a pair through one pitch of the driver in that many steps, 8 to
// 100,000. It refuses centres so far apart that the driver's teeth leave the
// follower's one by one; a pair that jams is told by the Turn.
func Mesh(driver, follower Gear, centres float64, steps int) (Turn, error) {
	p, t, err := meshed(driver, follower, centres, steps)
	if err != nil {
		return Turn{}, err
	}
	p.action(&t)
	return t, nil
}

// meshed is Mesh without the arc of action, which tells nothing of whether a pair jams.
func meshed(driver, follower Gear, centres float64, steps int) (*pairing, Turn, error) {
	p, err := newPairing(driver, follower, centres, steps)
	if err != nil {
		return nil, Turn{}, err
	}
	t := Turn{
		Mean: p.ratio, Centres: centres,
		DriverClearance:   centres - driver.TipRadius() - follower.Floor,
		FollowerClearance: centres - follower.TipRadius() - driver.Floor,
	}
	if err := p.turn(&t); err != nil {
		return nil, Turn{}, err
	}
	return p, t, nil
}

// newPairing checks the pair and meets tooth and leaf at every step.
func newPairing(driver, follower Gear, centres float64, steps int) (*pairing, error) {
	for _, g := range [2]Gear{driver, follower} {
		if err := g.check(); err != nil {
			return nil, err
		}
	}
	if steps < fewestSteps || steps > mostSteps {
		return nil, geometry.Between("steps", float64(steps), fewestSteps, mostSteps, "depthing.steps")
	}
	least := math.Max(driver.TipRadius(), follower.TipRadius())
	most := farthest(driver, follower)
	if !(centres > least && centres < most) {
		return nil, geometry.Between("centres", centres, least, most, "depthing.centres")
	}
	p := &pairing{
		teeth: teeth{
			driver: piecesOf(driver), follower: piecesOf(follower), centres: centres,
			ratio: float64(driver.Count) / float64(follower.Count), reach: follower.TipRadius(),
		},
		pitch: float64(driver.Pitch()), steps: steps, tip: driver.TipRadius(),
		pitchRadius: follower.PitchRadius,
	}
	p.sample()
	return p, nil
}

// farthest returns the greatest distance of centres at which a tooth of the
// driver still reaches into the follower's tips when its neighbour leaves them: a
// tip half a pitch from the line of centres stands on the follower's tip circle.
func farthest(driver, follower Gear) float64 {
	a, b := driver.TipRadius(), follower.TipRadius()
	sin, cos := math.Sincos(float64(driver.Pitch()) / 2)
	if a*sin >= b {
		return math.Max(a, b) // no centres would do
	}
	return a*cos + math.Sqrt(b*b-a*a*sin*sin)
}
