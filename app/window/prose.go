package window

import (
	"image/color"
	"strings"

	"fyne.io/fyne/v2"

	"tipline/assets/guide"
	"tipline/assets/words"
)

// prose is text in several styles with links in it, broken into lines.
type prose struct {
	guide  *guideWindow
	size   float32
	pieces []piece
}

// piece is a word, a whole link or a short thing to type, in one style.
type piece struct {
	guide.Run
	gap bool // after a blank, where a line may be broken
}

// unbroken is the most letters of what is typed that are kept on one line.
const unbroken = 20

func newProse(g *guideWindow, runs []guide.Run, size float32) *prose {
	p := &prose{guide: g, size: size}
	blank := false
	for _, r := range runs {
		if r.To != "" || r.Style == guide.Typed && len(r.Text) <= unbroken {
			p.pieces = append(p.pieces, piece{r, blank})
			blank = false
			continue
		}
		blank = blank || strings.HasPrefix(r.Text, " ")
		for _, word := range words.Pieces(r.Text) {
			p.pieces = append(p.pieces, piece{guide.Run{Text: word, Style: r.Style}, blank})
			blank = true
		}
		blank = strings.HasSuffix(r.Text, " ")
	}
	return p
}

// styleOf returns the type of a style.
func styleOf(s guide.Style) fyne.TextStyle {
	return fyne.TextStyle{Bold: s == guide.Strong || s == guide.Slanted}
}

// colourOf returns the colour of a style: what is typed stands in that of construction.
func colourOf(s guide.Style) color.Color {
	if s == guide.Typed {
		return green
	}
	return ink
}

// lay sets the text on a page and returns how tall it is.
func (p *prose) lay(on *guidePage, x, y, width float32) float32 {
	blank := fyne.MeasureText(" ", p.size, fyne.TextStyle{}).Width
	high, at, down := p.size*leading, float32(0), float32(0)
	for i := 0; i < len(p.pieces); {
		end, wide := p.unit(i)
		if p.pieces[i].gap && at > 0 {
			if at+blank+wide > width {
				at, down = 0, down+high
			} else {
				at += blank
			}
		}
		for ; i < end; i++ {
			w := p.wide(p.pieces[i])
			p.put(on, p.pieces[i], x+at, y+down, w, high)
			at += w
		}
	}
	return down + high
}

// unit returns the end of the pieces from i on between which no line is broken, and how
// wide they are.
func (p *prose) unit(i int) (end int, wide float32) {
	wide = p.wide(p.pieces[i])
	for end = i + 1; end < len(p.pieces) && !p.pieces[end].gap; end++ {
		wide += p.wide(p.pieces[end])
	}
	return end, wide
}

func (p *prose) wide(of piece) float32 {
	return fyne.MeasureText(of.Text, p.size, styleOf(of.Style)).Width
}

func (p *prose) put(on *guidePage, of piece, x, y, wide, high float32) {
	var o fyne.CanvasObject
	if of.To != "" {
		l := newLink(p.guide, of.Text, p.size, of.To)
		l.bold = of.Style == guide.Strong
		o = l
	} else {
		t := written(of.Text, p.size, colourOf(of.Style), styleOf(of.Style).Bold)
		o = t
	}
	put(o, x, y, wide, high)
	on.Objects = append(on.Objects, o)
}
