package desk

import (
	"strconv"

	"tipline/geometry/crossing"
	"tipline/geometry/measure"
)

// Summary returns one line that says what the present step comes to, empty when it
// cannot be worked out.
func (d *Desk) Summary() string {
	w, u := d.wheel(), d.Style().Units
	if d.step == Paper {
		return d.paperSummary()
	}
	if w == nil {
		return d.words.Say("summary.none")
	}
	switch {
	case d.step == Cutter && w.Cut != nil && w.Cut.SetOver == 0:
		return d.words.Say("summary.space", "infeed", u.Length(w.Cut.Infeed))
	case d.step == Cutter && w.Cut != nil:
		return d.words.Say("summary.cutter", "setover", u.Length(w.Cut.SetOver), "infeed", u.Length(w.Cut.Infeed))
	case d.step == Dividing && w.Dividing != nil && w.Dividing.Circle == 0:
		return d.words.Say("summary.turns", "turns", w.Dividing.Turns)
	case d.step == Dividing && w.Dividing != nil:
		return d.words.Say("summary.holes", "turns", w.Dividing.Turns, "holes", w.Dividing.Holes, "circle", w.Dividing.Circle)
	case w.Teeth != nil:
		return d.words.Say("summary.teeth", "teeth", w.Teeth.Count, "tip", u.Length(2*w.Teeth.TipRadius), "root", u.Length(2*w.Teeth.RootRadius))
	}
	return d.words.Say("summary.unbuilt")
}

// Comparison is a table of what other choices would come to, its first row the
// headings; Chosen is the row that was chosen.
type Comparison struct {
	Title  string
	Rows   [][]string
	Chosen int
}

// Compare returns what one arm fewer and one or two more would come to, false on
// other steps and where there is no crossing.
func (d *Desk) Compare() (Comparison, bool) {
	w := d.wheel()
	if d.step != Crossing || w == nil || w.Crossing == nil {
		return Comparison{}, false
	}
	say, u := d.words.Say, d.Style().Units
	arms := w.Crossing.Spec.Arms
	c := Comparison{Title: say("compare.title")}
	c.Rows = append(c.Rows, []string{say("compare.arms"), say("compare.mass"), say("compare.windup")})
	for _, r := range crossing.Compare(w.Crossing.Blank, w.Crossing.Spec, around(arms)) {
		row := []string{strconv.Itoa(r.Arms), say("compare.none"), say("compare.none")}
		if r.Err == nil {
			row = []string{strconv.Itoa(r.Arms), u.Number(r.Mass, 1), u.Number(r.WindUp, 2)}
		}
		if r.Arms == arms {
			c.Chosen = len(c.Rows)
		}
		c.Rows = append(c.Rows, row)
	}
	return c, true
}

// around returns three counts of arms about one.
func around(arms int) []int {
	least, most := 3, 12
	first := min(max(arms-1, least), most-2)
	return []int{first, first + 1, first + 2}
}

// Missing says why there is no drawing of a part; a job without parts says it
// elsewhere.
func (d *Desk) Missing() string {
	if len(d.Job().Wheels) == 0 {
		return ""
	}
	if w := d.wheel(); w != nil && d.step == Cutter && formOf(w.Part.Teeth) == "measured" {
		return d.words.Say("window.no-form")
	}
	return d.words.Say("window.nothing")
}

// Unit returns the length in millimetres and the name of the job's unit.
func (d *Desk) Unit() (mm float64, name string) {
	if u := d.Style().Units.Unit; u == measure.Inch {
		return 25.4, string(u)
	}
	return 1, string(measure.MM)
}

// ZoomLine says how far the drawing is zoomed, and whether it is an older one.
func (d *Desk) ZoomLine(magnification float64, fitted bool) string {
	decimals := 1
	if magnification >= 20 {
		decimals = 0
	}
	line := d.words.Say("window.zoom", "zoom", d.Style().Units.Number(magnification, decimals))
	if fitted {
		line += "  ·  " + d.words.Say("window.fit")
	}
	_, unit := d.Unit()
	line += "  ·  " + unit
	if _, stale := d.Drawing(); stale {
		line = d.words.Say("window.stale") + "  ·  " + line
	}
	return line
}
