package job

import (
	"reflect"
	"strings"

	"tipline/geometry"
)

// inUnit returns an excerpt in which every bare length has its unit.
func (j *Job) inUnit() *Job {
	out := *j
	root := reflect.ValueOf(&out).Elem()
	for _, name := range partLists {
		at := planOf(root.Type()).at[name]
		list := copyList(root.Field(at), root.Field(at).Len())
		for i := range list.Len() {
			list.Index(i).Set(spelledOut(list.Index(i), "", j.unit()))
		}
		root.Field(at).Set(list)
	}
	return &out
}

// spelledOut returns a copy of a group in which every bare length has the unit.
func spelledOut(group reflect.Value, path, unit string) reflect.Value {
	if group.IsNil() {
		return group
	}
	c := copyOf(group)
	p := planOf(c.Elem().Type())
	for _, name := range p.names {
		f, full := c.Elem().Field(p.at[name]), join(path, name)
		switch {
		case f.Type() == valueType:
			known, _ := FieldAt(geometry.Quantity(full))
			if text := f.Interface().(Value).Text; known.Kind == Length && bare(text) {
				f.Set(reflect.ValueOf(Typed(text + " " + unit)))
			}
		case f.Kind() == reflect.Pointer:
			f.Set(spelledOut(f, full, unit))
		case f.Kind() == reflect.Slice && f.Type().Elem().Kind() == reflect.Pointer:
			list := copyList(f, f.Len())
			for i := range list.Len() {
				list.Index(i).Set(spelledOut(list.Index(i), full, unit))
			}
			if list.Len() > 0 {
				f.Set(list)
			}
		}
	}
	return c
}

// bare reports whether a length is typed as a number alone, a fraction among them.
func bare(text string) bool {
	return strings.TrimSpace(text) != "" && strings.Trim(text, "0123456789.,/+- ") == ""
}
