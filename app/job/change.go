package job

import (
	"fmt"
	"reflect"
	"slices"

	"tipline/geometry"
)

// Act is what was done to a part.
type Act string

// The acts, the weightiest first.
const (
	Deleted Act = "deleted"
	Added   Act = "added"
	Renamed Act = "renamed" // has another id
	Moved   Act = "moved"   // stands elsewhere in its list
	Changed Act = "set"
)

// Change is one thing in which a job differs from the one it was made from.
type Change struct {
	Act     Act
	Part    string            // id; the one before of a part deleted or renamed, "" for the job itself
	Field   geometry.Quantity // that was set
	Was, Is string            // texts of the field, ids of a part renamed; Is the other that a part moved changed places with
}

// Changes lists in what a job differs from the one it was made from, what was done on
// purpose before what followed from it: of the parts deleted the wheels come first,
// whose pairs go with them; of those added the trains and pairs, which bring their
// wheels along.
func Changes(before, after *Job) []Change {
	var gone, come, renamed, moved, set []Change
	was, is := reflect.ValueOf(before).Elem(), reflect.ValueOf(after).Elem()
	for _, name := range partLists {
		i := planOf(was.Type()).at[name]
		if sameList(was.Field(i), is.Field(i)) {
			continue
		}
		l := listChange{byID(was.Field(i)), byID(is.Field(i))}
		renamed = append(renamed, l.renamed()...)
		gone = append(gone, l.missing(l.was, l.is, Deleted)...)
		come = append(l.missing(l.is, l.was, Added), come...)
		moved = append(moved, l.moved()...)
		set = append(set, l.set()...)
	}
	own := differing(was, is, "")
	return slices.Concat(gone, come, renamed, moved, own, set)
}

func sameList(a, b reflect.Value) bool {
	return a.Len() == b.Len() && (a.Len() == 0 || a.Pointer() == b.Pointer())
}

// listChange is a list of parts before and after.
type listChange struct{ was, is []partOf }

type partOf struct {
	id string
	at reflect.Value
}

func byID(list reflect.Value) []partOf {
	parts := make([]partOf, list.Len())
	for i := range parts {
		parts[i] = partOf{partID(list.Index(i)), list.Index(i)}
	}
	return parts
}

func idsIn(parts []partOf) []string {
	list := make([]string, len(parts))
	for i, p := range parts {
		list[i] = p.id
	}
	return list
}

func where(parts []partOf, id string) int {
	return slices.IndexFunc(parts, func(p partOf) bool { return p.id == id })
}

// renamed finds the one part at whose place stands one of another id, and has it be
// one part from then on.
func (l *listChange) renamed() []Change {
	if len(l.was) != len(l.is) {
		return nil
	}
	var found []Change
	for i, p := range l.was {
		if now := l.is[i].id; p.id != now && where(l.is, p.id) < 0 && where(l.was, now) < 0 {
			found = append(found, Change{Act: Renamed, Part: now, Was: p.id, Is: now})
			l.was[i].id = now
		}
	}
	return found
}

func (l *listChange) missing(of, in []partOf, act Act) []Change {
	var found []Change
	for _, p := range of {
		if where(in, p.id) < 0 {
			found = append(found, Change{Act: act, Part: p.id})
		}
	}
	return found
}

// moved finds the part that stands elsewhere, where nothing else happened to the list.
func (l *listChange) moved() []Change {
	a, b := idsIn(l.was), idsIn(l.is)
	if len(a) != len(b) || slices.Equal(a, b) {
		return nil
	}
	for _, id := range a {
		without := func(list []string) []string {
			return slices.DeleteFunc(slices.Clone(list), func(other string) bool { return other == id })
		}
		if slices.Equal(without(a), without(b)) {
			return []Change{{Act: Moved, Part: id, Is: swapped(a, b, id)}}
		}
	}
	return nil
}

// swapped returns which part one has changed places with, empty where it went further:
// of two neighbours either may be the one that was moved.
func swapped(was, is []string, id string) string {
	from, to := slices.Index(was, id), slices.Index(is, id)
	if from-to != 1 && to-from != 1 {
		return ""
	}
	return was[to]
}

// set finds the fields that hold another text.
func (l *listChange) set() []Change {
	var found []Change
	for _, p := range l.was {
		i := where(l.is, p.id)
		if i < 0 || p.at.Pointer() == l.is[i].at.Pointer() {
			continue
		}
		for _, c := range differing(p.at.Elem(), l.is[i].at.Elem(), "") {
			if c.Part = p.id; c.Field != "id" {
				found = append(found, c)
			}
		}
	}
	return found
}

// differing lists the fields of two structs of a kind that hold another text; the
// lists of parts are passed over.
func differing(was, is reflect.Value, path string) []Change {
	var found []Change
	p := planOf(was.Type())
	for _, name := range p.names {
		if was.Type() == reflect.TypeFor[Job]() && slices.Contains(partLists, name) {
			continue
		}
		a, b := was.Field(p.at[name]), is.Field(p.at[name])
		full := join(path, name)
		switch {
		case isField(a.Type()):
			if before, after := textOf(a), textOf(b); before != after {
				found = append(found, Change{Act: Changed, Field: geometry.Quantity(full), Was: before, Is: after})
			}
		case a.Kind() == reflect.Slice:
			for i := range max(a.Len(), b.Len()) {
				found = append(found, inGroup(item(a, i), item(b, i), fmt.Sprintf("%s[%d]", full, i))...)
			}
		case a.Kind() == reflect.Pointer:
			found = append(found, inGroup(a, b, full)...)
		}
	}
	return found
}

func item(list reflect.Value, i int) reflect.Value {
	if i < list.Len() {
		return list.Index(i)
	}
	return reflect.Zero(list.Type().Elem())
}

// inGroup looks into two groups, an empty one where there is none.
func inGroup(was, is reflect.Value, path string) []Change {
	if was.Pointer() == is.Pointer() {
		return nil
	}
	return differing(copyOf(was).Elem(), copyOf(is).Elem(), path)
}
