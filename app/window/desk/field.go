package desk

import (
	"slices"
	"strings"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/tables"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// Field is a field of a step as it is shown.
type Field struct {
	Part    string // empty for the job's own
	Path    geometry.Quantity
	Label   string
	Text    string
	Choices []Choice // none where anything may be typed
	Worked  string   // instead of a text to type: what was worked out
	Empty   string   // what an empty field stands for
	Hint    string
	Refusal string // why the text will not do
	Grave   bool   // whether that keeps the wheel from being made
}

// Choice is a word a field may be, and how it is shown.
type Choice struct{ Value, Label string }

// Fields returns the fields of the present step, none in a job without parts
// except on paper.
func (d *Desk) Fields() []Field {
	if d.at() == Paper {
		return d.paperFields()
	}
	var fs []Field
	d.placed()
	for _, path := range slices.Concat(d.fieldsAt(d.at()), d.places.extra[d.at()]) {
		fs = append(fs, d.field(d.part, path))
	}
	return fs
}

func (d *Desk) field(part string, path geometry.Quantity) Field {
	known, _ := job.FieldAt(path)
	f := Field{Part: part, Path: path, Label: d.words.Say("field." + string(path))}
	f.Text, _ = d.Job().Text(part, path)
	f.Empty = d.say("empty." + string(path))
	if p, ok := d.of(part).(*solve.Pair); ok && path == "centres" && p.Nominal > 0 {
		f.Empty = d.Style().Units.Length(p.Nominal)
	}
	f.Choices = d.choices(path, known, f.Text)
	if lent := d.lent(part, path); lent != "" && f.Text == "" {
		f.Empty = lent
		if len(f.Choices) > 0 {
			f.Choices[0].Label = lent
		}
	}
	f.Worked = d.worked(path)
	f.Refusal, f.Grave = d.refusal(part, path)
	f.Hint = d.hint(path, known, f.Text)
	if r := d.refused; r.why != "" && r.part == part && r.field == path {
		f.Text, f.Refusal, f.Grave = r.text, r.why, true
	}
	return f
}

// say returns a text that not every field has.
func (d *Desk) say(key string) string {
	if !d.words.Has(key) {
		return ""
	}
	return d.words.Say(key)
}

// choices returns the words a field may be. One that stands there and is none of
// them is offered too, so that it is seen.
func (d *Desk) choices(path geometry.Quantity, known job.Field, text string) []Choice {
	values := slices.Clone(known.Choices)
	switch path {
	case "material":
		for _, m := range tables.Materials() {
			values = append(values, m.Name)
		}
	case "wheel", "pinion", "from", "to", "hour":
		return d.partChoices(path, text)
	case "mount.thread":
		return d.threadChoices(text)
	case "crossing.blade":
		for _, b := range tables.Blades() {
			values = append(values, b.Name)
		}
	}
	if len(values) == 0 {
		return nil
	}
	if text != "" && !slices.Contains(values, text) {
		values = append(values, text)
	}
	var cs []Choice
	for _, v := range values {
		cs = append(cs, Choice{v, d.choiceLabel(path, v)})
	}
	return cs
}

// partChoices lists the wheels and pinions that a field may name. The arbor that
// is known by the hour may be left to be the first.
func (d *Desk) partChoices(path geometry.Quantity, text string) []Choice {
	cs := d.madeChoices()
	if path == "hour" {
		cs = append([]Choice{{"", d.words.Say("empty.hour")}}, cs...)
	}
	known := slices.ContainsFunc(cs, func(c Choice) bool { return c.Value == text })
	if text != "" && !known {
		cs = append(cs, Choice{text, text})
	}
	return cs
}

// madeChoices lists the wheels and pinions by their names; two of one name are
// told apart by their ids.
func (d *Desk) madeChoices() []Choice {
	var cs []Choice
	names := map[string]int{}
	for _, id := range append(idsOf(d.result.Wheels), idsOf(d.result.Pinions)...) {
		cs = append(cs, Choice{id, d.Name(id)})
		names[d.Name(id)]++
	}
	for i, c := range cs {
		if names[c.Label] > 1 {
			cs[i].Label = c.Label + " (" + c.Value + ")"
		}
	}
	return cs
}

// threadSystems are the systems of threads in the order in which a maker who works in
// a unit will want them.
var threadSystems = map[measure.Unit][]string{
	measure.MM:   {"ISO metric coarse", "BA", "UNM", "UNF", "UNC", "UNS"},
	measure.Inch: {"UNF", "UNC", "UNS", "BA", "UNM", "ISO metric coarse"},
}

// threadChoices lists the threads of the tables, and none. What is typed there by
// another of a thread's names stands for it.
func (d *Desk) threadChoices(text string) []Choice {
	cs := []Choice{{"", d.words.Say("empty.mount.thread")}}
	named, known := tables.ThreadNamed(text)
	threads, order := tables.Threads(), threadSystems[d.Style().Units.Unit]
	slices.SortStableFunc(threads, func(a, b tables.Thread) int {
		return slices.Index(order, a.System) - slices.Index(order, b.System)
	})
	for _, t := range threads {
		c := Choice{t.Name(), threadLabel(t)}
		if known && t.Name() == named.Name() {
			c.Value = text
		}
		cs = append(cs, c)
	}
	if text != "" && !known {
		cs = append(cs, Choice{text, text})
	}
	return cs
}

// threadLabel returns what a thread is called on the bench: a metric one by its size.
func threadLabel(t tables.Thread) string {
	if strings.HasPrefix(t.Size, "M") {
		return t.Size
	}
	return t.Name()
}

func (d *Desk) choiceLabel(path geometry.Quantity, value string) string {
	return d.words.Choice(string(path), value)
}

// worked returns the value of a field that is solved for, as it came out.
func (d *Desk) worked(path geometry.Quantity) string {
	w := d.wheel()
	if w == nil || w.Part.Teeth == nil || path != geometry.Quantity("teeth."+w.Part.Teeth.Solve.Text) {
		return ""
	}
	u := d.Style().Units
	switch {
	case w.Cut == nil:
		return d.words.Say("window.not-worked-out")
	case path == "teeth.root_diameter":
		return u.Length(2 * w.Cut.RootRadius)
	case path == "teeth.land":
		return u.Length(w.Cut.Land)
	case path == "teeth.back_radius":
		return u.Length(w.Cut.BackRadius)
	}
	return u.Angle(w.Cut.BackAngle)
}

// refusal returns the first error or caution on a field.
func (d *Desk) refusal(part string, path geometry.Quantity) (sentence string, grave bool) {
	for _, f := range d.result.Findings {
		bare, _, _ := strings.Cut(string(f.Field), "[")
		if f.Part == part && geometry.Quantity(bare) == path && f.Severity != solve.Note {
			return f.Sentence(d.words, d.Style().Units), f.Severity == solve.Error
		}
	}
	return "", false
}

// hint returns the field's length in the job's unit where it was typed in another
// way, else its help.
func (d *Desk) hint(path geometry.Quantity, known job.Field, text string) string {
	if path == UnitsField {
		return d.unitsHint()
	}
	if known.Kind == job.Length {
		if echo := d.echo(text); echo != "" {
			return "= " + echo
		}
	}
	return d.say("help." + string(path))
}

// echo returns a length in the job's unit, nothing where the text says it so
// already or cannot be read.
func (d *Desk) echo(text string) string {
	u := d.Style().Units
	l, err := measure.ParseLength(text, u.Unit)
	if err != nil {
		return ""
	}
	if plain := strings.Trim(text, "0123456789., "); plain == "" || plain == string(u.Unit) {
		return ""
	}
	return u.Length(l.MM())
}
