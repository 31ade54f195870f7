package template

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/geometry/cutter"
)

// CutterHandles returns the handles of the view of a cutter: every dimension of a
// pointed form that has a place there, the set-over, the infeed and the land, the
// stock where it cuts the form off, and each corner of the bit as it was measured.
// A train wheel's form follows from its teeth and has none of its own. Which of
// root diameter, land and back is solved for, and so cannot be set, is the job's
// to say.
func CutterHandles(w Wheel) []Handle {
	if w.Cut == nil {
		return nil
	}
	e := newView(w, Style{})
	var handles []Handle
	if f, ok := e.pointed(); ok {
		handles = append(f.frontHandles(), f.floorHandles()...)
		handles = append(handles, f.backHandles()...)
		handles = append(handles, e.settingHandles(w)...)
	}
	handles = append(handles, e.stockHandle()...)
	return append(handles, e.bitHandles(w)...)
}

// tool brings a point of the paper back to the tool frame.
func (e *enlargement) tool(p geometry.Point) geometry.Point {
	p = p.Times(1 / e.scale)
	if e.mirror {
		p = p.Mirror()
	}
	return p
}

// inTool makes of what a point of the tool frame means what one of the paper means.
func (e *enlargement) inTool(value func(geometry.Point) float64) func(geometry.Point) float64 {
	return func(p geometry.Point) float64 { return value(e.tool(p)) }
}

// edges are the pieces of a pointed form on the drawing of a cutter.
type edges struct {
	*enlargement
	front  geometry.Segment // from the shank's end down
	foot   geometry.Point   // the centre of the corner's rounding, or the sharp corner
	round  float64          // its radius, 0 for a sharp corner
	floor  geometry.Segment // nothing where there is none
	back   geometry.Segment // the arc or the straight back
	fillet geometry.Segment // between floor and straight back; nothing for a sharp corner
}

// pointed returns the pieces of the form; false where it is no pointed one.
func (e *enlargement) pointed() (edges, bool) {
	f := edges{enlargement: e, front: e.cut.Form.Edge.Segment(0)}
	f.foot = f.front.To
	for i := 1; i < e.cut.Form.Edge.Len(); i++ {
		s := e.cut.Form.Edge.Segment(i)
		arc, round := s.Arc()
		switch {
		case s.Quantity == cutter.CornerRadius:
			f.foot, f.round = arc.Centre, arc.Radius
		case s.Quantity == cutter.Floor:
			f.floor = s
		case s.Quantity == cutter.BackRadius && round, s.Quantity == cutter.BackAngle:
			f.back = s
		case s.Quantity == cutter.BackFillet:
			f.fillet = s
		}
	}
	return f, f.front.Quantity == cutter.FrontRelief
}

// frontHandles returns the handles of the front edge's lean, half way up it, and of
// the corner's rounding.
func (f edges) frontHandles() []Handle {
	handles := []Handle{angleHandle(cutter.FrontRelief, f.at(f.front.At(0.5)), f.inTool(func(p geometry.Point) float64 {
		away := f.foot.Sub(p)
		return float64(geometry.Angle(math.Atan2(away.X, away.Y) - math.Pi + f.lifted(p)).Normal())
	}))}
	if f.round > 0 {
		if h, ok := roundingHandle(cutter.CornerRadius, f.segment(f.cut.Form.Edge.Segment(1)), f.scale); ok {
			handles = append(handles, h)
		}
	} else if h, ok := sharpHandle(cutter.CornerRadius, f.segment(f.front), f.segment(f.cut.Form.Edge.Segment(1)), f.scale); ok {
		handles = append(handles, h)
	}
	return handles
}

// lifted is the angle at a point between the line to the centre of the corner's
// rounding and the tangent to the rounding.
func (f edges) lifted(p geometry.Point) float64 {
	return math.Asin(min(f.round/max(p.Dist(f.foot), f.round), 1))
}

// floorHandles returns the handles of the floor's width, at its end, and of its
// slope, in its middle.
func (f edges) floorHandles() []Handle {
	if f.floor == (geometry.Segment{}) {
		return nil
	}
	width := f.floorEnd().X - meeting(f.front, f.floor).X
	return []Handle{
		lengthHandle(cutter.Floor, f.at(f.floor.To), 0, f.inTool(func(p geometry.Point) float64 { return width + p.X - f.floor.To.X })),
		angleHandle(cutter.FloorSlope, f.at(f.floor.At(0.5)), f.inTool(func(p geometry.Point) float64 {
			return float64((f.foot.Sub(p).Direction() - math.Pi + geometry.Angle(f.lifted(p))).Normal())
		})),
	}
}

// floorEnd returns where the floor ends, produced to a straight back.
func (f edges) floorEnd() geometry.Point {
	if f.back.Quantity == cutter.BackAngle && f.back.IsLine() && f.floor != (geometry.Segment{}) {
		return meeting(f.floor, f.back)
	}
	if f.floor == (geometry.Segment{}) {
		return f.back.From
	}
	return f.floor.To
}

// parallel is the sine of the angle below which two lines are taken not to meet.
const parallel = 1e-12

