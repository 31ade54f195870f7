package template

import (
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/tooth"
	"tipline/render"
)

// Distances outside the tip circle, in millimetres of paper, chosen so that ticks,
// numbers and the numbers of the arms stand clear of one another.
const (
	tickFrom      = 0.9
	tickTo        = 2.3
	tickToTenth   = 3.6
	numberAt      = 6.6
	armLineTo     = 9
	farLineTo     = 4.5
	armNumberAt   = 13
	numberHeight  = 2.5
	armHeight     = 3.5
	leastSpacing  = 8.5  // along the circle, between numbers
	clearOfArm    = 4.2  // along the circle, from a number to an arm's line
	punchGap      = 0.8  // radius left open at the dead centre
	throughMargin = 1    // degrees within which an arm's line is not drawn on past the centre beside another arm's
	offTip        = 1e-7 // radians: 0.1 µm at 1 m, less than which an arm counts as on its tip
)

// ticks draws a tick at every tip outside the tip circle, longer where a number
// stands, as one item.
func ticks(b *Board, teeth *tooth.Wheel) {
	step := numberStep(teeth)
	lines := make([]geometry.Line, teeth.Count)
	for i := range lines {
		to := tickTo
		if i%step == 0 {
			to = tickToTenth
		}
		a := teeth.Tip(i)
		lines[i] = geometry.Line{From: geometry.Polar(teeth.TipRadius+tickFrom, a), To: geometry.Polar(teeth.TipRadius+to, a)}
	}
	b.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "teeth.count", Pen: render.Hair, Ink: render.Blue}, lines...)
}

// numberStep returns how many tips lie between numbers: ten, or the next rounder
// count that keeps numbers from running into each other.
func numberStep(teeth *tooth.Wheel) int {
	pitch := 2 * math.Pi * (teeth.TipRadius + numberAt) / float64(teeth.Count)
	for _, step := range []int{10, 20, 50, 100, 200, 500} {
		if float64(step)*pitch >= leastSpacing {
			return step
		}
	}
	return 1000
}

// numbers writes the tips' numbers, every tenth as a rule, leaving out any that
// would stand on an arm's line or its number, or on the first number again.
func numbers(b *Board, teeth *tooth.Wheel, lines []geometry.Angle) {
	step, r := numberStep(teeth), teeth.TipRadius+numberAt
	for i := 0; i < teeth.Count; i += step {
		a := geometry.FullTurn * geometry.Angle(i) / geometry.Angle(teeth.Count)
		crowdsFirst := i > 0 && float64(geometry.FullTurn-a)*r < leastSpacing
		if crowdsFirst || nearAny(a, lines, clearOfArm/r) {
			continue
		}
		writeNumber(b, strconv.Itoa(i), geometry.Polar(r, geometry.Clock(a)), numberHeight, false)
	}
}

// writeNumber writes a tip's number centred on at.
func writeNumber(b *Board, number string, at geometry.Point, height float64, bold bool) {
	b.Write(Stroke{Layer: render.LayerText, Quantity: "teeth.count", Ink: render.Blue}, render.Text{
		At: at, Height: height, Align: render.Middle, Centred: true, Bold: bold, String: number,
	})
}

// nearAny reports whether a lies within margin radians of any of the angles.
func nearAny(a geometry.Angle, angles []geometry.Angle, margin float64) bool {
	for _, o := range angles {
		if math.Abs(float64((a - o).Normal())) < margin {
			return true
		}
	}
	return false
}
