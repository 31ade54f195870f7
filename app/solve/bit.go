package solve

import (
	"fmt"
	"math"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/cutter"
)

// strays is the deviation of a flank in mm from which on it is a caution: twice
// what a good grinder's slide can be set to (common practice, no source).
const strays = 0.02

// told is the least difference in mm that a sentence can tell: half of 1 µm.
const told = 0.5e-3

// solveBit works out what the bit cuts as it was measured.
func (t *Tooling) solveBit(r *reader, b *job.Bit) {
	if b == nil || len(b.Chain) == 0 {
		return
	}
	mark := len(r.findings)
	corners := r.corners(b.Chain)
	if !r.sound(mark) {
		return
	}
	edge, err := cutter.NewEdge(corners)
	if r.fail("cutter.bit.chain[0].x", err) {
		return
	}
	ground, err := t.Cut.Ground(edge)
	if err != nil || math.Abs(ground.Worst.Off) > strays {
		t.acrossFinding(r, edge, ground.Worst.Off, err)
	}
	if r.fail("cutter.bit.chain[0].x", err) {
		return
	}
	t.Ground, t.BitBase = &ground, corners[0].Y-ground.Form.Edge.Vertex(0).Y
	t.deviationFindings(r)
	t.undercutFindings(r)
}

// elsewhere is the share of a deviation under which one move across must bring it for x to
// have been measured from another place.
const elsewhere = 0.1

// acrossFinding says when a bit's x was measured from another place than the form's: moved
// across by one amount it comes near, though as typed it strays by off or cannot be worked
// out.
func (t *Tooling) acrossFinding(r *reader, edge geometry.Chain, off float64, err error) {
	move, worst, ok := t.Cut.Across(edge)
	near := math.Abs(worst.Off)
	if !ok || near > strays || err == nil && near > elsewhere*math.Abs(off) || math.Abs(move) <= strays {
		return
	}
	smaller, greater := "bit.x-from-the-middle", "bit.x-from-the-middle-more"
	if e := t.Cut.Form.Edge; e.Len() > 0 && e.Segment(0).Quantity == cutter.FrontRelief {
		smaller, greater = "bit.x-from-the-front", "bit.x-from-the-front-more"
	}
	code := smaller
	if move > 0 {
		code = greater
	}
	r.find(Caution, "cutter.bit.chain[0].x", code, number("by", math.Abs(move), FineLength), micrometres("off", math.Max(near, sameSize)))
}

// corners reads the corners of a measured bit; a radius left empty is a line.
func (r *reader) corners(chain []*job.Corner) []cutter.Corner {
	list := make([]cutter.Corner, len(chain))
	for i, c := range chain {
		at := func(name string) geometry.Quantity {
			return geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d].%s", i, name))
		}
		for _, v := range []struct {
			field geometry.Quantity
			value job.Value
		}{{at("x"), c.X}, {at("y"), c.Y}} {
			if v.value.Empty() {
				r.find(Error, v.field, "finding.missing")
			}
		}
		list[i] = cutter.Corner{
			X: r.length(at("x"), c.X, 0), Y: r.length(at("y"), c.Y, 0), Radius: r.length(at("radius"), c.Radius, 0),
		}
	}
	return list
}

// deviationFindings says how far the flanks stray, and the infeed that comes
// nearest.
func (t *Tooling) deviationFindings(r *reader) {
	g := t.Ground
	root := number("root", 2*g.Cut.RootRadius, FineLength)
	if math.Abs(g.Worst.Off) < told {
		r.find(Note, "cutter.bit.chain[0].x", "bit.right", root)
		return
	}
	severity, code := Note, "bit.leaves-metal"
	if math.Abs(g.Worst.Off) > strays {
		severity = Caution
	}
	if g.Worst.Off < 0 {
		code = "bit.takes-metal"
	}
	r.find(severity, "cutter.bit.chain[0].x", code, micrometres("off", g.Worst.Off),
		number("x", g.Worst.At.X, Length), number("y", g.Worst.At.Y, Length), root)
	if math.Abs(g.Best-g.Cut.Infeed) >= told {
		r.find(Note, "cutter.bit.chain[0].x", "bit.nearest", number("infeed", g.Best, FineLength),
			number("set", g.Cut.Infeed, FineLength), micrometres("off", g.BestDeviation.Off))
	}
}

func micrometres(name string, mm float64) Place { return number(name, 1000*math.Abs(mm), Micrometre) }

// bitLandFinding says what land the bit leaves on a pointed tooth at depth.
func (w *Wheel) bitLandFinding(r *reader) {
	if w.Ground == nil {
		return
	}
	if land := w.Ground.Cut.Land; land < 0 {
		r.find(Caution, "cutter.bit.chain[0].x", "bit.shortens", micrometres("short", land))
	} else {
		r.find(Note, "cutter.bit.chain[0].x", "bit.land", number("land", land, FineLength), number("best", max(w.Ground.BestLand, 0), FineLength))
	}
}

// undercutFindings names the corner nearest to each place where the edge turns
// back under itself.
func (t *Tooling) undercutFindings(r *reader) {
	edge := t.Ground.Form.Edge
	for _, p := range t.Ground.Undercut {
		nearest := 0
		for i := range edge.Len() + 1 {
			if edge.Vertex(i).Dist(p) < edge.Vertex(nearest).Dist(p) {
				nearest = i
			}
		}
		r.find(Caution, geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d].x", nearest)), "bit.undercut",
			number("x", p.X, Length), number("y", p.Y+t.BitBase, Length))
	}
}
