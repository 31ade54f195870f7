// Package mount screws wheels to their collets: where the holes come, with which
// drills, how near they come to an edge, and how wheels that share a collet keep
// their tips in line.
package mount

import (
	"math"

	"tipline/assets/tables"
	"tipline/geometry"
)

// The fields that a mounting is asked for by.
const (
	ofScrews   geometry.Quantity = "mount.screws"
	ofThread   geometry.Quantity = "mount.thread"
	ofCircle   geometry.Quantity = "mount.screw_circle"
	ofStart    geometry.Quantity = "mount.start"
	ofBore     geometry.Quantity = "mount.collet.bore"
	ofRegister geometry.Quantity = "mount.collet.register"
	ofFlange   geometry.Quantity = "mount.collet.flange"
)

// MostScrews is the most screws a collet is given.
const MostScrews = 24

// Collet is the turned piece on the arbor that a wheel is screwed to: diameters in
// mm, each 0 where it is not known. The register is the step that the wheel's bore
// sits on, the flange the disc that its face lies against.
type Collet struct {
	Bore     float64
	Register float64
	Flange   float64
}

// Screws are the screws through a wheel into its collet, evenly spread.
type Screws struct {
	Count  int // 1 to MostScrews
	Thread tables.Thread
	Circle float64         // diameter through their centres, mm
	Start  *geometry.Angle // the first, clockwise from 12 o'clock; where nil midway between arms 0 and 1
}

// Check refuses what no collet can be, alone or with a wheel of that bore.
func (c Collet) Check(bore float64) error {
	for _, l := range []struct {
		of    geometry.Quantity
		value float64
	}{{ofBore, c.Bore}, {ofRegister, c.Register}, {ofFlange, c.Flange}} {
		if !(l.value >= 0 && l.value <= geometry.MostLength) {
			return geometry.Between(l.of, l.value, 0, geometry.MostLength, "mount.collet-value")
		}
	}
	step := c.Bore + 2*geometry.LeastLength // the least register there is a step to
	switch {
	case c.Register > 0 && c.Register < step && bore > 0 && c.Register <= bore && bore < step:
		return geometry.AtMost(ofBore, c.Bore, c.Register-2*geometry.LeastLength, "mount.collet-bore-too-large")
	case c.Register > 0 && c.Register < step:
		return geometry.AtLeast(ofRegister, c.Register, step, "mount.register-inside-bore")
	case bore > 0 && c.Register > bore+same:
		return geometry.AtMost(ofRegister, c.Register, bore, "mount.register-too-large")
	}
	if inside := max(c.Bore, c.Register, bore); c.Flange > 0 && c.Flange < inside+2*geometry.LeastLength {
		return geometry.AtLeast(ofFlange, c.Flange, inside+2*geometry.LeastLength, "mount.flange-too-small")
	}
	return nil
}

// Notes says where the flange of a collet is larger than what of a wheel lies on it:
// its metal within the root circle, or the hub of its crossing.
func (c Collet) Notes(s Seat) []*geometry.Limit {
	switch {
	case c.Flange > s.Root+same:
		return []*geometry.Limit{geometry.AtMost(ofFlange, c.Flange, s.Root, "mount.flange-beyond-root")}
	case s.Hub > 0 && c.Flange > s.Hub+same:
		return []*geometry.Limit{geometry.AtMost(ofFlange, c.Flange, s.Hub, "mount.flange-over-windows")}
	}
	return nil
}

func (s Screws) check() error {
	switch {
	case s.Count < 1 || s.Count > MostScrews:
		return geometry.Between(ofScrews, float64(s.Count), 1, MostScrews, "mount.screw-count")
	case !(s.Thread.Major > 0 && s.Thread.Major <= geometry.MostLength && s.Thread.Tap > 0 && s.Thread.Tap < s.Thread.Major):
		return geometry.Refused(ofThread, s.Thread.Major, "mount.thread-unknown")
	case !(s.Circle >= geometry.LeastLength && s.Circle <= geometry.MostLength):
		return geometry.Between(ofCircle, s.Circle, geometry.LeastLength, geometry.MostLength, "mount.circle-value")
	case s.Start != nil && !(math.Abs(float64(*s.Start)) <= mostAngle):
		return geometry.Between(ofStart, float64(*s.Start), 0, float64(geometry.FullTurn), "mount.start-value")
	}
	return nil
}
