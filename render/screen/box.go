package screen

import "math"

// box is a rectangle of pixels.
type box struct{ x0, y0, x1, y1 float64 }

// nowhere is the box of nothing.
var nowhere = box{math.Inf(1), math.Inf(1), math.Inf(-1), math.Inf(-1)}

func boxOf(ps []Pixel) box {
	b := nowhere
	for _, p := range ps {
		b = b.with(p)
	}
	return b
}

func (b box) with(p Pixel) box {
	return box{math.Min(b.x0, p.X), math.Min(b.y0, p.Y), math.Max(b.x1, p.X), math.Max(b.y1, p.Y)}
}

func (b box) meet(c box) box {
	return box{math.Max(b.x0, c.x0), math.Max(b.y0, c.y0), math.Min(b.x1, c.x1), math.Min(b.y1, c.y1)}
}

func (b box) grow(d float64) box { return box{b.x0 - d, b.y0 - d, b.x1 + d, b.y1 + d} }

func (b box) empty() bool { return !(b.x0 < b.x1 && b.y0 < b.y1) }

// within reports whether b lies inside c.
func (b box) within(c box) bool {
	return b.x0 >= c.x0 && b.y0 >= c.y0 && b.x1 <= c.x1 && b.y1 <= c.y1
}

func (b box) contains(p Pixel) bool { return p.X >= b.x0 && p.X <= b.x1 && p.Y >= b.y0 && p.Y <= b.y1 }
