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

// whole returns the greatest allowance below one that is too large with which the
// saw line is still one outline.
func (p pattern) whole(tooLarge float64) float64 {
	return narrowed(0, tooLarge, func(allowance float64) bool {
		inset, err := p.outline.Inset(allowance)
		return err == nil && len(inset) == 1
	})
}
