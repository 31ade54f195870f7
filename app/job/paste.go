package job

import (
	"reflect"
	"strconv"
	"strings"

	"tipline/geometry/measure"
)

// Paste returns a job with the parts of an excerpt added, each last in its list, and the
// id of its last part, the one it was made for. A part whose id is taken gets a free one
// in every mention; one that the other needs, and that stands in j already as it is,
// is not added again. Bare lengths keep the excerpt's unit where j's is another, and
// fields the program does not know are kept. It refuses an excerpt without parts.
func (j *Job) Paste(from *Job) (*Job, string, error) {
	all := from.ids()
	if len(all) == 0 {
		return nil, "", &Refusal{Code: "job.nothing-to-paste"}
	}
	if n := len(j.ids()) + len(all); n > maxParts {
		return nil, "", &Refusal{Code: "job.too-many-parts", Max: strconv.Itoa(maxParts)}
	}
	if from.Unit() != j.Unit() {
		from = from.spelled()
	}
	root, added := all[len(all)-1], map[string]bool{}
	for _, id := range all {
		if id != root && j.holds(from, id) {
			continue
		}
		fresh := j.freshID(from, id)
		var err error
		if from, err = from.Rename(id, fresh); err != nil {
			return nil, "", err
		}
		if added[fresh] = true; id == root {
			root = fresh
		}
	}
	return j.and(from, added), root, nil
}

// and returns a job with parts of an excerpt added; a name that is taken is given the
// next number.
func (j *Job) and(from *Job, added map[string]bool) *Job {
	next := *j
	theirs, into := reflect.ValueOf(from).Elem(), reflect.ValueOf(&next).Elem()
	for _, name := range partLists {
		at := planOf(into.Type()).at[name]
		list := copyList(into.Field(at), into.Field(at).Len())
		for i := range theirs.Field(at).Len() {
			if p := theirs.Field(at).Index(i); added[partID(p)] {
				own := copyOf(p)
				next.freshName(own.Elem())
				list = reflect.Append(list, own)
			}
		}
		if list.Len() > into.Field(at).Len() {
			into.Field(at).Set(list)
		}
	}
	return &next
}

// Unit returns that of the job's bare lengths: millimetres unless it says inches.
func (j *Job) Unit() measure.Unit { return unitOf(j.Units) }

func unitOf(units string) measure.Unit {
	if units == string(measure.Inch) {
		return measure.Inch
	}
	return measure.MM
}

// freshID returns an id for a part of an excerpt that the job has not: its own where
// it can be.
func (j *Job) freshID(from *Job, id string) string {
	if _, taken := j.part(id); !taken {
		return id
	}
	for n := 2; ; n++ {
		fresh := id + "-" + strconv.Itoa(n)
		_, here := j.part(fresh)
		if _, there := from.part(fresh); !here && !there {
			return fresh
		}
	}
}

// holds reports whether the job has a part of an excerpt just as it is.
func (j *Job) holds(from *Job, id string) bool {
	mine, ok := j.part(id)
	theirs, _ := from.part(id)
	if !ok || mine.Type() != theirs.Type() {
		return false
	}
	a, errA := encodeObject(mine)
	b, errB := encodeObject(theirs)
	if errA != nil || errB != nil {
		return false
	}
	var one, other strings.Builder
	write(&one, a, 0, 0)
	write(&other, b, 0, 0)
	return one.String() == other.String()
}
