package dxf

import "tipline/render"

// lineTypes are the pens' dashes by the names that other programs know.
var lineTypes = []struct {
	name, looks string
	pen         render.Pen
}{
	{"CONTINUOUS", "Solid line", render.Visible},
	{"DASHED", "__ __ __ __", render.Hidden},
	{"CENTER", "____ _ ____ _", render.Centre},
}

// lineType returns the name of the pen's dashes.
func lineType(pen render.Pen) string {
	switch pen {
	case render.Hidden:
		return "DASHED"
	case render.Centre:
		return "CENTER"
	}
	return "CONTINUOUS"
}

// colour returns the ink's number in the palette that DXF has instead of colours.
func colour(ink render.Ink) int {
	switch ink {
	case render.Blue:
		return 5
	case render.Grey:
		return 8
	case render.Green:
		return 3
	case render.Red:
		return 1
	}
	return 7 // black on white, white on black
}

func (p *plotter) tables(d *render.Drawing) {
	p.name(0, "SECTION")
	p.name(2, "TABLES")
	p.table("LTYPE", len(lineTypes))
	for _, t := range lineTypes {
		p.lineType(t.name, t.looks, t.pen.Dashes())
	}
	p.name(0, "ENDTAB")
	levels := d.Levels()
	p.table("LAYER", len(levels)+1)
	p.layer("0")
	for _, level := range levels {
		p.layer(string(level.Layer))
	}
	p.name(0, "ENDTAB")
	p.table("STYLE", 1)
	p.style()
	p.name(0, "ENDTAB")
	p.name(0, "ENDSEC")
}

func (p *plotter) table(kind string, rows int) {
	p.name(0, "TABLE")
	p.name(2, kind)
	p.whole(70, rows)
}

// lineType writes marks as positive and gaps as negative lengths.
func (p *plotter) lineType(name, looks string, dashes []float64) {
	p.name(0, "LTYPE")
	p.name(2, name)
	p.whole(70, 0)
	p.name(3, looks)
	p.whole(72, 'A')
	p.whole(73, len(dashes))
	total := 0.0
	for _, d := range dashes {
		total += d
	}
	p.number(40, total)
	for i, d := range dashes {
		if i%2 == 1 {
			d = -d
		}
		p.number(49, d)
	}
}

func (p *plotter) layer(name string) {
	p.name(0, "LAYER")
	p.name(2, name)
	p.whole(70, 0)
	p.whole(62, 7)
	p.name(6, "CONTINUOUS")
}

func (p *plotter) style() {
	p.name(0, "STYLE")
	p.name(2, "STANDARD")
	p.whole(70, 0)
	p.number(40, 0)
	p.number(41, 1)
	p.number(50, 0)
	p.whole(71, 0)
	p.number(42, 2.5)
	p.name(3, "txt")
	p.name(4, "")
}
