package desk

import (
	"strings"

	"tipline/app/solve"
	"tipline/geometry/measure"
	"tipline/geometry/mount"
)

// Summary returns one line that says what the present step comes to, empty when it
// cannot be worked out.
func (d *Desk) Summary() string {
	if d.at() == Paper {
		return d.paperSummary()
	}
	if d.Awaits() {
		return d.words.Say("summary.working")
	}
	switch p := d.of(d.part).(type) {
	case nil:
		return d.words.Say("summary.none")
	case *solve.Pair:
		return d.pairSummary(p)
	case *solve.Train:
		return d.trainSummary(p)
	case *solve.Stack:
		return d.stackSummary(p)
	case solve.Made:
		return d.madeSummary(p)
	}
	return ""
}

func (d *Desk) madeSummary(p solve.Made) string {
	u, w := d.Style().Units, p.Template()
	switch {
	case d.at() == Cutter && w.Cut != nil && w.Cut.SetOver == 0:
		return d.words.Say("summary.space", "infeed", u.Length(w.Cut.Infeed))
	case d.at() == Cutter && w.Cut != nil:
		return d.words.Say("summary.cutter", "setover", u.Length(w.Cut.SetOver), "infeed", u.Length(w.Cut.Infeed))
	case d.at() == Dividing && w.Dividing != nil && w.Dividing.Circle == 0:
		return d.words.Say("summary.turns", "turns", w.Dividing.Turns)
	case d.at() == Dividing && w.Dividing != nil:
		return d.words.Say("summary.holes", "turns", w.Dividing.Turns, "holes", w.Dividing.Holes, "circle", w.Dividing.Circle)
	case d.at() == Mounting && w.Teeth != nil:
		return d.mountSummary(d.wheel())
	case w.Lantern != nil:
		l := w.Lantern
		return d.words.Say("summary.shrouds", "count", len(l.Holes), "trundle", u.Length(l.TrundleDiameter), "circle", u.Length(2*l.PitchRadius))
	case w.Teeth != nil && w.Hand == "":
		return d.words.Say("summary.leaves", "leaves", w.Teeth.Count, "tip", u.Length(2*w.Teeth.TipRadius), "root", u.Length(2*w.Teeth.RootRadius))
	case w.Teeth != nil:
		return d.words.Say("summary.teeth", "teeth", w.Teeth.Count, "tip", u.Length(2*w.Teeth.TipRadius), "root", u.Length(2*w.Teeth.RootRadius))
	}
	return d.words.Say("summary.unbuilt")
}

// mountSummary tells the screws, or that there are none, and whose they are.
func (d *Desk) mountSummary(w *solve.Wheel) string {
	stack := ""
	if w.Stack != "" {
		stack = d.words.Say("summary.stacked", "stack", d.Name(w.Stack))
	}
	if w.Mounting == nil {
		return d.words.Say("summary.unscrewed") + stack
	}
	return d.screws(*w.Mounting) + stack
}

func (d *Desk) screws(m mount.Mounting) string {
	return d.words.Say("summary.screws", "count", len(m.Places), "thread", threadLabel(m.Screws.Thread), "circle", d.Style().Units.Length(m.Screws.Circle))
}

func (d *Desk) stackSummary(s *solve.Stack) string {
	switch {
	case s.Stacked == nil:
		return d.words.Say("summary.unbuilt")
	case len(s.Stacked.Mounting.Places) == 0:
		return d.words.Say("summary.unscrewed")
	}
	return d.screws(s.Stacked.Mounting)
}

func (d *Desk) pairSummary(p *solve.Pair) string {
	if p.Turn == nil {
		return d.words.Say("summary.no-mesh")
	}
	u := d.Style().Units
	return d.words.Say("summary.pair", "centres", u.Fine(p.Turn.Centres), "ratio", d.plain(p.Turn.Mean, 3))
}

func (d *Desk) trainSummary(t *solve.Train) string {
	if t.Way == nil {
		return d.words.Say("summary.no-train")
	}
	ratio := t.Way.Ratio.Num().String() + " : " + t.Way.Ratio.Denom().String()
	if t.Beat == nil {
		return d.words.Say("summary.train", "ratio", ratio)
	}
	beats, _ := t.Beat.PerHour.Float64()
	return d.words.Say("summary.beat", "ratio", ratio, "beats", d.plain(beats, 1), "pendulum", d.Style().Units.Length(t.Beat.Length))
}

// plain writes a number with as many decimals, so many at most, as it needs.
func (d *Desk) plain(v float64, decimals int) string {
	text := d.Style().Units.Number(v, decimals)
	if strings.ContainsAny(text, ".,") {
		text = strings.TrimRight(strings.TrimRight(text, "0"), ".,")
	}
	return text
}

// Missing says why there is no drawing of a part; a job without parts says it
// elsewhere.
func (d *Desk) Missing() string {
	switch {
	case d.at() == Paper && d.layingOut():
		return d.words.Say("summary.laying")
	case d.at() == Paper && d.packet.err == nil:
		return d.words.Say("printing.nothing")
	case d.part == "":
		return ""
	}
	w := d.wheel()
	switch {
	case w != nil && d.at() == Cutter && formOf(w.Part.Teeth) == "measured":
		return d.words.Say("window.no-form")
	case d.at() == Cutter && d.cutterOf(d.part) == nil:
		return d.words.Say("window.no-cutter")
	case d.at() == Dividing && !d.built(Dividing):
		return d.words.Say("window.no-dividing")
	}
	return d.words.Say("window.nothing")
}

// Unit returns the length in millimetres and the name of the job's unit.
func (d *Desk) Unit() (mm float64, name string) {
	if u := d.Style().Units.Unit; u == measure.Inch {
		return measure.MMPerInch, string(u)
	}
	return 1, string(measure.MM)
}

// BarLine says how long the scale bar is, given in the job's unit.
func (d *Desk) BarLine(length float64) string {
	_, unit := d.Unit()
	return d.plain(length, 4) + " " + unit
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
