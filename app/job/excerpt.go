package job

import (
	"crypto/sha256"
	"encoding/hex"
	"reflect"
	"slices"
	"strings"

	"tipline/geometry"
)

// Excerpt returns a job with one part of j and the parts it needs: a pair its wheel and
// pinion, a stack its wheels, an arbor what turns on it, a train every pair and arbor
// that is joined to it. The part itself is the last.
func (j *Job) Excerpt(id string) (*Job, error) {
	if _, ok := j.part(id); !ok || id == "" {
		return nil, noSuchPart(id)
	}
	needed := j.needs(id)
	cut := New(j.Units)
	from, into := reflect.ValueOf(j).Elem(), reflect.ValueOf(cut).Elem()
	for _, name := range partLists {
		at := planOf(from.Type()).at[name]
		for i := range from.Field(at).Len() {
			if p := from.Field(at).Index(i); needed[partID(p)] {
				into.Field(at).Set(reflect.Append(into.Field(at), p))
			}
		}
	}
	return cut, nil
}

// needs returns the ids of a part and of all it needs.
func (j *Job) needs(id string) map[string]bool {
	needed := map[string]bool{id: true}
	for _, s := range j.Stacks {
		if s.ID == id {
			add(needed, s.Wheels...)
		}
	}
	for _, p := range j.Pairs {
		if p.ID == id {
			add(needed, p.Wheel, p.Pinion)
		}
	}
	for _, a := range j.Arbors {
		if a.ID == id {
			add(needed, a.Parts...)
		}
	}
	for _, t := range j.Trains {
		if t.ID == id {
			add(needed, t.From, t.To, t.Hour)
			j.join(needed)
		}
	}
	return needed
}

// join adds every pair and arbor that one of the parts belongs to, and theirs.
func (j *Job) join(needed map[string]bool) {
	for grew := true; grew; {
		before := len(needed)
		for _, p := range j.Pairs {
			if needed[p.Wheel] || needed[p.Pinion] {
				add(needed, p.ID, p.Wheel, p.Pinion)
			}
		}
		for _, a := range j.Arbors {
			if slices.ContainsFunc(a.Parts, func(p string) bool { return needed[p] }) {
				add(needed, append([]string{a.ID}, a.Parts...)...)
			}
		}
		grew = len(needed) > before
	}
}

func add(to map[string]bool, ids ...string) {
	for _, id := range ids {
		if id != "" {
			to[id] = true
		}
	}
}

// Digest returns a short text that is another whenever what is printed of the part
// may be another: it is made of the part, of all it needs and of the stacks it is on,
// without their notes. It is empty for a part that the job has not.
func (j *Job) Digest(id string) string {
	cut, err := j.Excerpt(id)
	if err != nil {
		return ""
	}
	for _, s := range j.Stacks {
		if s.ID != id && slices.Contains(s.Wheels, id) {
			cut.Stacks = append(cut.Stacks, s)
		}
	}
	for _, part := range cut.ids() {
		if next, err := cut.Set(part, noteField, ""); err == nil {
			cut = next
		}
	}
	var b strings.Builder
	if err := cut.Write(&b); err != nil {
		return ""
	}
	sum := sha256.Sum256([]byte(b.String()))
	return hex.EncodeToString(sum[:8])
}

// noteField is what the maker wrote about a part for himself.
const noteField geometry.Quantity = "note"

// ids lists the ids of all parts in the order of the file.
func (j *Job) ids() []string {
	var list []string
	root := reflect.ValueOf(j).Elem()
	for _, name := range partLists {
		list = append(list, idsIn(byID(root.Field(planOf(root.Type()).at[name])))...)
	}
	return list
}
