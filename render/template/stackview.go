package template

import (
	"fmt"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/mount"
	"tipline/render"
)

// stackLook is how the wheels of a stack are told apart beside their letters: each by its
// own pen, for a printer with one ink, and by its own ink, none that of the centre lines.
// Past the last they begin again.
var stackLook = []struct {
	ink render.Ink
	pen render.Pen
}{
	{render.Black, render.Visible},
	{render.Green, render.Thin},
	{render.Grey, render.Hidden},
	{render.Black, render.Hair},
	{render.Green, render.Visible},
	{render.Grey, render.Hair},
	{render.Black, render.Hidden},
	{render.Green, render.Hidden},
}

// Measures of a stack's drawing in millimetres of paper.
const (
	markRadius = 0.45 // of a dot struck beside a hole
	markApart  = 1.3
	partWide   = 30.0 // of the picture of one part
	partHigh   = 34.0
	partsRow   = 5
)

// title returns what a stack is called on its sheets.
func (st Stack) title() string {
	if st.Name == "" {
		return st.ID
	}
	return st.Name
}

// drawable reports whether every wheel of the stack can be drawn where it stands.
func (st Stack) drawable() bool {
	if len(st.Wheels) < 2 || len(st.Stacked.Turns) != len(st.Wheels) {
		return false
	}
	for _, w := range st.Wheels {
		if w.Teeth == nil {
			return false
		}
	}
	return true
}

// StackView draws the wheels of a stack laid over each other as they go together, the
// largest at the bottom, for the window. ErrNothing if they cannot be drawn.
func StackView(st Stack, s Style) (*render.Drawing, error) {
	b, err := overlaid(st, s)
	if err != nil {
		return nil, err
	}
	b.Drawing.Description = b.Say("template.stack.view")
	return b.Drawing, nil
}

// overlaid draws the wheels over each other with their reference tips at 12 o'clock,
// the common holes, and the line through the tips.
func overlaid(st Stack, s Style) (*Board, error) {
	if !st.drawable() {
		return nil, fmt.Errorf("stack %s: %w", st.ID, ErrNothing)
	}
	b := NewBoard(st.ID, s)
	b.Drawing.Title = b.Say("template.stack.title", "name", st.title())
	largest := st.Wheels[st.Stacked.Larger]
	for _, i := range st.bySize() {
		st.wheel(b, i, i == st.Stacked.Larger)
	}
	b.Circle(Stroke{render.LayerBore, "wheels", render.Visible, render.Black, render.Paper}, geometry.Point{}, st.leastBore()/2)
	seat(b, st.Collet, 1, Stroke{Layer: render.LayerBore, Pen: render.Hidden})
	m := st.Stacked.Mounting
	if len(m.Places) > 0 {
		screwHoles(b, m)
		marks(b, m, len(st.Wheels))
	}
	line := Stroke{Layer: render.LayerCentreLines, Quantity: "tips", Pen: render.Centre, Ink: render.Blue}
	b.Line(line, radial(punchGap, largest.Teeth.TipRadius+armLineTo, 0), radial(punchGap, largest.Teeth.TipRadius+farLineTo, geometry.Degrees(180)))
	b.Line(line, radial(punchGap, largest.Teeth.TipRadius+farLineTo, geometry.Degrees(90)), radial(punchGap, largest.Teeth.TipRadius+farLineTo, geometry.Degrees(270)))
	st.tips(b)
	return b, nil
}

// tips writes above the drawing which tip of each wheel stands in line, the lowest wheel
// first, and beside it each wheel's letter, led to its tips.
func (st Stack) tips(b *Board) {
	out := st.Wheels[st.Stacked.Larger].Teeth.TipRadius
	for i, w := range st.Wheels {
		text := Stroke{Layer: render.LayerText, Quantity: "tips", Ink: lookOf(i).ink}
		b.Write(text, render.Text{
			At: geometry.Point{Y: out + armNumberAt + 4.4*float64(len(st.Wheels)-1-i)}, Height: 2.9, Align: render.Middle, Centred: true, Bold: true,
			String: b.Say("template.stack.tip", "wheel", st.named(b.Style, i), "tip", st.tip(i)),
		})
		way := letterWay(i)
		b.Line(Stroke{Layer: render.LayerDimensions, Quantity: "wheels", Pen: render.Thin, Ink: lookOf(i).ink}, radial(w.Teeth.TipRadius, out+3, way))
		text.Quantity = "wheels"
		b.Write(text, render.Text{
			At: geometry.Polar(out+5.4, geometry.Clock(way)), Height: 2.9, Align: render.Middle, Centred: true, Bold: true, String: letterOf(i),
		})
	}
}

