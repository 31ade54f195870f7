package crossing

import (
	"tipline/geometry"
)

// pierce works out the pattern's saw line and start hole.
func (p *pattern) pierce(s Spec) error {
	return p.drill(s)
}

// madeBy returns the outline with every segment made by q.
func madeBy(o geometry.Outline, q geometry.Quantity) (geometry.Outline, error) {
	vs := o.Vertices()
	for i := range vs {
		vs[i].Quantity = q
	}
	return geometry.NewOutline(vs)
}
