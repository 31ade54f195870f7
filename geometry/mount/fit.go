package mount

import (
	"math"
	"strings"

	"tipline/geometry"
)

// Place is where a screw stands.
type Place struct {
	Angle geometry.Angle // clockwise from 12 o'clock, 0 to a full turn
	At    geometry.Point
}

// Mounting is a wheel, or a stack of them, on its collet.
type Mounting struct {
	Collet Collet
	Screws Screws
	Places []Place

	Clear   Drill // through the wheels, a close fit for the screw
	Tap     Drill // into the collet, and through all of it where they are drilled together
	Starter Drill // the point of a centre drill

	Depth float64 // of metal to drill through before the collet, mm
	Chord float64 // dividers from one screw to the next, mm; 0 for a single one
	Edge  float64 // the least from a screw's centre to an edge, mm

	Notes []*geometry.Limit // what will go wrong though it can be drilled
}

// bench is what lies under the drill: wheels, turned as they go together, on a
// collet.
type bench struct {
	seats  []Seat
	collet Collet
	screws Screws
	clear  Drill
	start  geometry.Angle
}

// Fit works out how a wheel is screwed to its collet. A hole that breaks into the
// bore, a window, another hole, the register, the flange's edge or the root circle
// is refused with the screw circle nearest to the one asked for that clears them
// all; where none does, with the number of screws or the thread that would.
func Fit(s Seat, c Collet, screws Screws) (Mounting, error) {
	if err := s.check(); err != nil {
		return Mounting{}, err
	}
	return fit([]Seat{s}, c, screws)
}

// fit works out a mounting of seats that have been checked.
func fit(seats []Seat, c Collet, screws Screws) (Mounting, error) {
	if err := screws.check(); err != nil {
		return Mounting{}, err
	}
	for _, s := range seats {
		if err := c.Check(s.Bore); err != nil {
			return Mounting{}, err
		}
	}
	b := bench{seats: seats, collet: c, screws: screws, clear: clearance(screws.Thread), start: first(seats, screws)}
	edges := b.edges()
	switch l := b.refuse(edges); {
	case l == nil:
		return b.mounting(edges), nil
	case strings.HasPrefix(l.Code, breaksHole):
		return Mounting{}, b.struck(l)
	default:
		return Mounting{}, l
	}
}

// first returns where the first screw stands.
func first(seats []Seat, screws Screws) geometry.Angle {
	if screws.Start != nil {
		return screws.Start.Turn()
	}
	for _, s := range seats {
		if len(s.Arms) > 1 {
			return s.between()
		}
	}
	return 0
}

func (b bench) mounting(edges []edge) Mounting {
	t := b.screws.Thread
	m := Mounting{
		Collet: b.collet, Screws: b.screws, Places: b.places(),
		Clear: b.clear, Tap: Drill{Name: t.TapDrill, MM: t.Tap}, Starter: starter(t),
		Depth: b.depth(), Edge: math.Inf(1),
	}
	if n := b.screws.Count; n > 1 {
		m.Chord = b.screws.Circle * math.Sin(math.Pi/float64(n))
	}
	for _, e := range edges {
		m.Edge = min(m.Edge, e.off(b.screws.Circle/2))
	}
	m.Notes = b.notes(edges)
	return m
}

func (b bench) places() []Place {
	ways := b.ways()
	places := make([]Place, len(ways))
	for i, w := range ways {
		places[i] = Place{b.angle(i), w.Times(b.screws.Circle / 2)}
	}
	return places
}

// angle returns where screw i stands.
func (b bench) angle(i int) geometry.Angle {
	return (b.start + geometry.FullTurn*geometry.Angle(i)/geometry.Angle(b.screws.Count)).Turn()
}

// ways returns the unit direction of each screw.
func (b bench) ways() []geometry.Point {
	ways := make([]geometry.Point, b.screws.Count)
	for i := range ways {
		ways[i] = geometry.Polar(1, geometry.Clock(b.angle(i)))
	}
	return ways
}

// depth returns how much metal is drilled through before the collet.
func (b bench) depth() float64 {
	deep := 0.0
	for _, s := range b.seats {
		deep += s.Thickness
	}
	return deep
}
