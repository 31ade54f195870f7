package desk

import (
	"slices"

	"tipline/app/job"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/render"
	"tipline/render/template"
)

// kind is a kind of part, by the steps its work goes through.
type kind string

const (
	noPart  kind = ""
	wheel   kind = "wheel"
	pinion  kind = "pinion"
	lantern kind = "lantern"
	pair    kind = "pair"
	train   kind = "train"
	stack   kind = "stack"
)

// kindOf returns the kind of a part.
func (d *Desk) kindOf(id string) kind {
	switch p := d.of(id).(type) {
	case *solve.Wheel:
		return wheel
	case *solve.Pinion:
		if p.Part.Form.Text == "lantern" {
			return lantern
		}
		return pinion
	case *solve.Pair:
		return pair
	case *solve.Train:
		return train
	case *solve.Stack:
		return stack
	}
	return noPart
}

// Entry is a part as the rail shows it.
type Entry struct {
	ID, Name string
	Note     string // the maker's own
	Reprint  bool   // it has changed since it was last printed
}

// Group is the parts of one kind, as the rail lists them.
type Group struct {
	Title string
	Parts []Entry
}

// Groups lists the parts of the job, those that are searched for, by kinds, in the order
// of the job; a kind without parts is left out.
func (d *Desk) Groups() []Group {
	return d.groups(d.found)
}

func (d *Desk) groups(listed func(id string) bool) []Group {
	var gs []Group
	group := func(key string, ids []string) {
		if ids = slices.DeleteFunc(ids, func(id string) bool { return !listed(id) }); len(ids) == 0 {
			return
		}
		g := Group{Title: d.words.Say("rail." + key)}
		for _, id := range ids {
			note, _ := d.Job().Text(id, "note")
			g.Parts = append(g.Parts, Entry{id, d.Name(id), note, d.Reprint(id)})
		}
		gs = append(gs, g)
	}
	group("wheels", idsOf(d.result.Wheels))
	group("pinions", idsOf(d.result.Pinions))
	group("stacks", idsOf(d.result.Stacks))
	group("pairs", idsOf(d.result.Pairs))
	group("trains", idsOf(d.result.Trains))
	return gs
}

func idsOf[P solve.Part](parts []P) []string {
	var ids []string
	for _, p := range parts {
		ids = append(ids, p.ID())
	}
	return ids
}

// order lists the ids of all parts as the rail shows them.
func (d *Desk) order() []string {
	r := d.result
	return slices.Concat(idsOf(r.Wheels), idsOf(r.Pinions), idsOf(r.Stacks), idsOf(r.Pairs), idsOf(r.Trains))
}

// Name returns what a part is called.
func (d *Desk) Name(id string) string { return d.Job().Called(id) }

// neighbour returns which of the parts that are still there to look at when the present
// one is taken away: of its kind if there is one, empty for none.
func (d *Desk) neighbour(there func(id string) bool) string {
	for _, g := range d.groups(func(string) bool { return true }) {
		var ids []string
		for _, e := range g.Parts {
			ids = append(ids, e.ID)
		}
		if next := beside(ids, d.part, there); next != "" {
			return next
		}
	}
	return beside(d.order(), d.part, there)
}

// beside returns the next of the list that is there, or the last before; empty where
// there is none or the list does not hold the id.
func beside(ids []string, id string, there func(id string) bool) string {
	i := slices.Index(ids, id)
	if i < 0 {
		return ""
	}
	before := slices.Clone(ids[:i])
	slices.Reverse(before)
	for _, next := range append(slices.Clone(ids[i+1:]), before...) {
		if there(next) {
			return next
		}
	}
	return ""
}

// drawPart draws what a step of a part shows.
func (d *Desk) drawPart(p solve.Part, step Step, s template.Style) (*render.Drawing, error) {
	switch p := p.(type) {
	case solve.Made:
		t := p.Template()
		t.Photograph = d.photograph(p)
		return drawMade(t, step, s)
	case *solve.Pair:
		if t, ok := p.Template(); ok {
			return template.PairView(t, d.turn, s)
		}
	case *solve.Train:
		if t, ok := packet.TrainOf(d.result, p); ok {
			return template.TrainView(t, s)
		}
	case *solve.Stack:
		if t, ok := p.Template(); ok {
			return template.StackView(t, s)
		}
	}
	return nil, template.ErrNothing
}

func drawMade(t template.Wheel, step Step, s template.Style) (*render.Drawing, error) {
	switch step {
	case Cutter:
		return template.CutterView(t, s)
	case Dividing:
		return template.DividingView(t, s)
	case Crossing:
		return template.Crossing(t, s)
	case Mounting:
		return drawMounted(t, s)
	case Shrouds:
		return template.PinionView(t, s)
	}
	if t.Hand == "" {
		return template.PinionView(t, s)
	}
	return template.Blank(t, s)
}

// drawMounted draws the drilled wheel, or the wheel that no screws hold.
func drawMounted(t template.Wheel, s template.Style) (*render.Drawing, error) {
	if t.Mounting == nil {
		return template.Crossing(t, s)
	}
	return template.Drilling(t, s)
}

// tooling returns how a wheel or pinion is cut, nil for any other part.
func tooling(p solve.Part) *solve.Tooling {
	switch p := p.(type) {
	case *solve.Wheel:
		return &p.Tooling
	case *solve.Pinion:
		return &p.Tooling
	}
	return nil
}

// cutterOf returns the cutter of a part as typed, nil where it has none.
func (d *Desk) cutterOf(id string) *job.Cutter {
	if w := d.Job().Wheel(id); w != nil {
		return w.Cutter
	}
	for _, p := range d.Job().Pinions {
		if p.ID == id {
			return p.Cutter
		}
	}
	return nil
}

// cutterIn returns the cutter that a part was worked out with, nil where it has none.
func cutterIn(p solve.Part) *job.Cutter {
	switch p := p.(type) {
	case *solve.Wheel:
		return p.Part.Cutter
	case *solve.Pinion:
		return p.Part.Cutter
	}
	return nil
}
