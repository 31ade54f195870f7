package job

import (
	"reflect"
	"strings"

	"tipline/geometry"
	"tipline/geometry/measure"
)

// inUnit returns the job in another unit, with every length as long as it was: a length
// that stands as a number alone, and would be read otherwise, is given the unit it was
// read in.
func (j *Job) inUnit(units string) *Job {
	next := *j
	if unitOf(units) != j.Unit() {
		next = *j.spelled()
	}
	next.Units = units
	return &next
}

// spelled returns a job in which every bare length has its unit; parts without one are
// shared.
func (j *Job) spelled() *Job {
	out := *j
	root := reflect.ValueOf(&out).Elem()
	for _, name := range partLists {
		parts := root.Field(planOf(root.Type()).at[name])
		if list, found := listSpelled(parts, "", j.Unit()); found {
			parts.Set(list)
		}
	}
	return &out
}

// listSpelled returns a copy of a list of groups in which every bare length has the unit;
// false where there is none.
func listSpelled(list reflect.Value, path string, unit measure.Unit) (reflect.Value, bool) {
	out, found := copyList(list, list.Len()), false
	for i := range list.Len() {
		if group, ok := groupSpelled(list.Index(i), path, unit); ok {
			out.Index(i).Set(group)
			found = true
		}
	}
	return out, found
}

// groupSpelled returns a pointer to a copy of a group in which every bare length has the
// unit; false where there is none.
func groupSpelled(group reflect.Value, path string, unit measure.Unit) (reflect.Value, bool) {
	if group.IsNil() {
		return group, false
	}
	out, found := copyOf(group), false
	p := planOf(out.Elem().Type())
	for _, name := range p.names {
		f := out.Elem().Field(p.at[name])
		if s, ok := fieldSpelled(f, join(path, name), unit); ok {
			f.Set(s)
			found = true
		}
	}
	return out, found
}

// fieldSpelled returns what a field holds with the unit behind every bare length; false
// where there is none.
func fieldSpelled(f reflect.Value, path string, unit measure.Unit) (reflect.Value, bool) {
	switch {
	case f.Type() == valueType:
		known, _ := FieldAt(geometry.Quantity(path))
		text := f.Interface().(Value).Text
		spelled := Typed(strings.TrimSpace(text) + " " + string(unit))
		return reflect.ValueOf(spelled), known.Kind == Length && bare(text)
	case f.Kind() == reflect.Pointer:
		return groupSpelled(f, path, unit)
	case f.Kind() == reflect.Slice && f.Type().Elem().Kind() == reflect.Pointer:
		return listSpelled(f, path, unit)
	}
	return f, false
}

// bare reports whether a length is typed without a unit, so that it is another in
// inches than in millimetres.
func bare(text string) bool {
	mm, err := measure.ParsePlace(text, measure.MM)
	inches, other := measure.ParsePlace(text, measure.Inch)
	return err == nil && (other != nil || mm.Rat().Cmp(inches.Rat()) != 0)
}
