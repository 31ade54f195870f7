package geometry

// Segments is a run of segments made ready to be asked, again and again, which of
// them lie about a place. Neighbours in the run should lie near each other, as
// those of an outline do. It keeps no hold of the slice it was made from. The zero
// Segments holds none.
type Segments struct{ tree *tree }

// NewSegments returns the segments ready to be asked.
func NewSegments(list []Segment) Segments {
	cs := make([]curve, len(list))
	for i, s := range list {
		cs[i] = newCurve(s)
	}
	return Segments{newTree(cs)}
}

// About calls visit with the place in the run of each segment that comes within d
// of p, the segment's point nearest to p and how far that lies from it.
func (s Segments) About(p Point, d float64, visit func(i int, near Point, far float64)) {
	if s.tree == nil {
		return
	}
	s.tree.about(p, d, func(i int) bool {
		near := s.tree.curves[i].nearest(p)
		if far := near.Dist(p); far <= d {
			visit(i, near, far)
		}
		return true
	})
}

// Meet returns the points that segments i and j of the run share, as Meet does.
func (s Segments) Meet(i, j int) []Point {
	pts, n := meet(&s.tree.curves[i], &s.tree.curves[j])
	return pts[:n]
}
