package template

import (
	"strconv"

	"tipline/geometry/crossing"
	"tipline/render"
)

// CrossingNotes returns what a crossing template's sheet says beside it.
func CrossingNotes(w Wheel, s Style) Notes {
	n := Notes{Caution: s.Words.Say("cautions.foot.crossing")}
	if w.Crossing != nil {
		n.Legend = crossingLegend(w.Crossing, s)
	}
	n.Legend = append(n.Legend, Mark{Pen: render.Hair, Ink: render.Blue, Text: s.Words.Say("template.legend.tips")})
	n.Figures = append(n.Figures, material(w, s))
	if w.Teeth != nil {
		n.Figures = append(n.Figures,
			Figure{s.Words.Say("template.figure.teeth"), strconv.Itoa(w.Teeth.Count)},
			Figure{s.Words.Say("template.figure.tip-root"), both(s, 2*w.Teeth.TipRadius, 2*w.Teeth.RootRadius)})
	}
	if w.Crossing != nil {
		n.Figures = append(n.Figures, crossingFigures(w.Crossing, s)...)
	}
	return n
}

// both writes two lengths with their unit once.
func both(s Style, a, b float64) string { return s.Units.Bare(a) + " / " + s.Units.Length(b) }

// crossingFigures are the sizes of a crossing.
func crossingFigures(lay *crossing.Layout, s Style) []Figure {
	say, spec := func(key string, args ...any) string { return s.Words.Say("template.figure."+key, args...) }, lay.Spec
	list := []Figure{
		{say("chord"), chords(lay, s)},
		{say("rim-hub"), both(s, spec.Rim, spec.Hub)},
		{say("arm"), both(s, spec.ArmAtRim, spec.ArmAtHub)},
	}
	switch spec.Style {
	case crossing.Swept:
		list = append(list, Figure{say("sweep"), s.Units.Angle(spec.Sweep)})
	case crossing.Waisted:
		list = append(list, Figure{say("waist"), s.Units.Length(spec.Waist)})
	}
	if spec.OuterRadius > 0 {
		list = append(list, Figure{say("outer"), s.Units.Length(spec.OuterRadius)})
	}
	return list
}

// crossingLegend says what the lines of a crossing mean.
func crossingLegend(lay *crossing.Layout, s Style) []Mark {
	legend := []Mark{{Pen: render.Visible, Fill: render.Waste, Text: s.Words.Say("template.legend.waste")}}
	if lay.Spec.Allowance > 0 {
		legend = append(legend, Mark{Pen: render.Hidden, Text: s.Words.Say("template.legend.saw-line", "allowance", s.Units.Length(lay.Spec.Allowance))})
	}
	for _, win := range lay.Windows {
		if win.StartHole.Len() > 0 {
			d := 2 * win.Start.Dist(win.StartHole.Vertex(0).Point)
			legend = append(legend, Mark{Pen: render.Thin, Round: true, Text: s.Words.Say("template.legend.start-hole", "diameter", s.Units.Length(d))})
			break
		}
	}
	if h := lay.Balance; h != nil {
		legend = append(legend, Mark{Pen: render.Hidden, Ink: render.Blue, Round: true, Text: s.Words.Say("template.legend.balance", "diameter", s.Units.Length(h.Diameter))})
	}
	return legend
}

// chords says how far dividers are set from one arm's tip to the next.
func chords(lay *crossing.Layout, s Style) string {
	if len(lay.Windows) == 0 {
		return ""
	}
	low, high := lay.Windows[0].Chord, lay.Windows[0].Chord
	for _, win := range lay.Windows {
		low, high = min(low, win.Chord), max(high, win.Chord)
	}
	if s.Units.Length(low) == s.Units.Length(high) {
		return s.Units.Length(low)
	}
	return s.Words.Say("template.figure.chord.varies", "from", s.Units.Bare(low), "to", s.Units.Length(high))
}

// material names what the wheel is made of and how thick.
func material(w Wheel, s Style) Figure {
	text := s.Words.Choice("material", w.Material.Name)
	if w.Thickness > 0 {
		text += " " + s.Units.Length(w.Thickness)
	}
	return Figure{s.Words.Say("template.figure.material"), text}
}

// CardNotes returns what a card's sheet says beside it; step is "blank",
// "setting" or "dividing".
func CardNotes(step string, s Style) Notes {
	key := "cautions.foot." + step
	if !s.Words.Has(key) {
		return Notes{}
	}
	return Notes{Caution: s.Words.Say(key)}
}
