package geometry

// Area returns the area inside, positive when the outline runs anticlockwise.
//
// Green's theorem over each segment: the triangle from the origin to its chord,
// and for an arc the circular segment between chord and arc.
func (o Outline) Area() float64 {
	sum := 0.0
	o.each(func(from, to Point, bulge float64) {
		sum += from.Cross(to) / 2
		if bulge != 0 {
			chord := to.Sub(from)
			sum += chord.Dot(chord) * sliceArea(bulge, sliceExcess(bulge*bulge))
		}
	})
	return sum
}

// each calls visit with every segment's ends and bulge.
func (o Outline) each(visit func(from, to Point, bulge float64)) {
	n := len(o.vertices)
	if n == 0 {
		return
	}
	last := o.vertices[n-1]
	for _, v := range o.vertices {
		visit(last.Point, v.Point, last.Bulge)
		last = v
	}
}

// Centroid returns the centre of the area inside; the zero point for an outline
// that encloses none.
func (o Outline) Centroid() Point {
	var sum Point
	area := 0.0
	o.each(func(from, to Point, bulge float64) {
		triangle := from.Cross(to) / 2
		area += triangle
		sum = sum.Add(from.Add(to).Times(triangle / 3))
		if bulge != 0 {
			c := sliceOf(from, to, bulge)
			area += c.area
			sum = sum.Add(from.Toward(to, 0.5).Times(c.area)).Add(c.first)
		}
	})
	if area == 0 {
		return Point{}
	}
	return Point{sum.X / area, sum.Y / area}
}

// PolarMoment returns ∫ r² dA about the origin in mm⁴, signed as Area. A triangle
// with one corner at the origin has (p×q)(p² + p·q + q²)/12; what a circular
// segment has about its chord's middle m is carried to the origin by
// ∫ (m + r)² dA = ∫ r² dA + 2m·∫ r dA + m²·A.
func (o Outline) PolarMoment() float64 {
	sum := 0.0
	o.each(func(p, q Point, bulge float64) {
		sum += p.Cross(q) * (p.Dot(p) + p.Dot(q) + q.Dot(q)) / 12
		if bulge != 0 {
			c, middle := sliceOf(p, q, bulge), p.Toward(q, 0.5)
			sum += c.polar + 2*middle.Dot(c.first) + c.area*middle.Dot(middle)
		}
	})
	return sum
}
