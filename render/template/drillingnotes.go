package template

import (
	"strings"

	"tipline/assets/tables"
	"tipline/geometry/mount"
	"tipline/render"
)

// Limits of drilling that the notes speak of: common practice, no source.
const (
	fineDrill   = 1.2  // mm, below which a drill is called fine
	deepHole    = 10.0 // drill diameters
	edgeScrews  = 1.5  // screw diameters from a screw's centre to an edge
	sameMeasure = 1e-6 // mm
)

// DrillingNotes returns what a drilling template's sheet says beside it.
func DrillingNotes(w Wheel, s Style) Notes {
	if w.Mounting == nil {
		return Notes{Caution: s.Words.Say("cautions.foot.drilling")}
	}
	return mountNotes(*w.Mounting, threadName(w.Thread, s), s)
}

// threadName returns what a thread is called on paper: a metric one by its size and its
// pitch, "M1 × 0.25", the way ISO 965-1 writes them (from memory).
func threadName(t tables.Thread, s Style) string {
	if name := t.Short(); name == t.Name() {
		return name
	}
	return t.Size + " × " + strings.TrimRight(s.Units.Number(t.Pitch, 2), "0")
}

// mountNotes says of a mounting what its lines mean and what it is drilled with.
func mountNotes(m mount.Mounting, thread string, s Style) Notes {
	say := func(key string, args ...any) string { return s.Words.Say("template."+key, args...) }
	n := Notes{Caution: drillingCaution(m, s)}
	n.Legend = []Mark{
		{Pen: render.Visible, Round: true, Text: say("legend.screws")},
		{Pen: render.Centre, Ink: render.Blue, Text: say("legend.screw-circle")},
	}
	if m.Collet.Register > 0 || m.Collet.Flange > 0 {
		n.Legend = append(n.Legend, Mark{Pen: render.Hidden, Text: say("legend.collet")})
	}
	n.Legend = append(n.Legend, Mark{Pen: render.Hair, Ink: render.Blue, Text: say("legend.tips")})
	n.Figures = []Figure{
		{say("figure.screws"), say("drilling.screws", "n", len(m.Places), "thread", thread)},
		{say("figure.drills"), drillOrder(m, s)},
	}
	if m.Chord > 0 {
		n.Figures = append(n.Figures, Figure{say("figure.screw-chord"), s.Units.Fine(m.Chord)})
	}
	n.Figures = append(n.Figures, Figure{say("figure.edge"), say("drilling.edge", "edge", s.Units.Length(m.Edge), "share", s.Units.Number(m.Edge/m.Screws.Thread.Major, 1))})
	if m.Depth > 0 && m.Tap.MM > 0 {
		n.Figures = append(n.Figures, Figure{say("figure.depth"), say("drilling.depth", "depth", s.Units.Length(m.Depth), "times", s.Units.Number(m.Depth/m.Tap.MM, 1))})
	}
	return n
}

// drillOrder names the drills in the order they are used.
func drillOrder(m mount.Mounting, s Style) string {
	var names []string
	if m.Starter.MM > 0 {
		names = append(names, s.Units.Length(m.Starter.MM))
	}
	for _, d := range []mount.Drill{m.Tap, m.Clear} {
		if d.Name != "" {
			names = append(names, d.Name)
		} else {
			names = append(names, s.Units.Length(d.MM))
		}
	}
	return strings.Join(names, ", ")
}

// drillingCaution is the caution at the foot: fine drills and deep holes have their
// own sentences.
func drillingCaution(m mount.Mounting, s Style) string {
	lines := []string{s.Words.Say("cautions.foot.drilling")}
	if m.Tap.MM > 0 && m.Tap.MM < fineDrill {
		lines = append(lines, s.Words.Say("cautions.foot.drilling.fine"))
	}
	if m.Tap.MM > 0 && m.Depth > deepHole*m.Tap.MM {
		lines = append(lines, s.Words.Say("cautions.foot.drilling.deep"))
	}
	if m.Edge < edgeScrews*m.Screws.Thread.Major-sameMeasure {
		lines = append(lines, s.Words.Say("cautions.foot.drilling.edge"))
	}
	return strings.Join(lines, " ")
}
