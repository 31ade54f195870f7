package sheet

import (
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// clipped returns the part of a drawing within a box: lines and arcs cut exactly at
// its edge, filled outlines cut to it and filled without an edge line there, and of
// a text those letters whose middle lies in it.
func clipped(d *render.Drawing, box geometry.Box) *render.Drawing {
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
		default:
			if text, ok := lettersIn(*it.Text, box); ok {
				it.Text = &text
				out.Items = append(out.Items, it)
			}
		}
	}
	return &out
}

// lettersIn returns the run of a text's letters whose middle lies in a box, where
// they stand, and false where there is none.
func lettersIn(t render.Text, box geometry.Box) (render.Text, bool) {
	letters, width := t.Letters()
	along, up := t.Ways()
	start := t.Origin()
	middle := up.Times(t.Height / 2)
	first, end := -1, 0
	for i, l := range letters {
		next := width
		if i+1 < len(letters) {
			next = letters[i+1].X
		}
		if box.Contains(start.Add(along.Times((l.X + next) / 2)).Add(middle)) {
			if first < 0 {
				first = i
			}
			end = i + 1
		}
	}
	if first < 0 {
		return t, false
	}
	t.At, t.Align, t.Centred = start.Add(along.Times(letters[first].X)), render.Left, false
	t.String = string([]rune(t.String)[first:end])
	return t, true
}

// clippedItem returns an item's filling and its lines within the box.
func clippedItem(it render.Item, box geometry.Box) []render.Item {
	var items []render.Item
	if it.Fill != render.NoFill {
		filling := it
		filling.Pen, filling.Chains, filling.Outlines = render.NoPen, nil, nil
		for _, o := range it.Outlines {
			if c, ok := template.ClipOutline(o, box); ok {
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
		if bounds := o.Bounds(); box.Contains(bounds.Min) && box.Contains(bounds.Max) {
			lines.Outlines = append(lines.Outlines, o)
			continue
		}
		lines.Chains = append(lines.Chains, joined(clippedChain(o.Len(), o.Segment, box))...)
	}
	for _, c := range it.Chains {
		lines.Chains = append(lines.Chains, clippedChain(c.Len(), c.Segment, box)...)
	}
	if len(lines.Chains)+len(lines.Outlines) > 0 {
		items = append(items, lines)
	}
	return items
}

// joined puts the last run of an outline before the first where it ends there, so
// that the corner at which the outline starts stays a corner.
func joined(runs []geometry.Chain) []geometry.Chain {
	n := len(runs)
	if n < 2 {
		return runs
	}
	first, last := runs[0].Vertices(), runs[n-1].Vertices()
	if !template.Same(last[len(last)-1].Point, first[0].Point) {
		return runs
	}
	whole, err := geometry.NewChain(append(last[:len(last)-1], first...))
	if err != nil {
		return runs
	}
	return append([]geometry.Chain{whole}, runs[1:n-1]...)
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
		for _, part := range template.Split(segment(i), template.Edges(box)) {
			if template.Same(part.From, part.To) || !box.Contains(part.At(0.5)) {
				continue
			}
			if len(run) > 0 && !template.Same(run[len(run)-1].Point, part.From) {
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
