package sheet

import (
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// A rule is the pair of bars one sheet carries in one direction: 100 mm with a
// tick at every 10 mm, and back to back with it 4 in with a tick at every ¼ in.
const (
	barGap      = 1.6 // between the two bars; ISO 128 asks for 0.7 at least
	barTick     = 1.5
	barLongTick = 2.4
	barReach    = barLongTick + 0.7 // from a bar's base line to its lettering
	ruleBelow   = barReach + heightSmall + 0.7
	ruleAbove   = barGap + barReach + heightSmall
)

// rule draws the pair of bars. along is the unit vector along them and up the one
// toward the millimetre bar's ticks; at is the start of the inch bar's base line
// with the lettering below it, of that height.
func rule(b *template.Board, at, along, up geometry.Point, high float64) {
	turn := along.Direction()
	bar(b, at.Add(up.Times(barGap)), along, up, BarMillimetres, 10, 5)
	bar(b, at, along, up.Times(-1), BarInches, 16, 4)
	measured(b, "sheet.bar.mm", at.Add(along.Times(BarMillimetres/2)).Add(up.Times(barGap+barReach)), turn, high)
	measured(b, "sheet.bar.inch", at.Add(along.Times(BarInches/2)).Add(up.Times(-barReach-high)), turn, high)
}

// bar draws one bar with ticks that divide it into parts, every nth of them long.
func bar(b *template.Board, at, along, up geometry.Point, length float64, parts, nth int) {
	b.Line(template.Stroke{Layer: render.LayerSheet, Quantity: "sheet.bar", Pen: render.Thin},
		geometry.Line{From: at, To: at.Add(along.Times(length))})
	ticks := make([]geometry.Line, 0, parts+1)
	for i := 0; i <= parts; i++ {
		to := barTick
		if i%nth == 0 {
			to = barLongTick
		}
		from := at.Add(along.Times(length * float64(i) / float64(parts)))
		ticks = append(ticks, geometry.Line{From: from, To: from.Add(up.Times(to))})
	}
	b.Line(template.Stroke{Layer: render.LayerSheet, Pen: render.Thin}, ticks...)
}

// measured writes a bar's name with room beside it for what a rule shows.
func measured(b *template.Board, key string, middle geometry.Point, turn geometry.Angle, high float64) {
	b.Write(template.Stroke{Layer: render.LayerSheet, Ink: render.Black}, render.Text{
		At: middle, Height: high, Align: render.Middle, Turn: turn, String: b.Say(key),
	})
}
