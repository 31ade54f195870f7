package cutter

import (
	"math"

	"tipline/geometry/internal/seek"
	"tipline/geometry/measure"
)

// Depth is a row of the depth card: what the dials read and what stands on the
// tip at a place between first touch and depth, or past it. Dials count from first
// touch, in mm.
//
// A cutter is fed along its own axis, the infeed, by one slide. Set over from the
// wheel's centre by e it does not travel towards the centre, so a dial that reads
// along the radius, how near the form's zero (x = 0, y = 0) has come to the centre,
// tells another figure: the distance is √(e² + H²) with the centre H below the
// zero, H = Cut.TouchHeight − infeed. Without set-over both read the same.
type Depth struct {
	Infeed float64 // along the cutter's axis
	Left   float64 // of it, to depth; negative past it
	Height float64 // H, how far the wheel's centre still lies below the form's zero

	Radial     float64 // towards the wheel's centre
	RadialLeft float64 // of it, to depth; negative past it

	Land float64 // arc left on the tip; negative where the teeth have grown shorter

	Fall       Fall // what the land loses next by the dial along the cutter
	RadialFall Fall // what it loses next by the dial along the radius
}

// Fall is by how much the land narrows as a dial goes on by a division, in mm.
type Fall struct {
	Hundredth float64 // for the next 0.01 mm
	Thou      float64 // for the next 0.001 in
}

// The divisions of a dial, in mm.
const (
	hundredth = 0.01
	thou      = measure.MMPerInch / 1000
)

// Depths returns the depth card in n+1 rows, at least two, from first touch to
// depth. Rows stand the finer the nearer they are to depth: row i has (1 − i/n)²
// of the infeed left.
func (c Cut) Depths(n int) []Depth {
	n = max(n, 1)
	rows := make([]Depth, n+1)
	for i := range rows {
		share := 1 - float64(i)/float64(n)
		rows[i] = c.DepthAt(c.Infeed * (1 - share*share))
	}
	return rows
}

// DepthsLeft returns the rows of the depth card at which so much is left of the
// infeed, those at and before first touch left out.
func (c Cut) DepthsLeft(left ...float64) []Depth {
	var rows []Depth
	for _, l := range left {
		if l < c.Infeed {
			rows = append(rows, c.DepthAt(c.Infeed-l))
		}
	}
	return rows
}

// DepthAt returns the row of the depth card at an infeed, 0 at first touch.
func (c Cut) DepthAt(infeed float64) Depth {
	d := Depth{
		Infeed: infeed, Left: c.Infeed - infeed, Height: c.TouchHeight - infeed,
		Radial: c.Radial(infeed), Land: c.LandAt(infeed),
	}
	d.RadialLeft = c.Radial(c.Infeed) - d.Radial
	d.Fall = Fall{d.Land - c.LandAt(infeed+hundredth), d.Land - c.LandAt(infeed+thou)}
	d.RadialFall = Fall{
		d.Land - c.LandAt(c.InfeedAtRadial(d.Radial+hundredth)),
		d.Land - c.LandAt(c.InfeedAtRadial(d.Radial+thou)),
	}
	return d
}

// Radial returns how much nearer the form's zero comes to the wheel's centre as
// the cutter is fed from first touch: √(e² + H_touch²) − √(e² + H²).
func (c Cut) Radial(infeed float64) float64 {
	return math.Hypot(c.SetOver, c.TouchHeight) - math.Hypot(c.SetOver, c.TouchHeight-infeed)
}

// InfeedAtRadial returns the infeed at which a dial along the radius reads so much
// since first touch. Nearer than the set-over the zero does not come to the
// centre; a greater reading gives the infeed there, H_touch.
func (c Cut) InfeedAtRadial(radial float64) float64 {
	away := math.Hypot(c.SetOver, c.TouchHeight) - radial
	return c.TouchHeight - math.Sqrt(math.Max((away-c.SetOver)*(away+c.SetOver), 0))
}

// InfeedFor returns the least infeed at which no more than a land is left on the
// tip, and false where even feeding to the wheel's centre leaves more, or the land
// is more than the pitch. DepthAt tells what is then left to depth.
func (c Cut) InfeedFor(land float64) (infeed float64, ok bool) {
	pitch := c.TipRadius * 2 * math.Pi / float64(c.Count)
	if !(land <= pitch) || c.LandAt(c.TouchHeight) > land {
		return 0, false
	}
	return seek.Last(c.TouchHeight, 0, 0, func(d float64) bool { return c.LandAt(d) <= land }), true
}
