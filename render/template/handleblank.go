package template

import "tipline/geometry"

// BlankHandles returns the handles of the drawing of a blank: its bore, what is left
// on its diameter, its thickness, and the tip diameter where that is a field of the
// wheel's own and not worked out from its module.
func BlankHandles(w Wheel) []Handle {
	handles := boreHandle(w)
	if w.Teeth == nil {
		return handles
	}
	tips := w.Teeth.TipRadius
	edge := tips + w.Oversize/2
	handles = append(handles, lengthHandle("blank.oversize", geometry.Polar(edge, geometry.Degrees(45)), 0, func(p geometry.Point) float64 {
		return 2 * (p.Norm() - tips)
	}))
	switch w.Teeth.Form {
	case "pointed", "ratchet", "measured":
		handles = append(handles, diameterHandle("teeth.tip_diameter", geometry.Polar(tips, geometry.Degrees(135))))
	}
	if w.Thickness > 0 {
		face := edge + sectionPast
		at := geometry.Point{X: face + w.Thickness, Y: (w.Bore/2 + edge) / 2}
		handles = append(handles, lengthHandle("thickness", at, leastLength, func(p geometry.Point) float64 { return p.X - face }))
	}
	return handles
}
