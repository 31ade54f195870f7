package template

import (
	"fmt"

	"tipline/assets/tables"
	"tipline/geometry"
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
	c.drilled(*w.Mounting, w.Thread, w.Collet, w.Bore, hub, s.Words.Say("cards.drilling.punch.how"), s.Words.Say("cards.drilling.mark.how"))
	return c.Drawing, nil
}

// A drilling card is so narrow that it stands beside its template.
const (
	drillingWide   = 82.0
	drillingCloser = 1.5 // its steps stand closer than others by
)

// drilled writes how a mounting is drilled, its parts seated and marked as said, and below it the holes' angles and the
// mounting enlarged.
func (c *card) drilled(m mount.Mounting, thread tables.Thread, collet mount.Collet, bore, hub float64, punch, mark string) {
	c.wide = drillingWide
	say := func(key string, args ...any) string { return c.Say("cards.drilling."+key, args...) }
	step := func(q geometry.Quantity, label, how string) {
		c.instruct(q, label, how)
		c.y += drillingCloser
	}
	step("mount.screw_circle", say("punch"), punch)
	if m.Starter.MM > 0 {
		step("mount.thread", say("start", "drill", drillText(m.Starter, c.Style)), say("start.how"))
	}
	step("mount.thread", say("tap-drill", "drill", drillText(m.Tap, c.Style)), say("tap-drill.how", "depth", c.Style.Units.Length(m.Depth)))
	step("mount.screws", say("mark"), mark)
	step("mount.thread", say("clear", "drill", drillText(m.Clear, c.Style)), say("clear.how"))
	step("mount.thread", say("tap", "thread", threadName(thread, c.Style)), say("tap.how"))
	c.ruled(c.y, drillingWide)
	key := NewBoard(c.Part, c.Style)
	mountKey(key, m, collet, bore, hub)
	low := c.right(key.Drawing, key.Drawing.Bounds().Width()/2, c.y-3)
	c.y = c.right(holeAngles(c.Part, m.Places, c.Style).Drawing, drillingWide/2, low-4)
}
