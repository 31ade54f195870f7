package packet

import (
	"strconv"

	"tipline/app/solve"
	"tipline/geometry/measure"
	"tipline/render/sheet"
	"tipline/render/template"
)

// cover is the packet's first sheet: the parts with their figures, what cannot be
// printed, and the findings.
func cover(r *solve.Result, o Options) sheet.Sheet {
	say, u := o.Style.Words.Say, o.Style.Units
	columns := template.Row{}
	for _, c := range []string{"part", "teeth", "tips", "root", "arms", "mass"} {
		columns = append(columns, say("packet.column."+c))
	}
	var parts []template.Row
	var sentences []string
	for _, w := range r.Wheels {
		if o.Wheel != "" && w.Part.ID != o.Wheel {
			continue
		}
		parts = append(parts, figures(w, u))
		if missing := missing(w, o.Style); missing != "" {
			sentences = append(sentences, missing)
		}
		for _, f := range w.Findings {
			if f.Severity != solve.Note {
				sentences = append(sentences, w.Part.Name+": "+f.Sentence(o.Style.Words, u))
			}
		}
	}
	d := template.Cover(r.Job.Title, columns, parts, sentences, o.Style)
	return sheet.Sheet{Drawing: d, Block: titleBlock(r, say("template.kind.cover"))}
}

// missing says which sheets a wheel should have and has not.
func missing(w *solve.Wheel, s template.Style) string {
	var names string
	for _, k := range Kinds() {
		if asked(w, k) && !k.Needs(w) {
			if names != "" {
				names += ", "
			}
			names += s.Words.Say("template.kind." + string(k))
		}
	}
	if w.Part.Crossing != nil && w.Teeth != nil && w.Crossing == nil {
		names += s.Words.Say("packet.windows")
	}
	if names == "" {
		return ""
	}
	return s.Words.Say("packet.missing", "part", w.Part.Name, "sheets", names)
}

// asked reports whether the job asks for the sheet.
func asked(w *solve.Wheel, k Kind) bool {
	switch k {
	case Grinding, Setting:
		return w.Part.Cutter != nil
	case Dividing:
		return w.Part.Dividing != nil
	}
	return true
}

// figures are a wheel's row of the cover's table.
func figures(w *solve.Wheel, u measure.Units) template.Row {
	row := template.Row{w.Part.Name, "–", "–", "–", "–", "–"}
	if t := w.Teeth; t != nil {
		row[1], row[2], row[3] = strconv.Itoa(t.Count), u.Length(2*t.TipRadius), u.Length(2*t.RootRadius)
	}
	if c := w.Crossing; c != nil {
		row[4], row[5] = strconv.Itoa(c.Spec.Arms), u.Number(c.Mass, 1)+" g"
	}
	return row
}
