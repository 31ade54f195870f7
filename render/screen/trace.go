package screen

import (
	"math"

	"tipline/geometry"
	"tipline/render"
)

// flatness is how far, in pixels, a traced arc's chord may lie from the arc: a
// tenth of a pixel is a difference in shade that no eye sees.
const flatness = 0.1

// trace is the outlines and chains of an item in pixels, arcs flattened. It is
// filled anew for every item and keeps its memory.
type trace struct {
	points []Pixel
	runs   []run
}

// run is one outline or chain of a trace: its points, and the box round them.
type run struct {
	from, to int
	closed   bool
	box      box
}

func (t *trace) reset() { t.points, t.runs = t.points[:0], t.runs[:0] }

func (t *trace) of(r run) []Pixel { return t.points[r.from:r.to] }

// item traces what an item draws.
func (t *trace) item(it render.Item, v View) {
	t.reset()
	for _, o := range it.Outlines {
		t.outline(o, v)
	}
	for _, c := range it.Chains {
		t.chain(c, v)
	}
}

func (t *trace) outline(o geometry.Outline, v View) {
	if o.Len() < 2 {
		return
	}
	t.begin(v.ToPixel(o.Vertex(0).Point))
	for i := range o.Len() {
		t.segment(o.Segment(i), v)
	}
	t.points = t.points[:len(t.points)-1] // the last is the first again
	t.end(true)
}

func (t *trace) chain(c geometry.Chain, v View) {
	if c.Len() < 1 {
		return
	}
	t.begin(v.ToPixel(c.Vertex(0).Point))
	for i := range c.Len() {
		t.segment(c.Segment(i), v)
	}
	t.end(false)
}

func (t *trace) begin(p Pixel) {
	t.runs = append(t.runs, run{from: len(t.points)})
	t.points = append(t.points, p)
}

func (t *trace) end(closed bool) {
	r := &t.runs[len(t.runs)-1]
	r.to, r.closed = len(t.points), closed
	r.box = boxOf(t.of(*r))
}

// segment traces a segment without its first point.
func (t *trace) segment(s geometry.Segment, v View) {
	a, ok := s.Arc()
	if n := chords(a, v.Scale); ok && n > 1 {
		step := float64(a.Sweep) / float64(n)
		sin, cos := math.Sincos(step)
		spoke := s.From.Sub(a.Centre)
		for range n - 1 {
			spoke = geometry.Point{X: spoke.X*cos - spoke.Y*sin, Y: spoke.X*sin + spoke.Y*cos}
			t.points = append(t.points, v.ToPixel(a.Centre.Add(spoke)))
		}
	}
	t.points = append(t.points, v.ToPixel(s.To))
}

// chords returns into how many chords an arc is cut so that none is further than
// the flatness from it.
func chords(a geometry.Arc, scale float64) int {
	radius := a.Radius * scale
	if radius <= flatness {
		return 1
	}
	step := 2 * math.Acos(1-flatness/radius)
	return int(math.Ceil(math.Abs(float64(a.Sweep)) / step))
}