// letterWay returns the angle at which wheel i's letter stands: a quarter turn on from
// that of the wheel before, clear of the lines through the centre.
func letterWay(i int) geometry.Angle { return geometry.Degrees(float64(35 + 90*i + 20*(i/4))) }

// letterOf returns the letter of wheel i, the lowest A.
func letterOf(i int) string { return string(rune('A' + i%26)) }

// named returns what wheel i is called on a stack's sheets: its letter and its name.
func (st Stack) named(s Style, i int) string {
	return s.Words.Say("template.stack.named", "letter", letterOf(i), "name", st.Wheels[i].title())
}

// lookOf returns how wheel i is drawn.
func lookOf(i int) struct {
	ink render.Ink
	pen render.Pen
} {
	return stackLook[i%len(stackLook)]
}

// bySize lists the wheels, the largest first, so that the smaller are drawn over it.
func (st Stack) bySize() []int {
	order := make([]int, len(st.Wheels))
	for i := range order {
		order[i] = i
	}
	for i := range order {
		for k := i; k > 0 && st.Wheels[order[k]].Teeth.TipRadius > st.Wheels[order[k-1]].Teeth.TipRadius; k-- {
			order[k], order[k-1] = order[k-1], order[k]
		}
	}
	return order
}

// tip returns which tip of wheel i stands at 12 o'clock.
func (st Stack) tip(i int) int {
	n := st.Wheels[i].Teeth.Count
	turned := float64(-st.Stacked.Turns[i].Normal()) / float64(geometry.FullTurn) * float64(n)
	return (int(turned+float64(2*n)+0.5) - n) % n
}

func (st Stack) leastBore() float64 {
	least := st.Wheels[0].Bore
	for _, w := range st.Wheels {
		least = min(least, w.Bore)
	}
	return least
}

// wheel draws wheel i turned as it stands in the stack; the lowest is filled, its
// windows left open, under all lines.
func (st Stack) wheel(b *Board, i int, lowest bool) {
	w, turn, look := st.Wheels[i], -st.Stacked.Turns[i], lookOf(i)
	teeth := w.Teeth.Outline.Rotate(turn)
	var windows []geometry.Outline
	if w.Crossing != nil {
		for _, win := range w.Crossing.Windows {
			windows = append(windows, win.Outline.Rotate(turn))
		}
	}
	if lowest {
		b.Closed(Stroke{Layer: render.LayerStock, Quantity: "wheels", Fill: render.Brass}, append([]geometry.Outline{teeth}, windows...)...)
	}
	b.Closed(Stroke{Layer: render.LayerTeeth, Quantity: "wheels", Pen: look.pen, Ink: look.ink}, teeth)
	for _, win := range windows {
		b.Closed(Stroke{Layer: render.LayerWindows, Quantity: "wheels", Pen: look.pen, Ink: look.ink}, win)
	}
}

// marks draws beside hole 1 as many dots as the topmost wheel has, outwards.
func marks(b *Board, m mount.Mounting, wheels int) {
	first, way := m.Places[0], geometry.Polar(1, geometry.Clock(m.Places[0].Angle))
	for n := range wheels {
		at := first.At.Add(way.Times(m.Clear.MM/2 + 3.8 + markApart*float64(n)))
		b.Circle(Stroke{render.LayerText, "wheels", render.NoPen, render.Black, render.Solid}, at, markRadius)
	}
}

// dotsText says how many dots a part has.
func dotsText(b *Board, n int) string {
	if n == 1 {
		return b.Say("template.stack.dot")
	}
	return b.Say("template.stack.dots", "n", strconv.Itoa(n))
}
