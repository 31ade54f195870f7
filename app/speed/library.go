//go:build geos

package main

import (
	"io"
	"math"

	"github.com/tdewolff/canvas"
	library "github.com/tdewolff/canvas/renderers/pdf"

	"tipline/assets/fonts"
	"tipline/geometry"
	"tipline/render"
)

// points is how many printer's points a millimetre has.
const points = 72 / 25.4

// libraryPage is a page as the canvas library has it, ready to be written: every path and
// every line of text is made.
type libraryPage struct {
	width, height float64
	marks         []libraryMark
}

// libraryMark is one path, or one line of text.
type libraryMark struct {
	path  *canvas.Path
	style canvas.Style
	text  *canvas.Text
	at    canvas.Matrix
}

// libraryPages makes pages of ours into the library's. It has no layers, no hatching, no
// bookmarks and no names of parts, and arcs that it writes as cubics of up to 90°.
func libraryPages(pages []render.Page) ([]libraryPage, error) {
	family := canvas.NewFontFamily("lettering")
	if err := family.LoadFont(fonts.Regular(), 0, canvas.FontRegular); err != nil {
		return nil, err
	}
	if err := family.LoadFont(fonts.Semibold(), 0, canvas.FontBold); err != nil {
		return nil, err
	}
	made := make([]libraryPage, len(pages))
	for i, page := range pages {
		made[i] = libraryPage{width: page.Width, height: page.Height}
		for j := range page.Drawing.Items {
			made[i].add(&page.Drawing.Items[j], family)
		}
	}
	return made, nil
}

func (p *libraryPage) add(it *render.Item, family *canvas.FontFamily) {
	if t := it.Text; t != nil {
		style := canvas.FontRegular
		if t.Bold {
			style = canvas.FontBold
		}
		face := family.Face(t.Height*t.Face().Em()*points, canvas.Black, style)
		at := t.Origin()
		p.marks = append(p.marks, libraryMark{
			text: canvas.NewTextLine(face, t.String, canvas.Left),
			at:   canvas.Identity.Translate(at.X, at.Y).Rotate(float64(t.Turn) * 180 / math.Pi),
		})
		return
	}
	path := &canvas.Path{}
	for _, o := range it.Outlines {
		path.MoveTo(o.Segment(0).From.X, o.Segment(0).From.Y)
		for i := range o.Len() {
			libraryLine(path, o.Segment(i))
		}
		path.Close()
	}
	for _, c := range it.Chains {
		path.MoveTo(c.Segment(0).From.X, c.Segment(0).From.Y)
		for i := range c.Len() {
			libraryLine(path, c.Segment(i))
		}
	}
	p.marks = append(p.marks, libraryMark{path: path, style: libraryStyle(it), at: canvas.Identity})
}

func libraryLine(path *canvas.Path, s geometry.Segment) {
	arc, bent := s.Arc()
	if !bent {
		path.LineTo(s.To.X, s.To.Y)
		return
	}
	path.ArcTo(arc.Radius, arc.Radius, 0, math.Abs(s.Bulge) > 1, s.Bulge > 0, s.To.X, s.To.Y)
}

// libraryStyle leaves the rule of filling as it is where nothing is filled: the library
// would write an operator for the pen that PDF does not have.
func libraryStyle(it *render.Item) canvas.Style {
	style := canvas.DefaultStyle
	style.Fill = canvas.Paint{}
	if it.Fill != render.NoFill {
		style.Fill, style.FillRule = canvas.Paint{Color: canvas.Lightgray}, canvas.EvenOdd
	}
	if it.Pen != render.NoPen {
		style.Stroke, style.StrokeWidth, style.Dashes = canvas.Paint{Color: canvas.Black}, it.Pen.Width(), it.Pen.Dashes()
	}
	return style
}

// writeByLibrary writes pages that are ready.
func writeByLibrary(w io.Writer, pages []libraryPage) error {
	to := library.New(w, pages[0].width, pages[0].height, nil)
	for i, page := range pages {
		if i > 0 {
			to.NewPage(page.width, page.height)
		}
		for _, m := range page.marks {
			if m.text != nil {
				to.RenderText(m.text, m.at)
				continue
			}
			to.RenderPath(m.path, m.style, m.at)
		}
	}
	return to.Close()
}
