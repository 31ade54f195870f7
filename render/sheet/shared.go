package sheet

import (
	"slices"
	"strings"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// shared is one sheet that several drawings share, each with a caption of its own and
// one title block for all.
type shared struct {
	members []member
	lying   lying
	layout  layout
	header  *render.Drawing // title and line of the whole sheet; nil where each drawing has its own
	block   TitleBlock
	shelves []shelf
}

func (s *shared) count() int { return 1 }

func (s *shared) places() []int {
	places := make([]int, len(s.members))
	for i, m := range s.members {
		places[i] = m.sheet.place
	}
	return places
}

func (s *shared) sizes() []geometry.Point {
	sizes := make([]geometry.Point, len(s.members))
	for i, m := range s.members {
		sizes[i] = m.size
	}
	return sizes
}

// lay finds how the drawings lie on paper, upright or else on its side, and has them
// captioned for the width there is; ordered, they are read one after the other. False
// where there is no room for them.
func (s *shared) lay(g *gathering, ordered bool, caption func(room float64)) bool {
	for _, way := range g.options.ways(g.paper) {
		s.lying = way
		s.layout = plan(way, s.header, s.block, g.style)
		if s.layout.tooSmall() {
			continue
		}
		s.endAtBlock()
		caption(s.layout.free.Width())
		var ok bool
		if s.shelves, ok = shelve(s.sizes(), s.layout.free.Width(), s.layout.free.Height(), ordered); ok {
			return true
		}
	}
	return false
}

// endAtBlock has headings end where the title block ends, unless a drawing needs more room.
func (s *shared) endAtBlock() {
	wide := s.layout.right - s.layout.free.Min.X
	if s.header == nil && !slices.ContainsFunc(s.members, func(m member) bool { return m.bounds.Width() > wide }) {
		s.layout.free.Max.X = s.layout.right
	}
}

// page draws the sheet: each drawing on its part of it.
func (s *shared) page(_ int, number string, st template.Style) render.Page {
	b := template.NewBoard("", st)
	b.Drawing.Title, b.Drawing.Scale = s.title(), s.scale()
	block := s.block
	if block.Sheet == "" {
		block.Sheet = number
	}
	s.layout.furnish(b, s.header, block)
	boxes, cuts := berths(s.sizes(), s.shelves, s.layout.free, s.header == nil)
	for i, m := range s.members {
		m.draw(b, boxes[i])
	}
	cut := template.Stroke{Layer: render.LayerSheet, Quantity: cutQuantity, Pen: render.Hair, Ink: render.Grey}
	if slices.ContainsFunc(s.members, member.isTemplate) {
		cut.Pen = render.Hidden
	}
	b.Line(cut, cuts...)
	return s.lying.page(b.Drawing)
}

// cutQuantity tells the lines along which a sheet is cut apart.
const cutQuantity geometry.Quantity = "sheet.cut"

// title returns the sheet's title, or those of its drawings, one a line.
func (s *shared) title() string {
	if s.header != nil {
		return s.header.Title
	}
	var titles []string
	for _, m := range s.members {
		titles = append(titles, m.sheet.Drawing.Title)
	}
	return strings.Join(titles, "\n")
}

// scale returns the scale of all that has one, or nought where they differ.
func (s *shared) scale() float64 {
	scale := 0.0
	for _, m := range s.members {
		switch of := m.sheet.Drawing.Scale; {
		case of > 0 && scale > 0 && of != scale:
			return 0
		case of > 0:
			scale = of
		}
	}
	return scale
}

// common returns the marks that mean one thing on all drawings of the sheet that
// have them.
func (s *shared) common() []template.Mark {
	var all []template.Mark
	meanings := map[template.Mark]int{} // of each sample
	for _, m := range s.members {
		for _, mark := range m.sheet.Block.Notes.Legend {
			if !slices.Contains(all, mark) {
				all = append(all, mark)
				meanings[sample(mark)]++
			}
		}
	}
	return slices.DeleteFunc(all, func(m template.Mark) bool { return meanings[sample(m)] > 1 })
}

// sample returns a mark without its meaning.
func sample(m template.Mark) template.Mark {
	m.Text = ""
	return m
}

// caution returns the sentences of caution of all drawings on the sheet, each once;
// what all of them end with, that makers' instructions come first, ends it.
func (s *shared) caution() string {
	var all []string
	last := ""
	for _, m := range s.members {
		sentences := sentencesOf(m.sheet.Block.Notes.Caution)
		if len(sentences) == 0 {
			continue
		}
		end := sentences[len(sentences)-1]
		for _, sentence := range sentences[:len(sentences)-1] {
			all = appendNew(all, sentence)
		}
		if last != "" && last != end {
			all = appendNew(all, last)
		}
		last = end
	}
	all = slices.DeleteFunc(all, func(sentence string) bool { return sentence == last })
	return strings.Join(appendNew(all, last), " ")
}

// sentencesOf takes a text apart behind its full stops.
func sentencesOf(text string) []string {
	var sentences []string
	for _, part := range strings.SplitAfter(text, ". ") {
		sentences = appendNew(sentences, strings.TrimSpace(part))
	}
	return sentences
}

func appendNew[T comparable](list []T, v T) []T {
	var nothing T
	if v == nothing || slices.Contains(list, v) {
		return list
	}
	return append(list, v)
}
