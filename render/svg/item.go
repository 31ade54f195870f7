package svg

import (
	"errors"
	"strconv"
	"strings"

	"tipline/render"
)

// item writes the item's outlines as one path, its chains as one path, and its
// text.
func (p *pencil) item(it *render.Item) {
	if len(it.Outlines) > 0 {
		p.printf("<path")
		p.attributes(it)
		p.fill(it)
		p.pen(it.Pen, it.Ink)
		p.path(func() {
			for _, o := range it.Outlines {
				p.outline(o)
			}
		})
	}
	if len(it.Chains) > 0 && it.Pen != render.NoPen {
		p.printf("<path")
		p.attributes(it)
		p.pen(it.Pen, it.Ink)
		p.path(func() {
			for _, c := range it.Chains {
				p.chain(c)
			}
		})
	}
	if it.Text != nil && it.Text.String != "" {
		p.text(it)
	}
}

// attributes names the field that made the item.
func (p *pencil) attributes(it *render.Item) {
	if it.Part != "" {
		p.printf(" data-part=\"%s\"", escape(it.Part))
	}
	if it.Quantity != "" {
		p.printf(" data-quantity=\"%s\"", escape(string(it.Quantity)))
	}
}

func (p *pencil) fill(it *render.Item) {
	switch it.Fill {
	case render.NoFill:
		return
	case render.Waste:
		p.printf(" fill=\"url(#waste)\"")
	case render.Solid:
		p.printf(" fill=\"%s\"", hex(it.Ink.Colour()))
	default:
		p.printf(" fill=\"%s\"", hex(it.Fill.Colour()))
	}
	p.printf(" fill-rule=\"evenodd\"")
}

func (p *pencil) pen(pen render.Pen, ink render.Ink) {
	if pen == render.NoPen {
		return
	}
	p.printf(" stroke=\"%s\" stroke-width=\"%s\"", hex(ink.Colour()), p.number(pen.Width()))
	if dashes := pen.Dashes(); dashes != nil {
		lengths := make([]string, len(dashes))
		for i, d := range dashes {
			lengths[i] = p.number(d)
		}
		p.printf(" stroke-dasharray=\"%s\"", strings.Join(lengths, " "))
	}
}

// text writes the letters as outlines, filled by the non-zero rule as fonts are;
// the string is the element's label and title.
func (p *pencil) text(it *render.Item) {
	if p.lettered {
		p.letters(it)
		return
	}
	said := escape(it.Text.String)
	p.printf("<g role=\"img\" aria-label=\"%s\"", said)
	p.attributes(it)
	p.printf("><title>%s</title><path fill=\"%s\"", said, hex(it.Ink.Colour()))
	p.path(func() {
		for _, c := range it.Text.Glyphs() {
			p.contour(c)
		}
	})
	p.printf("</g>\n")
}

// decimals of a coordinate: a thousandth of a micrometre.
const decimals = 6

func (p *pencil) appendNumber(b []byte, v float64) []byte {
	if !finite(v) {
		if p.err == nil {
			p.err = errors.New("the drawing has a coordinate that is no number")
		}
		return b
	}
	start := len(b)
	b = strconv.AppendFloat(b, v, 'f', p.decimals, 64)
	for b[len(b)-1] == '0' {
		b = b[:len(b)-1]
	}
	if b[len(b)-1] == '.' {
		b = b[:len(b)-1]
	}
	if string(b[start:]) == "-0" {
		return append(b[:start], '0')
	}
	return b
}

// escape makes a string fit for an element or an attribute; characters that XML
// cannot hold become the replacement character.
func escape(s string) string {
	s = strings.Map(func(r rune) rune {
		if r < ' ' && r != '\t' && r != '\n' && r != '\r' || r == 0xFFFE || r == 0xFFFF {
			return '\uFFFD'
		}
		return r
	}, s)
	return strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;", "\"", "&quot;").Replace(s)
}
