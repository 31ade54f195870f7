package job

import "slices"

// Kinds lists the kinds of part that can be added: a wheel by its form of teeth,
// then what goes with it.
func Kinds() []string {
	return []string{
		"cycloidal", "pointed", "ratchet", "lantern driver", "measured",
		"pinion", "lantern pinion", "stack", "pair", "arbor", "train",
	}
}

// Add returns a job with one more part of one of the Kinds, last in its list, and
// the part's id, which is made from the name. A wheel or pinion starts with values
// that can be built; a pair with the first wheel and pinion that stand in none, an
// arbor with the first pinion and wheel on none, a stack with the first two wheels that
// stand in none, of one arbor if any has two, a train with the first wheel and the first
// that is pointed, else the last.
func (j *Job) Add(kind, name string) (*Job, string, error) {
	if err := j.roomForOne(); err != nil {
		return nil, "", err
	}
	next, id := *j, j.FreeID(name)
	switch kind {
	case "pinion", "lantern pinion":
		form := map[string]string{"pinion": "cycloidal", "lantern pinion": "lantern"}[kind]
		p := startingPinion(form)
		p.ID, p.Name = id, name
		next.Pinions = append(slices.Clip(j.Pinions), p)
	case "pair":
		next.Pairs = append(slices.Clip(j.Pairs), j.freePair(id))
	case "arbor":
		next.Arbors = append(slices.Clip(j.Arbors), j.freeArbor(id))
	case "stack":
		next.Stacks = append(slices.Clip(j.Stacks), j.freeStack(id))
	case "train":
		next.Trains = append(slices.Clip(j.Trains), j.wholeTrain(id))
	default:
		w, ok := startingWheel(kind)
		if !ok {
			return nil, "", &Refusal{Code: "job.no-such-kind", Value: kind}
		}
		w.ID, w.Name = id, name
		next.Wheels = append(slices.Clip(j.Wheels), w)
	}
	return &next, id, nil
}

// freePair pairs the first wheel that can drive a pinion, and the first pinion,
// that stand in no pair; where all do, the last of each.
func (j *Job) freePair(id string) *Pair {
	p := &Pair{ID: id}
	for _, w := range j.Wheels {
		if w.Teeth != nil && !slices.Contains([]string{"cycloidal", "lantern driver"}, w.Teeth.Form.Text) {
			continue
		}
		if p.Wheel = w.ID; !slices.ContainsFunc(j.Pairs, func(q *Pair) bool { return q.Wheel == w.ID }) {
			break
		}
	}
	for _, l := range j.Pinions {
		if p.Pinion = l.ID; !slices.ContainsFunc(j.Pairs, func(q *Pair) bool { return q.Pinion == l.ID }) {
			break
		}
	}
	return p
}

// freeArbor puts the first pinion and the first wheel that stand on no arbor and
// do not drive each other on one.
func (j *Job) freeArbor(id string) *Arbor {
	a := &Arbor{ID: id}
	free := func(part string) bool {
		return !slices.ContainsFunc(j.Arbors, func(b *Arbor) bool { return slices.Contains(b.Parts, part) })
	}
	for _, l := range j.Pinions {
		if free(l.ID) {
			a.Parts = append(a.Parts, l.ID)
			break
		}
	}
	for _, w := range j.Wheels {
		meets := func(p *Pair) bool { return p.Wheel == w.ID && slices.Contains(a.Parts, p.Pinion) }
		if free(w.ID) && !slices.ContainsFunc(j.Pairs, meets) {
			a.Parts = append(a.Parts, w.ID)
			break
		}
	}
	return a
}

// freeStack stacks the first two wheels of one arbor that stand in no stack; where no
// arbor has two, the first two of the job.
func (j *Job) freeStack(id string) *Stack {
	var wheels []string
	for _, w := range j.Wheels {
		if !slices.ContainsFunc(j.Stacks, func(s *Stack) bool { return slices.Contains(s.Wheels, w.ID) }) {
			wheels = append(wheels, w.ID)
		}
	}
	for _, a := range j.Arbors {
		onOne := without(wheels, func(w string) bool { return !slices.Contains(a.Parts, w) })
		if len(onOne) >= 2 {
			wheels = onOne
			break
		}
	}
	return &Stack{ID: id, Wheels: slices.Clone(wheels[:min(2, len(wheels))])}
}

// wholeTrain goes from the first wheel to the first that is pointed, else to the
// last.
func (j *Job) wholeTrain(id string) *Train {
	t := &Train{ID: id}
	if len(j.Wheels) == 0 {
		return t
	}
	t.From, t.To = j.Wheels[0].ID, j.Wheels[len(j.Wheels)-1].ID
	for _, w := range j.Wheels {
		if w.Teeth != nil && w.Teeth.Form.Text == "pointed" {
			t.To = w.ID
			break
		}
	}
	return t
}
