package cutter

import (
	"math"
	"slices"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// checkTooth refuses a cut that leaves no sound tooth: its front tip must be on
// the straight face, the next cut must not break into this one, the front edge
// must not meet the back within the cut, and the stock must be wide enough.
func (p Pointed) checkTooth(height float64) error {
	o := p.profile()
	if err := p.checkFace(o, height); err != nil {
		return err
	}
	if !p.standsApart(o.swept, height) {
		return p.overlapLimit(o)
	}
	_, _, last := o.swept.spread(p.setOver(), height, p.TipRadius)
	back := p.setOver() + p.TipRadius*math.Sin(last)
	if p.StockWidth > 0 && back > p.StockWidth {
		return geometry.AtLeast(StockWidth, p.StockWidth, back, "cutter.form-wider-than-stock")
	}
	return p.checkFront(o, height)
}

// faceTop is the height over the form's lowest point of the front tip F.
func (p Pointed) faceTop(height float64) float64 {
	return p.TipRadius*math.Cos(float64(p.Undercut)) - height
}

// checkFace refuses a cut so shallow that the tip circle meets the rounding of
// the corner, or passes above the front altogether, so that there is no face.
func (p Pointed) checkFace(o profile, height float64) error {
	foremost := o.swept[0].To.Y
	if p.faceTop(height) > foremost+coincide {
		return nil
	}
	// The shallowest cut with a face has F at the foremost point.
	shallow := p.TipRadius*math.Cos(float64(p.Undercut)) - foremost - coincide
	if p.Solve == RootDiameter {
		return geometry.AtMost(Land, p.Land, math.Max(p.landAt(o.swept, shallow), 0), "cutter.no-face")
	}
	root := seek.Last(p.leastRoot(), p.TipRadius, 0, func(r float64) bool { return o.swept.touch(p.setOver(), r) <= shallow })
	return geometry.AtMost(RootDiameter, 2*p.RootRadius, 2*root, "cutter.no-face")
}

// overlapLimit is the Limit of a depth at which the cuts run into each other
// below the tips: it names the depth or, where that is what was solved for, the
// land.
func (p Pointed) overlapLimit(o profile) error {
	if p.Solve == BackRadius || p.Solve == BackAngle {
		return p.noSoundBack()
	}
	e := p.setOver()
	root := seek.Last(p.TipRadius, p.leastRoot(), 0, func(r float64) bool {
		h := o.swept.touch(e, r)
		return p.landAt(o.swept, h) >= 0 && p.standsApart(o.swept, h)
	})
	if p.Solve == RootDiameter {
		return geometry.AtLeast(Land, p.Land, p.landAt(o.swept, o.swept.touch(e, root)), "cutter.tooth-cut-through")
	}
	return geometry.AtLeast(RootDiameter, 2*p.RootRadius, 2*root, "cutter.tooth-undermined")
}

// rootSteps is how many root radii are tried, from the one asked for to the tip,
// before the least that will do is closed in on.
const rootSteps = 32

// noSoundBack is the Limit of a root at which the back that leaves the land lets
// the next cut in below the tip. A shallower root may have one that does not;
// where none has, the Limit has no bound.
func (p Pointed) noSoundBack() error {
	sound := func(root float64) bool {
		q := p
		q.RootRadius = root
		q, h, err := q.solved()
		return err == nil && q.standsApart(q.profile().swept, h)
	}
	from := p.RootRadius
	for i := 1; i < rootSteps; i++ {
		root := p.RootRadius + (p.TipRadius-p.RootRadius)*float64(i)/rootSteps
		if sound(root) {
			least := seek.Last(root, from, 0, sound)
			return geometry.AtLeast(RootDiameter, 2*p.RootRadius, 2*least, "cutter.tooth-undermined")
		}
		from = root
	}
	return geometry.Refused(RootDiameter, 2*p.RootRadius, "cutter.no-sound-back")
}

// atRim is how near the tips, as a share of their radius, neighbouring cuts may meet:
// without a land they meet there.
const atRim = 1e-6

// standsApart reports whether two neighbouring cuts leave metal between them all
// the way from the tips to the root.
func (p Pointed) standsApart(s sweep, height float64) bool {
	here := s.space(p.setOver(), height, p.TipRadius)
	turn := -geometry.FullTurn / geometry.Angle(p.Count)
	rim := p.TipRadius * (1 - atRim)
	for i := range here {
		for k := range here {
			if meetWithin(here[i], here[k].Rotate(turn), rim) {
				return false
			}
		}
	}
	return true
}

// meetWithin reports whether two segments meet nearer than r to the origin.
func meetWithin(a, b geometry.Segment, r float64) bool {
	return slices.ContainsFunc(geometry.Meet(a, b), func(m geometry.Meeting) bool { return m.At.Norm() < r })
}

// leastShank is the least width in millimetres that a form must have at the tip
// circle to be an outline at all.
const leastShank = 1e-6

// checkFront refuses a front edge that leans into the back below the tip circle.
func (p Pointed) checkFront(o profile, height float64) error {
	y := p.cutTop(o.swept, height)
	if p.FrontRelief == 0 || p.frontAt(o, y) < o.swept.backAt(y)-leastShank {
		return nil
	}
	most := seek.Last(0, float64(p.FrontRelief), 0, func(lean float64) bool {
		q := p
		q.FrontRelief = geometry.Angle(lean)
		o := q.profile()
		return q.frontAt(o, y) < o.swept.backAt(y)-leastShank
	})
	return geometry.AtMost(FrontRelief, float64(p.FrontRelief), most, "cutter.front-meets-back")
}
