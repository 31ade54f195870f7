package template

import (
	"strconv"

	"tipline/geometry"
	"tipline/geometry/dividing"
	"tipline/render"
)

// shroudKey is the enlargement that a shroud is read from: its lines are dimension
// lines, so that no other program takes them for the work. Nil where the shroud is
// large enough to be read as it is.
func shroudKey(w Wheel, s Style) *Board {
	const widest, readable = 62.0, 20.0
	k := viewScale(w.Lantern.Shroud, widest)
	if k < 2 || w.Lantern.Shroud > readable {
		return nil
	}
	b := NewBoard(w.ID, s)
	shroudFace(b, w, k)
	shroudFigures(b, w, k)
	return b
}

// shroudFace draws a shroud in dimension lines at a scale, with the step from hole
// to hole.
func shroudFace(b *Board, w Wheel, k float64) {
	l, o := w.Lantern, geometry.Point{}
	line := func(q geometry.Quantity) Stroke {
		return Stroke{Layer: render.LayerDimensions, Quantity: q, Pen: render.Thin}
	}
	b.Circle(line("leaves"), o, k*l.Shroud/2)
	b.Circle(line("bore"), o, k*w.Bore/2)
	b.Circle(Stroke{Layer: render.LayerDimensions, Quantity: "module", Pen: render.Centre, Ink: render.Blue}, o, k*l.PitchRadius)
	inner := k*(l.PitchRadius-l.TrundleDiameter/2) - 3
	step := holeStep(len(l.Holes), inner-shroudNumberAt)
	for i, h := range l.Holes {
		b.Circle(line("trundle"), h.At.Times(k), k*l.TrundleDiameter/2)
		cross(b, Stroke{Layer: render.LayerDimensions, Quantity: "trundle", Pen: render.Hair, Ink: render.Blue}, h.At.Times(k), 0, 1)
		if i%step == 0 && (i == 0 || i+step <= len(l.Holes)) && inner > k*w.Bore/2+2 {
			writeHole(b, i, geometry.Polar(inner, geometry.Clock(h.Turn)))
		}
	}
	first, second := l.Holes[0].At.Times(k), l.Holes[1].At.Times(k)
	b.Add("leaves", render.Linear(first, second, k*(l.Shroud/2-l.PitchRadius)+5, b.Style.Units.Fine(l.Step))...)
}

// shroudFigures writes the sizes of a shroud beside its enlargement.
func shroudFigures(b *Board, w Wheel, k float64) {
	l, u := w.Lantern, b.Style.Units
	box := geometry.Box{Min: geometry.Point{X: -k * l.Shroud / 2, Y: -k * l.Shroud / 2}, Max: geometry.Point{X: k * l.Shroud / 2, Y: k * l.Shroud / 2}}
	notes := callouts{past: 9}
	call := func(radius, degrees float64, q geometry.Quantity, key, value string) {
		notes.call(box, geometry.Polar(k*radius, geometry.Degrees(degrees)), q, render.Black, b.Say("template.shroud."+key, "value", value))
	}
	call(l.Shroud/2, 160, "leaves", "shroud", u.Fine(l.Shroud))
	call(l.PitchRadius, 190, "module", "circle", u.Fine(2*l.PitchRadius))
	if w.Bore > 0 {
		call(w.Bore/2, 225, "bore", "bore", u.Fine(w.Bore))
	}
	last := l.Holes[len(l.Holes)-1]
	notes.call(box, last.At.Times(k).Add(geometry.Polar(k*l.TrundleDiameter/2, geometry.Degrees(135))), "trundle", render.Black,
		b.Say("template.shroud.hole", "value", u.Fine(l.TrundleDiameter)))
	notes.draw(b, box)
	b.Write(Stroke{Layer: render.LayerText, Quantity: "leaves", Ink: render.Grey}, render.Text{
		At: geometry.Point{Y: box.Min.Y - 6}, Height: 2.5, Align: render.Middle,
		String: b.Say("template.shroud.enlarged", "scale", scaleText(k, b.Style)),
	})
}

// How the table of a shroud's holes stands on the paper: columns side by side, and
// no more rows than leave the sheet whole.
const (
	holeColumns = 3
	holeColumn  = 58.0
	holeRows    = 10
)

// shroudTable writes the angle of every hole from hole 0 and its chord, or of as
// many evenly chosen ones as there is room for.
func shroudTable(w Wheel, s Style) *Board {
	b := NewBoard(w.ID, s)
	holes := w.Lantern.Holes
	every := evenly(len(holes), holeColumns*holeRows)
	shown := (len(holes) + every - 1) / every
	down := (shown + holeColumns - 1) / holeColumns
	for i := 0; i < shown; i++ {
		x, y := holeColumn*float64(i/down), -4.6*float64(i%down+1)
		if i%down == 0 {
			holeHeads(b, x)
		}
		h := i * every
		b.hole(x, y, h, dividing.Answer{Divisions: len(holes)}.Reading(h).String(), s.Units.Fine(holes[h].Chord))
	}
	return b
}

// holeHeads names the columns of the table.
func holeHeads(b *Board, x float64) {
	for _, head := range []struct {
		at    float64
		align render.Align
		key   string
	}{{7, render.Right, "hole-number"}, {29, render.Right, "hole-angle"}, {50, render.Right, "hole-chord"}} {
		b.Write(Stroke{Layer: render.LayerText, Quantity: "leaves", Ink: render.Grey}, render.Text{
			At: geometry.Point{X: x + head.at}, Height: 1.8, Align: head.align, String: b.Say("template.shroud." + head.key),
		})
	}
}

// hole writes one row of the table.
func (b *Board) hole(x, y float64, i int, angle, chord string) {
	for _, cell := range []struct {
		at   float64
		ink  render.Ink
		text string
	}{{7, render.Blue, strconv.Itoa(i)}, {29, render.Black, angle}, {50, render.Black, chord}} {
		b.Write(Stroke{Layer: render.LayerText, Quantity: "leaves", Ink: cell.ink}, render.Text{
			At: geometry.Point{X: x + cell.at, Y: y}, Height: 2.5, Align: render.Right, String: cell.text,
		})
	}
}

// evenly returns the least round k such that every k-th of n is no more than room.
func evenly(n, room int) int {
	for _, k := range []int{1, 2, 5, 10, 20, 50, 100, 200, 500} {
		if (n+k-1)/k <= room {
			return k
		}
	}
	return 1000
}
