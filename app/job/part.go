package job

import (
	"reflect"
	"slices"
	"strconv"
)

// New returns a job without parts whose bare numbers are in the unit, "mm" or
// "in".
func New(units string) *Job { return &Job{Version: Version, Units: units} }

// Wheel returns the wheel with the id, or nil.
func (j *Job) Wheel(id string) *Wheel {
	i := slices.IndexFunc(j.Wheels, func(w *Wheel) bool { return w.ID == id })
	if i < 0 {
		return nil
	}
	return j.Wheels[i]
}

func (j *Job) roomForOne() error {
	n := len(j.Wheels) + len(j.Pinions) + len(j.Arbors) + len(j.Pairs) + len(j.Stacks) + len(j.Trains)
	if n >= maxParts {
		return &Refusal{Code: "job.too-many-parts", Max: strconv.Itoa(maxParts)}
	}
	return nil
}

// Duplicate returns a job with a copy of the part after it, and the copy's id. A name is
// given the next number.
func (j *Job) Duplicate(id string) (*Job, string, error) {
	if err := j.roomForOne(); err != nil {
		return nil, "", err
	}
	fresh := j.FreeID(id)
	next, err := j.relist(id, func(parts reflect.Value, i int) reflect.Value {
		twin := copyOf(parts.Index(i))
		twin.Elem().FieldByName("ID").SetString(fresh)
		j.freshName(twin.Elem())
		return spliced(parts, i+1, 0, twin)
	})
	return next, fresh, err
}

// Delete returns a job without the part. Arbors and stacks lose their mention of
// it; pairs and trains that name it go too.
func (j *Job) Delete(id string) (*Job, error) {
	next, err := j.relist(id, func(parts reflect.Value, i int) reflect.Value { return spliced(parts, i, 1) })
	if err != nil {
		return nil, err
	}
	next.Pairs = without(next.Pairs, func(p *Pair) bool { return p.Wheel == id || p.Pinion == id })
	next.Trains = without(next.Trains, func(t *Train) bool { return t.From == id || t.To == id })
	next.mention(id, "")
	return next, nil
}

// Rename returns a job in which the part has another id, and every mention of it
// too. It refuses an id that is empty or taken.
func (j *Job) Rename(id, fresh string) (*Job, error) {
	_, taken := j.part(fresh)
	switch {
	case id == "":
		return nil, noSuchPart(id)
	case fresh == "":
		return nil, &Refusal{Code: "job.id-empty"}
	case taken && fresh != id:
		return nil, &Refusal{Code: "job.id-taken", Value: fresh}
	}
	next, err := j.with(id, func(at reflect.Value) error {
		at.FieldByName("ID").SetString(fresh)
		return nil
	})
	if err != nil || fresh == id {
		return next, err
	}
	next.mention(id, fresh)
	return next, nil
}

// Move returns a job in which the part stands by places further down its list, up
// if by is negative, and no further than the ends.
func (j *Job) Move(id string, by int) (*Job, error) {
	return j.relist(id, func(parts reflect.Value, i int) reflect.Value {
		to := min(max(i+by, 0), parts.Len()-1)
		return spliced(spliced(parts, i, 1), to, 0, parts.Index(i))
	})
}

// relist returns a job in which f has made a new list of the one that holds the
// part.
func (j *Job) relist(id string, f func(parts reflect.Value, i int) reflect.Value) (*Job, error) {
	next := *j
	parts, i := findPart(reflect.ValueOf(&next).Elem(), id)
	if i < 0 {
		return nil, noSuchPart(id)
	}
	parts.Set(f(parts, i))
	return &next, nil
}

// spliced returns a new list in which count items from i on have given way to
// others.
func spliced(list reflect.Value, i, count int, others ...reflect.Value) reflect.Value {
	out := copyList(list, i)
	out = reflect.Append(out, others...)
	return reflect.AppendSlice(out, list.Slice(i+count, list.Len()))
}

func without[T any](list []T, gone func(T) bool) []T {
	if !slices.ContainsFunc(list, gone) {
		return list
	}
	return slices.DeleteFunc(slices.Clone(list), gone)
}
