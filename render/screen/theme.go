package screen

import (
	"image/color"

	"tipline/render"
)

// Theme holds the colours a drawing is painted in.
type Theme struct {
	Paper, Table       color.NRGBA    // Table is what a printed sheet lies on
	Inks               [5]color.NRGBA // by render.Ink
	Brass, Steel, Lead color.NRGBA    // fills; Lead is the hatching of waste
	Lit, Halo          color.NRGBA    // what a chosen field made, and round it where its line is broken
}

// Light is ink on white paper.
func Light() Theme {
	return Theme{
		Paper: color.NRGBA{255, 255, 255, 255},
		Table: color.NRGBA{228, 225, 217, 255},
		Inks: [5]color.NRGBA{
			render.Black: {28, 27, 25, 255}, render.Blue: {46, 95, 158, 255},
			render.Grey: {110, 108, 102, 255}, render.Red: {178, 42, 36, 255},
			render.Green: {20, 122, 75, 255},
		},
		Brass: color.NRGBA{240, 223, 178, 255},
		Steel: color.NRGBA{214, 219, 224, 255},
		Lead:  color.NRGBA{205, 202, 195, 255},
		Lit:   color.NRGBA{20, 92, 196, 255},
		Halo:  color.NRGBA{196, 216, 246, 255},
	}
}

// ink returns the colour of an ink; one that is not known is black.
func (t Theme) ink(i render.Ink) color.NRGBA {
	if i < 0 || int(i) >= len(t.Inks) {
		return t.Inks[render.Black]
	}
	return t.Inks[i]
}
