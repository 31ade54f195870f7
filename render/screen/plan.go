package screen

import "tipline/render"

// plan is what a painter remembers of the drawing it last painted: the order of
// its items, and its letters.
type plan struct {
	drawing *render.Drawing
	items   int
	bare    bool
	order   []int
	letters map[*render.Text][]render.Contour
}

// of makes the plan the drawing's, if it is not already; a bare painter writes no
// letters.
func (p *plan) of(d *render.Drawing, bare bool) {
	if p.drawing == d && p.items == len(d.Items) && p.bare == bare {
		return
	}
	*p = plan{drawing: d, items: len(d.Items), bare: bare, order: layered(d), letters: map[*render.Text][]render.Contour{}}
	for i := range d.Items {
		if t := d.Items[i].Text; t != nil && !bare {
			p.letters[t] = contours(t)
		}
	}
}

// layered returns the items' places layer by layer, the lowest first.
func layered(d *render.Drawing) []int {
	order := make([]int, 0, len(d.Items))
	known := map[render.Layer]bool{}
	for _, layer := range append([]render.Layer{render.LayerPhotograph}, render.Layers()...) {
		known[layer] = true
		for i := range d.Items {
			if d.Items[i].Layer == layer {
				order = append(order, i)
			}
		}
	}
	for i := range d.Items {
		if !known[d.Items[i].Layer] {
			order = append(order, i)
		}
	}
	return order
}

// contours returns a text's letters about the text's place.
func contours(t *render.Text) []render.Contour {
	at := t.At.Times(-1)
	cs := t.Glyphs()
	for i := range cs {
		cs[i].Start = cs[i].Start.Add(at)
		for j := range cs[i].Curves {
			c := &cs[i].Curves[j]
			c.Control, c.To = c.Control.Add(at), c.To.Add(at)
		}
	}
	return cs
}
