package command

import (
	"slices"
	"strings"

	"tipline/app/solve"
)

// being is what a part is, by the catalogue's name for it, and the kinds of template that
// such a part may have.
type being struct {
	name  string
	kinds []string
}

// beingOf returns what a part is.
func beingOf(p solve.Part) being {
	cut := []string{"blank", "grinding", "setting", "depth", "dividing"}
	switch p := p.(type) {
	case *solve.Wheel:
		return being{"wheel", append(cut, "crossing", "scribing", "drilling")}
	case *solve.Pinion:
		if p.Part.Form.Text == "lantern" {
			return being{"lantern", []string{"blank", "dividing", "shroud"}}
		}
		return being{"pinion", cut}
	case *solve.Pair:
		return being{"pair", []string{"depthing"}}
	case *solve.Train:
		return being{"train", []string{"train"}}
	}
	return being{"stack", []string{"stack"}}
}

// misplaced refuses a kind of template that a part like this never has, and says which it
// may have; nil where it may have that.
func (c *call) misplaced(p solve.Part, kind string) error {
	is := beingOf(p)
	if slices.Contains(is.kinds, kind) {
		return nil
	}
	return refuse("command.not-its-kind", "id", p.ID(), "kind", kind,
		"is", c.words.Say("command.is."+is.name), "kinds", strings.Join(is.kinds, ", "))
}

// unasked refuses a kind of template for which the job says nothing of the part, and says
// which there are.
func unasked(p solve.Part) error {
	var there []string
	for _, name := range beingOf(p).kinds {
		if kinds[name].Needs(p) {
			there = append(there, name)
		}
	}
	if len(there) == 0 {
		return refuse("command.not-asked", "id", p.ID())
	}
	return refuse("command.not-asked-of", "id", p.ID(), "kinds", strings.Join(there, ", "))
}
