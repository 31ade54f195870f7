package cutter

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// acrossStep is what a bit's x can be read to, in mm: 1 µm.
const acrossStep = 1e-3

// Across returns how far every x of a measured edge must be moved, to 1 µm, for the edge
// to lie over the wanted form half way up the infeed, or nearer it about there, and its
// greatest deviation so: what an x that was measured from another place is out by. It is
// false where the edge misses that height, or so moved cuts nothing.
func (c Cut) Across(edge geometry.Chain) (move float64, worst Deviation, ok bool) {
	edge = edge.Move(geometry.Point{Y: -edge.Bounds().Min.Y})
	front, back, wanted := c.Form.Width(c.Infeed / 2)
	bitFront, bitBack, has := Form{Edge: edge, Top: c.Infeed}.Width(c.Infeed / 2)
	if !wanted || !has {
		return 0, Deviation{}, false
	}
	move = toStep((front + back - bitFront - bitBack) / 2)
	if worst, ok = c.worstAcross(edge, move); !ok {
		return 0, Deviation{}, false
	}
	reach := math.Abs(worst.Off)
	near := toStep(seek.Top(move-reach, move+reach, acrossStep/2, func(x float64) float64 {
		if w, cuts := c.worstAcross(edge, x); cuts {
			return -math.Abs(w.Off)
		}
		return math.Inf(-1)
	}))
	if w, cuts := c.worstAcross(edge, near); cuts && math.Abs(w.Off) < reach {
		move, worst = near, w
	}
	return move, worst, true
}

func toStep(x float64) float64 { return math.Round(x/acrossStep) * acrossStep }

// worstAcross returns the greatest deviation of an edge moved across by so much, false
// where it cuts nothing as it should.
func (c Cut) worstAcross(edge geometry.Chain, move float64) (Deviation, bool) {
	edge = edge.Move(geometry.Point{X: move})
	cut := c.asGround(edge, shadeOf(edge))
	if cut.checkGround(edge, 0) != nil {
		return Deviation{}, false
	}
	return newComparison(c, cut).worst(cut.Infeed), true
}
