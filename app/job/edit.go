package job

import (
	"reflect"
	"strings"

	"tipline/geometry"
)

// Text returns what stands in a part's field, as typed; the job's own fields have
// part "". A field of a step that is not there is empty. It is false for a part
// or a field that does not exist. A list reads as its items with commas between.
func (j *Job) Text(part string, field geometry.Quantity) (string, bool) {
	at, ok := j.part(part)
	if !ok {
		return "", false
	}
	v, known := lookUp(at, string(field))
	if !known {
		return "", false
	}
	return textOf(v), true
}

// Set returns a job whose part has the text in the field, and shares every other
// part with j, which stays as it was. A step that is not there is begun; one whose
// last field is emptied goes. Setting what stands there already returns j itself.
// The job's own fields have part ""; another unit of the job leaves every length as
// long as it was.
func (j *Job) Set(part string, field geometry.Quantity, text string) (*Job, error) {
	text = strings.ToValidUTF8(text, "\ufffd")
	old, ok := j.Text(part, field)
	switch {
	case !ok:
		return nil, &Refusal{Code: "job.no-such-field", Path: join(part, string(field))}
	case old == text:
		return j, nil
	case field == "id":
		return j.Rename(part, text)
	case part == "" && field == "units":
		return j.inUnit(text), nil
	}
	known, _ := FieldAt(field)
	return j.with(part, func(at reflect.Value) error {
		change(at, string(field), text, known.Kind)
		return nil
	})
}

// Clear returns a job whose part no longer has the step, such as "crossing".
func (j *Job) Clear(part string, step geometry.Quantity) (*Job, error) {
	return j.with(part, func(at reflect.Value) error {
		i, ok := planOf(at.Type()).at[string(step)]
		if !ok || at.Field(i).Kind() != reflect.Pointer {
			return &Refusal{Code: "job.no-such-field", Path: join(part, string(step))}
		}
		at.Field(i).SetZero()
		return nil
	})
}

// Remove returns a job whose part no longer has an item of a list of groups, such
// as "cutter.bit.chain[2]"; those after it move up, and a step that is left empty
// goes.
func (j *Job) Remove(part string, item geometry.Quantity) (*Job, error) {
	return j.with(part, func(at reflect.Value) error {
		if !remove(at, string(item)) {
			return &Refusal{Code: "job.no-such-field", Path: join(part, string(item))}
		}
		return nil
	})
}

// part returns the struct of a part, or of the job itself for "".
func (j *Job) part(id string) (reflect.Value, bool) {
	root := reflect.ValueOf(j).Elem()
	if id == "" {
		return root, true
	}
	parts, i := findPart(root, id)
	if i < 0 {
		return reflect.Value{}, false
	}
	return parts.Index(i).Elem(), true
}

// findPart returns the list of the job that holds a part, and where; −1 when none
// does.
func findPart(root reflect.Value, id string) (reflect.Value, int) {
	for _, name := range partLists {
		parts := root.Field(planOf(root.Type()).at[name])
		for i := range parts.Len() {
			if partID(parts.Index(i)) == id {
				return parts, i
			}
		}
	}
	return reflect.Value{}, -1
}

// partID returns the id of a part: the first field of every kind of part.
func partID(part reflect.Value) string { return part.Elem().Field(0).String() }

// with returns a job in which f has changed a copy of the part.
func (j *Job) with(part string, f func(reflect.Value) error) (*Job, error) {
	next := *j
	root := reflect.ValueOf(&next).Elem()
	if part == "" {
		return &next, f(root)
	}
	parts, i := findPart(root, part)
	if i < 0 {
		return nil, noSuchPart(part)
	}
	copied := copyOf(parts.Index(i))
	if err := f(copied.Elem()); err != nil {
		return nil, err
	}
	list := copyList(parts, parts.Len())
	list.Index(i).Set(copied)
	parts.Set(list)
	return &next, nil
}

func noSuchPart(id string) error { return &Refusal{Code: "job.no-such-part", Value: id} }

// copyOf returns a pointer to a copy of what a pointer points at, or to an empty
// one for nil.
func copyOf(pointer reflect.Value) reflect.Value {
	c := reflect.New(pointer.Type().Elem())
	if !pointer.IsNil() {
		c.Elem().Set(pointer.Elem())
	}
	return c
}

func copyList(list reflect.Value, length int) reflect.Value {
	c := reflect.MakeSlice(list.Type(), length, length)
	reflect.Copy(c, list)
	return c
}
