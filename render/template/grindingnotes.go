package template

import (
	"tipline/geometry/cutter"
	"tipline/render"
)

// GrindingNotes returns what the sheet of the grinding template for the rake face
// says beside it.
func GrindingNotes(w Wheel, s Style) Notes { return GrindingSideNotes(w, s, RakeFace) }

// GrindingSideNotes returns what the sheet of a grinding template says beside it: the
// settings the form is ground and fed to, how depths are drawn, and what the
// grinding wheel's edge may be.
func GrindingSideNotes(w Wheel, s Style, side Side) Notes {
	n := Notes{Caution: s.Words.Say("cautions.foot.grinding")}
	laid, err := w.laid(side)
	if err != nil {
		return n
	}
	n.Figures = append(n.Figures, settingFigures(w, s)...)
	n.Figures = append(n.Figures, laidFigures(w, s, side, laid)...)
	n.Figures = append(n.Figures, reliefFigures(w, s)...)
	if least := laid.Form.SmallestConcave(); least > 0 {
		n.Figures = append(n.Figures, Figure{s.Words.Say("template.figure.wheel-edge"), s.Words.Say("template.figure.wheel-edge.most", "radius", s.Units.Length(least))})
	}
	n.Legend = grindingLegend(w, s, laid)
	return n
}

// settingFigures are what the form is set and fed to.
func settingFigures(w Wheel, s Style) []Figure {
	land := s.Units.Fine(w.Cut.Land)
	if w.Cut.Land == 0 {
		land = s.Words.Say("template.figure.pointed")
	}
	var figures []Figure
	if w.Cut.SetOver != 0 {
		figures = append(figures, Figure{s.Words.Say("template.figure.set-over"), s.Units.Fine(w.Cut.SetOver)})
	}
	return append(figures,
		Figure{s.Words.Say("template.figure.infeed"), s.Units.Fine(w.Cut.Infeed)},
		Figure{s.Words.Say("template.figure.land"), land},
		Figure{s.Words.Say("template.figure.root"), s.Units.Fine(2 * w.Cut.RootRadius)})
}

// laidFigures say by which relation depths are drawn where they are not those along
// the infeed (Machinery's Handbook, forming tools), and how closely arcs follow it.
func laidFigures(w Wheel, s Style, side Side, laid cutter.Shrunk) []Figure {
	share, rake := s.Units.Number(laid.Share, 4), s.Units.Angle(w.Rake)
	text := s.Words.Say("template.figure.laid.face", "rake", rake, "share", share)
	if side == ClearanceFace {
		clearance := s.Units.Angle(w.Relief.Clearance)
		text = s.Words.Say("template.figure.laid.clearance", "clearance", clearance, "share", share)
		if w.Rake != 0 {
			text = s.Words.Say("template.figure.laid.raked", "clearance", clearance, "rake", rake, "share", share)
		}
	} else if w.Rake == 0 {
		return nil
	}
	figures := []Figure{{s.Words.Say("template.figure.laid"), text}}
	if laid.Off > 0 {
		figures = append(figures, Figure{s.Words.Say("template.figure.fitted"), s.Words.Say("template.figure.micrometres", "length", s.Units.Number(1000*laid.Off, 1))})
	}
	return figures
}

// reliefFigures are what the relief is ground to.
func reliefFigures(w Wheel, s Style) []Figure {
	r := w.Relief
	if r == nil {
		return nil
	}
	figures := []Figure{{s.Words.Say("template.figure.tilt"), s.Units.Angle(r.Clearance)}}
	if width := w.Cut.Form.StockWidth; width > 0 {
		stock := s.Units.Bare(width) + " × " + s.Units.Length(r.Thickness)
		figures = append(figures, Figure{s.Words.Say("template.figure.stock"), stock})
	}
	if r.Swing > 0 && r.HeelLimit > 0 {
		name := s.Words.Say("template.figure.heel-limit", "swing", s.Units.Length(r.Swing))
		figures = append(figures, Figure{name, s.Units.Length(r.HeelLimit)})
	}
	return figures
}

// grindingLegend says what the lines mean.
func grindingLegend(w Wheel, s Style, laid cutter.Shrunk) []Mark {
	legend := []Mark{{Pen: render.Thin, Ink: render.Blue, Text: s.Words.Say("template.legend.sight")}}
	if r := w.Relief; r != nil && len(r.Heel) > 0 && laid.Share == 1 {
		depth := s.Units.Length(min(r.Thickness, r.UsableThickness))
		legend = append(legend, Mark{Pen: render.Hidden, Text: s.Words.Say("template.legend.heel", "depth", depth)})
	}
	if w.Cut.Form.StockWidth > 0 {
		legend = append(legend, Mark{Pen: render.Centre, Ink: render.Grey, Text: s.Words.Say("template.legend.stock")})
	}
	return legend
}
