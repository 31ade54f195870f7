package job

import (
	"reflect"
	"strconv"
	"strings"
)

// Called returns what a part is called: by its name; a pair, stack or train by the
// parts it is of, where the job has them. A part without either, and one that the job
// has not, is called by its id.
func (j *Job) Called(id string) string {
	at, ok := j.part(id)
	if !ok || id == "" {
		return id
	}
	switch p := at.Addr().Interface().(type) {
	case *Wheel:
		return named(p.Name, id)
	case *Pinion:
		return named(p.Name, id)
	case *Pair:
		return j.joined(id, " – ", p.Wheel, p.Pinion)
	case *Stack:
		return j.joined(id, " + ", p.Wheels...)
	case *Train:
		return j.joined(id, " – ", p.From, p.To)
	}
	return id
}

func named(name, id string) string {
	if name == "" {
		return id
	}
	return name
}

// joined returns the names of a part's parts, its id where one of them is missing.
func (j *Job) joined(id, by string, parts ...string) string {
	var names []string
	for _, p := range parts {
		if _, there := j.part(p); !there || p == "" {
			return id
		}
		names = append(names, j.Called(p))
	}
	if len(names) == 0 {
		return id
	}
	return strings.Join(names, by)
}

// FreeName returns a name that no wheel or pinion of the job has: the one given, or
// that with the next number.
func (j *Job) FreeName(name string) string {
	taken := map[string]bool{}
	for _, w := range j.Wheels {
		taken[w.Name] = true
	}
	for _, p := range j.Pinions {
		taken[p.Name] = true
	}
	base, n := name, 2
	if before, last, ok := cutLast(name); ok && taken[name] {
		base, n = before, last+1
	}
	for free := name; ; n++ {
		if !taken[free] {
			return free
		}
		free = base + " " + strconv.Itoa(n)
	}
}

// cutLast takes a number off the end of a name.
func cutLast(name string) (before string, number int, ok bool) {
	i := strings.LastIndexByte(name, ' ')
	if i < 0 {
		return "", 0, false
	}
	number, err := strconv.Atoi(name[i+1:])
	return name[:i], number, err == nil && number > 0 && number < maxParts
}

// freshName gives a part that is a copy already a free name, where it has one.
func (j *Job) freshName(part reflect.Value) {
	if name := part.FieldByName("Name"); name.IsValid() && name.String() != "" {
		name.SetString(j.FreeName(name.String()))
	}
}
