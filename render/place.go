package render

import "tipline/geometry"

// Add puts the items on the drawing, above those already there on their layers.
func (d *Drawing) Add(items ...Item) { d.Items = append(d.Items, items...) }

// Bounds returns the box of the drawing's lines and texts, without the width of
// the pens. A drawing that draws nothing has a box without size at the origin.
func (d *Drawing) Bounds() geometry.Box {
	bounds := geometry.NoBox()
	for i := range d.Items {
		if box, ok := d.Items[i].Bounds(); ok {
			bounds = bounds.Union(box)
		}
	}
	if bounds.Empty() {
		return geometry.Box{}
	}
	return bounds
}

// Bounds returns the box of the item's lines and text, without the width of the
// pen and without any photograph, and false for an item that draws nothing.
func (it Item) Bounds() (geometry.Box, bool) {
	bounds := geometry.NoBox()
	for _, o := range it.Outlines {
		bounds = bounds.Union(o.Bounds())
	}
	for _, c := range it.Chains {
		bounds = bounds.Union(c.Bounds())
	}
	if it.Text != nil {
		bounds = bounds.Union(it.Text.Bounds())
	}
	return bounds, !bounds.Empty()
}

// Placed returns a copy of the drawing enlarged scale > 0 times about its origin,
// turned anticlockwise by turn, and moved so that its origin stands at at. Places
// and lines are enlarged; the heights of letters and the pens are not.
func (d *Drawing) Placed(at geometry.Point, scale float64, turn geometry.Angle) *Drawing {
	placed := *d
	placed.Scale *= scale
	placed.Items = make([]Item, len(d.Items))
	for i, it := range d.Items {
		placed.Items[i] = it.placed(at, scale, turn)
	}
	return &placed
}

// Centred returns a copy of the drawing whose origin is the middle of its bounds.
func (d *Drawing) Centred() *Drawing {
	return d.Placed(d.Bounds().Centre().Times(-1), 1, 0)
}

func (it Item) placed(at geometry.Point, scale float64, turn geometry.Angle) Item {
	outlines := make([]geometry.Outline, len(it.Outlines))
	for i, o := range it.Outlines {
		outlines[i] = o.Scale(scale).Rotate(turn).Move(at)
	}
	chains := make([]geometry.Chain, len(it.Chains))
	for i, c := range it.Chains {
		chains[i] = c.Scale(scale).Rotate(turn).Move(at)
	}
	it.Outlines, it.Chains = outlines, chains
	if it.Text != nil {
		text := *it.Text
		text.At = text.At.Scale(scale).Rotate(turn).Move(at)
		text.Turn += turn
		it.Text = &text
	}
	if it.Picture != nil {
		picture := it.Picture.Placed(at, scale, turn)
		it.Picture = &picture
	}
	return it
}

// Level is what stands on one layer, in the order it is drawn.
type Level struct {
	Layer Layer
	Items []Item
}

// Levels returns the drawing's items layer by layer, the lowest first, as every
// file shows them: within a layer in the order they were added. Layers without
// items are left out, and photographs, which are on the screen only; a layer that
// Layers does not list comes last.
func (d *Drawing) Levels() []Level {
	order := Layers()
	count := make(map[Layer]int, len(order))
	for _, layer := range order {
		count[layer] = 0
	}
	for _, it := range d.Items {
		if _, known := count[it.Layer]; !known && it.Layer != LayerPhotograph {
			order = append(order, it.Layer)
		}
		count[it.Layer]++
	}
	byLayer := make(map[Layer][]Item, len(order))
	room := make([]Item, len(d.Items))
	for _, layer := range order {
		byLayer[layer], room = room[:0:count[layer]], room[count[layer]:]
	}
	for _, it := range d.Items {
		if it.Layer != LayerPhotograph {
			byLayer[it.Layer] = append(byLayer[it.Layer], it)
		}
	}
	var levels []Level
	for _, layer := range order {
		if items := byLayer[layer]; len(items) > 0 {
			levels = append(levels, Level{layer, items})
		}
	}
	return levels
}
