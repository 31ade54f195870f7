package job

import (
	"reflect"
	"strconv"
	"strings"
)

// step is one piece of a field's path: a name, and which item of its list.
type step struct {
	name string
	item int // −1 where the field is no list of groups
}

// firstStep takes a path apart after its first name.
func firstStep(path string) (first step, rest string, ok bool) {
	name, rest, _ := strings.Cut(path, ".")
	name, item, indexed := strings.Cut(name, "[")
	if !indexed {
		return step{name, -1}, rest, true
	}
	i, err := strconv.Atoi(strings.TrimSuffix(item, "]"))
	return step{name, i}, rest, err == nil && i >= 0 && strings.HasSuffix(item, "]")
}

// lookUp returns what stands at a path below a struct; the zero Value where a
// step on the way is not there, and false where no such field can be.
func lookUp(at reflect.Value, path string) (reflect.Value, bool) {
	first, rest, ok := firstStep(path)
	i, known := planOf(at.Type()).at[first.name]
	if !ok || !known {
		return reflect.Value{}, false
	}
	below := at.Field(i)
	if first.item >= 0 {
		if below, known = itemAt(below, first.item); !known {
			return reflect.Value{}, false
		}
	}
	if below.Kind() != reflect.Pointer {
		return below, rest == "" && isField(below.Type())
	}
	if below.IsNil() {
		_, known = lookUp(reflect.Zero(below.Type().Elem()), rest)
		return reflect.Value{}, known
	}
	return lookUp(below.Elem(), rest)
}

// itemAt returns an item of a list of groups; nil for the one after the last.
func itemAt(list reflect.Value, i int) (reflect.Value, bool) {
	if list.Kind() != reflect.Slice || list.Type().Elem().Kind() != reflect.Pointer || i > list.Len() {
		return reflect.Value{}, false
	}
	if i == list.Len() {
		return reflect.Zero(list.Type().Elem()), true
	}
	return list.Index(i), true
}

var (
	valuesType = reflect.TypeOf([]Value{})
	textsType  = reflect.TypeOf([]string{})
)

func isField(t reflect.Type) bool {
	return t == valueType || t == pixelsType || t == valuesType || t == textsType || t.Kind() == reflect.String
}

func textOf(v reflect.Value) string {
	if !v.IsValid() {
		return ""
	}
	switch v := v.Interface().(type) {
	case Value:
		return v.Text
	case []Value:
		texts := make([]string, len(v))
		for i := range v {
			texts[i] = v[i].Text
		}
		return strings.Join(texts, ", ")
	case []string:
		return strings.Join(v, ", ")
	case Pixels:
		return v.String()
	}
	return v.String()
}

// change puts a text at a path below a struct that is a copy already, and copies
// what it changes on the way. The path must be one that lookUp knows.
func change(at reflect.Value, path, text string, kind Kind) {
	first, rest, _ := firstStep(path)
	below := at.Field(planOf(at.Type()).at[first.name])
	if first.item >= 0 {
		below.Set(copyList(below, max(below.Len(), first.item+1)))
		below = below.Index(first.item)
	}
	if below.Kind() != reflect.Pointer {
		below.Set(fieldOf(below, text, kind))
		return
	}
	copied := copyOf(below)
	change(copied.Elem(), rest, text, kind)
	if text == "" && first.item < 0 && copied.Elem().IsZero() {
		copied = reflect.Zero(below.Type())
	}
	below.Set(copied)
}

// remove takes an item out of the list of groups that the path names, below a
// struct that is a copy already; false where there is none.
func remove(at reflect.Value, path string) bool {
	first, rest, ok := firstStep(path)
	i, known := planOf(at.Type()).at[first.name]
	if !ok || !known {
		return false
	}
	below := at.Field(i)
	if first.item >= 0 {
		if item, there := itemAt(below, first.item); rest != "" || !there || item.IsNil() {
			return false
		}
		below.Set(spliced(below, first.item, 1))
		if below.Len() == 0 {
			below.SetZero()
		}
		return true
	}
	if below.Kind() != reflect.Pointer || below.IsNil() {
		return false
	}
	copied := copyOf(below)
	if ok = remove(copied.Elem(), rest); ok && copied.Elem().IsZero() {
		copied = reflect.Zero(below.Type())
	}
	below.Set(copied)
	return ok
}

// fieldOf returns a text as a field of the old one's type. A count, and what stood
// as a bare number, is written as a bare number if it can be.
func fieldOf(old reflect.Value, text string, kind Kind) reflect.Value {
	switch v := old.Interface().(type) {
	case Value:
		if kind == Count || v.number {
			return reflect.ValueOf(Counted(text))
		}
		return reflect.ValueOf(Typed(text))
	case []Value:
		var values []Value
		for _, t := range listed(text) {
			values = append(values, Counted(t))
		}
		return reflect.ValueOf(values)
	case []string:
		return reflect.ValueOf(listed(text))
	case Pixels:
		return reflect.ValueOf(typedPixels(text))
	}
	return reflect.ValueOf(text)
}

// listed takes a list of texts apart at its commas.
func listed(text string) []string {
	var items []string
	for item := range strings.SplitSeq(text, ",") {
		if item = strings.TrimSpace(item); item != "" {
			items = append(items, item)
		}
	}
	return items
}
