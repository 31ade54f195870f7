package geometry

import "math"

// tree is a tree of boxes over a run of curves. Neighbours along an outline lie
// near each other, so halving the run again and again gives boxes as tight as
// any sorting would.
type tree struct {
	curves []curve
	nodes  []node
}

// node covers curves first to last−1; its left child follows it, its right child
// is named, 0 for a leaf.
type node struct {
	box         Box
	first, last int
	right       int
}

// leafSize is how many curves a leaf holds: fewer costs nodes, more costs box
// tests; four is the quickest on outlines of 8 to 2,500 segments.
const leafSize = 4

func newTree(cs []curve) *tree {
	t := &tree{curves: cs, nodes: make([]node, 0, len(cs)+1)}
	if len(cs) > 0 {
		t.grow(0, len(cs))
	}
	return t
}

// grow adds the node of curves first to last−1 and those below it.
func (t *tree) grow(first, last int) int {
	k := len(t.nodes)
	t.nodes = append(t.nodes, node{box: NoBox(), first: first, last: last})
	if last-first <= leafSize {
		b := NoBox()
		for i := first; i < last; i++ {
			b = b.Union(t.curves[i].box)
		}
		t.nodes[k].box = b
		return k
	}
	middle := (first + last) / 2
	left := t.grow(first, middle)
	right := t.grow(middle, last)
	t.nodes[k].right = right
	t.nodes[k].box = t.nodes[left].box.Union(t.nodes[right].box)
	return k
}

// pairs calls visit with each i < j whose boxes touch, until it returns false.
func (t *tree) pairs(visit func(i, j int) bool) {
	if len(t.nodes) > 0 {
		t.within(0, visit)
	}
}

func (t *tree) within(k int, visit func(i, j int) bool) bool {
	n := &t.nodes[k]
	if n.right != 0 {
		return t.within(k+1, visit) && t.within(n.right, visit) && t.between(k+1, n.right, visit)
	}
	for i := n.first; i < n.last; i++ {
		for j := i + 1; j < n.last; j++ {
			if t.curves[i].box.Touches(t.curves[j].box) && !visit(i, j) {
				return false
			}
		}
	}
	return true
}

func (t *tree) between(k, l int, visit func(i, j int) bool) bool {
	a, b := &t.nodes[k], &t.nodes[l]
	switch {
	case !a.box.Touches(b.box):
		return true
	case a.right != 0 && (b.right == 0 || a.last-a.first >= b.last-b.first):
		return t.between(k+1, l, visit) && t.between(a.right, l, visit)
	case b.right != 0:
		return t.between(k, l+1, visit) && t.between(k, b.right, visit)
	}
	for i := a.first; i < a.last; i++ {
		for j := b.first; j < b.last; j++ {
			if t.curves[i].box.Touches(t.curves[j].box) && !visit(i, j) {
				return false
			}
		}
	}
	return true
}

// about calls visit with each curve whose box comes within d of p, until it
// returns false, and reports whether none did.
func (t *tree) about(p Point, d float64, visit func(i int) bool) bool {
	return len(t.nodes) == 0 || t.aboutNode(0, p, d, visit)
}

func (t *tree) aboutNode(k int, p Point, d float64, visit func(i int) bool) bool {
	n := &t.nodes[k]
	if n.box.gap(Box{p, p}) > d {
		return true
	}
	if n.right != 0 {
		return t.aboutNode(k+1, p, d, visit) && t.aboutNode(n.right, p, d, visit)
	}
	for i := n.first; i < n.last; i++ {
		if t.curves[i].box.gap(Box{p, p}) <= d && !visit(i) {
			return false
		}
	}
	return true
}

// gap returns the distance between two boxes; 0 where they touch.
func (b Box) gap(c Box) float64 {
	dx := max(0, b.Min.X-c.Max.X, c.Min.X-b.Max.X)
	dy := max(0, b.Min.Y-c.Max.Y, c.Min.Y-b.Max.Y)
	if dx == 0 || dy == 0 {
		return dx + dy
	}
	return math.Sqrt(dx*dx + dy*dy)
}
