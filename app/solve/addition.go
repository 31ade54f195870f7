package solve

import (
	"fmt"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/crossing"
)

// additions reads the maker's own holes, circles, lines and notes. One that cannot be
// read is left out and keeps its place in the list. A line without an angle of its own
// to end at runs out along its ray, one without a radius round its circle.
func (r *reader) additions(list []*job.Addition) []crossing.Addition {
	all := make([]crossing.Addition, len(list))
	for i, a := range list {
		mark := len(r.findings)
		all[i] = r.addition(a, func(name string) geometry.Quantity {
			return geometry.Quantity(fmt.Sprintf("additions[%d].%s", i, name))
		})
		if !r.sound(mark) {
			all[i] = leftOut(all[i])
		}
	}
	return all
}

// leftOut returns nothing, at an addition's place.
func leftOut(a crossing.Addition) crossing.Addition {
	return crossing.Addition{Kind: crossing.LeftOut, Radius: a.Radius, Angle: a.Angle}
}

// onWheel leaves out what lies off the wheel, and says what reaches out of it.
func (r *reader) onWheel(all []crossing.Addition, tip float64) {
	for i, a := range all {
		if l := a.Beyond(i, tip); l != nil {
			r.fail(l.Quantity, l)
			all[i] = leftOut(a)
		} else if l := a.Outside(i, tip); l != nil {
			r.notes([]*geometry.Limit{l})
		}
	}
}

func (r *reader) addition(a *job.Addition, of func(name string) geometry.Quantity) crossing.Addition {
	if a.Kind.Empty() {
		r.missing(of("kind"))
	}
	read := crossing.Addition{
		Kind:     crossing.Kind(r.choice(of("kind"), a.Kind, "")),
		Radius:   r.length(of("radius"), a.Radius, 0),
		Angle:    r.angle(of("angle"), a.Angle, 0),
		Diameter: r.length(of("diameter"), a.Diameter, 0),
		Repeat:   r.count(of("repeat"), a.Repeat, 1),
		Text:     Shown(a.Text),
	}
	read.ToRadius = r.length(of("to_radius"), a.ToRadius, read.Radius)
	read.ToAngle = r.angle(of("to_angle"), a.ToAngle, read.Angle)
	switch read.Kind {
	case crossing.HoleKind:
		r.wanted(a.Radius, of("radius"))
		r.wanted(a.Diameter, of("diameter"))
	case crossing.CircleKind:
		r.wanted(a.Diameter, of("diameter"))
	case crossing.LineKind:
		if a.ToAngle.Empty() {
			r.wanted(a.ToRadius, of("to_radius"))
		}
	case crossing.NoteKind:
		if a.Text == "" {
			r.missing(of("text"))
		}
	}
	return read
}

// wanted keeps a finding where a field is left empty.
func (r *reader) wanted(v job.Value, field geometry.Quantity) {
	if v.Empty() {
		r.missing(field)
	}
}
