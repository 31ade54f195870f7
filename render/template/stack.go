package template

import "tipline/geometry/mount"

// Stack is wheels on one collet, from the collet up, as a template needs it.
type Stack struct {
	ID, Name string
	Wheels   []Wheel
	Stacked  mount.Stacked
	Collet   mount.Collet
}
