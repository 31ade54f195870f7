package cutter

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// randomPointed returns a pointed form as a plan might have it, and as it might
// not: some cannot be built.
func randomPointed(r *rand.Rand) Pointed {
	between := func(a, b float64) float64 { return a + (b-a)*r.Float64() }
	p := Pointed{
		Count:       int(math.Exp(between(math.Log(3), math.Log(400)))),
		TipRadius:   between(3, 80),
		Undercut:    geometry.Degrees(between(0, 30)),
		FrontRelief: geometry.Degrees(between(0, 10)),
		FloorSlope:  geometry.Degrees(between(0, 30)),
		Straight:    r.IntN(2) == 0,
		BackAngle:   geometry.Degrees(between(5, 55)),
	}
	for _, angle := range []*geometry.Angle{&p.Undercut, &p.FrontRelief, &p.FloorSlope} {
		if r.IntN(4) == 0 {
			*angle = 0
		}
	}
	if r.IntN(3) == 0 {
		p.FloorSlope = min(p.Undercut, mostFloorSlope)
	}
	pitch := p.pitch()
	p.RootRadius = p.TipRadius - pitch*between(0.1, 1)
	p.Floor = pitch * between(0.02, 0.4)
	p.BackRadius = math.Max(pitch*math.Exp(between(-1, 3)), geometry.LeastLength)
	p.Land = pitch * between(0, 0.25)
	if r.IntN(3) > 0 {
		p.CornerRadius = between(0, 1.02) * p.cornerRoom()
	}
	if r.IntN(2) == 0 {
		p.BackFillet = between(0, 1.02) * p.filletRoom(p.BackAngle)
	}
	if r.IntN(2) == 0 {
		p.StockWidth = pitch * between(0.7, 3)
	}
	solve := []geometry.Quantity{RootDiameter, Land, BackRadius}
	if p.Straight {
		solve[2] = BackAngle
	}
	p.Solve = solve[r.IntN(3)]
	return p
}

// sampled is a form's lower edge as points close together, built from the plan's
// numbers by other means than the form: from the sharp corner, with its lines as
// heights over x.
func sampled(p Pointed, steps int) []geometry.Point {
	s, b := float64(p.FrontRelief), float64(p.FloorSlope)
	// The rounding's centre is r from the front line and from the floor line.
	r := p.CornerRadius
	det := math.Cos(s)*math.Cos(b) - math.Sin(s)*math.Sin(b)
	cx := r * (math.Cos(b) + math.Sin(s)) / det
	cy := r * (math.Cos(s) + math.Sin(b)) / det
	var pts []geometry.Point
	add := func(x, y float64) { pts = append(pts, geometry.Point{X: x - cx + r, Y: y - cy + r}) }
	arc := func(x, y, r, from, to float64) {
		for i := range steps + 1 {
			w := from + (to-from)*float64(i)/float64(steps)
			add(x+r*math.Cos(w), y+r*math.Sin(w))
		}
	}
	line := func(x, y, dx, dy, length float64) {
		for i := range steps + 1 {
			k := length * float64(i) / float64(steps)
			add(x+k*dx, y+k*dy)
		}
	}
	line(cx-r, cy+p.TipRadius, 0, -1, p.TipRadius)
	arc(cx, cy, r, math.Pi, 1.5*math.Pi+b)
	ex, ey := p.Floor, p.Floor*math.Tan(b)
	tx, ty := cx+r*math.Sin(b), cy-r*math.Cos(b)
	if !p.Straight {
		line(tx, ty, math.Cos(b), math.Sin(b), (ex-tx)/math.Cos(b))
		arc(ex-p.BackRadius*math.Sin(b), ey+p.BackRadius*math.Cos(b), p.BackRadius, b-math.Pi/2, 0)
		line(pts[len(pts)-1].X+cx-r, pts[len(pts)-1].Y+cy-r, 0, 1, p.TipRadius)
		return pts
	}
	a := float64(p.BackAngle)
	taken := p.BackFillet * math.Tan((math.Pi/2-a-b)/2)
	fx, fy := ex-taken*math.Cos(b), ey-taken*math.Sin(b)
	line(tx, ty, math.Cos(b), math.Sin(b), (fx-tx)/math.Cos(b))
	arc(fx-p.BackFillet*math.Sin(b), fy+p.BackFillet*math.Cos(b), p.BackFillet, b-math.Pi/2, -a)
	line(pts[len(pts)-1].X+cx-r, pts[len(pts)-1].Y+cy-r, math.Sin(a), math.Cos(a), 2*p.TipRadius)
	return pts
}

