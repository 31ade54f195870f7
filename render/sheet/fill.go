package sheet

import (
	"slices"
	"strings"

	"tipline/render/template"
)

// apartCost is what it costs, in sheets, to part two neighbouring templates of one scale:
// little enough that it only chooses between ways that take as many sheets.
const apartCost = 1e-3

// group is what lies on one sheet of paper, or on the tiles of one drawing.
type group struct {
	planned
	members []member
}

// fill puts drawings that may share paper on as few sheets as hold them, in their order,
// each group in one piece: the least of what the last of them take and those before.
func (g *gathering) fill(members []member) ([]group, error) {
	n := len(members)
	cost, next, best := make([]float64, n+1), make([]int, n), make([]group, n)
	for i := n - 1; i >= 0; i-- {
		alone, err := g.options.plan(members[i].sheet, g.paper, g.style)
		if err != nil {
			return nil, err
		}
		best[i], next[i] = group{alone, members[i : i+1]}, i+1
		cost[i] = float64(alone.count()) + parted(members, i+1) + cost[i+1]
		if alone.count() > 1 {
			continue
		}
		for end := i + 2; end <= n; end++ {
			s, ok := g.filled(members[i:end])
			if !ok {
				break
			}
			if c := 1 + parted(members, end) + cost[end]; c <= cost[i] {
				best[i], next[i], cost[i] = group{s, s.members}, end, c
			}
		}
	}
	var groups []group
	for i := 0; i < n; i = next[i] {
		groups = append(groups, best[i])
	}
	return groups, nil
}

// parted returns what it costs to begin another sheet with a drawing.
func parted(members []member, i int) float64 {
	if i < len(members) && members[i].isTemplate() && members[i].sheet.Drawing.Scale == members[i-1].sheet.Drawing.Scale {
		return apartCost
	}
	return 0
}

// filled returns the sheet on which drawings lie one below the other, small ones side by
// side, each under its heading; false where they do not fit on one.
func (g *gathering) filled(members []member) (*shared, bool) {
	high := 0.0
	for _, m := range members {
		high += m.bounds.Height()
	}
	if high > 2*max(g.paper.Width, g.paper.Height) {
		return nil, false
	}
	s := &shared{members: slices.Clone(members)}
	s.entitle(g)
	ok := s.lay(g, true, func(room float64) {
		var told []template.Figure
		for i, m := range s.members {
			width := room
			if s.besideAnother(i, room) {
				width = m.leastWidth()
			}
			s.members[i] = m.headed(s.block.Notes.Legend, told, width)
			told = append(told, m.sheet.Block.Notes.Figures...)
		}
	})
	return s, ok
}

// besideAnother reports whether a drawing and the one before or after it are both so
// narrow that they may stand side by side.
func (s *shared) besideAnother(i int, room float64) bool {
	beside := func(i, j int) bool {
		return i >= 0 && j < len(s.members) && s.members[i].leastWidth()+gap+s.members[j].leastWidth() <= room
	}
	return beside(i-1, i) || beside(i, i+1)
}

// entitle makes the one title block, which names what is on the sheet.
func (s *shared) entitle(g *gathering) {
	s.block = s.members[0].sheet.Block
	var parts, kinds, scales []string
	for _, m := range s.members {
		block := m.sheet.Block
		parts, kinds = appendNew(parts, block.Part), appendNew(kinds, block.Kind)
		if block.Scale == "" {
			block.Scale = scaleText(m.sheet.Drawing.Scale)
		}
		scales = appendNew(scales, block.Scale)
	}
	s.block.Part, s.block.Kind, s.block.Scale = partsOf(parts, g.style.Words.Say), listOf(kinds), listOf(scales)
	s.block.Notes = template.Notes{Legend: s.common(), Caution: s.caution()}
	s.block = g.options.filled(s.block, 0, g.style)
}

// partsOf lists parts as the title block has room for: all of them, or the first and how many
// more; the headings name each.
func partsOf(names []string, say func(string, ...any) string) string {
	all := listOf(names)
	if len(names) < 2 || inLines(all, partRoom, heightSmall) != nil {
		return all
	}
	return say("sheet.parts.more", "name", names[0], "n", len(names)-1)
}

func listOf(names []string) string { return strings.Join(names, ", ") }

// sameScale reports whether all drawings of a group are templates of one scale.
func (g group) sameScale() bool {
	scale := g.members[0].sheet.Drawing.Scale
	return scale > 0 && !slices.ContainsFunc(g.members, func(m member) bool { return m.sheet.Drawing.Scale != scale })
}
