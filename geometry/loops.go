package geometry

import (
	"cmp"
	"errors"
	"math"
	"slices"
)

// loops returns the closed outlines that the kept pieces form.
func (f *offset) loops() ([]Outline, error) {
	k := knots{pieces: f.pieces()}
	k.tie()
	if lost := k.prune(f.parts); lost > lostLength {
		return nil, errors.New("inset: the offset does not close")
	}
	var loops []Outline
	for i := range k.pieces {
		for !k.pieces[i].gone {
			if loop, ok := f.outline(k.walk(f.parts, i)); ok {
				loops = append(loops, loop)
			}
		}
	}
	return loops, nil
}

// lostLength is the length in millimetres of loose ends that may be dropped where
// parts meet at a shallow angle. A loose piece keeps its distance within tooNear,
// so at the angle α its length is at most 2·tooNear/α: 1e-4 mm at 2e-6 rad.
const lostLength = 1e-4

// knots ties pieces together where their ends meet.
type knots struct {
	pieces []piece
	leave  [][]int // by node, the pieces that start there
	arrive [][]int
	place  []int // by node, one more than its place in the path that is walked; 0 off it
}

// tied is how far apart in millimetres ends may lie and count as one. Neighbours
// of the source that are tangent within 1e-12 mm over a piece 1 µm long have
// parallels whose ends lie 1e-9·d apart along the offset, and meetings of
// three parts in one point lie as near as a shallow angle lets rounding put them.
const tied = 5e-9

// tie numbers the nodes: ends within reach of each other, found in order of x.
func (k *knots) tie() {
	type end struct {
		at    Point
		piece int
		last  bool
	}
	ends := make([]end, 0, 2*len(k.pieces))
	for i, p := range k.pieces {
		ends = append(ends, end{p.from.at, i, false}, end{p.to.at, i, true})
	}
	slices.SortFunc(ends, func(a, b end) int { return cmp.Compare(a.at.X, b.at.X) })
	starts, stops, number := make([]int, 0, len(k.pieces)), make([]int, 0, len(k.pieces)), make([]int, len(ends))
	nodes := 0
	for i, e := range ends {
		number[i] = -1
		for j := i - 1; j >= 0 && e.at.X-ends[j].at.X <= tied; j-- {
			if math.Abs(e.at.Y-ends[j].at.Y) <= tied {
				number[i] = number[j]
				break
			}
		}
		if number[i] < 0 {
			number[i] = nodes
			nodes++
		}
		if e.last {
			k.pieces[e.piece].end = number[i]
			stops = append(stops, e.piece)
		} else {
			k.pieces[e.piece].start = number[i]
			starts = append(starts, e.piece)
		}
	}
	k.leave = grouped(starts, nodes, func(i int) int { return k.pieces[i].start })
	k.arrive = grouped(stops, nodes, func(i int) int { return k.pieces[i].end })
	k.place = make([]int, nodes)
}

// prune drops the pieces that begin or end loose, and returns the length of the
// longest.
func (k *knots) prune(parts []curve) (longest float64) {
	for again := true; again; {
		again = false
		for i := range k.pieces {
			p := &k.pieces[i]
			if p.gone || k.alive(k.arrive[p.start]) && k.alive(k.leave[p.end]) {
				continue
			}
			p.gone, again = true, true
			length := parts[p.from.part].Length() * (p.to.share - p.from.share)
			longest = math.Max(longest, length)
		}
	}
	return longest
}

func (k *knots) alive(pieces []int) bool {
	return slices.ContainsFunc(pieces, func(i int) bool { return !k.pieces[i].gone })
}

// walk returns the pieces of a loop through piece i, taking the sharpest turn to
// the left at each node, and takes them away. Pieces that lead into the loop but
// are no part of it stay.
func (k *knots) walk(parts []curve, i int) []piece {
	var path []int
	defer func() {
		for _, j := range path {
			k.place[k.pieces[j].start] = 0
		}
	}()
	for {
		path = append(path, i)
		k.place[k.pieces[i].start] = len(path)
		if first := k.place[k.pieces[i].end]; first > 0 {
			return k.take(path[first-1:])
		}
		if i = k.next(parts, i); i < 0 {
			k.take(path)
			return nil
		}
	}
}

// take takes pieces away and returns them.
func (k *knots) take(path []int) []piece {
	taken := make([]piece, len(path))
	for n, j := range path {
		k.pieces[j].gone = true
		taken[n] = k.pieces[j]
	}
	return taken
}

// next returns the piece that leaves where piece i ends with the sharpest turn
// to the left, −1 for none.
func (k *knots) next(parts []curve, i int) int {
	best, least := -1, Angle(0)
	in := parts[k.pieces[i].from.part].travel(k.pieces[i].to.at)
	for _, j := range k.leave[k.pieces[i].end] {
		if k.pieces[j].gone {
			continue
		}
		turn := in.Angle(parts[k.pieces[j].from.part].travel(k.pieces[j].from.at))
		if best < 0 || turn > least {
			best, least = j, turn
		}
	}
	return best
}

// outline returns a loop of pieces as an outline, neighbours of one part made one
// again, and whether it encloses more than a sliver.
func (f *offset) outline(loop []piece) (Outline, bool) {
	joined := make([]piece, 0, len(loop))
	for _, p := range loop {
		last := len(joined) - 1
		if last >= 0 && joined[last].from.part == p.from.part && joined[last].to == p.from {
			joined[last].to = p.to
			continue
		}
		joined = append(joined, p)
	}
	vs := make([]Vertex, len(joined))
	for i, p := range joined {
		c := &f.parts[p.from.part]
		next := joined[(i+1)%len(joined)].from.at
		vs[i] = Vertex{p.from.at, c.stretch(p.from, p.to, next), c.Quantity}
	}
	o, err := NewOutline(vs)
	if err != nil {
		return o, false
	}
	area := o.Area()
	sliver := math.Abs(area) <= o.Length()*onSegment
	return o, !sliver && (area > 0 || !f.inward)
}

// stretch returns the bulge of the arc between two cuts, its end carried on to a
// place within tied of it.
func (c *curve) stretch(from, to cut, end Point) float64 {
	if !c.round || from.share == 0 && to.share == 1 && to.at == end {
		return c.Bulge
	}
	on := end.Sub(to.at).Dot(c.travel(to.at)) / c.radius
	sweep := 4*math.Atan(math.Abs(c.Bulge))*(to.share-from.share) + on
	return math.Copysign(math.Tan(sweep/4), c.Bulge)
}
