package solve

import (
	"maps"
	"slices"

	"tipline/app/job"
	"tipline/geometry/depthing"
	"tipline/geometry/measure"
)

// works are the parts of a job that trains are made of.
type works struct {
	unit    measure.Unit
	made    map[string]Made
	pairs   []*Pair
	arbors  []*job.Arbor
	arborOf map[string]string     // by the id of a part, or the arbor's own
	engaged []depthing.Engagement // the pairs whose parts are there
	engages []*Pair               // likewise
	gearing *depthing.Gearing     // of the engaged
	stuck   []*Pair               // those whose parts stand on one arbor
	idle    []*Pair               // those that have a part without teeth
}

func newWorks(unit measure.Unit, made map[string]Made, pairs []*Pair, arbors []*job.Arbor) works {
	w := works{unit: unit, made: made, pairs: pairs, arbors: arbors, arborOf: make(map[string]string)}
	for id := range made {
		w.arborOf[id] = id // a part on no arbor is an arbor of its own
	}
	for _, a := range slices.Backward(arbors) {
		w.arborOf[a.ID] = a.ID
		for _, part := range a.Parts {
			w.arborOf[part] = a.ID
		}
	}
	for _, p := range pairs {
		from, to := TeethOf(p.Wheel), TeethOf(p.Pinion)
		if from == 0 || to == 0 {
			w.idle = append(w.idle, p)
			continue
		}
		e := depthing.Engagement{From: w.arborOf[p.Part.Wheel], To: w.arborOf[p.Part.Pinion], FromTeeth: from, ToTeeth: to}
		if e.From == e.To {
			w.stuck = append(w.stuck, p)
			continue
		}
		w.engages, w.engaged = append(w.engages, p), append(w.engaged, e)
	}
	w.gearing = depthing.Geared(w.engaged)
	return w
}

// same reports whether parts turn one another as they do in the other.
func (w works) same(other works) bool {
	return w.unit == other.unit && slices.Equal(w.engaged, other.engaged) && slices.Equal(w.idle, other.idle) && maps.Equal(w.arborOf, other.arborOf)
}

// kept returns those trains of earlier works that are as they were: no part turns
// another otherwise, and none of their pairs has changed.
func (w works) kept(earlier works, trains map[trainKey]*Train) map[trainKey]*Train {
	if !w.same(earlier) {
		return nil
	}
	there := make(map[*Pair]bool, len(w.engages))
	for _, p := range w.engages {
		there[p] = true
	}
	kept := make(map[trainKey]*Train, len(trains))
	for k, t := range trains {
		if !slices.ContainsFunc(t.Pairs, func(p *Pair) bool { return !there[p] }) {
			kept[k] = t
		}
	}
	return kept
}

// TeethOf returns how many teeth, leaves or trundles a part has as the job says, also
// where they cannot be built; 0 where it says none.
func TeethOf(m Made) int {
	r := new(reader)
	switch m := m.(type) {
	case *Wheel:
		if m.Part.Teeth != nil {
			return r.count("teeth.count", m.Part.Teeth.Count, 0)
		}
	case *Pinion:
		return r.count("leaves", m.Part.Leaves, 0)
	}
	return 0
}

// name returns what a part is called; an arbor is called by its id.
func (w works) name(id string) string {
	if m := w.made[id]; m != nil {
		return m.Name()
	}
	return id
}

// escapeOn returns the escape wheel of a part or on an arbor: a pointed wheel with a
// count, whether or not it can be cut.
func (w works) escapeOn(id string) *Wheel {
	parts := []string{id}
	for _, a := range w.arbors {
		if a.ID == id {
			parts = a.Parts
		}
	}
	for _, part := range parts {
		if wheel, ok := w.made[part].(*Wheel); ok && TeethOf(wheel) > 0 && wheel.Part.Teeth.Form.Text == "pointed" {
			return wheel
		}
	}
	return nil
}
