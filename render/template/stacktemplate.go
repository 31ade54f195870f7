package template

import (
	"tipline/geometry"
	"tipline/geometry/mount"
	"tipline/render"
)

// StackTemplate draws the full-scale template of a stack, its centre at the origin:
// the wheels laid over each other with their reference tips in line at 12 o'clock, each
// in its own pen and ink and with its letter, the holes common to all, and below it each part with the dots that
// say in which order and which way round it goes back. ErrNothing if the wheels cannot
// be drawn.
func StackTemplate(st Stack, s Style) (*render.Drawing, error) {
	b, err := overlaid(st, s)
	if err != nil {
		return nil, err
	}
	b.Drawing.Description = b.Say("template.stack.line")
	if of := b.Drawing.Bounds(); len(st.Stacked.Mounting.Places) > 0 && of.Height() < stackRoom {
		placeBelow(b, st.parts(s, partsRow).Drawing, of, 7)
	}
	return b.Drawing, nil
}

// stackRoom is the height of a stack's drawing that leaves room on a sheet for its
// parts below it; its card shows them in any case.
const stackRoom = 112.0

// parts draws the collet and every wheel from the bottom up as seen from above, each
// with its dots beside hole 1, so many in a row.
func (st Stack) parts(s Style, row int) *Board {
	b := NewBoard(st.ID, s)
	m := st.Stacked.Mounting
	k := min(1, 0.3*partWide/(m.Screws.Circle/2+m.Clear.MM))
	for n, mark := range st.Stacked.Marks {
		centre := geometry.Point{X: partWide * float64(n%row), Y: -partHigh * float64(n/row)}
		st.part(b, mark, centre, k)
	}
	return b
}

// part draws one part's middle with its holes and dots, and what it is.
func (st Stack) part(b *Board, mark mount.Mark, centre geometry.Point, k float64) {
	m := st.Stacked.Mounting
	line := Stroke{Layer: render.LayerDimensions, Quantity: "wheels", Pen: render.Thin}
	bore, name := st.Collet.Bore, b.Say("template.stack.collet")
	if mark.Part >= 0 {
		line.Ink = lookOf(mark.Part).ink
		bore, name = st.Wheels[mark.Part].Bore, st.named(b.Style, mark.Part)
	}
	edge := k * (m.Screws.Circle/2 + m.Clear.MM + markApart)
	b.Circle(line, centre, edge)
	b.Circle(line, centre, k*bore/2)
	for i, p := range m.Places {
		at := centre.Add(p.At.Times(k))
		b.Circle(line, at, k*m.Clear.MM/2)
		if i != mark.Hole {
			continue
		}
		way := geometry.Polar(1, geometry.Clock(p.Angle))
		for d := range mark.Dots {
			along := (float64(d) - float64(mark.Dots-1)/2) * markApart
			dotAt := centre.Add(way.Times(edge + 1.6)).Add(way.Left().Times(along))
			b.Circle(Stroke{render.LayerDimensions, "wheels", render.NoPen, render.Black, render.Solid}, dotAt, markRadius)
		}
	}
	lines := append(Wrap(name, 2.2, partWide-2, true), dotsText(b, mark.Dots))
	for i, text := range lines {
		b.Write(Stroke{Layer: render.LayerText, Quantity: "wheels", Ink: line.Ink}, render.Text{
			At: centre.Add(geometry.Point{Y: -edge - 5 - 3.4*float64(i)}), Height: 2.2, Align: render.Middle, Bold: i < len(lines)-1, String: text,
		})
	}
}

// StackNotes returns what a stack template's sheet says beside it.
func StackNotes(st Stack, s Style) Notes {
	n := Notes{Caution: s.Words.Say("cautions.foot.drilling")}
	m := st.Stacked.Mounting
	if len(m.Places) > 0 {
		thread := threadName(m.Screws.Thread, s)
		n = mountNotes(m, thread, s)
		n.Legend = n.Legend[:len(n.Legend)-1]
	}
	for i := range st.Wheels {
		look := lookOf(i)
		n.Legend = append(n.Legend, Mark{Pen: look.pen, Ink: look.ink, Text: st.named(s, i)})
	}
	if st.Stacked.Twist > 0 {
		n.Figures = append(n.Figures, st.twist(s))
	}
	return n
}

// twist tells what a misplacement of the smaller wheel's tips makes at the larger's.
func (st Stack) twist(s Style) Figure {
	small := st.Wheels[st.Stacked.Smaller].Teeth.TipRadius
	return Figure{
		s.Words.Say("template.figure.misplaced", "by", s.Units.Fine(float64(st.Stacked.Twist)*small)),
		s.Words.Say("template.stack.twist", "error", s.Units.Fine(st.Stacked.Error), "angle", s.Units.Angle(st.Stacked.Twist)),
	}
}

// StackCard is the card for drilling a stack: as a wheel's, with what a misplacement
// makes. ErrNothing where no screws hold it.
func StackCard(st Stack, s Style) (*render.Drawing, error) {
	if !st.drawable() || len(st.Stacked.Mounting.Places) == 0 {
		return DrillingCard(Wheel{ID: st.ID}, s)
	}
	c := newCard(Wheel{ID: st.ID}, s, s.Words.Say("cards.drilling.title", "name", st.title()), s.Words.Say("cards.drilling.stack.line"))
	m := st.Stacked.Mounting
	c.drilled(m, m.Screws.Thread, st.Collet, st.leastBore(), 0, st.seated(s), s.Words.Say("cards.drilling.stack.mark.how"))
	if st.Stacked.Twist > 0 {
		c.y -= 4
		f := st.twist(s)
		for _, line := range Wrap(f.Label+": "+f.Value, 2.5, drillingWide, false) {
			c.text(0, c.y-2.5, 2.5, render.Grey, false, "misplacement", line)
			c.y -= noteLine
		}
	}
	return c.Drawing, nil
}

// seated says which wheels are set on the collet.
func (st Stack) seated(s Style) string {
	names := make([]string, len(st.Wheels))
	for i := range st.Wheels {
		names[i] = st.named(s, i)
	}
	return s.Words.Say("cards.drilling.stack.punch.how", "parts", s.Units.List(names))
}
