package crossing

import "tipline/geometry"

// notes lists what will go wrong with a crossing that can be laid out: a saw line
// that vanishes or falls apart, a start hole that finds no place, fillets tighter
// than the blade turns in, arms so wide that they meet before the hub, and parts too
// thin to last.
func notes(b Blank, s Spec, patterns []pattern) []*geometry.Limit {
	var all []*geometry.Limit
	all = append(all, sawNote(s, patterns)...)
	all = append(all, holeNote(s, patterns)...)
	all = append(all, meetNote(b, s)...)
	all = append(all, waistNote(b, s)...)
	all = append(all, frailNotes(b, s)...)
	if least := teethInSheet * s.BladePitch; b.Thickness < least {
		all = append(all, geometry.AtLeast(ofBlade, b.Thickness, least, "crossing.blade-too-coarse"))
	}
	for _, f := range []struct {
		of     geometry.Quantity
		radius float64
	}{{ofFilletAtRim, s.FilletAtRim}, {ofFilletAtHub, s.FilletAtHub}} {
		if f.radius < s.BladeTurning {
			all = append(all, geometry.AtLeast(f.of, f.radius, s.BladeTurning, "crossing.fillet-tighter-than-blade"))
		}
	}
	return all
}

// What is thinner than these, in mm, bends under the file or breaks: a rim or an arm,
// and the wall of a hub round its bore. Common practice, no source.
const (
	frail     = 0.3
	frailWall = 1.0
)

// frailNotes says which parts of a crossing are too thin to last.
func frailNotes(b Blank, s Spec) []*geometry.Limit {
	var all []*geometry.Limit
	for _, part := range []struct {
		of    geometry.Quantity
		width float64
		least float64
		code  string
	}{
		{ofRim, s.Rim, frail, "crossing.rim-frail"},
		{ofArmAtRim, s.ArmAtRim, frail, "crossing.arm-frail"},
		{ofArmAtHub, s.ArmAtHub, frail, "crossing.arm-frail"},
		{ofHub, s.Hub, b.Bore + 2*frailWall, "crossing.hub-wall-frail"},
	} {
		if part.width < part.least-same {
			all = append(all, geometry.AtLeast(part.of, part.width, part.least, part.code))
		}
	}
	return all
}

// teethInSheet is how many of a blade's teeth at least should stand in the sheet, so
// that it does not catch between two: common practice, no source.
const teethInSheet = 2

// sawNote says that a window's saw line vanishes or falls apart, and the allowance
// below which it does not.
func sawNote(s Spec, patterns []pattern) []*geometry.Limit {
	if s.Allowance == 0 {
		return nil
	}
	code, most := "", s.Allowance
	for _, p := range patterns {
		switch {
		case len(p.saw) == 1:
			continue
		case len(p.saw) == 0:
			code = "crossing.saw-line-vanishes"
		case code == "":
			code = "crossing.saw-line-falls-apart"
		}
		most = min(most, p.outline.PinchOut(s.Allowance))
	}
	if code == "" {
		return nil
	}
	return []*geometry.Limit{geometry.AtMost(ofAllowance, s.Allowance, most, code)}
}

// holeNote says that the start hole finds no place, and the largest that would.
func holeNote(s Spec, patterns []pattern) []*geometry.Limit {
	most := s.StartHole
	for _, p := range patterns {
		if s.StartHole > 0 && p.hole.Len() == 0 {
			most = min(most, p.largestHole(s.Allowance))
		}
	}
	switch {
	case most == s.StartHole:
		return nil
	case most < geometry.LeastLength:
		return []*geometry.Limit{geometry.AtMost(ofStartHole, s.StartHole, 0, "crossing.no-start-hole")}
	}
	return []*geometry.Limit{geometry.AtMost(ofStartHole, s.StartHole, most, "crossing.start-hole-too-large")}
}

// meetNote says that arms run into one another before they reach the hub, and the
// width at the hub at which they just would reach it.
func meetNote(b Blank, s Spec) []*geometry.Limit {
	reaches := func(s Spec) bool {
		narrow, _ := halves(b.Count, s)
		return openingOf(narrow, b, s).reachesHub()
	}
	if reaches(s) {
		return nil
	}
	most, ok := armAtHub.bound(b, s, func(s Spec) bool { return check(b, s) == sound && reaches(s) })
	if !ok {
		return nil
	}
	return []*geometry.Limit{geometry.AtMost(ofArmAtHub, s.ArmAtHub, most, "crossing.arms-meet-before-hub")}
}

// unseen is how much narrower than its waist, in mm, an arm may be without a note: less
// than a file shows.
const unseen = 1e-3

// waistNote says that a waisted arm is narrower elsewhere than at its waist, by
// more than a file would show, and where the waist would be its narrowest place.
func waistNote(b Blank, s Spec) []*geometry.Limit {
	hub, rim := s.Hub/2, b.RootRadius-s.Rim
	if s.Style != Waisted || s.WaistAt == 0 {
		return nil
	}
	least := narrowest(hub, rim, s)
	if least.Width > s.Waist-unseen {
		return nil
	}
	asked := s.WaistAt
	s.WaistAt = 0
	at := s.waistAt(hub, rim)
	if least.Radius > asked {
		return []*geometry.Limit{geometry.AtLeast(ofWaistAt, asked, at, "crossing.waist-narrower-further-out")}
	}
	return []*geometry.Limit{geometry.AtMost(ofWaistAt, asked, at, "crossing.waist-narrower-further-in")}
}
