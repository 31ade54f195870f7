package template

import (
	"fmt"

	"tipline/render"
)

// DepthingCard is the card for setting the centres of a pair. ErrNothing if the
// pair was not turned in mesh.
func DepthingCard(p Pair, s Style) (*render.Drawing, error) {
	if len(p.Turn.Steps) == 0 {
		return nil, fmt.Errorf("depthing card of %s: %w", p.ID, ErrNothing)
	}
	c := newCard(Wheel{ID: p.ID}, s, s.Words.Say("cards.depthing.title", "name", p.Name), s.Words.Say("cards.depthing.line"))
	c.length("centres", c.Say("cards.depthing.centres"), p.Turn.Centres)
	return c.Drawing, nil
}
