package render

import "image/color"

// Colour returns the colour of the ink on paper. What is cut is pure black, which
// every printer draws without a screen of dots.
func (i Ink) Colour() color.RGBA {
	switch i {
	case Blue:
		return color.RGBA{0x2B, 0x5C, 0x9B, 0xFF}
	case Grey:
		return color.RGBA{0x66, 0x66, 0x66, 0xFF}
	case Red:
		return color.RGBA{0xB0, 0x2A, 0x1E, 0xFF}
	case Green:
		return color.RGBA{0x14, 0x7A, 0x4B, 0xFF}
	}
	return color.RGBA{0, 0, 0, 0xFF}
}

// Colour returns the colour of the fill on paper: for Waste that of its hatching,
// for Solid and NoFill nothing, fully transparent.
func (f Fill) Colour() color.RGBA {
	switch f {
	case Brass:
		return color.RGBA{0xF7, 0xEF, 0xDC, 0xFF}
	case Steel:
		return color.RGBA{0xEC, 0xF0, 0xF4, 0xFF}
	case Waste:
		return color.RGBA{0xC4, 0xC4, 0xC4, 0xFF}
	case Paper:
		return color.RGBA{0xFF, 0xFF, 0xFF, 0xFF}
	}
	return color.RGBA{}
}
