package template

import (
	"fmt"

	"tipline/geometry"
	"tipline/render"
)

// TrainCard is the card of a train: its picture, what it comes to in large figures,
// and the counts to check the finished train by. ErrNothing if it has no pairs.
func TrainCard(t Train, s Style) (*render.Drawing, error) {
	if len(t.Arbors) < 2 {
		return nil, fmt.Errorf("train card of %s: %w", t.ID, ErrNothing)
	}
	line := "cards.train.line"
	if t.Arbors[len(t.Arbors)-1].Driver.Count > 0 {
		line = "cards.train.line.escape"
	}
	c := newCard(Wheel{ID: t.ID}, s, s.Words.Say("cards.train.title", "name", t.title()), s.Words.Say(line))
	d := drawTrain(t, s).Drawing
	of := d.Bounds()
	c.Drawing.Add(d.Placed(geometry.Point{X: CardWidth/2 - of.Centre().X, Y: -of.Max.Y}, 1, 0).Items...)
	c.y = -of.Height() - 8
	c.rule(c.y)
	c.y -= 7
	for _, f := range t.figures(s) {
		c.read(f)
	}
	return c.Drawing, nil
}

// figures are what a train comes to.
func (t Train) figures(s Style) []Figure {
	say := func(key string) string { return s.Words.Say("cards.train." + key) }
	list := []Figure{{say("ratio"), s.Units.Ratio(t.Ratio)}}
	if b := t.Beat; b != nil {
		list = append(list, Figure{say("beats"), s.Units.Exact(b.PerHour)}, Figure{say("pendulum"), s.Units.Both(b.Length)})
	}
	return list
}

// read writes a large figure with its name.
func (c *card) read(f Figure) {
	c.text(0, c.y-labelHeight, labelHeight, render.Grey, false, "to", f.Label)
	c.text(0, c.y-labelHeight-3-valueHeight, valueHeight, render.Black, true, "to", f.Value)
	c.y -= stepHeight
}
