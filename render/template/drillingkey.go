package template

import (
	"strconv"

	"tipline/geometry"

	"tipline/geometry/mount"
	"tipline/render"
)

// How wide a wheel's middle is drawn at most, and how much larger than it is.
const (
	keyWide  = 36.0
	keyScale = 20
)

// mountKey draws a mounting enlarged, with its sizes led out to the right; its drills are
// those of the steps. Its lines
// are dimension lines, so that no other program takes them for the work.
func mountKey(b *Board, m mount.Mounting, c mount.Collet, bore, hub float64) {
	widest := max(hub, c.Flange, m.Screws.Circle+3*m.Clear.MM)
	k := standardScale(min(keyScale, keyWide/widest))
	o := geometry.Point{}
	line := func(q geometry.Quantity, pen render.Pen, ink render.Ink) Stroke {
		return Stroke{Layer: render.LayerDimensions, Quantity: q, Pen: pen, Ink: ink}
	}
	b.Circle(line("crossing.hub", render.Thin, render.Blue), o, k*hub/2)
	b.Circle(line("bore", render.Visible, render.Black), o, k*bore/2)
	cross(b, line("bore", render.Hair, render.Black), o, 0.5, 2)
	seat(b, c, k, line("", render.Hidden, render.Black))
	b.Circle(line("mount.screw_circle", render.Centre, render.Blue), o, k*m.Screws.Circle/2)
	for i, p := range m.Places {
		at := p.At.Times(k)
		b.Circle(line("mount.screws", render.Visible, render.Black), at, k*m.Clear.MM/2)
		b.Circle(line("mount.thread", render.Hidden, render.Black), at, k*m.Tap.MM/2)
		cross(b, line("mount.screws", render.Hair, render.Blue), at, 0, 0.8)
		keyNumber(b, i, p, k, m, bore)
	}
	if m.Chord > 0 && len(m.Places) > 1 {
		chordAcross(b, m, k, widest)
	}
	keyFigures(b, m, c, bore, hub, k, widest)
}

// keyNumber writes a hole's number inside the screw circle where the bore leaves
// room, else outside it.
func keyNumber(b *Board, i int, p mount.Place, k float64, m mount.Mounting, bore float64) {
	r := k*(m.Screws.Circle-m.Clear.MM)/2 - 2.4
	if r < k*bore/2+2 {
		r = k*(m.Screws.Circle+m.Clear.MM)/2 + 2.4
	}
	b.Write(Stroke{Layer: render.LayerText, Quantity: "mount.screws", Ink: render.Blue}, render.Text{
		At: geometry.Polar(r, geometry.Clock(p.Angle)), Height: 2.5, Align: render.Middle, Centred: true, Bold: true, String: strconv.Itoa(i + 1),
	})
}

// chordAcross dimensions the dividers' setting between the two neighbours that stand
// highest, over the enlargement.
func chordAcross(b *Board, m mount.Mounting, k, widest float64) {
	best, n := 0, len(m.Places)
	for i := range n {
		if m.Places[i].At.Y+m.Places[(i+1)%n].At.Y > m.Places[best].At.Y+m.Places[(best+1)%n].At.Y+1e-9 {
			best = i
		}
	}
	from, to := m.Places[best].At.Times(k), m.Places[(best+1)%n].At.Times(k)
	if from.X > to.X {
		from, to = to, from
	}
	middle := from.Toward(to, 0.5)
	b.Add("mount.screw_circle", render.Linear(from, to, max(6, k*widest/2-middle.Norm()+5), b.Style.Units.Fine(m.Chord))...)
}

// keyFigures leads the sizes out of the enlargement.
func keyFigures(b *Board, m mount.Mounting, c mount.Collet, bore, hub, k, widest float64) {
	r := k * widest / 2
	box := geometry.Box{Min: geometry.Point{X: -r, Y: -r}, Max: geometry.Point{X: r, Y: r}}
	u, notes := b.Style.Units, callouts{past: 9}
	call := func(diameter, degrees float64, q geometry.Quantity, key string) {
		if diameter > 0 {
			notes.call(box, geometry.Polar(k*diameter/2, geometry.Degrees(degrees)), q, render.Black, b.Say("template.drilling."+key, "value", u.Fine(diameter)))
		}
	}
	call(hub, 40, "crossing.hub", "hub")
	call(c.Flange, 20, "mount.collet.flange", "flange")
	call(m.Screws.Circle, 0, "mount.screw_circle", "circle")
	call(c.Register, -20, "mount.collet.register", "register")
	call(bore, -40, "bore", "bore")
	notes.draw(b, box)
	b.Write(Stroke{Layer: render.LayerText, Quantity: "mount", Ink: render.Grey}, render.Text{
		At: geometry.Point{Y: -r - 4.5}, Height: 2.5, Align: render.Middle,
		String: b.Say("template.drilling.enlarged", "scale", scaleText(k, b.Style)),
	})
}

// drillText names a drill with its size, and whether it is taken as usual.
func drillText(d mount.Drill, s Style) string {
	text := s.Units.Fine(d.MM)
	if d.Name != "" {
		text = d.Name + ", " + text
	}
	if d.Assumed {
		text = s.Words.Say("template.drilling.assumed", "drill", text)
	}
	return text
}

// How the holes' angles stand on the paper.
const (
	holesWide = 45.0
	holesDown = 8
)

// holeAngles writes every hole's angle clockwise from tip 0 and the chord from
// hole 1.
func holeAngles(part string, places []mount.Place, s Style) *Board {
	b := NewBoard(part, s)
	down := min(len(places), holesDown)
	for i, p := range places {
		x, y := holesWide*float64(i/down), -4.2*float64(i%down+1)
		if i%down == 0 {
			holeRow(b, x, 0, 1.8, render.Grey, b.Say("template.drilling.hole"), b.Say("template.drilling.angle"), b.Say("template.drilling.chord"))
		}
		holeRow(b, x, y, 2.5, render.Black, strconv.Itoa(i+1), s.Units.Angle(p.Angle), s.Units.Fine(p.At.Dist(places[0].At)))
	}
	return b
}

func holeRow(b *Board, x, y, height float64, ink render.Ink, texts ...string) {
	for i, at := range []float64{4, 19, 41} {
		b.Write(Stroke{Layer: render.LayerText, Quantity: "mount.screws", Ink: ink},
			render.Text{At: geometry.Point{X: x + at, Y: y}, Height: height, Align: render.Right, String: texts[i]})
	}
}
