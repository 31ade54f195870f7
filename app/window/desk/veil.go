package desk

import (
	"slices"

	"tipline/render"
)

// veiled is which layers are hidden at each step, for as long as the program runs, and
// the drawing that is seen without them.
type veiled struct {
	at      map[Step]map[render.Layer]bool
	from    *render.Drawing // that seen was made from
	without []render.Layer
	seen    *render.Drawing
}

// Veil is a layer that the present drawing has, and whether it is hidden.
type Veil struct {
	Layer  render.Layer
	Name   string
	Hidden bool
}

// Veils lists the layers of the present drawing that can be hidden, the lowest first: none
// on paper, which is shown as it is printed, while points are picked on a photograph,
// and where there is but one.
func (d *Desk) Veils() []Veil {
	drawing, _ := d.Drawing()
	if drawing == nil || d.at() == Paper || d.picking != nil {
		return nil
	}
	there := map[render.Layer]bool{}
	for i := range drawing.Items {
		there[drawing.Items[i].Layer] = true
	}
	var list []Veil
	for _, l := range append([]render.Layer{render.LayerPhotograph}, render.Layers()...) {
		if there[l] {
			list = append(list, Veil{l, d.words.Say("layer." + string(l)), d.veiled.at[d.at()][l]})
		}
	}
	if len(list) < 2 {
		return nil
	}
	return list
}

// HideLayer hides a layer of the present step's drawings, or shows it again.
func (d *Desk) HideLayer(l render.Layer, hidden bool) {
	if d.veiled.at == nil {
		d.veiled.at = map[Step]map[render.Layer]bool{}
	}
	if d.veiled.at[d.at()] == nil {
		d.veiled.at[d.at()] = map[render.Layer]bool{}
	}
	d.veiled.at[d.at()][l] = hidden
	d.Changed()
}

// Seen returns the present drawing as Drawing does, without the layers that are hidden.
// It is the same one as long as the drawing and what is hidden of it are.
func (d *Desk) Seen() (drawing *render.Drawing, stale bool) {
	drawing, stale = d.Drawing()
	var without []render.Layer
	for _, l := range d.Veils() {
		if l.Hidden {
			without = append(without, l.Layer)
		}
	}
	if len(without) == 0 {
		return drawing, stale
	}
	if v := &d.veiled; v.from != drawing || !slices.Equal(v.without, without) {
		left := *drawing
		left.Items = slices.DeleteFunc(slices.Clone(drawing.Items), func(it render.Item) bool { return slices.Contains(without, it.Layer) })
		v.from, v.without, v.seen = drawing, without, &left
	}
	return d.veiled.seen, stale
}
