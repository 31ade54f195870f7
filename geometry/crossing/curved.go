package crossing

import "math"

// curvedStiffness returns the torque about the axis that turns the rim by one radian
// against one arm, in N·mm, as stiffness does, for an arm of any width along any
// centre line that leaves the hub at share 0 and reaches the rim at share 1.
//
// The rim is taken back to the wheel's centre, where it exerts a torque T and a force
// on the arm and only turns. At the place (x, y) of the centre line, its direction
// (u, v), these make the bending moment T − x·Fy + y·Fx and the thrust u·Fx + v·Fy.
// By Castigliano's theorem the turn and the two movements, which are nothing, are the
// derivatives of the energy ∫ M²/2EI + N²/2EA ds; the torque for a radian is the
// first element of the inverse of that energy's matrix. Bending and stretching of a
// thin bar, shear and the curvature's part in the stress left out (from memory of
// Timoshenko, Strength of Materials, part II, curved bars; any text on frames has it).
func curvedStiffness(young, t float64, line centre, width func(share float64) float64) float64 {
	var f [3][3]float64
	for _, g := range gauss() {
		p, w := line.station(g.share), width(g.share)
		bending := g.weight * line.length / (young * t * w * w * w / 12)
		thrust := g.weight * line.length / (young * t * w)
		m, n := [3]float64{1, -p.X, p.Y}, [3]float64{0, p.way.Y, p.way.X}
		for i := range f {
			for j := range f {
				f[i][j] += bending*m[i]*m[j] + thrust*n[i]*n[j]
			}
		}
	}
	det := f[1][1]*f[2][2] - f[1][2]*f[1][2]
	held := (f[0][1]*f[0][1]*f[2][2] - 2*f[0][1]*f[0][2]*f[1][2] + f[0][2]*f[0][2]*f[1][1]) / det
	return 1 / (f[0][0] - held)
}

// panels is into how many pieces an arm is cut to integrate along it: with five
// points in each, widths that change fortyfold along a waisted arm are integrated to
// 1e-9 of their value.
const panels = 24

// place is a point of a rule of integration over 0 to 1.
type place struct{ share, weight float64 }

// gauss returns Gauss's rule of five points in each of the panels: nodes 0 and
// ±√(5 ∓ 2√(10/7))/3, weights 128/225 and (322 ± 13√70)/900 over −1 to 1 (Abramowitz
// and Stegun, Handbook of Mathematical Functions, 25.4.29, from memory).
func gauss() []place {
	inner, outer := math.Sqrt(5-2*math.Sqrt(10.0/7))/3, math.Sqrt(5+2*math.Sqrt(10.0/7))/3
	heavy, light := (322+13*math.Sqrt(70))/900, (322-13*math.Sqrt(70))/900
	rule := []place{{-outer, light}, {-inner, heavy}, {0, 128.0 / 225}, {inner, heavy}, {outer, light}}
	all := make([]place, 0, panels*len(rule))
	for i := range panels {
		for _, p := range rule {
			all = append(all, place{(float64(i) + (1+p.share)/2) / panels, p.weight / 2 / panels})
		}
	}
	return all
}
