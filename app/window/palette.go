package window

import "image/color"

// palette is the window's colours in one shade. Text in any of ink, faint, blue, orange,
// red, green and unable can be read on backdrop, panel and well (a contrast of 4.5 to 1 at
// least, the least of WCAG 2.1, 1.4.3).
type palette struct {
	backdrop, panel, well    color.NRGBA // behind all, behind a group of things, and in a box
	edge, mark               color.NRGBA // round things, and round a box
	ink, faint               color.NRGBA
	blue, orange, red, green color.NRGBA
	button, unable, bar      color.NRGBA
	table                    color.NRGBA // that the pages lie on
}

// The colours are warm and quiet, so that the drawing is what is looked at. The drawing
// itself is ink on paper in either shade, and what lies on it has the light one's colours.
var (
	light = palette{
		backdrop: color.NRGBA{236, 233, 226, 255}, panel: color.NRGBA{247, 246, 241, 255}, well: paper,
		edge: color.NRGBA{217, 213, 203, 255}, mark: color.NRGBA{148, 143, 132, 255},
		ink: color.NRGBA{28, 27, 25, 255}, faint: color.NRGBA{98, 95, 89, 255},
		blue: color.NRGBA{46, 95, 158, 255}, orange: color.NRGBA{156, 72, 18, 255},
		red: color.NRGBA{172, 40, 36, 255}, green: color.NRGBA{48, 108, 65, 255},
		button: color.NRGBA{238, 236, 228, 255}, unable: color.NRGBA{108, 104, 98, 255},
		bar: color.NRGBA{120, 116, 106, 150}, table: color.NRGBA{228, 225, 217, 255},
	}
	dark = palette{
		backdrop: color.NRGBA{31, 30, 28, 255}, panel: color.NRGBA{42, 41, 38, 255}, well: color.NRGBA{24, 23, 21, 255},
		edge: color.NRGBA{74, 72, 67, 255}, mark: color.NRGBA{128, 125, 117, 255},
		ink: color.NRGBA{235, 232, 224, 255}, faint: color.NRGBA{174, 170, 160, 255},
		blue: color.NRGBA{126, 174, 236, 255}, orange: color.NRGBA{240, 156, 92, 255},
		red: color.NRGBA{246, 136, 126, 255}, green: color.NRGBA{124, 194, 140, 255},
		button: color.NRGBA{60, 58, 54, 255}, unable: color.NRGBA{150, 146, 137, 255},
		bar: color.NRGBA{170, 166, 156, 150}, table: color.NRGBA{146, 143, 136, 255},
	}
)

// paper is the colour of the drawing's paper, in either shade.
var paper = color.NRGBA{255, 255, 255, 255}

// The colours of the shade that the windows have.
var (
	present                                                           = light
	backdrop, panel, well, edge, ink, faint, blue, orange, red, green color.NRGBA
)

func init() { paintIn(light) }

// paintIn gives the windows that are furnished from now on the colours of a palette.
func paintIn(p palette) {
	present = p
	backdrop, panel, well, edge = p.backdrop, p.panel, p.well, p.edge
	ink, faint, blue, orange, red, green = p.ink, p.faint, p.blue, p.orange, p.red, p.green
}
