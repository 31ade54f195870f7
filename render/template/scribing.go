package template

import (
	"fmt"
	"strconv"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/render"
)

// Measures of a scribing card in millimetres.
const (
	scribeRow     = 4.7
	scribeGap     = 2.6
	scribeLetter  = 8.0  // where a setting's letter stands
	scribeText    = 15.0 // and what it is
	scribeFigures = 96.0 // and where its figure ends
	scribeApart   = 4.0  // between the two at least
	scribeRight   = 102.0
)

// Scribing is the card by which a wheel's windows are scribed with dividers and a
// rule, without its template: every setting by a letter, in the order of the work,
// one window drawn with the letters, and each arm's tip, angle and chords. Every
// centre is found by two settings, from the wheel's centre and from an arm's mark on
// the rim or hub circle. ErrNothing if there is no crossing.
func Scribing(w Wheel, s Style) (*render.Drawing, error) {
	if w.Teeth == nil || w.Crossing == nil || len(w.Crossing.Windows) == 0 {
		return nil, fmt.Errorf("scribing card of %s: %w", w.ID, ErrNothing)
	}
	s.Units.Fractions = false
	c := newCard(w, s, s.Words.Say("cards.scribing.title", "name", w.title()), s.Words.Say("cards.scribing.line"))
	steps := scribing(w, s)
	c.scribeStep(1, scribeStep{title: c.Say("cards.scribing.lines"), how: c.Say("cards.scribing.lines.how")})
	for i, step := range steps {
		c.scribeStep(i+2, step)
	}
	check := c.Say("cards.scribing.check.how")
	if onTheirTips(w.Crossing) {
		check = c.Say("cards.scribing.check.tips")
	}
	c.scribeStep(len(steps)+2, scribeStep{title: c.Say("cards.scribing.check"), how: check})
	c.armTable(w, c.scribingViews(w, s, steps)-8)
	return c.Drawing, nil
}

// scribeStep writes one step: a box to tick, what is done, and its settings.
func (c *card) scribeStep(n int, step scribeStep) {
	c.tick(0, c.y-tickSize)
	title := Wrap(strconv.Itoa(n)+"  "+step.title, 3, scribeFigures-scribeLetter, true)
	for i, line := range title {
		c.text(scribeLetter, c.y-3.6-4.4*float64(i), 3, render.Black, true, "crossing", line)
	}
	c.y -= 4.4*float64(len(title)-1) + 4.4
	for _, setting := range step.settings {
		c.y -= scribeRow
		c.text(scribeLetter, c.y, 2.9, render.Blue, true, setting.quantity, setting.letter)
		value := render.Text{At: geometry.Point{X: scribeFigures, Y: c.y}, Height: 2.9, Align: render.Right, Bold: true, String: c.Style.Units.Length(setting.value())}
		c.Write(Stroke{Layer: render.LayerText, Quantity: setting.quantity}, value)
		what := render.Text{Height: 2.5, String: setting.text}
		room := scribeFigures - value.Width() - scribeText - scribeApart
		c.text(scribeText, c.y, 2.5*min(1, room/what.Width()), render.Black, false, setting.quantity, setting.text)
	}
	if step.how != "" {
		for _, line := range Wrap(step.how, 2.2, scribeFigures-scribeLetter, false) {
			c.y -= 3.8
			c.text(scribeLetter, c.y, 2.2, render.Grey, false, "crossing", line)
		}
	}
	c.y -= scribeGap + 1
}

// armTable writes each arm's tip and angle, the chord to the next on the tip circle,
// and the chord from the first.
func (c *card) armTable(w Wheel, y float64) {
	lay, r := w.Crossing, w.Teeth.TipRadius
	at := []float64{scribeRight + 10, scribeRight + 30, scribeRight + 53, CardWidth}
	cells := func(ink render.Ink, height float64, bold bool, texts ...string) {
		for i, text := range texts {
			c.Write(Stroke{Layer: render.LayerText, Quantity: "crossing.arms", Ink: ink},
				render.Text{At: geometry.Point{X: at[i], Y: y}, Height: height, Align: render.Right, Bold: bold && i == 0, String: text})
		}
	}
	say := func(key string, args ...any) string { return c.Say("cards.scribing.arms."+key, args...) }
	c.text(scribeRight, y, 3, render.Black, true, "crossing.arms", say("title"))
	y -= 4.6
	for _, line := range Wrap(say("on", "radius", c.Style.Units.Length(r)), 2.2, CardWidth-scribeRight, false) {
		c.text(scribeRight, y, 2.2, render.Grey, false, "teeth", line)
		y -= 3.8
	}
	y -= 1.4
	cells(render.Grey, 1.8, false, say("tip"), say("angle"), say("next"), say("first"))
	for j, arm := range lay.Arms {
		y -= scribeRow
		next := lay.Arms[(j+1)%len(lay.Arms)]
		cells(render.Black, 2.5, true, strconv.Itoa(arm.Tip), c.Style.Units.Angle(arm.Angle), c.arcChord(r, arm, next), c.arcChord(r, lay.Arms[0], arm))
	}
	if lay.Spec.Placing == crossing.Equal && !onTheirTips(lay) {
		for _, line := range Wrap(say("off"), 2.2, CardWidth-scribeRight, false) {
			y -= 3.8
			c.text(scribeRight, y, 2.2, render.Grey, false, "crossing.placing", line)
		}
	}
}

// arcChord returns the chord from one arm's line to another's at that radius.
func (c *card) arcChord(r float64, from, to crossing.Arm) string {
	return c.Style.Units.Bare(onArm(r, from).Dist(onArm(r, to)))
}

func onTheirTips(lay *crossing.Layout) bool {
	for _, arm := range lay.Arms {
		if d := float64(arm.Deviation); d > offTip || d < -offTip {
			return false
		}
	}
	return true
}
