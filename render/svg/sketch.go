package svg

import (
	"bufio"
	"errors"
	"io"

	"tipline/geometry"
	"tipline/render"
)

// sketched is to how many decimals a sketch has its places: a thousandth of a millimetre.
const sketched = 3

// Sketch writes what of the drawing lies in a box, on paper, as a small file to be looked
// at on a page and not to be worked from: places are rounded to a micrometre, and letters
// are the reader's own, as wide as ours.
func Sketch(w io.Writer, d *render.Drawing, box geometry.Box) error {
	p := &pencil{out: bufio.NewWriterSize(w, 1<<16), decimals: sketched, lettered: true}
	if d == nil || len(d.Items) == 0 || box.Empty() {
		return errors.New("svg: the drawing is empty")
	}
	p.sheet(d, box)
	p.printf("<g font-family=\"Open Sans, Helvetica, Arial, sans-serif\">\n")
	p.printf("<rect x=\"%s\" y=\"%s\" width=\"%s\" height=\"%s\" fill=\"%s\"/>\n", p.number(box.Min.X), p.number(-box.Max.Y),
		p.number(box.Width()), p.number(box.Height()), hex(render.Paper.Colour()))
	for _, level := range d.Levels() {
		for i := range level.Items {
			if in, ok := level.Items[i].Bounds(); ok && in.Touches(box) {
				p.item(&level.Items[i])
			}
		}
	}
	p.printf("</g>\n")
	return p.end()
}

// letters writes a text as text.
func (p *pencil) letters(it *render.Item) {
	t := it.Text
	at := flip(t.Origin())
	p.printf("<text x=\"%s\" y=\"%s\" textLength=\"%s\" font-size=\"%s\" fill=\"%s\"", p.number(at.X), p.number(at.Y), p.number(t.Width()),
		p.number(t.Height*t.Face().Em()), hex(it.Ink.Colour()))
	if t.Bold {
		p.printf(" font-weight=\"600\"")
	}
	if t.Turn != 0 {
		p.printf(" transform=\"rotate(%s %s %s)\"", p.number(-t.Turn.Degrees()), p.number(at.X), p.number(at.Y))
	}
	p.printf(">%s</text>\n", escape(t.String))
}
