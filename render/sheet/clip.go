package sheet

import (
	"sort"

	"tipline/geometry"
	"tipline/render"
)

// clipped returns the part of a drawing within tile i: lines and arcs cut exactly
// at its edge, filled outlines cut to it and filled without an edge line there,
// and the texts that lie in it. A text that no tile holds whole goes on the one
// that holds its middle.
func clipped(d *render.Drawing, tiles []tile, i int) *render.Drawing {
	box := tiles[i].region
	out := *d
	out.Items = nil
	for _, it := range d.Items {
		bounds, ok := it.Bounds()
		switch {
		case !ok || !bounds.Touches(box):
		case box.Contains(bounds.Min) && box.Contains(bounds.Max):
			out.Items = append(out.Items, it)
		case it.Text == nil:
			out.Items = append(out.Items, clippedItem(it, box)...)
		case home(tiles, bounds) == i:
			out.Items = append(out.Items, it)
		}
	}
	return &out
}

// home returns the first tile that holds the middle of a box that no tile holds
// whole; −1 if one does.
func home(tiles []tile, bounds geometry.Box) int {
	first := -1
	for i, t := range tiles {
		if t.region.Contains(bounds.Min) && t.region.Contains(bounds.Max) {
			return -1
		}
		if first < 0 && t.region.Contains(bounds.Centre()) {
			first = i
		}
	}
	return first
}

// clippedItem returns an item's filling and its lines within the box.
func clippedItem(it render.Item, box geometry.Box) []render.Item {
	var items []render.Item
	if it.Fill != render.NoFill {
		filling := it
		filling.Pen, filling.Chains, filling.Outlines = render.NoPen, nil, nil
		for _, o := range it.Outlines {
			if c, ok := clippedOutline(o, box); ok {
				filling.Outlines = append(filling.Outlines, c)
			}
		}
		if len(filling.Outlines) > 0 {
			items = append(items, filling)
		}
	}
	lines := it
	lines.Fill, lines.Outlines, lines.Chains = render.NoFill, nil, nil
	for _, o := range it.Outlines {
		lines.Chains = append(lines.Chains, clippedChain(o.Len(), o.Segment, box)...)
	}
	for _, c := range it.Chains {
		lines.Chains = append(lines.Chains, clippedChain(c.Len(), c.Segment, box)...)
	}
	if len(lines.Chains) > 0 {
		items = append(items, lines)
	}
	return items
}

// clippedChain returns the runs of n segments that lie within the box.
func clippedChain(n int, segment func(int) geometry.Segment, box geometry.Box) []geometry.Chain {
	var chains []geometry.Chain
	var run []geometry.Vertex
	finish := func() {
		if c, err := geometry.NewChain(run); err == nil {
			chains = append(chains, c)
		}
		run = nil
	}
	for i := range n {
		for _, part := range split(segment(i), edges(box)) {
			if same(part.From, part.To) || !box.Contains(part.At(0.5)) {
				continue
			}
			if len(run) > 0 && !same(run[len(run)-1].Point, part.From) {
				finish()
			}
			if len(run) == 0 {
				run = append(run, geometry.Vertex{Point: part.From})
			}
			last := &run[len(run)-1]
			last.Bulge, last.Quantity = part.Bulge, part.Quantity
			run = append(run, geometry.Vertex{Point: part.To})
		}
	}
	finish()
	return chains
}

// edges returns the four edges of a box.
func edges(box geometry.Box) []geometry.Line {
	a, c := box.Min, box.Max
	b, d := geometry.Point{X: c.X, Y: a.Y}, geometry.Point{X: a.X, Y: c.Y}
	return []geometry.Line{{From: a, To: b}, {From: b, To: c}, {From: c, To: d}, {From: d, To: a}}
}

// split cuts a segment wherever it meets one of the lines.
func split(s geometry.Segment, lines []geometry.Line) []geometry.Segment {
	cuts := []float64{0, 1}
	for _, l := range lines {
		for _, m := range geometry.Meet(s, l.Segment()) {
			cuts = append(cuts, min(max(m.S, 0), 1))
		}
	}
	sort.Float64s(cuts)
	var parts []geometry.Segment
	for i := 1; i < len(cuts); i++ {
		if cuts[i] > cuts[i-1] {
			parts = append(parts, s.Part(cuts[i-1], cuts[i]))
		}
	}
	return parts
}

// clippedOutline cuts an outline to the box, one edge after another; where it
// leaves and comes back it runs along the edge. False when nothing is left.
func clippedOutline(o geometry.Outline, box geometry.Box) (geometry.Outline, bool) {
	far := 2 * (box.Width() + box.Height() + o.Bounds().Width() + o.Bounds().Height())
	for _, e := range edges(box) {
		along := e.To.Sub(e.From).Times(far / e.From.Dist(e.To))
		line := geometry.Line{From: e.From.Sub(along), To: e.To.Add(along)}
		var vs []geometry.Vertex
		for i := range o.Len() {
			for _, part := range split(o.Segment(i), []geometry.Line{line}) {
				if along.Cross(part.At(0.5).Sub(e.From)) < 0 {
					continue
				}
				if n := len(vs); n > 0 && same(vs[n-1].Point, part.From) {
					vs = vs[:n-1]
				}
				vs = append(vs, geometry.Vertex{Point: part.From, Bulge: part.Bulge, Quantity: part.Quantity}, geometry.Vertex{Point: part.To})
			}
		}
		if n := len(vs); n > 1 && same(vs[n-1].Point, vs[0].Point) {
			vs = vs[:n-1]
		}
		next, err := geometry.NewOutline(vs)
		if err != nil {
			return geometry.Outline{}, false
		}
		o = next
	}
	return o, true
}

// sameWithin is the distance below which two ends are one point: coordinates agree
// to it inside the program.
const sameWithin = 1e-9

func same(p, q geometry.Point) bool { return p.Dist(q) <= sameWithin }
