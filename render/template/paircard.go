package template

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// Measures of a depthing card in millimetres: the picture of the mesh, and how the
// steps stand below it, two side by side.
const (
	cardMesh   = 84.0 // its width at most
	cardHigh   = 64.0 // and its height, so that two cards stand on a sheet
	cardStep   = 86.0 // width of a step
	cardSteps  = 92.0 // from one column of steps to the next
	cardFigure = 80.0 // width of the figures left of the picture
)

// DepthingCard is the card for setting the centres of a pair: the distance, large,
// the pair's figures, the mesh where its speed strays most, and room for what was measured.
// DepthingSteps says how. ErrNothing if the pair was not turned in mesh.
func DepthingCard(p Pair, s Style) (*render.Drawing, error) {
	if len(p.Turn.Steps) == 0 {
		return nil, fmt.Errorf("depthing card of %s: %w", p.ID, ErrNothing)
	}
	c := newCard(Wheel{ID: p.ID}, s, s.Words.Say("cards.depthing.title", "name", p.Name), s.Words.Say("cards.depthing.line"))
	c.text(0, c.y-labelHeight, labelHeight, render.Black, false, "centres", c.Say("cards.depthing.centres"))
	c.text(0, c.y-labelHeight-5-largeHeight, largeHeight, render.Black, true, "centres", s.Units.Fine(p.Turn.Centres))
	c.text(0, c.y-labelHeight-5-largeHeight-9, 5, render.Grey, false, "centres", c.other().Fine(p.Turn.Centres))
	c.y -= 30
	if p.Turn.Jams() {
		c.text(0, c.y-labelHeight, labelHeight, render.Black, true, "centres", c.Say("cards.depthing.jams"))
		c.y -= 8
	}
	for _, f := range depthingFigures(p, s) {
		c.figure(f)
	}
	c.beside(cardColumn, worstMesh(p, s))
	c.pencil(c.Say("cards.depthing.measured", "unit", s.Units.Name()))
	return c.Drawing, nil
}

// depthingFigures are a pair's figures as the card lists them.
func depthingFigures(p Pair, s Style) []Figure {
	t, u := p.Turn, s.Units
	say := func(key string, args ...any) string { return s.Words.Say("cards.depthing."+key, args...) }
	return []Figure{
		{say("wheel"), say("count", "n", p.Driver.Count, "diameter", u.Length(2*p.Driver.PitchRadius))},
		{say("pinion"), say("count", "n", p.Follower.Count, "diameter", u.Length(2*p.Follower.PitchRadius))},
		{say("ratio"), u.Ratio(p.ratio())},
		{say("nominal"), u.Fine(p.Nominal)},
		{say("backlash"), u.Length(t.PitchPlay)},
		{say("contact"), u.Number(t.Contact, 2)},
		{say("approach"), u.Angle(t.Approach)},
	}
}

// figure writes a figure with its name left of it and a hairline below.
func (c *card) figure(f Figure) {
	c.text(0, c.y-2.5, 2.5, render.Grey, false, "centres", f.Label)
	c.Write(Stroke{Layer: render.LayerText, Quantity: "centres", Ink: render.Black}, render.Text{
		At: geometry.Point{X: cardFigure, Y: c.y - 2.5}, Height: 2.5, Align: render.Right, String: f.Value,
	})
	c.y -= 5.4
}

// DepthingScale returns the scale of the picture on a pair's depthing card: "10 : 1".
func DepthingScale(p Pair, s Style) string {
	return scaleText(p.cardScale(), s)
}

// cardScale returns the greatest standard scale for which the card has room.
func (p Pair) cardScale() float64 {
	box := p.shown()
	return standardScale(math.Min(cardMesh/box.Width(), cardHigh/box.Height()))
}

// worstMesh draws the mesh where the speed strays most, at the greatest scale of ISO
// 5455 that has room, and says by how much and at which scale.
func worstMesh(p Pair, s Style) *render.Drawing {
	b := NewBoard(p.ID, s)
	m := newMeshing(b, p, p.place(float64(p.Turn.WorstStep)/float64(len(p.Turn.Steps))), cardMesh)
	m.scale = p.cardScale()
	m.draw()
	frame := m.frame()
	b.Write(Stroke{Layer: render.LayerText, Quantity: "centres", Ink: render.Grey}, render.Text{
		At: geometry.Point{X: frame.Centre().X, Y: frame.Min.Y - 5}, Height: 2.5, Align: render.Middle,
		String: b.Say("cards.depthing.worst", "error", signed(s.Units.Number, 100*(m.place.speed/p.Turn.Mean-1))),
	})
	b.Write(Stroke{Layer: render.LayerText, Quantity: "centres", Ink: render.Grey}, render.Text{
		At: geometry.Point{X: frame.Centre().X, Y: frame.Min.Y - 9.5}, Height: 2.5, Align: render.Middle,
		String: b.Say("cards.depthing.scale", "scale", DepthingScale(p, s)),
	})
	return b.Drawing
}

// DepthingSteps is the card that says of every pair how a depthing tool is set by its card,
// and what to look for, in two columns.
func DepthingSteps(s Style) *render.Drawing {
	c := newCard(Wheel{}, s, s.Words.Say("cards.depthing.steps"), "")
	for i, step := range []string{"set", "shake", "run", "mark"} {
		if i == 2 {
			c.y = 0
		}
		c.stepBeside(cardSteps*float64(i/2), c.Say("cards.depthing."+step), c.Say("cards.depthing."+step+".how"))
	}
	return c.Drawing
}

// stepBeside writes a step without a figure in a column of the card.
func (c *card) stepBeside(x float64, label, how string) {
	c.tick(x, c.y-tickSize)
	c.text(x+8, c.y-labelHeight-0.4, labelHeight, render.Black, true, "centres", label)
	y := c.y - labelHeight - 0.4
	for _, line := range Wrap(how, 2.5, cardStep-10, false) {
		y -= 4.4
		c.text(x+8, y, 2.5, render.Grey, false, "centres", line)
	}
	c.y = y - 6
}

// pencil leaves a line at the foot of the card to write on.
func (c *card) pencil(label string) {
	y := c.Drawing.Bounds().Min.Y - 9
	t := c.text(0, y, labelHeight, render.Black, false, "centres", label)
	c.Line(Stroke{Layer: render.LayerText, Quantity: "centres", Pen: render.Thin},
		geometry.Line{From: geometry.Point{X: t.Width() + 3, Y: y - 1}, To: geometry.Point{X: CardWidth, Y: y - 1}})
}
