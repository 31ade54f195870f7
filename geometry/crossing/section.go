package crossing

import "math"

// narrowest returns where an arm between hub and rim is narrowest, fillets not
// counted. Its Area is left to whoever knows the thickness. A swept arm's sides keep
// or exceed the width asked for, which is least at an end.
func narrowest(hub, rim float64, s Spec) Section {
	least := Section{Radius: hub, Width: s.ArmAtHub}
	if s.ArmAtRim < s.ArmAtHub {
		least = Section{Radius: rim, Width: s.ArmAtRim}
	}
	if s.Style != Waisted {
		return least
	}
	_, left := armSides(hub, rim, s)
	if left.bend <= 0 {
		return least
	}
	if at := left.middle().X; at > hub && at < rim {
		return Section{Radius: at, Width: 2 * left.heightAt(at)}
	}
	return least
}

// widths returns how wide an arm is at each share of the way along its centre line
// from hub to rim, taken square to it, fillets not counted; of a swept one what is
// asked for.
func widths(hub, rim float64, s Spec) func(share float64) float64 {
	if s.Style != Waisted {
		return s.taper
	}
	_, left := armSides(hub, rim, s)
	return func(share float64) float64 { return 2 * left.heightAt(hub+share*(rim-hub)) }
}

// taper returns the width at a share of the arm's length where it is linear.
func (s Spec) taper(share float64) float64 { return s.ArmAtHub + share*(s.ArmAtRim-s.ArmAtHub) }

// heightAt returns the y of the side at x, in the frame of its arm: on its circle
// bend·(x² + y²) + 2x·sin − 2y·cos = 0 from the hub point, sin and cos of the
// direction in which it leaves that.
func (s side) heightAt(x float64) float64 {
	x -= s.hub.X
	sin, cos := s.along.Y, s.along.X
	rise := x * (2*sin + s.bend*x)
	return s.hub.Y + rise/(cos+math.Sqrt(max(0, cos*cos-s.bend*rise)))
}
