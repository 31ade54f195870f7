package mount

import (
	"math"

	"tipline/geometry"
)

// Hole is a hole that a wheel has besides its bore and windows.
type Hole struct {
	At       geometry.Point
	Diameter float64 // mm
	Addition int     // which of the wheel's additions it is of, from 0
}

// Seat is what a wheel offers to the screws, in the wheel's own coordinates.
// Diameters and the thickness in mm.
type Seat struct {
	Bore      float64 // 0 for none
	Hub       float64 // of the crossing; 0 for a wheel that is not crossed
	Root      float64 // of the root circle, where metal ends
	Tip       float64 // of the tip circle
	Teeth     int     // 1 or more, for what is turned tooth by tooth
	Thickness float64
	Arms      []geometry.Angle // clockwise from 12 o'clock
	Windows   []geometry.Outline
	Holes     []Hole
}

// What is taken of a wheel: teeth far beyond any that is cut, and angles, in radians,
// of which rounding leaves a millionth of a degree.
const (
	mostTeeth = 100_000
	mostAngle = 1e6
)

func (s Seat) check() error {
	for _, l := range []struct {
		of          geometry.Quantity
		value, from float64
	}{
		{"bore", s.Bore, 0},
		{"crossing.hub", s.Hub, 0},
		{"teeth.root_diameter", s.Root, geometry.LeastLength},
		{"teeth.tip_diameter", s.Tip, s.Root},
		{"thickness", s.Thickness, geometry.LeastLength},
	} {
		if !(l.value >= l.from && l.value <= geometry.MostLength) {
			return geometry.Between(l.of, l.value, l.from, geometry.MostLength, "mount.wheel-value")
		}
	}
	if s.Teeth < 1 || s.Teeth > mostTeeth {
		return geometry.Between("teeth.count", float64(s.Teeth), 1, mostTeeth, "mount.wheel-value")
	}
	for _, h := range s.Holes {
		if !(h.Diameter > 0 && h.Diameter <= geometry.MostLength && h.At.Norm() <= geometry.MostLength) {
			return geometry.Between("additions", h.Diameter, 0, geometry.MostLength, "mount.wheel-value")
		}
	}
	for _, a := range s.Arms {
		if !(math.Abs(float64(a)) <= mostAngle) {
			return geometry.Between("crossing.arms", float64(a), 0, float64(geometry.FullTurn), "mount.wheel-value")
		}
	}
	return nil
}

// turned returns the seat turned clockwise by a.
func (s Seat) turned(a geometry.Angle) Seat {
	t := s
	t.Arms, t.Windows, t.Holes = nil, nil, nil
	for _, arm := range s.Arms {
		t.Arms = append(t.Arms, (arm + a).Turn())
	}
	for _, w := range s.Windows {
		t.Windows = append(t.Windows, w.Rotate(-a))
	}
	for _, h := range s.Holes {
		t.Holes = append(t.Holes, Hole{h.At.Rotate(-a), h.Diameter, h.Addition})
	}
	return t
}

// between returns the direction midway between arms 0 and 1, and 12 o'clock on a
// wheel with fewer arms.
func (s Seat) between() geometry.Angle {
	if len(s.Arms) < 2 {
		return 0
	}
	return (s.Arms[0] + (s.Arms[1]-s.Arms[0]).Turn()/2).Turn()
}
