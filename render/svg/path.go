package svg

import (
	"tipline/geometry"
	"tipline/render"
)

// path writes the data of a path and ends its element.
func (p *pencil) path(draw func()) {
	p.printf(" d=\"")
	draw()
	p.printf("\"/>\n")
}

// outline adds a closed line to the path.
func (p *pencil) outline(o geometry.Outline) {
	if o.Len() == 0 {
		return
	}
	p.command('M', o.Vertex(0).Point)
	for i := range o.Len() {
		s := o.Segment(i)
		if i+1 == o.Len() && s.IsLine() {
			break // the closing line
		}
		p.segment(s)
	}
	p.write('Z')
}

// chain adds an open line to the path.
func (p *pencil) chain(c geometry.Chain) {
	for i := range c.Len() {
		s := c.Segment(i)
		if i == 0 {
			p.command('M', s.From)
		}
		p.segment(s)
	}
}

func (p *pencil) segment(s geometry.Segment) {
	if render.Flat(s) {
		p.command('L', s.To)
		return
	}
	arc, _ := s.Arc()
	radius := p.number(arc.Radius)
	for piece := range render.Pieces(s) {
		p.arc(radius, piece)
	}
}

// arc adds a piece of less than half a circle; what is anticlockwise to the eye,
// SVG with its y down calls the negative sweep.
func (p *pencil) arc(radius string, s geometry.Segment) {
	sweep := "1"
	if s.Bulge > 0 {
		sweep = "0"
	}
	to := flip(s.To)
	p.printf("A%s %s 0 0 %s %s ", radius, radius, sweep, p.number(to.X))
	p.printf("%s", p.number(to.Y))
}

// contour adds the outline of a letter to the path.
func (p *pencil) contour(c render.Contour) {
	p.command('M', c.Start)
	for _, curve := range c.Curves {
		if curve.Straight {
			p.command('L', curve.To)
		} else {
			p.command('Q', curve.Control, curve.To)
		}
	}
	p.write('Z')
}

// command writes a letter and the points that follow it.
func (p *pencil) command(letter byte, points ...geometry.Point) {
	p.line = append(p.line[:0], letter)
	for i, at := range points {
		if i > 0 {
			p.line = append(p.line, ' ')
		}
		at = flip(at)
		p.line = append(p.appendNumber(p.line, at.X), ' ')
		p.line = p.appendNumber(p.line, at.Y)
	}
	p.write(p.line...)
}

func (p *pencil) write(b ...byte) {
	if p.err == nil {
		_, p.err = p.out.Write(b)
	}
}
