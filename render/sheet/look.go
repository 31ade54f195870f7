package sheet

import (
	"tipline/render"
	"tipline/render/template"
)

// Look is another way to print a template than the usual one, for another use. The
// zero Look is the usual one.
type Look struct {
	Mirrored     bool // everything, lettering too, so that what is transferred reads right
	OutlinesOnly bool // no brass, no steel, no hatching
	Thin         bool // hairlines only, to be looked at through a loupe
	Punch        bool // nothing but the centres of holes and the tips, to be punched
	BlackOnly    bool // the whole sheet without colours, for a printer with one ink
}

// of returns the drawing in this look, saying below its title what is unusual. A
// card, which has no scale, is returned as it is.
func (l Look) of(d *render.Drawing, s template.Style) *render.Drawing {
	if d.Scale <= 0 {
		return d
	}
	if l.Punch {
		d = punched(d, s)
	}
	if l.OutlinesOnly {
		d = changed(d, unshaded)
	}
	if l.Thin {
		d = changed(d, hairline)
	}
	if l.Mirrored {
		d = d.Mirrored()
		d.Description = s.Words.Say("sheet.look.mirrored") + "\n" + d.Description
	}
	return d
}

// ofPage returns what is drawn on a page in the look's inks.
func (l Look) ofPage(d *render.Drawing) *render.Drawing {
	if !l.BlackOnly {
		return d
	}
	return changed(d, blackened)
}

// ofNotes leaves out of a legend what the look does not show.
func (l Look) ofNotes(n template.Notes) template.Notes {
	if !l.OutlinesOnly && !l.Punch {
		return n
	}
	var legend []template.Mark
	for _, m := range n.Legend {
		fine := m.Pen == render.Hair && !m.Round
		if m.Fill == render.NoFill && (!l.Punch || fine) {
			legend = append(legend, m)
		}
	}
	n.Legend = legend
	return n
}

// changed returns a copy of a drawing with each item changed to those that change
// returns.
func changed(d *render.Drawing, change func(render.Item) []render.Item) *render.Drawing {
	other := *d
	other.Items = make([]render.Item, 0, len(d.Items))
	for _, it := range d.Items {
		other.Items = append(other.Items, change(it)...)
	}
	return &other
}

// unshaded leaves an item's inside white: it hides what it hid.
func unshaded(it render.Item) []render.Item {
	switch it.Fill {
	case render.Brass, render.Steel, render.Waste:
		it.Fill = render.Paper
	}
	return []render.Item{it}
}

// hairline draws an item's lines with the finest pen, in the same dashes.
func hairline(it render.Item) []render.Item {
	dashes := it.Pen.Dashes()
	if it.Pen == render.NoPen || dashes == nil {
		if it.Pen != render.NoPen {
			it.Pen = render.Hair
		}
		return []render.Item{it}
	}
	lines := it
	lines.Pen, lines.Fill, lines.Outlines, lines.Chains = render.Hair, render.NoFill, nil, nil
	for _, o := range it.Outlines {
		lines.Chains = append(lines.Chains, dashed(o.Len(), o.Segment, dashes)...)
	}
	for _, c := range it.Chains {
		lines.Chains = append(lines.Chains, dashed(c.Len(), c.Segment, dashes)...)
	}
	it.Pen, it.Chains = render.NoPen, nil
	if it.Fill == render.NoFill && it.Text == nil {
		return []render.Item{lines}
	}
	return []render.Item{it, lines}
}

// blackened draws an item in black: tints are left out, and hatching becomes lines.
func blackened(it render.Item) []render.Item {
	it.Ink = render.Black
	hatching := it
	hatching.Pen, hatching.Fill, hatching.Outlines, hatching.Chains = render.WastePen, render.NoFill, nil, nil
	for _, l := range it.WasteLines() {
		hatching.Chains = append(hatching.Chains, chainOf(l))
	}
	if len(hatching.Chains) == 0 {
		return unshaded(it)
	}
	filling, edge := it, it
	filling.Pen, filling.Fill, filling.Chains = render.NoPen, render.Paper, nil
	edge.Fill = render.NoFill
	return []render.Item{filling, hatching, edge}
}
