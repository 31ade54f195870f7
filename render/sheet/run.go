package sheet

import (
	"context"
	"fmt"
	"iter"
	"slices"

	"tipline/render"
	"tipline/render/template"
)

// Run is sheets that are planned and not drawn yet. What it plans for it needs as
// it was given: drawings must not be changed meanwhile.
type Run struct {
	plans   []planned
	style   template.Style
	options Options
	total   int
	on      [][]int // the sheets of paper, from 1, that each of those planned stands on
}

// planned is what takes one sheet of paper or more.
type planned interface {
	count() int
	places() []int // of those planned that stand on it
	page(i int, number string, s template.Style) render.Page
}

// Plan chooses how sheets lie on paper, in their order. It refuses paper that does
// not hold them with a *Refusal and a profile that no printer can have with a
// *geometry.Limit, and gives way when ctx is done.
func Plan(ctx context.Context, sheets []Sheet, paper Paper, s template.Style, o Options) (*Run, error) {
	if err := o.Profile.Check(); err != nil {
		return nil, err
	}
	if !o.Profile.None() && o.Profile.Paper != paper.Name {
		return nil, &Refusal{o.Profile.Paper, "paper.profile"}
	}
	r := &Run{style: s, options: o, on: make([][]int, len(sheets))}
	looked := map[*render.Drawing]*render.Drawing{} // copies stay one drawing
	g := &gathering{
		paper: paper, style: s, options: o, copies: map[*render.Drawing]int{}, met: map[*render.Drawing]int{},
		open: map[float64][]*opened{},
	}
	for _, sh := range sheets {
		if looked[sh.Drawing] == nil {
			looked[sh.Drawing] = o.Look.of(sh.Drawing, s)
		}
		g.copies[looked[sh.Drawing]]++
	}
	for rest := sheets; len(rest) > 0; {
		var members []member
		for _, sh := range rest[:o.stretch(rest)] {
			sh.Drawing, sh.Block.Notes = looked[sh.Drawing], o.notes(sh)
			sh.place = len(sheets) - len(rest) + len(members)
			members = append(members, g.member(sh))
		}
		rest = rest[len(members):]
		if err := r.add(ctx, members, g); err != nil {
			return nil, err
		}
	}
	r.count()
	return r, nil
}

// count counts the sheets of paper, and what stands on each.
func (r *Run) count() {
	for _, p := range r.plans {
		for range p.count() {
			r.total++
			for _, place := range p.places() {
				r.on[place] = append(r.on[place], r.total)
			}
		}
	}
}

// On returns the sheets of paper, from 1, on which the sheet stands that was the i-th of
// those planned, from 0; more than one where it is tiled.
func (r *Run) On(i int) []int { return r.on[i] }

// Behind returns the run as it goes on behind another, numbered through. What stands on its
// sheets is asked for as if it were planned in one.
func (r *Run) Behind(front *Run) *Run {
	all := *r
	all.plans = slices.Concat(front.plans, r.plans)
	all.total += front.total
	all.on = slices.Clone(front.on)
	for _, on := range r.on {
		var later []int
		for _, n := range on {
			later = append(later, n+front.total)
		}
		all.on = append(all.on, later)
	}
	return &all
}

// stretch returns how many of the sheets, from the first on, may share paper.
func (o Options) stretch(sheets []Sheet) int {
	n := 1
	for !o.Apart && n < len(sheets) && sheets[0].With != "" && sheets[n].With == sheets[0].With {
		n++
	}
	return n
}

// add plans a stretch of sheets: on as few as hold them, and templates that then have a
// sheet for themselves on those that templates of other parts share, if they do.
func (r *Run) add(ctx context.Context, members []member, g *gathering) error {
	if err := ctx.Err(); err != nil {
		return err
	}
	groups, err := g.fill(members)
	if err != nil {
		return fmt.Errorf("sheet of %s: %w", members[0].sheet.Drawing.Title, err)
	}
	for _, of := range groups {
		if !r.options.Together || !of.sameScale() || of.count() > 1 {
			r.plans = append(r.plans, of)
		} else if p := g.share(of.members); p != nil {
			r.plans = append(r.plans, p)
		}
	}
	return nil
}

// notes returns what stands beside a sheet's drawing in the look it has.
func (o Options) notes(sh Sheet) template.Notes {
	if sh.Drawing.Scale <= 0 {
		return sh.Block.Notes
	}
	return o.Look.ofNotes(sh.Block.Notes)
}

// Len returns how many sheets of paper it takes.
func (r *Run) Len() int { return r.total }

// Pages draws the sheets one after the other, each when it is asked for. When ctx is
// done its error comes instead of a page, the last thing to come.
func (r *Run) Pages(ctx context.Context) iter.Seq2[render.Page, error] {
	return func(yield func(render.Page, error) bool) {
		n := 0
		for _, p := range r.plans {
			for i := range p.count() {
				if err := ctx.Err(); err != nil {
					yield(render.Page{}, err)
					return
				}
				n++
				page := p.page(i, r.style.Words.Say("sheet.number-of", "n", n, "m", r.total), r.style)
				page.Drawing = r.options.Look.ofPage(page.Drawing)
				if r.options.Progress != nil {
					r.options.Progress(n, r.total)
				}
				if !yield(page, nil) {
					return
				}
			}
		}
	}
}
