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
	Blank     Kind = "blank"
	Grinding  Kind = "grinding"  // laid on the rake face
	Clearance Kind = "clearance" // a grinding template laid square to the clearance face
	Setting   Kind = "setting"
	Depth     Kind = "depth"
	Dividing  Kind = "dividing"
	Shroud    Kind = "shroud" // the drilling template of a lantern pinion
	Crossing  Kind = "crossing"
	Depthing  Kind = "depthing" // of a pair
	Train     Kind = "train"
)

// Kinds lists every kind in the order of the work.
func Kinds() []Kind {
	return []Kind{Blank, Grinding, Clearance, Setting, Depth, Dividing, Shroud, Crossing, Depthing, Train}
}

// IsCard reports whether the kind is a card to read from; copies repeat only the
// templates, which get spoiled.
func (k Kind) IsCard() bool { return !k.Scales() && k != Shroud && k != Crossing }

// Scales reports whether the kind is drawn at other scales than full: a grinding
// template.
func (k Kind) Scales() bool { return k == Grinding || k == Clearance }

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
	case Grinding, Setting, Depth:
		return t.Cut != nil
	case Clearance:
		return t.Cut != nil && t.Relief != nil && t.Relief.Clearance > 0
	case Dividing:
		return t.Dividing != nil
	case Shroud:
		return t.Lantern != nil
	case Crossing:
		return t.Teeth != nil
	}
	return false
}

// prints reports whether a packet holds a sheet of this kind of the part: of those
// laid square to the clearance face only where the bit is ground by a formed wheel.
func (k Kind) prints(p solve.Part) bool { return k.Needs(p) && (k != Clearance || formed(p)) }

// formed reports whether a part's bit is ground by a formed wheel.
func formed(p solve.Part) bool {
	c := cutterOf(p)
	return c != nil && c.Ground.Text == "formed"
}

// cutterOf returns what the job says of a part's cutter; nil where it says nothing.
func cutterOf(p solve.Part) *job.Cutter {
	switch p := p.(type) {
	case *solve.Wheel:
		return p.Part.Cutter
	case *solve.Pinion:
		return p.Part.Cutter
	}
	return nil
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
		return k == Blank || k == Crossing || k.isOf(p.Part.Cutter, p.Part.Dividing)
	case *solve.Pinion:
		if p.Part.Form.Text == "lantern" {
			return k == Blank || k == Shroud || k.isOf(nil, p.Part.Dividing)
		}
		return k == Blank || k.isOf(p.Part.Cutter, p.Part.Dividing)
	case *solve.Pair:
		return k == Depthing
	case *solve.Train:
		return k == Train
	}
	return false
}

// isOf reports whether a part with such a cutter and dividing asks for the sheet.
func (k Kind) isOf(c *job.Cutter, d *job.Dividing) bool {
	switch k {
	case Grinding, Setting, Depth:
		return c != nil
	case Dividing:
		return d != nil
	}
	return false
}

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
	case Clearance:
		return template.GrindingSide(t, s, scale, template.ClearanceFace)
	case Setting:
		return template.SettingCard(t, s)
	case Depth:
		return template.DepthCard(t, s)
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
		case Clearance:
			return template.GrindingSideNotes(m.Template(), s, template.ClearanceFace)
		case Shroud:
			return template.ShroudNotes(m.Template(), s)
		case Crossing:
			return template.CrossingNotes(m.Template(), s)
		}
	}
	if k == Depth {
		k = Setting // the cutter runs as it was set
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
