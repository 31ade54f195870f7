// Package packet says which templates and cards a job needs and in what order
// they are printed: the order of the work.
package packet

import (
	"fmt"

	"tipline/app/solve"
	"tipline/render"
	"tipline/render/sheet"
	"tipline/render/template"
)

// Kind is a template or a card.
type Kind string

// The kinds, in the order of the work.
const (
	Blank    Kind = "blank"
	Grinding Kind = "grinding"
	Setting  Kind = "setting"
	Dividing Kind = "dividing"
	Crossing Kind = "crossing"
)

// Kinds lists every kind in the order of the work.
func Kinds() []Kind { return []Kind{Blank, Grinding, Setting, Dividing, Crossing} }

// IsCard reports whether the kind is a card to read from; copies repeat only the
// templates, which get spoiled.
func (k Kind) IsCard() bool { return k == Blank || k == Setting || k == Dividing }

// Needs reports whether the wheel has what a sheet of this kind shows.
func (k Kind) Needs(w *solve.Wheel) bool {
	switch k {
	case Grinding, Setting:
		return w.Cut != nil
	case Dividing:
		return w.Dividing != nil
	case Crossing:
		return w.Teeth != nil
	}
	return w.Teeth != nil
}

// Draw draws the wheel's template or card. scale is how much a grinding template
// is enlarged; the others are at full scale.
func Draw(w *solve.Wheel, k Kind, scale float64, s template.Style) (*render.Drawing, error) {
	t := w.Template()
	switch k {
	case Blank:
		return template.BlankCard(t, s)
	case Grinding:
		return template.Grinding(t, s, scale)
	case Setting:
		return template.SettingCard(t, s)
	case Dividing:
		return template.DividingCard(t, s)
	case Crossing:
		return template.Crossing(t, s)
	}
	return nil, fmt.Errorf("there is no template %q", k)
}

// notes returns what stands beside the drawing.
func (k Kind) notes(w *solve.Wheel, s template.Style) template.Notes {
	switch k {
	case Grinding:
		return template.GrindingNotes(w.Template(), s)
	case Crossing:
		return template.CrossingNotes(w.Template(), s)
	}
	return template.CardNotes(string(k), s)
}

// Sheet returns the wheel's template or card with its title block.
func Sheet(r *solve.Result, w *solve.Wheel, k Kind, scale float64, s template.Style) (sheet.Sheet, error) {
	d, err := Draw(w, k, scale, s)
	if err != nil {
		return sheet.Sheet{}, fmt.Errorf("%s of %s: %w", k, w.Part.ID, err)
	}
	block := titleBlock(r, s.Words.Say("template.kind."+string(k)))
	block.Part = w.Part.Name
	block.Notes = k.notes(w, s)
	return sheet.Sheet{Drawing: d, Block: block}, nil
}

func titleBlock(r *solve.Result, kind string) sheet.TitleBlock {
	j := r.Job
	return sheet.TitleBlock{Job: j.Title, Maker: j.Maker, Number: j.Number, Date: j.Revised, Kind: kind}
}
