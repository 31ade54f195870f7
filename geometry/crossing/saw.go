package crossing

import "tipline/geometry"

// pierce works out the pattern's saw line and start hole.
func (p *pattern) pierce(s Spec) error {
	if s.Allowance > 0 {
		inset, err := p.outline.Inset(s.Allowance)
		if err != nil {
			return err
		}
		for _, line := range inset {
			made, err := madeBy(line, ofAllowance)
			if err != nil {
				return err
			}
			p.saw = append(p.saw, made)
		}
	}
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
