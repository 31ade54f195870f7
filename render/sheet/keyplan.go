package sheet

import (
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// The key plan stands in the sheet's upper right corner under the scale, at most
// twice as wide as it is high, and half that size where the sheet is short.
const (
	keyHeight = 20.0
	keyBelow  = 3.0 // from the scale
)

// key is the small plan of a drawing's tiles, with the one that the sheet shows.
type key struct {
	box    geometry.Box
	size   float64 // millimetres of the plan to one of the drawing
	origin geometry.Point
}

// keyOf returns the plan of tiles in the upper right corner of a box.
func keyOf(tiles []tile, box geometry.Box) key {
	whole := geometry.NoBox()
	for _, t := range tiles {
		whole = whole.Union(t.region)
	}
	size, corner := min(box.Width()/whole.Width(), box.Height()/whole.Height()), box.Max
	low := corner.Sub(geometry.Point{X: size * whole.Width(), Y: size * whole.Height()})
	return key{geometry.Box{Min: low, Max: corner}, size, low.Sub(whole.Min.Times(size))}
}

func (k key) place(b geometry.Box) geometry.Box {
	return geometry.Box{Min: b.Min.Times(k.size).Add(k.origin), Max: b.Max.Times(k.size).Add(k.origin)}
}

// draw draws the plan: the drawing's heavy outlines, the tiles as they are cut, this
// one heavy and shaded, each with its name where that can be read.
func (k key) draw(b *template.Board, d *render.Drawing, tiles []tile, i int) {
	s := template.Stroke{Layer: render.LayerSheet, Quantity: keyQuantity, Pen: render.Visible, Fill: render.Brass}
	this := k.place(tiles[i].own())
	b.Rectangle(template.Stroke{Layer: s.Layer, Quantity: keyQuantity, Fill: s.Fill}, this.Min, this.Max)
	k.outlines(b, d)
	for n, t := range tiles {
		box := k.place(t.own())
		b.Rectangle(template.Stroke{Layer: s.Layer, Quantity: keyQuantity, Pen: render.Hair, Ink: render.Grey}, box.Min, box.Max)
		name := render.Text{String: t.name(), Height: heightLabel, Align: render.Middle, Centred: true, At: box.Centre(), Bold: n == i}
		if name.Width() < box.Width()-1 && name.Height < box.Height()-1 {
			b.Write(template.Stroke{Layer: s.Layer, Quantity: keyQuantity}, name)
		}
	}
	b.Rectangle(template.Stroke{Layer: s.Layer, Quantity: keyQuantity, Pen: s.Pen}, this.Min, this.Max)
}

// keyQuantity tells the key plan from what else is drawn.
const keyQuantity geometry.Quantity = "sheet.key"

// outlines draws the heavy outlines of the drawing small.
func (k key) outlines(b *template.Board, d *render.Drawing) {
	heavy := &render.Drawing{Scale: 1}
	for _, it := range d.Items {
		if it.Pen == render.Visible && it.Text == nil {
			heavy.Add(render.Item{
				Layer: render.LayerSheet, Quantity: keyQuantity, Pen: render.Hair, Ink: render.Grey,
				Outlines: it.Outlines, Chains: it.Chains,
			})
		}
	}
	b.Drawing.Add(heavy.Placed(k.origin, k.size, 0).Items...)
}
