package tooth

import "tipline/geometry"

// measuredForm is the form of a measured wheel in the job file.
const measuredForm = "measured"

// Measured is a wheel known only by measurement: its count and the radii of its
// tips and roots in mm.
type Measured struct {
	Count      int     // 3 to 2000
	TipRadius  float64 // 0.01 to 1000
	RootRadius float64 // 0.005 and more, and 0.005 less than TipRadius
}

// Wheel returns the wheel. It has tips and no flanks: its outline is the tip
// circle, it has no space, and Solid gives the circle its mass is taken from.
func (m Measured) Wheel() (Wheel, error) {
	if err := m.check(); err != nil {
		return Wheel{}, err
	}
	outline, err := geometry.Circle(geometry.Point{}, m.TipRadius, "teeth.tip_diameter")
	if err != nil {
		return Wheel{}, err
	}
	return Wheel{
		Form: measuredForm, Count: m.Count,
		TipRadius: m.TipRadius, RootRadius: m.RootRadius, Outline: outline,
	}, nil
}

// check names the diameters, as the job has them.
func (m Measured) check() error {
	if err := checkCount(m.Count); err != nil {
		return err
	}
	tip, root := 2*m.TipRadius, 2*m.RootRadius
	if !(tip >= 2*geometry.LeastLength && tip <= geometry.MostLength) {
		return geometry.Between("teeth.tip_diameter", tip, 2*geometry.LeastLength, geometry.MostLength, "tooth.tip-diameter")
	}
	if most := tip - geometry.LeastLength; !(root >= geometry.LeastLength && root <= most) {
		return geometry.Between("teeth.root_diameter", root, geometry.LeastLength, most, "tooth.root-diameter")
	}
	return nil
}
