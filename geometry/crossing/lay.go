package crossing

import (
	"fmt"

	"tipline/geometry"
)

// Lay lays a crossing out on a blank. An error is a *geometry.Limit that names the
// field to blame and the nearest value that would do; cautions about a crossing
// that can be laid out are in the layout's Notes.
func Lay(b Blank, s Spec) (Layout, error) {
	l, patterns, err := lay(b, s)
	if err != nil {
		return Layout{}, err
	}
	for i := range patterns {
		if err := patterns[i].pierce(s); err != nil {
			return Layout{}, fmt.Errorf("crossing: %w", err)
		}
	}
	l.Notes = notes(l.Blank, l.Spec, patterns)
	l.Windows = make([]Window, s.Arms)
	for j := range l.Windows {
		l.Windows[j] = l.window(patterns[l.patternOf(j)], j)
	}
	if err := l.checkAdditions(); err != nil {
		return Layout{}, err
	}
	l.balance()
	return l, nil
}

// Solid works out a wheel that is not crossed: of the Spec its screws and additions
// alone count, and of the layout what has to do with arms and windows is left out.
func Solid(b Blank, s Spec) (Layout, error) {
	l := Layout{Spec: Spec{Screws: s.Screws, Additions: s.Additions}, Blank: b.Weighed()}
	if err := b.inRange(); err != nil {
		return Layout{}, err
	}
	if err := l.Spec.additionsInRange(); err != nil {
		return Layout{}, err
	}
	l.figure(nil)
	if err := l.checkAdditions(); err != nil {
		return Layout{}, err
	}
	l.balance()
	return l, nil
}

// lay does what Lay does short of the windows' saw lines and start holes. It also
// returns the windows' patterns: one, or where arms on tips leave unequal windows
// two, the narrow one first.
func lay(b Blank, s Spec) (Layout, []pattern, error) {
	s = s.named()
	if err := inRange(b, s); err != nil {
		return Layout{}, nil, err
	}
	if f := check(b, s); f != sound {
		return Layout{}, nil, limitOf(f, b, s)
	}
	patterns, err := patternsOf(b, s)
	if err != nil {
		return Layout{}, nil, fmt.Errorf("crossing: %w", err)
	}
	l := Layout{
		Spec: s, Blank: b.Weighed(),
		Arms:      placed(b.Count, s),
		RimRadius: b.RootRadius - s.Rim, HubRadius: s.Hub / 2,
		Divides: Divides(s.Arms, b.Count),
	}
	l.figure(patterns)
	l.stiffen()
	return l, patterns, nil
}

// named returns the crossing with its placing and style said.
func (s Spec) named() Spec {
	if s.Placing == "" {
		s.Placing = OnTips
	}
	if s.Style == "" {
		s.Style = Straight
	}
	return s
}

// patternOf returns which pattern the window between arm j and the next has.
func (l Layout) patternOf(j int) int {
	if l.Spec.Placing == Equal {
		return 0
	}
	teeth := l.Blank.Count
	next := l.Arms[(j+1)%len(l.Arms)].Tip
	return (next-l.Arms[j].Tip+teeth)%teeth - teeth/l.Spec.Arms
}

// axis returns the direction of the axis of the window between arm j and the next.
func (l Layout) axis(j int) geometry.Angle {
	return geometry.Clock(l.Arms[j].Angle + between(l.Arms, j)/2)
}

// window returns the pattern as the window between arm j and the next.
func (l Layout) window(p pattern, j int) Window {
	axis := l.axis(j)
	w := Window{
		Outline: p.outline.Rotate(axis),
		Area:    p.area,
		Chord:   chord(l.Blank.TipRadius, between(l.Arms, j)),
	}
	if len(p.saw) == 0 && l.Spec.Allowance == 0 {
		w.Cut = w.Outline.Length()
	}
	for _, line := range p.saw {
		w.SawLine = append(w.SawLine, line.Rotate(axis))
		w.Cut += line.Length()
	}
	if p.hole.Len() > 0 {
		w.Start = p.start.Rotate(axis)
		w.StartHole = p.hole.Rotate(axis)
	}
	return w
}
