package template

import (
	"fmt"

	"tipline/assets/tables"
	"tipline/geometry/mount"
	"tipline/render"
)

// DrillingCard is the card for screwing a wheel to its collet: the drills in the order
// they are used, the wheel's middle enlarged with its sizes, and the holes' angles.
// ErrNothing if no screws hold the wheel.
func DrillingCard(w Wheel, s Style) (*render.Drawing, error) {
	if w.Mounting == nil || len(w.Mounting.Places) == 0 {
		return nil, fmt.Errorf("drilling card of %s: %w", w.ID, ErrNothing)
	}
	c := newCard(w, s, s.Words.Say("cards.drilling.title", "name", w.title()), s.Words.Say("cards.drilling.line"))
	hub := 0.0
	if w.Crossing != nil {
		hub = 2 * w.Crossing.HubRadius
	}
	c.drilled(*w.Mounting, w.Thread, w.Collet, w.Bore, hub, nil)
	return c.Drawing, nil
}

// drilled writes how a mounting is drilled, and draws it; parts, where there are any,
// stand under the holes' angles.
func (c *card) drilled(m mount.Mounting, thread tables.Thread, collet mount.Collet, bore, hub float64, parts *render.Drawing) {
	say := func(key string, args ...any) string { return c.Say("cards.drilling."+key, args...) }
	c.instruct("mount.screw_circle", say("punch"), say("punch.how"))
	if m.Starter.MM > 0 {
		c.instruct("mount.thread", say("start", "drill", drillText(m.Starter, c.Style)), say("start.how"))
	}
	c.instruct("mount.thread", say("tap-drill", "drill", drillText(m.Tap, c.Style)), say("tap-drill.how", "depth", c.Style.Units.Length(m.Depth)))
	c.instruct("mount.screws", say("mark"), say("mark.how"))
	c.instruct("mount.thread", say("clear", "drill", drillText(m.Clear, c.Style)), say("clear.how"))
	c.instruct("mount.thread", say("tap", "thread", thread.Name()), say("tap.how"))
	middle := (cardColumn + cardWidth) / 2
	low := c.right(holeAngles(c.Part, m.Places, c.Style).Drawing, middle, 0)
	if parts != nil {
		low = c.right(parts, middle, low-6)
	}
	c.y = min(c.y, low-4)
	c.rule(c.y)
	key := NewBoard(c.Part, c.Style)
	mountKey(key, m, collet, bore, hub)
	c.y = c.centred(key.Drawing, c.y-6)
}

// centred places a drawing across the card, its top there, and returns its lowest.
func (c *card) centred(d *render.Drawing, top float64) float64 { return c.right(d, cardWidth/2, top) }
