package laws

import (
	"math"

	"tipline/app/solve"
	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
)

// tooling looks at the laws of how teeth are cut and divided.
func (v *verdict) tooling(id string, t *solve.Tooling, teeth tooth.Wheel) {
	if t.Cut != nil {
		v.built = append(v.built, "cut")
		v.cut(id, t.Cut, teeth)
	}
	if t.Relief != nil {
		v.built = append(v.built, "relief")
		v.relief(id, t.Relief)
	}
	if t.Ground != nil {
		v.built = append(v.built, "bit")
	}
	if t.Dividing != nil {
		v.built = append(v.built, "dividing")
		v.divided(id, t, teeth)
	}
}

// cut checks a form's setting by the triangle of its set-over, and its depth by the
// least distance of the form from the wheel's centre.
func (v *verdict) cut(id string, c *cutter.Cut, teeth tooth.Wheel) {
	v.holds(c.Infeed > 0 && c.Land >= 0, "%s: infeed %v, land %v", id, c.Infeed, c.Land)
	v.holds(math.Abs(math.Sin(float64(c.Undercut))*c.TipRadius-c.SetOver) < near, "%s: set-over %v of undercut %v", id, c.SetOver, c.Undercut)
	v.holds(c.RootRadius > 0 && c.RootRadius < c.TipRadius, "%s: cut to %v of %v", id, c.RootRadius, c.TipRadius)
	v.holds(math.Abs(c.TipRadius-teeth.TipRadius) < near, "%s: cut for a tip circle of %v, teeth of %v", id, c.TipRadius, teeth.TipRadius)
	v.holds(math.Abs(c.RootRadius-teeth.RootRadius) < 2e-3, "%s: cut to %v, teeth to %v", id, c.RootRadius, teeth.RootRadius)
	form, err := c.Form.Outline()
	if err != nil {
		v.breaks("%s: the form is no outline: %v", id, err)
		return
	}
	at, crosses := form.SelfCrossing()
	v.holds(!crosses, "%s: the form crosses itself at %v", id, at)
	centre := geometry.Point{X: c.SetOver, Y: -c.Height()}
	nearest, _ := form.Nearest(centre)
	v.holds(math.Abs(nearest.Dist(centre)-c.RootRadius) < near, "%s: the form comes to %v of the centre, said %v", id, nearest.Dist(centre), c.RootRadius)
}

// relief checks that every section is a simple outline.
func (v *verdict) relief(id string, r *cutter.Relief) {
	v.holds(r.UsableThickness > 0 && r.UsableThickness <= r.Thickness+near, "%s: %v of %v is usable", id, r.UsableThickness, r.Thickness)
	for _, o := range r.Heel {
		at, crosses := o.SelfCrossing()
		v.holds(!crosses, "%s: the heel crosses itself at %v", id, at)
	}
}

// divided checks that the crank goes once round the wheel, that an exact answer is
// one, and that no tooth is further off than said.
func (v *verdict) divided(id string, t *solve.Tooling, teeth tooth.Wheel) {
	a := t.Dividing
	circle := max(a.Circle, 1)
	v.holds(a.Exact == (a.Error == 0), "%s: exact %v with an error of %v µm", id, a.Exact, a.Error)
	if a.Exact {
		v.holds((a.Turns*circle+a.Holes)*a.Divisions == a.Ratio*circle, "%s: %d turns and %d of %d holes, %d times, are not %d turns", id, a.Turns, a.Holes, a.Circle, a.Divisions, a.Ratio)
	}
	worst := 0.0
	for _, i := range []int{1, v.rnd.IntN(a.Divisions), a.Divisions} {
		turns, holes := a.Place(i)
		at := (float64(turns) + float64(holes)/float64(circle)) / float64(a.Ratio)
		worst = math.Max(worst, math.Abs(at-float64(i)/float64(a.Divisions))*2*math.Pi)
	}
	v.holds(worst*teeth.TipRadius*1000 <= a.Error+1e-3, "%s: a tooth is %v µm off, said %v", id, worst*teeth.TipRadius*1000, a.Error)
}
