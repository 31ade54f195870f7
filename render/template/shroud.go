package template

import (
	"fmt"
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/tooth"
	"tipline/render"
)

// Distances of a shroud's drawing in millimetres of paper.
const (
	shroudTickFrom = 0.8 // from the shroud's edge
	shroudTickTo   = 2.6
	shroudNumberAt = 5.2
	shroudApart    = 16.0 // between the edges of the two shrouds
	leastApart     = 60.0 // between the shrouds' centres, for what they are called
	shroudsAcross  = 150.0
	leastNumbers   = 4.6 // along the circle, between holes' numbers
)

// Shroud draws the full-scale drilling template of a lantern pinion's shrouds, the
// first shroud's centre at the origin and hole 0 at 12 o'clock: both discs seen
// from outside, the second numbered the other way round so that equal numbers meet,
// the trundle circle, the holes with their centres left open for a punch; an
// enlargement to read, and a table of angles and chords. ErrNothing if it is no
// lantern pinion.
func Shroud(w Wheel, s Style) (*render.Drawing, error) {
	if w.Lantern == nil {
		return nil, fmt.Errorf("shrouds of %s: %w", w.ID, ErrNothing)
	}
	b := NewBoard(w.ID, s)
	b.Drawing.Title = b.Say("template.shroud.title", "name", w.title())
	b.Drawing.Description = b.Say("template.shroud.line")
	l := *w.Lantern
	drawShroud(b, w, l.Holes, geometry.Point{}, b.Say("template.shroud.first"))
	drawShroud(b, w, mirrored(l.Holes), secondShroud(l), b.Say("template.shroud.second"))
	key := shroudKey(w, s)
	low := b.Drawing.Bounds()
	if key != nil {
		placeBelow(b, key.Drawing, low, 9)
		low = b.Drawing.Bounds()
	}
	placeBelow(b, shroudTable(w, s).Drawing, low, 9)
	return b.Drawing, nil
}

// secondShroud returns where the second shroud stands: beside the first, or below
// it where they are too large for that.
func secondShroud(l tooth.LanternPinion) geometry.Point {
	apart := max(l.Shroud+2*shroudNumberAt+shroudApart, leastApart)
	if apart+l.Shroud > shroudsAcross {
		return geometry.Point{Y: -apart}
	}
	return geometry.Point{X: apart}
}

// placeBelow places a drawing under a box, gap apart, in the box's middle.
func placeBelow(b *Board, d *render.Drawing, box geometry.Box, gap float64) {
	of := d.Bounds()
	at := geometry.Point{X: box.Centre().X - of.Centre().X, Y: box.Min.Y - gap - of.Max.Y}
	b.Drawing.Add(d.Placed(at, 1, 0).Items...)
}

// mirrored returns the holes as seen from the other side.
func mirrored(holes []tooth.TrundleHole) []tooth.TrundleHole {
	other := make([]tooth.TrundleHole, len(holes))
	for i, h := range holes {
		other[i] = tooth.TrundleHole{At: h.At.Mirror(), Turn: -h.Turn, Chord: h.Chord}
	}
	return other
}

// drawShroud draws one shroud at full scale with what it is called below it.
func drawShroud(b *Board, w Wheel, holes []tooth.TrundleHole, centre geometry.Point, name string) {
	l, edge := w.Lantern, w.Lantern.Shroud/2
	b.Circle(Stroke{render.LayerTeeth, "leaves", render.Visible, render.Black, render.Brass}, centre, edge)
	b.Circle(Stroke{render.LayerBore, "bore", render.Visible, render.Black, render.Paper}, centre, w.Bore/2)
	cross(b, Stroke{Layer: render.LayerBore, Quantity: "bore", Pen: render.Hair}, centre, centreGap(w), centreReach(w))
	b.Circle(Stroke{Layer: render.LayerPitchCircle, Quantity: "module", Pen: render.Thin, Ink: render.Blue}, centre, l.PitchRadius)
	step := holeStep(len(holes), edge)
	for i, h := range holes {
		drawHole(b, l, h, centre)
		holeTick(b, h, centre, edge, i%step == 0)
		if i%step == 0 && (i == 0 || i+step <= len(holes)) {
			writeHole(b, i, centre.Add(geometry.Polar(edge+shroudNumberAt, geometry.Clock(h.Turn))))
		}
	}
	b.Write(Stroke{Layer: render.LayerText, Quantity: "leaves", Ink: render.Grey}, render.Text{
		At: centre.Add(geometry.Point{Y: -edge - shroudNumberAt - 7}), Height: 2.5, Align: render.Middle, String: name,
	})
}