// highestTouch is the greatest height at which a circle meets the points.
func highestTouch(pts []geometry.Point, e, r float64) float64 {
	most := math.Inf(-1)
	for _, q := range pts {
		if d := r*r - (q.X-e)*(q.X-e); d >= 0 {
			most = math.Max(most, math.Sqrt(d)-q.Y)
		}
	}
	return most
}

// landOf is the land between the outermost crossings of points and tip circle.
func landOf(pts []geometry.Point, c Cut, height float64) float64 {
	centre := geometry.Point{X: c.SetOver, Y: -height}
	first, last := math.Inf(1), math.Inf(-1)
	for i := 1; i < len(pts); i++ {
		a, b := pts[i-1].Dist(centre)-c.TipRadius, pts[i].Dist(centre)-c.TipRadius
		if a > 0 == (b > 0) || a == b {
			continue
		}
		q := pts[i-1].Toward(pts[i], a/(a-b)).Sub(centre)
		w := math.Atan2(q.X, q.Y)
		first, last = math.Min(first, w), math.Max(last, w)
	}
	return c.TipRadius * (2*math.Pi/float64(c.Count) - (last - first))
}

func TestCutAgainstDenseSampling(t *testing.T) {
	r := trial.Rand(t, 53)
	const steps = 20000
	for built := 0; built < trial.Count(1000); {
		p := randomPointed(r)
		c, err := p.Cut()
		if err != nil {
			continue
		}
		built++
		q := p
		q.BackRadius, q.BackAngle = c.BackRadius, c.BackAngle
		pts := sampled(q, steps)
		// A chord of a step stands off an arc by step²/8ρ, and a step's middle off
		// an extremum by no more than that; a line's step is at most 2R/steps.
		slack := 4e-7 * p.TipRadius
		require.InDelta(t, highestTouch(pts, c.SetOver, c.TipRadius), c.TouchHeight, slack, "touch %+v", p)
		nearest := math.Inf(1)
		for _, x := range pts {
			nearest = math.Min(nearest, x.Dist(geometry.Point{X: c.SetOver, Y: -c.Height()}))
		}
		require.InDelta(t, nearest, c.RootRadius, slack, "root %+v", p)
		for _, share := range []float64{0.3, 0.8, 1} {
			d := share * c.Infeed
			require.InDelta(t, landOf(pts, c, c.TouchHeight-d), c.LandAt(d), 20*slack, "land at %g of %+v", share, p)
		}
		require.InDelta(t, c.Land, c.LandAt(c.Infeed), noLand+1e-9)
	}
}

// set returns p with a field set, diameters as such.
func (p Pointed) set(q geometry.Quantity, v float64) Pointed {
	switch q {
	case TipDiameter:
		p.TipRadius = v / 2
	case RootDiameter:
		p.RootRadius = v / 2
	case Undercut:
		p.Undercut = geometry.Angle(v)
	case FrontRelief:
		p.FrontRelief = geometry.Angle(v)
	case FloorSlope:
		p.FloorSlope = geometry.Angle(v)
	case Floor:
		p.Floor = v
	case CornerRadius:
		p.CornerRadius = v
	case BackRadius:
		p.BackRadius = v
	case BackAngle:
		p.BackAngle = geometry.Angle(v)
	case BackFillet:
		p.BackFillet = v
	case Land:
		p.Land = v
	case StockWidth:
		p.StockWidth = v
	}
	return p
}

// Every refusal names a field, and the bound it gives does what it says.
func TestRefusalsSayWhatWouldDo(t *testing.T) {
	r := trial.Rand(t, 54)
	built := 0
	full := 10000
	for range trial.Count(full) {
		p := randomPointed(r)
		c, err := p.Cut()
		if err == nil {
			built++
			require.True(t, c.Infeed > 0 && c.Land >= 0 && c.RootRadius < c.TipRadius && c.RootRadius > 0, "%+v", p)
			continue
		}
		var limit *geometry.Limit
		require.True(t, errors.As(err, &limit), "%v from %+v", err, p)
		require.False(t, math.IsNaN(limit.Value) || math.IsNaN(limit.Min) || math.IsNaN(limit.Max), "%v from %+v", err, p)
		bound, way := limit.Max, -1.0
		if limit.Value < limit.Min {
			bound, way = limit.Min, 1
		}
		if limit.Code == "cutter.no-sound-back" {
			continue
		}
		require.False(t, math.IsInf(bound, 0), "%v from %+v", err, p)
		_, again := p.set(limit.Quantity, bound+way*1e-6).Cut()
		if other := (*geometry.Limit)(nil); errors.As(again, &other) {
			require.NotEqual(t, limit.Code, other.Code, "%v then %v from %+v", limit, other, p)
		}
	}
	require.Greater(t, built, trial.Count(full)/4)
}
