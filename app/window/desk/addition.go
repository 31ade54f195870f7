package desk

import (
	"fmt"
	"strings"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry"
)

// Added is one of the maker's own additions to the present wheel: what it is, and
// the fields that such a one has.
type Added struct {
	Kind   Field
	Fields []Field
}

// addedFields are the fields of an addition by its kind; one of no known kind has
// none.
var addedFields = map[string][]string{
	"hole":   {"radius", "angle", "diameter", "repeat"},
	"circle": {"radius", "angle", "diameter", "repeat"},
	"line":   {"radius", "angle", "to_radius", "to_angle", "repeat"},
	"note":   {"text", "radius", "angle"},
}

// Additions lists the additions to the present wheel; false where it is not being
// crossed.
func (d *Desk) Additions() (list []Added, ok bool) {
	w := d.Job().Wheel(d.part)
	if w == nil || d.at() != Crossing {
		return nil, false
	}
	for i, a := range w.Additions {
		kind := d.itemField(addition(i, "kind"))
		known, _ := job.FieldAt("additions.kind")
		kind.Choices = d.choices("additions.kind", known, kind.Text)
		added := Added{Kind: kind}
		if a != nil {
			for _, of := range addedFields[a.Kind.Text] {
				f := d.itemField(addition(i, of))
				f.Label = d.words.Say("field.additions." + of)
				f.Empty = d.say("empty.additions." + of)
				added.Fields = append(added.Fields, f)
			}
		}
		list = append(list, added)
	}
	return list, true
}

func addition(i int, of string) geometry.Quantity {
	return geometry.Quantity(fmt.Sprintf("additions[%d].%s", i, of))
}

// AdditionTrouble returns the first thing that stands against an addition, and
// whether it is an error.
func (d *Desk) AdditionTrouble(i int) (sentence string, grave bool) {
	mine := fmt.Sprintf("additions[%d]", i)
	for _, f := range d.result.Findings {
		if of, _, _ := strings.Cut(string(f.Field), "."); f.Part == d.part && of == mine && f.Severity != solve.Note {
			return f.Sentence(d.words, d.Style().Units), f.Severity == solve.Error
		}
	}
	return "", false
}

// AdditionKinds lists what an addition may be.
func (d *Desk) AdditionKinds() []Choice {
	known, _ := job.FieldAt("additions.kind")
	return d.choices("additions.kind", known, "")
}

// AddAddition adds an addition of a kind with values that say something: on arm 0,
// half way from the bore to the hub, a circle round the centre.
func (d *Desk) AddAddition(kind string) {
	w := d.wheel()
	if w == nil {
		return
	}
	text := func(mm float64) string { return d.stepped("additions.radius", "", mm) }
	starts := map[string]string{"kind": kind, "radius": text(midway(w)), "angle": "0°"}
	switch kind {
	case "hole":
		starts["diameter"] = text(1)
	case "circle":
		starts = map[string]string{"kind": kind, "diameter": text(2 * midway(w))}
	case "line":
		starts["to_radius"] = text(2 * midway(w))
	case "note":
		starts["text"] = d.words.Say("additions.note")
	}
	j := d.Job()
	i := len(j.Wheel(d.part).Additions)
	for _, of := range append([]string{"kind"}, addedFields[kind]...) {
		if text := starts[of]; text != "" {
			j = d.with(j, addition(i, of), text)
		}
	}
	d.do(j)
}

// midway returns the radius half way from the bore to the hub, or where there is
// none to the roots.
func midway(w *solve.Wheel) float64 {
	switch {
	case w.Crossing != nil:
		return (w.Bore/2 + w.Crossing.HubRadius) / 2
	case w.Teeth != nil:
		return (w.Bore/2 + w.Teeth.RootRadius) / 2
	}
	return w.Bore
}

// DropAddition takes an addition away.
func (d *Desk) DropAddition(i int) {
	if j, err := d.Job().Remove(d.part, geometry.Quantity(fmt.Sprintf("additions[%d]", i))); err == nil {
		d.do(j)
	}
}
