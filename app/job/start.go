package job

// startingWheel returns a wheel of the kind with values that can be built, of our
// own invention and in millimetres.
func startingWheel(kind string) (*Wheel, bool) {
	teeth := startingTeeth(kind)
	if teeth == nil {
		return nil, false
	}
	w := &Wheel{
		Thickness: Typed("1.5 mm"), Bore: Typed("6 mm"), Material: Typed("brass"), Hand: Typed("clockwise"),
		Teeth:    teeth,
		Blank:    &Blank{Oversize: Typed("0.2 mm"), Holding: Typed("mandrel")},
		Dividing: &Dividing{Ratio: Counted("60")},
		Crossing: startingCrossing(),
	}
	if kind != "measured" {
		w.Cutter = startingCutter()
	}
	return w, true
}

// startingTeeth returns nil for a kind that no wheel starts with.
func startingTeeth(kind string) *Teeth {
	switch kind {
	case "cycloidal", "lantern driver":
		return &Teeth{Form: Typed(kind), Count: Counted("60"), Module: Typed("0.8 mm"), Leaves: Counted("8")}
	case "pointed":
		return &Teeth{
			Form: Typed(kind), Count: Counted("30"), TipDiameter: Typed("45 mm"), Undercut: Typed("10 deg"),
			Floor: Typed("0.4 mm"), FloorSlope: Typed("10 deg"), BackRadius: Typed("7 mm"),
			CornerRadius: Typed("0.1 mm"), FrontRelief: Typed("4 deg"), Land: Typed("0.2 mm"), Solve: Typed("root_diameter"),
		}
	case "ratchet":
		return &Teeth{
			Form: Typed(kind), Count: Counted("60"), TipDiameter: Typed("40 mm"), Undercut: Typed("8 deg"),
			Floor: Typed("0.2 mm"), BackAngle: Typed("62 deg"), BackFillet: Typed("0.1 mm"),
			CornerRadius: Typed("0.05 mm"), FrontRelief: Typed("4 deg"), Land: Typed("0.15 mm"), Solve: Typed("root_diameter"),
		}
	case "measured":
		return &Teeth{Form: Typed(kind), Count: Counted("60"), TipDiameter: Typed("50 mm"), RootDiameter: Typed("46 mm")}
	}
	return nil
}

func startingCutter() *Cutter {
	return &Cutter{StockWidth: Typed("8 mm"), StockThickness: Typed("6 mm"), Clearance: Typed("10 deg"), Swing: Typed("22 mm")}
}

func startingCrossing() *Crossing {
	return &Crossing{
		Arms: Counted("5"), Style: Typed("straight"), Placing: Typed("on tips"), Rim: Typed("2.4 mm"), Hub: Typed("14 mm"),
		ArmAtRim: Typed("2 mm"), ArmAtHub: Typed("2.8 mm"), FilletAtRim: Typed("0.8 mm"), FilletAtHub: Typed("1 mm"),
		Allowance: Typed("0.3 mm"), Blade: Typed("2/0"),
	}
}

// startingPinion returns a pinion that meets the wheel a job starts with.
func startingPinion(form string) *Pinion {
	p := &Pinion{
		Form: Typed(form), Leaves: Counted("8"), Module: Typed("0.8 mm"), Thickness: Typed("6 mm"), Bore: Typed("2 mm"),
		Dividing: &Dividing{Ratio: Counted("60")},
	}
	if form == "cycloidal" {
		p.Cutter = startingCutter()
	}
	return p
}
