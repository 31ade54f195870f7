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
	Scribing  Kind = "scribing"
	Drilling  Kind = "drilling" // of the screws that hold a wheel
	Stack     Kind = "stack"
	Depthing  Kind = "depthing" // of a pair
	Train     Kind = "train"
)

// The kinds of the sheets that are of no part.
const (
	Cover    Kind = "cover"
	Stock    Kind = "stock"
	Cautions Kind = "cautions"
)

// Kinds lists every kind of sheet of a part in the order of the work.
func Kinds() []Kind {
	return []Kind{Blank, Grinding, Clearance, Setting, Depth, Dividing, Shroud, Crossing, Scribing, Drilling, Stack, Depthing, Train}
}

// IsCard reports whether the kind is a card to read from; copies repeat only the
// templates, which get spoiled.
func (k Kind) IsCard() bool { return !k.Scales() && !k.Centred() }

// Centred reports whether the kind is a full-scale template whose origin is the
// work's own centre.
func (k Kind) Centred() bool { return k == Shroud || k == Crossing || k == Drilling || k == Stack }

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
		return k == Train && pictured(p)
	case *solve.Stack:
		return k == Stack && p.Stacked != nil
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
	case Scribing:
		return t.Teeth != nil && t.Crossing != nil && len(t.Crossing.Windows) > 0
	case Drilling:
		return t.Teeth != nil && t.Mounting != nil && len(t.Mounting.Places) > 0
	}
	return false
}

// prints reports whether a packet holds a sheet of this kind of the part: no drilling
// template of a wheel that is drilled with its stack.
func (k Kind) prints(p solve.Part) bool { return k.Needs(p) && (k != Drilling || !inStack(p)) }

// inStack reports whether a part's screws are those of a stack.
func inStack(p solve.Part) bool {
	w, ok := p.(*solve.Wheel)
	return ok && w.Stack != ""
}

// crossed reports whether a part is of those that are crossed out, a wheel, and is not
// asked for a crossing that cannot be built: its tips alone would pass for its template.
func crossed(p solve.Part) bool {
	w, ok := p.(*solve.Wheel)
	return ok && (w.Crossing != nil || w.Part.Crossing == nil)
}

// asked reports whether the job asks for a sheet of this kind of the part.
func (k Kind) asked(p solve.Part) bool {
	switch p := p.(type) {
	case *solve.Wheel:
		return k == Blank || k == Crossing || k == Scribing && p.Part.Crossing != nil || k == Drilling && screwed(p) ||
			k.isOf(p.Part.Cutter, p.Part.Dividing)
	case *solve.Pinion:
		if p.Part.Form.Text == "lantern" {
			return k == Blank || k == Shroud || k.isOf(nil, p.Part.Dividing)
		}
		return k == Blank || k.isOf(p.Part.Cutter, p.Part.Dividing)
	case *solve.Pair:
		return k == Depthing
	case *solve.Train:
		return k == Train
	case *solve.Stack:
		return k == Stack
	}
	return false
}

// screwed reports whether a job asks for screws of a wheel's own.
func screwed(w *solve.Wheel) bool {
	return w.Part.Mount != nil && !w.Part.Mount.Screws.Empty() && w.Stack == ""
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
	case *solve.Stack:
		if t, ok := p.Template(); ok && k == Stack {
			return template.StackTemplate(t, s)
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
	case Scribing:
		return template.Scribing(t, s)
	case Drilling:
		return template.Drilling(t, s)
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
		case Drilling:
			return template.DrillingNotes(m.Template(), s)
		}
	}
	if p, ok := p.(*solve.Stack); ok {
		if t, drawn := p.Template(); drawn {
			return template.StackNotes(t, s)
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
	if m, ok := p.(solve.Made); ok && k == Crossing && m.Template().Crossing == nil {
		block.Kind = s.Words.Say("template.kind.teeth")
	}
	block.Part = p.Name()
	if pair, ok := p.(*solve.Pair); ok {
		t, _ := pair.Template()
		block.Scale = template.DepthingScale(t, s)
	}
	block.Notes = k.notes(p, s)
	return sheet.Sheet{Drawing: d, Block: block}, nil
}

// more returns the cards that go with a sheet: a dividing card's table where it does not
// hold every tooth, how the holes of a template are drilled, and how a pair is set in mesh.
func (k Kind) more(p solve.Part, block sheet.TitleBlock, s template.Style) ([]sheet.Sheet, error) {
	var cards []*render.Drawing
	switch p := p.(type) {
	case solve.Made:
		switch k {
		case Dividing:
			cards = template.DividingTable(p.Template(), s)
		case Drilling:
			card, err := template.DrillingCard(p.Template(), s)
			if err != nil {
				return nil, err
			}
			cards = []*render.Drawing{card}
			block.Kind, block.Notes = s.Words.Say("template.kind.drilling-card"), template.Notes{Caution: block.Notes.Caution}
		}
	case *solve.Pair:
		cards, block.Part, block.Scale = []*render.Drawing{template.DepthingSteps(s)}, "", ""
	case *solve.Stack:
		if len(p.Stacked.Mounting.Places) == 0 {
			return nil, nil
		}
		t, _ := p.Template()
		card, err := template.StackCard(t, s)
		if err != nil {
			return nil, err
		}
		cards = []*render.Drawing{card}
		block.Kind, block.Notes = s.Words.Say("template.kind.drilling-card"), template.Notes{Caution: block.Notes.Caution}
	}
	var sheets []sheet.Sheet
	for _, d := range cards {
		sheets = append(sheets, sheet.Sheet{Drawing: d, Block: block})
	}
	return sheets, nil
}

func titleBlock(r *solve.Result, kind string) sheet.TitleBlock {
	j := r.Job
	return sheet.TitleBlock{Job: solve.Shown(j.Title), Maker: solve.Shown(j.Maker), Number: solve.Shown(j.Number), Date: solve.Shown(j.Revised), Kind: kind}
}