// centreGap and centreReach say how far the cross of a shroud's centre stays off
// the dead centre and how far it runs: it keeps within the holes.
func centreGap(w Wheel) float64 { return min(punchGap, centreReach(w)/3) }

func centreReach(w Wheel) float64 {
	return min(2.4, 0.8*(w.Lantern.PitchRadius-w.Lantern.TrundleDiameter/2))
}

// holeStep returns every how many holes a number stands.
func holeStep(count int, edge float64) int {
	pitch := 2 * math.Pi * (edge + shroudNumberAt) / float64(count)
	for _, step := range []int{1, 2, 5, 10, 20, 50, 100, 200, 500} {
		if float64(step)*pitch >= leastNumbers {
			return step
		}
	}
	return 1000
}

// drawHole draws a trundle's hole and its centre cross, which runs a little past
// the hole, not to the next one, and leaves the centre open.
func drawHole(b *Board, l *tooth.LanternPinion, h tooth.TrundleHole, centre geometry.Point) {
	at, r := centre.Add(h.At), l.TrundleDiameter/2
	b.Circle(Stroke{render.LayerTrundles, "trundle", render.Visible, render.Black, render.Paper}, at, r)
	from, to := min(0.15, r/4), r+min(0.8, 0.4*l.Between)
	lines := make([]geometry.Line, 4)
	for i := range lines {
		way := geometry.Polar(1, geometry.Clock(h.Turn)+geometry.Degrees(float64(90*i)))
		lines[i] = geometry.Line{From: at.Add(way.Times(from)), To: at.Add(way.Times(to))}
	}
	b.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "leaves", Pen: render.Hair, Ink: render.Blue}, lines...)
}

// holeTick draws the tick in line with a hole outside the shroud, longer where a
// number stands.
func holeTick(b *Board, h tooth.TrundleHole, centre geometry.Point, edge float64, numbered bool) {
	to := shroudTickTo
	if !numbered {
		to = (shroudTickFrom + shroudTickTo) / 2
	}
	tick := radial(edge+shroudTickFrom, edge+to, h.Turn)
	b.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "leaves", Pen: render.Hair, Ink: render.Blue},
		geometry.Line{From: centre.Add(tick.From), To: centre.Add(tick.To)})
}

// writeHole writes a hole's number centred on at, the first one bold.
func writeHole(b *Board, i int, at geometry.Point) {
	b.Write(Stroke{Layer: render.LayerText, Quantity: "leaves", Ink: render.Blue}, render.Text{
		At: at, Height: numberHeight, Align: render.Middle, Centred: true, Bold: i == 0, String: strconv.Itoa(i),
	})
}

// ShroudNotes returns what a shroud template's sheet says beside it.
func ShroudNotes(w Wheel, s Style) Notes {
	n := Notes{Caution: s.Words.Say("cautions.foot.shroud")}
	l := w.Lantern
	if l == nil {
		return n
	}
	say := func(key string) string { return s.Words.Say("template." + key) }
	n.Legend = []Mark{
		{Pen: render.Visible, Round: true, Text: say("legend.trundle")},
		{Pen: render.Thin, Ink: render.Blue, Text: say("legend.trundle-circle")},
		{Pen: render.Hair, Ink: render.Blue, Text: say("legend.holes")},
	}
	n.Figures = []Figure{
		{say("figure.trundles"), s.Words.Say("template.shroud.trundles", "n", len(l.Holes), "diameter", s.Units.Fine(l.TrundleDiameter))},
		{say("figure.drill"), l.Drill.Name + ", " + s.Units.Fine(l.Drill.MM)},
		{say("figure.step"), s.Units.Fine(l.Step)},
		{say("figure.shroud"), s.Units.Fine(l.Shroud)},
	}
	return n
}
