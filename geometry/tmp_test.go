package geometry

import "testing"

func TestTmp(t *testing.T) {
	a := Segment{From: Point{82.28944545664162, 91.73112690821368}, To: Point{80.12952357395571, 92.9866624826732}, Bulge: -0.22021267127544722}
	b := Segment{From: a.To, To: Point{85.94846758100891, 84.80213116923295}}
	r := 3.968549073966808e-05
	arc, s, u, err := Fillet(a, b, r)
	t.Log(arc, s, u, err)
	q, sh := a.Nearest(arc.From)
	t.Log(q.Dist(arc.From), sh-s, a.At(s).Dist(arc.From), a.At(sh).Dist(q), q.Dist(arc.From))
	c := newCurve(a)
	t.Log(c.height(arc.From), c.radius)
}

func TestTmp2(t *testing.T) {
	a := Segment{From: Point{82.28944545664162, 91.73112690821368}, To: Point{80.12952357395571, 92.9866624826732}, Bulge: -0.22021267127544722}
	b := Segment{From: a.To, To: Point{85.94846758100891, 84.80213116923295}}
	r := 3.968549073966808e-05
	ca, cb := newCurve(a), newCurve(b)
	side := 1.0
	if ca.arriving().Cross(cb.leaving()) < 0 {
		side = -1
	}
	cs, n := centresAt(&ca, &cb, r, side)
	t.Log(cs, n, ca.arriving().Cross(cb.leaving()))
	for _, c := range cs[:n] {
		f := ca.foot(c, r, side)
		g := cb.foot(c, r, side)
		t.Log(f, g, root(f.Sub(ca.centre))-ca.radius, root(c.Sub(ca.centre))-ca.locus(r, side), f.Dist(g), ca.share(f), f.Dist(a.To))
	}
}
