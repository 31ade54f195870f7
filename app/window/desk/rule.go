package desk

import (
	"slices"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/screen"
)

// rule is what is measured on the drawing: the places picked so far, three at most,
// and the places that the pointer is drawn to.
type rule struct {
	taken  bool
	picked []screen.Snap
	snaps  screen.Snaps
	of     *render.Drawing // whose snaps they are
}

// rulePicks is how many places a rule is laid on at most.
const rulePicks = 3

// snapReach is how near, in pixels, the pointer is drawn to a place.
const snapReach = 10

// Measuring reports whether the rule is taken up.
func (d *Desk) Measuring() bool { return d.rule.taken }

// TakeRule takes the rule up, or lays it down. While points of a photograph are picked,
// and where there is no drawing, it cannot be taken up.
func (d *Desk) TakeRule(up bool) {
	if up == d.rule.taken || up && (d.picking != nil || d.ruled() == nil) {
		return
	}
	d.rule = rule{taken: up}
	d.history.EndRun()
	d.Changed()
}

// ruled returns the drawing that is measured. What was picked on another is forgotten.
func (d *Desk) ruled() *render.Drawing {
	drawing, _ := d.Seen()
	if r := &d.rule; drawing != r.of {
		r.of, r.picked, r.snaps = drawing, nil, screen.Snaps{}
		if drawing != nil && r.taken {
			r.snaps = screen.SnapsOf(drawing)
		}
	}
	return drawing
}

// SnapTo returns the place of the drawing that a pointer at a pixel is drawn to; where
// there is none, the place that it is on.
func (d *Desk) SnapTo(v screen.View, at screen.Pixel) screen.Snap {
	d.ruled()
	if s, ok := d.rule.snaps.Near(v, at, snapReach); ok {
		return s
	}
	return screen.Snap{At: v.ToDrawing(at)}
}

// LayRule lays the rule on a place. On three already, it begins anew; on the place it was
// laid on last, it stays as it is.
func (d *Desk) LayRule(on screen.Snap) {
	if d.ruled() == nil || !d.rule.taken {
		return
	}
	r := &d.rule
	if len(r.picked) == rulePicks {
		r.picked = nil
	}
	if n := len(r.picked); n == 0 || r.picked[n-1].At != on.At {
		r.picked = append(r.picked, on)
	}
}

// Ruled returns the places that the rule is laid on.
func (d *Desk) Ruled() []geometry.Point {
	d.ruled()
	at := make([]geometry.Point, len(d.rule.picked))
	for i, p := range d.rule.picked {
		at[i] = p.At
	}
	return at
}

// SnapWord says what kind of place it is; nothing for a free one.
func (d *Desk) SnapWord(k screen.Kind) string {
	if k == screen.Free {
		return ""
	}
	return d.words.Say("snap." + snapNames[k])
}

var snapNames = map[screen.Kind]string{
	screen.OnLine: "line", screen.Centre: "centre", screen.Middle: "middle",
	screen.Crossing: "crossing", screen.End: "end", screen.Tip: "tip",
}

// along returns the places the rule is laid on and the one the pointer is drawn to, in
// their order: after three the pointer's counts no more.
func (d *Desk) along(pointer *screen.Snap) []screen.Snap {
	d.ruled()
	all := slices.Clone(d.rule.picked)
	if pointer != nil && len(all) < rulePicks && (len(all) == 0 || all[len(all)-1].At != pointer.At) {
		all = append(all, *pointer)
	}
	return all
}

// RuleOpen reports whether the rule can be laid on another place without beginning anew.
func (d *Desk) RuleOpen() bool { return len(d.rule.picked) < rulePicks }
