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

// gathering puts drawings together on shared sheets, in the order they come.
type gathering struct {
	paper   Paper
	style   template.Style
	options Options
	copies  map[*render.Drawing]int // of each drawing, all told
	met     map[*render.Drawing]int // of them, so far
	open    map[float64][]*opened   // by scale
}

// opened is a sheet that templates of one scale may share, of whatever part; while it
// has one alone, it is that one's own.
type opened struct {
	shared
	alone single
}

func (o *opened) page(i int, number string, s template.Style) render.Page {
	if len(o.members) == 1 {
		return o.alone.page(i, number, s)
	}
	return o.shared.page(i, number, s)
}

// share puts templates of one scale, which have room on one sheet, on sheets that are
// open already, and returns the sheet for the rest of them; nil where there is none.
func (g *gathering) share(members []member) planned {
	var rest []member
	for _, m := range members {
		if !slices.ContainsFunc(g.open[m.sheet.Drawing.Scale], func(s *opened) bool { return s.admits(m, g) && s.with(m, g) }) {
			rest = append(rest, m)
		}
	}
	if len(rest) == 0 {
		return nil
	}
	s := &opened{shared: shared{members: rest[:1]}}
	s.alone, _ = g.options.plan(rest[0].sheet, g.paper, g.style) // it has been planned before
	for _, m := range rest[1:] {
		if !s.with(m, g) {
			filled, _ := g.filled(rest) // fewer than what had room
			return filled
		}
	}
	scale := rest[0].sheet.Drawing.Scale
	open := append(g.open[scale], s)
	g.open[scale] = open[max(0, len(open)-openSheets):]
	return s
}

// admits reports whether a template might stand beside those on the sheet: it is of
// the same job, and there would be room for it if title block and header took the
// least they can.
func (s *opened) admits(m member, g *gathering) bool {
	if s.members[0].sheet.Block.Job != m.sheet.Block.Job {
		return false
	}
	var sizes []geometry.Point
	for _, other := range append(slices.Clone(s.members), m) {
		sizes = append(sizes, geometry.Point{X: other.bounds.Width(), Y: other.bounds.Height() + labelBelow + 2*lineOfFoot})
	}
	for _, way := range g.options.ways(g.paper) {
		if _, ok := shelve(sizes, way.paper.Width-marginFiling-margin, way.paper.Height-2*margin-leastFurniture, false); ok {
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
func (s *opened) with(m member, g *gathering) bool {
	next := shared{members: append(slices.Clone(s.members), m)}
	next.list(g)
	same := slices.Equal(next.block.Notes.Legend, s.block.Notes.Legend)
	for i, m := range next.members {
		if m.lines == nil || !same {
			next.members[i] = m.labelled(next.block.Notes.Legend)
		}
	}
	if !next.lay(g, false, func(float64) {}) {
		return false
	}
	s.shared = next
	return true
}

// list makes the title, its line and the one title block, which lists what is on
// the sheet.
func (s *shared) list(g *gathering) {
	first := s.members[0].sheet
	say := g.style.Words.Say
	s.header = &render.Drawing{Title: say("sheet.together"), Scale: first.Drawing.Scale}
	s.block = first.Block
	s.block.Part, s.block.Material = say("sheet.together.count", "n", len(s.members)), ""
	s.block.Notes = template.Notes{Legend: s.common()}
	var lines []string
	times := map[*render.Drawing]int{}
	for _, m := range s.members {
		times[m.sheet.Drawing]++
	}
	for _, m := range s.members {
		lines = appendNew(lines, m.sheet.Drawing.Description)
		if m.sheet.Block.Kind != first.Block.Kind {
			s.block.Kind = say("sheet.together.kinds")
		}
		if n := times[m.sheet.Drawing]; n > 0 {
			s.block.Notes.Figures = append(s.block.Notes.Figures, listed(m.sheet, n, g.style))
			times[m.sheet.Drawing] = 0
		}
	}
	s.header.Description = strings.Join(append(lines, say("sheet.together.cut")), "\n")
	s.block.Notes.Caution = s.caution()
	s.block = g.options.filled(s.block, first.Drawing.Scale, g.style)
}

// listed returns what the title block says of n copies of a template.
func listed(sh Sheet, n int, s template.Style) template.Figure {
	name := partOf(sh)
	if n > 1 {
		name = s.Words.Say("sheet.together.times", "name", name, "n", n)
	}
	return template.Figure{Label: sh.Block.Kind, Value: name}
}
