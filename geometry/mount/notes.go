package mount

import (
	"math"

	"tipline/geometry"
)

// edgeRule is how many screw diameters there should be from a hole's centre to an
// edge, and depthRule how many of its own diameters a drill goes without
// wandering: common practice, no source.
const (
	edgeRule  = 1.5
	depthRule = 10
)

// looseFit is how much smaller than the bore, in mm, a register may be and still
// centre the wheel: common practice, no source.
const looseFit = 0.03

// notes lists what will go wrong with holes that can be drilled.
func (b bench) notes(edges []edge) []*geometry.Limit {
	all := b.nearNotes(edges)
	all = append(all, b.hubNotes()...)
	for _, s := range b.seats {
		if over := b.collet.Notes(s); over != nil {
			all = append(all, over...)
			break
		}
	}
	for _, s := range b.seats {
		if r := b.collet.Register; r > 0 && s.Bore-r > looseFit {
			all = append(all, geometry.AtLeast(ofRegister, r, s.Bore-looseFit, "mount.register-loose"))
			break
		}
	}
	if deep := b.depth() / b.screws.Thread.Tap; deep > depthRule+same {
		all = append(all, geometry.AtMost(ofThread, math.Ceil(deep), depthRule, "mount.deep-hole"))
	}
	return append(all, b.symmetryNotes()...)
}

// nearNotes says which edges are nearer than the rule has them, each kind once,
// and the circle that would keep the rule everywhere, or where none does that
// would keep it there.
func (b bench) nearNotes(edges []edge) []*geometry.Limit {
	ruled := func(edge) float64 { return edgeRule * b.screws.Thread.Major }
	radius := b.screws.Circle / 2
	var all []*geometry.Limit
	said := map[string]bool{}
	for _, e := range edges {
		if e.slack(radius, ruled(e)) >= -same || said[e.near] {
			continue
		}
		said[e.near] = true
		if l := b.nearNote(e, edges, ruled); l != nil {
			all = append(all, l)
		}
	}
	return all
}

func (b bench) nearNote(e edge, edges []edge, ruled need) *geometry.Limit {
	radius, end := b.screws.Circle/2, 0.0
	if e.inner {
		end = max(radius, b.most())
	}
	better, ok := nearest(edges, ruled, radius, end)
	if !ok {
		better, ok = nearest([]edge{e}, ruled, radius, end)
	}
	switch {
	case !ok:
		return geometry.Refused(ofCircle, b.screws.Circle, "mount.near-whatever")
	case e.inner:
		return geometry.AtLeast(ofCircle, b.screws.Circle, 2*better, e.near)
	}
	return geometry.AtMost(ofCircle, b.screws.Circle, 2*better, e.near)
}

// hubNotes says that holes reach out of the smallest hub, onto the arms.
func (b bench) hubNotes() []*geometry.Limit {
	hub := math.Inf(1)
	for _, s := range b.seats {
		if s.Hub > 0 {
			hub = min(hub, s.Hub)
		}
	}
	if b.screws.Circle+b.clear.MM <= hub+same {
		return nil
	}
	return []*geometry.Limit{geometry.AtMost(ofCircle, b.screws.Circle, max(0, hub-b.clear.MM), "mount.outside-hub")}
}
