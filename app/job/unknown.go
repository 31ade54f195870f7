package job

import "reflect"

// UnknownFields lists the fields that the program does not know, and those of a
// photograph whose points are of another shape, each by its path, which begins with
// the id of the part it stands in, in the order of the file. They are kept and
// written again.
func (j *Job) UnknownFields() []string { return unknownIn(reflect.ValueOf(j).Elem(), "") }

func unknownIn(v reflect.Value, path string) []string {
	p := planOf(v.Type())
	var found []string
	for _, name := range p.names {
		found = append(found, unknownBelow(v.Field(p.at[name]), join(path, name), path == "")...)
	}
	for _, m := range v.Field(p.unknown).Interface().([]Member) {
		found = append(found, join(path, m.Name))
	}
	return found
}

// unknownBelow looks into a step or a list of them; in the job's own lists a
// part's id stands for its place.
func unknownBelow(v reflect.Value, path string, parts bool) []string {
	if pixels, ok := v.Interface().(Pixels); ok {
		if _, known := pixels.Points(); !known {
			return []string{path}
		}
		return nil
	}
	switch {
	case v.Kind() == reflect.Pointer && !v.IsNil():
		return unknownIn(v.Elem(), path)
	case v.Kind() != reflect.Slice || v.Type().Elem().Kind() != reflect.Pointer:
		return nil
	}
	var found []string
	for i := range v.Len() {
		at := index(path, i)
		if parts {
			at = partID(v.Index(i))
		}
		found = append(found, unknownIn(v.Index(i).Elem(), at)...)
	}
	return found
}
