package crossing

import "tipline/geometry"

// pattern is a window in its own frame, the wheel's centre at the origin and the
// window's axis along x, as it is then turned to each place where it stands.
type pattern struct {
	outline  geometry.Outline
	saw      []geometry.Outline
	hole     geometry.Outline // empty when none fits or none is asked for
	start    geometry.Point   // its centre
	rim, hub float64          // the circles' radii

	line side // the middle between the arms' centre lines, at the rim the axis

	area     float64 // mm²
	centroid geometry.Point
	polar    float64 // ∫r² dA about the wheel's centre, mm⁴
}

// patternsOf returns the windows' patterns for a crossing that check found sound.
func patternsOf(b Blank, s Spec) ([]pattern, error) {
	narrow, wide := halves(b.Count, s)
	all := []geometry.Angle{narrow, wide}
	if narrow == wide {
		all = all[:1]
	}
	patterns := make([]pattern, len(all))
	for i, half := range all {
		o := openingOf(half, b, s)
		t, _ := o.touch()
		outline, err := o.outline(t)
		if err != nil {
			return nil, err
		}
		patterns[i] = pattern{
			outline: outline, rim: o.rim, hub: o.hub, area: outline.Area(),
			centroid: outline.Centroid(), polar: outline.PolarMoment(),
			line: centreOf(o.hub, o.rim, s).side,
		}
	}
	return patterns, nil
}
