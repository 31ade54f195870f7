// Package tooth makes toothed wheels: cycloidal wheels and their pinions, lantern
// pinions and the wheels that drive them, pointed wheels as their cutter leaves them,
// and wheels known only by measurement; and the spaces that a form must cut for each.
package tooth

import (
	"math"

	"tipline/geometry"
)

// Wheel is a toothed wheel, centre at the origin, tip 0 at 12 o'clock, tips
// numbered clockwise.
type Wheel struct {
	Form        string // as in the job file: "cycloidal", "pointed", …
	Count       int
	TipRadius   float64
	RootRadius  float64
	PitchRadius float64          // 0 where the form has none
	Outline     geometry.Outline // the whole wheel without bore; the tip circle for a measured wheel
	Space       geometry.Chain   // one space, at 12 o'clock + half a pitch, in the wheel's coordinates
}

// Tip returns the direction of tip i, clockwise from 12 o'clock.
func (w Wheel) Tip(i int) geometry.Angle {
	return geometry.Clock(geometry.FullTurn * geometry.Angle(i) / geometry.Angle(w.Count))
}

// Solid returns the outline whose area stands for the wheel's metal: the teeth,
// and for a measured wheel, whose flanks are not known, the circle midway between
// root and tip.
func (w Wheel) Solid() geometry.Outline {
	if w.Form != measuredForm {
		return w.Outline
	}
	return w.Outline.Scale((w.RootRadius + w.TipRadius) / 2 / w.TipRadius)
}

// CheckBore refuses a bore, a diameter in mm, that leaves no metal inside the
// root circle, or is less than nothing; 0 is no bore.
func (w Wheel) CheckBore(bore float64) error {
	if most := 2*w.RootRadius - geometry.LeastLength; !(bore >= 0 && bore <= most) {
		return geometry.Between("bore", bore, 0, math.Max(most, 0), "tooth.bore")
	}
	return nil
}

// around returns the outline of a wheel from the vertices of one tooth, run
// anticlockwise from tip 0 to before the next tip.
func around(count int, tooth []geometry.Vertex) (geometry.Outline, error) {
	vertices := make([]geometry.Vertex, 0, count*len(tooth))
	for i := range count {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(count))
		for _, v := range tooth {
			v.Point = geometry.Point{X: cos*v.X - sin*v.Y, Y: sin*v.X + cos*v.Y}
			vertices = append(vertices, v)
		}
	}
	return geometry.NewOutline(vertices)
}

// spaceTo returns the space that such a tooth runs down and up again, to where
// the next tooth has end, moved a pitch round and run the other way: clockwise
// from tip 0 to tip 1.
func spaceTo(count int, tooth []geometry.Vertex, end geometry.Point) (geometry.Chain, error) {
	pitch := geometry.FullTurn / geometry.Angle(count)
	last := geometry.Vertex{Point: end.Rotate(pitch)}
	chain, err := geometry.NewChain(append(tooth[:len(tooth):len(tooth)], last))
	return chain.Reverse().Rotate(-pitch), err
}
