package packet

import (
	"fmt"

	"tipline/app/job"
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
	Shroud   Kind = "shroud" // the drilling template of a lantern pinion
	Crossing Kind = "crossing"
	Depthing Kind = "depthing" // of a pair
	Train    Kind = "train"
)

// Kinds lists every kind in the order of the work.
func Kinds() []Kind {
	return []Kind{Blank, Grinding, Setting, Dividing, Shroud, Crossing, Depthing, Train}
}

// IsCard reports whether the kind is a card to read from; copies repeat only the
// templates, which get spoiled.
func (k Kind) IsCard() bool { return k != Grinding && k != Shroud && k != Crossing }

// Needs reports whether the part has what a sheet of this kind shows.
func (k Kind) Needs(p solve.Part) bool {
	switch p := p.(type) {
	case solve.Made:
		return k.shows(p.Template()) && (k != Crossing || crossed(p))
	case *solve.Pair:
		return k == Depthing && p.Turn != nil
	case *solve.Train:
		return k == Train && p.Way != nil
	}
	return false
}

// shows reports whether a sheet of this kind is drawn of a wheel or pinion.
func (k Kind) shows(t template.Wheel) bool {
	switch k {
	case Blank:
		return t.Teeth != nil || t.Lantern != nil
	case Grinding, Setting:
		return t.Cut != nil
	case Dividing:
		return t.Dividing != nil
	case Shroud:
		return t.Lantern != nil
	case Crossing:
		return t.Teeth != nil
	}
	return false
}

// crossed reports whether a part is of those that are crossed out: a wheel.
func crossed(p solve.Part) bool {
	_, ok := p.(*solve.Wheel)
	return ok
}

// asked reports whether the job asks for a sheet of this kind of the part.
func (k Kind) asked(p solve.Part) bool {
	switch p := p.(type) {
	case *solve.Wheel:
		return k.askedOf(p.Part.Cutter, p.Part.Dividing, k == Blank || k == Crossing)
	case *solve.Pinion:
		lantern := p.Part.Form.Text == "lantern"
		return k.askedOf(p.Part.Cutter, p.Part.Dividing, k == Blank || k == Shroud && lantern) && !(lantern && k.ground())
	case *solve.Pair:
		return k == Depthing
	case *solve.Train:
		return k == Train
	}
	return false
}

// askedOf reports whether a made part with such a cutter and dividing asks for the
// sheet, or always does.
func (k Kind) askedOf(c *job.Cutter, d *job.Dividing, always bool) bool {
	return always || k.ground() && c != nil || k == Dividing && d != nil
}

// ground reports whether the sheet is about a cutter.
func (k Kind) ground() bool { return k == Grinding || k == Setting }

// Draw draws the part's template or card. scale is how much a grinding template is
// enlarged; the others are at full scale.
func Draw(r *solve.Result, p solve.Part, k Kind, scale float64, s template.Style) (*render.Drawing, error) {
	switch p := p.(type) {
	case solve.Made:
		return k.draw(p.Template(), scale, s)
	case *solve.Pair:
		if t, ok := p.Template(); ok && k == Depthing {
			return template.DepthingCard(t, s)
		}
	case *solve.Train:
		if t, ok := TrainOf(r, p); ok && k == Train {
			return template.TrainCard(t, s)
		}
	}
	return nil, fmt.Errorf("there is no template %q of %s", k, p.ID())
}

// draw draws the template or card of a wheel or pinion.
func (k Kind) draw(t template.Wheel, scale float64, s template.Style) (*render.Drawing, error) {
	switch k {
	case Blank:
		return template.BlankCard(t, s)
	case Grinding:
		return template.Grinding(t, s, scale)
	case Setting:
		return template.SettingCard(t, s)
	case Dividing:
		return template.DividingCard(t, s)
	case Shroud:
		return template.Shroud(t, s)
	case Crossing:
		return template.Crossing(t, s)
	}
	return nil, fmt.Errorf("there is no template %q of %s", k, t.ID)
}

// notes returns what stands beside the drawing.
func (k Kind) notes(p solve.Part, s template.Style) template.Notes {
	if m, ok := p.(solve.Made); ok {
		switch k {
		case Grinding:
			return template.GrindingNotes(m.Template(), s)
		case Shroud:
			return template.ShroudNotes(m.Template(), s)
		case Crossing:
			return template.CrossingNotes(m.Template(), s)
		}
	}
	return template.CardNotes(string(k), s)
}

// Sheet returns the part's template or card with its title block.
func Sheet(r *solve.Result, p solve.Part, k Kind, scale float64, s template.Style) (sheet.Sheet, error) {
	d, err := Draw(r, p, k, scale, s)
	if err != nil {
		return sheet.Sheet{}, fmt.Errorf("%s of %s: %w", k, p.ID(), err)
	}
	block := titleBlock(r, s.Words.Say("template.kind."+string(k)))
	block.Part = p.Name()
	block.Notes = k.notes(p, s)
	return sheet.Sheet{Drawing: d, Block: block}, nil
}

func titleBlock(r *solve.Result, kind string) sheet.TitleBlock {
	j := r.Job
	return sheet.TitleBlock{Job: j.Title, Maker: j.Maker, Number: j.Number, Date: j.Revised, Kind: kind}
}
