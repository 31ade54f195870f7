package screen

// nest turns the closed runs of a trace so that each runs the other way round
// from the one it lies in. The rasterizer adds windings up; so turned, it fills
// by the even-odd rule.
func (t *trace) nest() {
	for i, r := range t.runs {
		if !r.closed {
			continue
		}
		if even := t.depth(i)%2 == 0; even != (turning(t.of(r)) > 0) {
			flip(t.of(r))
		}
	}
}

// depth returns in how many other closed runs a run lies.
func (t *trace) depth(i int) int {
	depth, inner := 0, t.runs[i]
	for j, outer := range t.runs {
		if j != i && outer.closed && inner.box.within(outer.box) && inside(t.points[inner.from], t.of(outer)) {
			depth++
		}
	}
	return depth
}

// turning is positive for a polygon that runs clockwise on the screen.
func turning(ps []Pixel) float64 {
	area := 0.0
	for i, p := range ps {
		q := ps[(i+1)%len(ps)]
		area += p.X*q.Y - q.X*p.Y
	}
	return area
}

func flip(ps []Pixel) {
	for i, j := 0, len(ps)-1; i < j; i, j = i+1, j-1 {
		ps[i], ps[j] = ps[j], ps[i]
	}
}

// inside reports whether a pixel lies in a polygon, by counting the edges that a
// ray to the right crosses.
func inside(p Pixel, ps []Pixel) bool {
	in := false
	for i, a := range ps {
		b := ps[(i+1)%len(ps)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)*(b.X-a.X)/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}
