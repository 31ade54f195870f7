package geometry

import (
	"cmp"
	"errors"
	"math"
	"slices"
)

// piece is a stretch of a part between two cuts, which the offset keeps.
type piece struct {
	part     int
	from, to cut
	start    int // node numbers
	end      int
	gone     bool
}

// loops returns the closed outlines that the kept pieces form.
func (f *offset) loops() ([]Outline, error) {
	f.cutParts()
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

// cutParts finds where the parts meet and cuts them there.
func (f *offset) cutParts() {
	cs := make([]curve, len(f.parts))
	for i := range f.parts {
		cs[i] = f.parts[i].curve
	}
	newTree(cs).pairs(func(i, j int) bool {
		pts, n := meet(&cs[i], &cs[j])
		for _, p := range pts[:n] {
			f.parts[i].cutAt(p)
			f.parts[j].cutAt(p)
		}
		return true
	})
}

// cutAt cuts the part at p unless that is one of its ends.
func (c *part) cutAt(p Point) {
	if t := c.share(p); t > 0 && t < 1 {
		c.cuts = append(c.cuts, cut{p, t})
	}
}

// pieces returns the stretches between cuts that the offset keeps.
func (f *offset) pieces() []piece {
	kept := make([]piece, 0, len(f.parts))
	for i := range f.parts {
		c := &f.parts[i]
		slices.SortFunc(c.cuts, func(a, b cut) int { return cmp.Compare(a.share, b.share) })
		from := cut{c.From, 0}
		for _, to := range append(c.cuts, cut{c.To, 1}) {
			if from.at.near(to.at) && to.share-from.share < 0.5 {
				continue
			}
			middle := c.From.Toward(c.To, (from.share+to.share)/2)
			if c.round {
				middle = c.Segment.At((from.share + to.share) / 2)
			}
			if f.keeps(middle, c.cap) {
				kept = append(kept, piece{part: i, from: from, to: to})
			}
			from = to
		}
	}
	return kept
}

// knots ties pieces together where their ends meet.
type knots struct {
	pieces []piece
	leave  [][]int // by node, the pieces that start there
	arrive [][]int
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
	number := make([]int, len(ends))
	for i := range ends {
		number[i] = -1
		for j := i - 1; j >= 0 && ends[i].at.X-ends[j].at.X <= tied; j-- {
			if math.Abs(ends[i].at.Y-ends[j].at.Y) <= tied {
				number[i] = number[j]
				break
			}
		}
		if number[i] < 0 {
			number[i] = len(k.leave)
			k.leave, k.arrive = append(k.leave, nil), append(k.arrive, nil)
		}
		if m := number[i]; ends[i].last {
			k.pieces[ends[i].piece].end = m
			k.arrive[m] = append(k.arrive[m], ends[i].piece)
		} else {
			k.pieces[ends[i].piece].start = m
			k.leave[m] = append(k.leave[m], ends[i].piece)
		}
	}
}

// prune drops the pieces that begin or end loose, and returns the length of the
// longest.
func (k *knots) prune(parts []part) (longest float64) {
	for again := true; again; {
		again = false
		for i := range k.pieces {
			p := &k.pieces[i]
			if p.gone || k.alive(k.arrive[p.start]) && k.alive(k.leave[p.end]) {
				continue
			}
			p.gone, again = true, true
			length := parts[p.part].Length() * (p.to.share - p.from.share)
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
func (k *knots) walk(parts []part, i int) []piece {
	seen := map[int]int{}
	var path []int
	for {
		path = append(path, i)
		seen[k.pieces[i].start] = len(path) - 1
		end := k.pieces[i].end
		if first, ok := seen[end]; ok {
			var loop []piece
			for _, j := range path[first:] {
				k.pieces[j].gone = true
				loop = append(loop, k.pieces[j])
			}
			return loop
		}
		i = k.next(parts, i)
		if i < 0 {
			for _, j := range path {
				k.pieces[j].gone = true
			}
			return nil
		}
	}
}

// next returns the piece that leaves where piece i ends with the sharpest turn
// to the left, −1 for none.
func (k *knots) next(parts []part, i int) int {
	best, least := -1, Angle(0)
	in := parts[k.pieces[i].part].travel(k.pieces[i].to.at)
	for _, j := range k.leave[k.pieces[i].end] {
		if k.pieces[j].gone {
			continue
		}
		turn := in.Angle(parts[k.pieces[j].part].travel(k.pieces[j].from.at))
		if best < 0 || turn > least {
			best, least = j, turn
		}
	}
	return best
}

// outline returns a loop of pieces as an outline, neighbours of one part made one
// again, and whether it encloses more than a sliver.
func (f *offset) outline(loop []piece) (Outline, bool) {
	var joined []piece
	for _, p := range loop {
		last := len(joined) - 1
		if last >= 0 && joined[last].part == p.part && joined[last].to == p.from {
			joined[last].to = p.to
			continue
		}
		joined = append(joined, p)
	}
	vs := make([]Vertex, len(joined))
	for i, p := range joined {
		c := &f.parts[p.part]
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
