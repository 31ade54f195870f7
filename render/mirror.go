package render

import "tipline/geometry"

// Mirrored returns a copy of the drawing mirrored left to right about its origin,
// its texts too, to be read in a mirror. A photograph is left out.
func (d *Drawing) Mirrored() *Drawing {
	mirrored := *d
	mirrored.Items = make([]Item, len(d.Items))
	for i, it := range d.Items {
		mirrored.Items[i] = it.mirrored()
	}
	return &mirrored
}

func (it Item) mirrored() Item {
	outlines := make([]geometry.Outline, len(it.Outlines))
	for i, o := range it.Outlines {
		outlines[i] = o.Mirror()
	}
	chains := make([]geometry.Chain, len(it.Chains))
	for i, c := range it.Chains {
		chains[i] = c.Mirror()
	}
	it.Outlines, it.Chains, it.Picture = outlines, chains, nil
	if it.Text != nil {
		text := *it.Text
		text.At, text.Turn, text.Mirror = text.At.Mirror(), -text.Turn, !text.Mirror
		it.Text = &text
	}
	return it
}