// meeting returns where the endless lines along two segments meet; the end of the
// first where they are parallel.
func meeting(s, t geometry.Segment) geometry.Point {
	a, b := s.To.Sub(s.From), t.To.Sub(t.From)
	cross := a.Cross(b)
	if math.Abs(cross) < parallel*a.Norm()*b.Norm() {
		return s.To
	}
	return s.From.Add(a.Times(t.From.Sub(s.From).Cross(b) / cross))
}

// backHandles returns the handle of the back's radius, half way along the arc, or
// of a straight back's angle, half way up it, and of the fillet at its foot.
func (f edges) backHandles() []Handle {
	if f.back == (geometry.Segment{}) {
		return nil
	}
	middle := f.at(f.back.At(0.5))
	if arc, ok := f.back.Arc(); ok {
		start, inward := f.back.From, arc.Centre.Sub(f.back.From).Times(1/arc.Radius)
		return []Handle{lengthHandle(cutter.BackRadius, middle, leastLength, f.inTool(func(p geometry.Point) float64 {
			off := p.Sub(start)
			if off.Dot(inward) <= 0 {
				return greatestLength
			}
			return off.Dot(off) / (2 * off.Dot(inward)) // of the circle through p that touches the floor at its end
		}))}
	}
	foot := f.floorEnd()
	handles := []Handle{angleHandle(cutter.BackAngle, middle, f.inTool(func(p geometry.Point) float64 {
		return math.Atan2(p.X-foot.X, p.Y-foot.Y)
	}))}
	if f.fillet != (geometry.Segment{}) {
		if h, ok := roundingHandle(cutter.BackFillet, f.segment(f.fillet), f.scale); ok {
			handles = append(handles, h)
		}
	} else if h, ok := sharpHandle(cutter.BackFillet, f.segment(f.floor), f.segment(f.back), f.scale); ok && f.floor.To == f.back.From {
		handles = append(handles, h)
	}
	return handles
}

// settingHandles returns the handles of the undercut, at the foot of the wheel's
// centre line, of the root diameter, at the upper end of the infeed's dimension, and
// of the land, at the back of the tip before the form.
func (e *enlargement) settingHandles(w Wheel) []Handle {
	c := e.cut
	below := e.tool(geometry.Point{Y: e.setOverDown(w)}).Y
	face := geometry.Point{Y: math.Sqrt(max(0, c.TipRadius*c.TipRadius-c.SetOver*c.SetOver)) - c.Height()}
	centre := geometry.Point{X: c.SetOver, Y: -c.Height()}
	back := centre.Add(face.Sub(centre).Rotate(geometry.Angle(c.Land / c.TipRadius)))
	return []Handle{
		angleHandle(cutter.Undercut, e.at(geometry.Point{X: c.SetOver, Y: below}), e.inTool(func(p geometry.Point) float64 {
			return math.Asin(min(max(p.X/c.TipRadius, -1), 1))
		})),
		lengthHandle(cutter.RootDiameter, geometry.Point{X: e.infeedAcross(), Y: c.Infeed * e.scale}, leastLength, e.inTool(func(p geometry.Point) float64 {
			return 2 * e.rootAt(p.Y)
		})),
		lengthHandle(cutter.Land, e.at(back), 0, e.inTool(func(p geometry.Point) float64 {
			return c.TipRadius * float64(face.Sub(centre).Angle(p.Sub(centre)))
		})),
	}
}

// rootAt returns the least distance of the form from the wheel's centre once it is
// fed in so far.
func (e *enlargement) rootAt(infeed float64) float64 {
	centre := geometry.Point{X: e.cut.SetOver, Y: infeed - e.cut.TouchHeight}
	near, _ := e.cut.Form.Edge.Nearest(centre)
	return near.Dist(centre)
}

// stockHandle returns the handle of the stock's width where it cuts the form off:
// at the back's upper end.
func (e *enlargement) stockHandle() []Handle {
	f := e.cut.Form
	last := f.Edge.Segment(f.Edge.Len() - 1)
	if last.Quantity != cutter.StockWidth {
		return nil
	}
	share, front := 1.0, f.StockFront
	if math.Abs(front+f.StockWidth/2) < sameWithin {
		share, front = 2, 0
	}
	return []Handle{lengthHandle(cutter.StockWidth, e.at(last.At(0.5)), leastLength, e.inTool(func(p geometry.Point) float64 {
		return share * (p.X - front)
	}))}
}

// bitHandles returns a handle for each corner of the bit as it was measured, which
// sets its x and its y.
func (e *enlargement) bitHandles(w Wheel) []Handle {
	if w.Ground == nil {
		return nil
	}
	edge := w.Ground.Form.Edge
	up := geometry.Point{Y: w.Ground.Lift}
	handles := make([]Handle, edge.Len()+1)
	for i := range handles {
		field := func(of string) geometry.Quantity {
			return geometry.Quantity(fmt.Sprintf("cutter.bit.chain[%d].%s", i, of))
		}
		handles[i] = Handle{Quantity: field("x"), At: e.at(edge.Vertex(i).Point.Add(up)), Set: func(p geometry.Point) ([]Setting, error) {
			if !p.Finite() {
				return nil, ErrNowhere
			}
			p = e.tool(p).Sub(up)
			return []Setting{{field("x"), p.X}, {field("y"), p.Y + w.BitBase}}, nil
		}}
	}
	return handles
}
