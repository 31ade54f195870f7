package job

import "slices"

// mention changes, in a job that is a copy already, every mention of a part into
// another id; into nothing for "", which takes it out of arbors and stacks and
// leaves a train's hour to the part it comes from.
func (j *Job) mention(id, fresh string) {
	j.Arbors = remade(j.Arbors, func(a *Arbor) { a.Parts = renamed(a.Parts, id, fresh) },
		func(a *Arbor) bool { return slices.Contains(a.Parts, id) })
	j.Stacks = remade(j.Stacks, func(s *Stack) { s.Wheels, s.Tips = restacked(s, id, fresh) },
		func(s *Stack) bool { return slices.Contains(s.Wheels, id) })
	j.Pairs = remade(j.Pairs, func(p *Pair) { swap(&p.Wheel, id, fresh); swap(&p.Pinion, id, fresh) },
		func(p *Pair) bool { return p.Wheel == id || p.Pinion == id })
	j.Trains = remade(j.Trains, func(t *Train) { swap(&t.From, id, fresh); swap(&t.To, id, fresh); swap(&t.Hour, id, fresh) },
		func(t *Train) bool { return t.From == id || t.To == id || t.Hour == id })
}

// remade returns the list with copies, changed by f, of the items it concerns.
func remade[T any](list []*T, f func(*T), concerns func(*T) bool) []*T {
	if !slices.ContainsFunc(list, concerns) {
		return list
	}
	out := slices.Clone(list)
	for i, item := range out {
		if concerns(item) {
			c := *item
			f(&c)
			out[i] = &c
		}
	}
	return out
}

func renamed(ids []string, id, fresh string) []string {
	var out []string
	for _, other := range ids {
		if swap(&other, id, fresh); other != "" {
			out = append(out, other)
		}
	}
	return out
}

// restacked drops a wheel's reference tip together with the wheel.
func restacked(s *Stack, id, fresh string) ([]string, []Value) {
	i := slices.Index(s.Wheels, id)
	if fresh == "" && i < len(s.Tips) {
		return renamed(s.Wheels, id, fresh), slices.Delete(slices.Clone(s.Tips), i, i+1)
	}
	return renamed(s.Wheels, id, fresh), s.Tips
}

func swap(mention *string, id, fresh string) {
	if *mention == id {
		*mention = fresh
	}
}
