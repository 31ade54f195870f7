package sheet

import (
	"slices"
	"strings"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// openSheets is how many of the latest shared sheets of a scale are still looked at
// for room, so that a long run stays near the order of the work.
const openSheets = 12

// gathering puts templates together on shared sheets, in the order they come.
type gathering struct {
	paper   Paper
	style   template.Style
	options Options
	copies  map[*render.Drawing]int // of each drawing, all told
	met     map[*render.Drawing]int // of them, so far
	open    map[float64][]*shared   // by scale
}

// shared is a sheet that several templates of one scale share; while it has one
// alone, it is that one's own.
type shared struct {
	members []member
	alone   single
	lying   lying
	layout  layout
	header  *render.Drawing // title and line alone
	block   TitleBlock
	shelves []shelf
}

// member is a template on a shared sheet with the label below it.
type member struct {
	sheet  Sheet
	name   string
	bounds geometry.Box // of its drawing
	label  []labelLine  // from the top
	size   geometry.Point
}

// take returns the shared sheet that a template opens; nil where it found room on
// one that is open already. A template that does not fit on one sheet is refused.
func (g *gathering) take(sh Sheet) (opened *shared, ok bool) {
	m := g.member(sh)
	open := g.open[sh.Drawing.Scale]
	for _, s := range open {
		if s.admits(m, g) && s.with(m, g) {
			return nil, true
		}
	}
	p, err := g.options.plan(sh, g.paper, g.style)
	if err != nil || p.count() > 1 {
		return nil, false
	}
	s := &shared{members: []member{m}, alone: p}
	open = append(open, s)
	g.open[sh.Drawing.Scale] = open[max(0, len(open)-openSheets):]
	return s, true
}

// admits reports whether a template might stand beside those on the sheet: it is of
// the same job, and there would be room for it if title block and header took the
// least they can.
func (s *shared) admits(m member, g *gathering) bool {
	if s.members[0].sheet.Block.Job != m.sheet.Block.Job {
		return false
	}
	var sizes []geometry.Point
	for _, other := range append(slices.Clone(s.members), m) {
		sizes = append(sizes, geometry.Point{X: other.bounds.Width(), Y: other.bounds.Height() + labelBelow + 2*lineOfFoot})
	}
	for _, way := range g.options.ways(g.paper) {
		if _, ok := shelve(sizes, way.paper.Width-marginFiling-margin, way.paper.Height-2*margin-leastFurniture); ok {
			return true
		}
	}
	return false
}

// leastFurniture is the least height in millimetres that header and title block
// take: a title, two rows and a line of caution.
const leastFurniture = heightTitle + 2*rowHeight + lineOfFoot + 2*space

// with adds a template to the sheet, if there is room for it, the paper upright or
// else on its side.
func (s *shared) with(m member, g *gathering) bool {
	next := shared{members: append(slices.Clone(s.members), m), alone: s.alone}
	next.describe(g)
	same := slices.Equal(next.block.Notes.Legend, s.block.Notes.Legend)
	for i, m := range next.members {
		if m.label == nil || !same {
			next.members[i] = m.labelled(next.block.Notes.Legend)
		}
	}
	sizes := next.sizes()
	for _, way := range g.options.ways(g.paper) {
		next.lying = way
		next.layout = plan(holds(way.paper, way.against), next.header, next.block, g.style)
		if next.layout.tooSmall() {
			continue
		}
		var ok bool
		if next.shelves, ok = shelve(sizes, next.layout.free.Width(), next.layout.free.Height()); ok {
			*s = next
			return true
		}
	}
	return false
}

func (s *shared) sizes() []geometry.Point {
	sizes := make([]geometry.Point, len(s.members))
	for i, m := range s.members {
		sizes[i] = m.size
	}
	return sizes
}

// describe makes the title, its line and the one title block, which lists what is on
// the sheet.
func (s *shared) describe(g *gathering) {
	first := s.members[0].sheet
	say := g.style.Words.Say
	s.header = &render.Drawing{Title: say("sheet.together"), Scale: first.Drawing.Scale}
	s.block = first.Block
	s.block.Part, s.block.Material = say("sheet.together.count", "n", len(s.members)), ""
	s.block.Notes = template.Notes{Legend: s.common()}
	var lines, cautions []string
	times := map[*render.Drawing]int{}
	for _, m := range s.members {
		times[m.sheet.Drawing]++
	}
	for _, m := range s.members {
		lines = appendNew(lines, m.sheet.Drawing.Description)
		cautions = appendNew(cautions, m.sheet.Block.Notes.Caution)
		if m.sheet.Block.Kind != first.Block.Kind {
			s.block.Kind = say("sheet.together.kinds")
		}
		if n := times[m.sheet.Drawing]; n > 0 {
			s.block.Notes.Figures = append(s.block.Notes.Figures, listed(m.sheet, n, g.style))
			times[m.sheet.Drawing] = 0
		}
	}
	s.header.Description = strings.Join(append(lines, say("sheet.together.cut")), "\n")
	s.block.Notes.Caution = strings.Join(cautions, " ")
	s.block = g.options.filled(s.block, first.Drawing.Scale, g.style)
}

// common returns the marks that mean one thing on all templates of the sheet that
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

// listed returns what the title block says of n copies of a template.
func listed(sh Sheet, n int, s template.Style) template.Figure {
	name := partOf(sh)
	if n > 1 {
		name = s.Words.Say("sheet.together.times", "name", name, "n", n)
	}
	return template.Figure{Label: sh.Block.Kind, Value: name}
}

// partOf returns what the template on a sheet is of.
func partOf(sh Sheet) string {
	if sh.Block.Part != "" {
		return sh.Block.Part
	}
	return sh.Drawing.Title
}

func appendNew[T comparable](list []T, v T) []T {
	var nothing T
	if v == nothing || slices.Contains(list, v) {
		return list
	}
	return append(list, v)
}

func (s *shared) count() int { return 1 }

// page draws the sheet: each template in the middle of its part of it.
func (s *shared) page(_ int, number string, st template.Style) render.Page {
	if len(s.members) == 1 {
		return s.alone.page(0, number, st)
	}
	b := template.NewBoard("", st)
	b.Drawing.Title, b.Drawing.Scale = s.header.Title, s.header.Scale
	block := s.block
	if block.Sheet == "" {
		block.Sheet = number
	}
	s.layout.furnish(b, s.header, block)
	boxes, cuts := berths(s.sizes(), s.shelves, s.layout.free)
	for i, m := range s.members {
		m.draw(b, boxes[i])
	}
	b.Line(template.Stroke{Layer: render.LayerSheet, Quantity: cutQuantity, Pen: render.Hidden, Ink: render.Grey}, cuts...)
	return s.lying.page(b.Drawing)
}

// cutQuantity tells the lines along which a sheet is cut apart.
const cutQuantity geometry.Quantity = "sheet.cut"
