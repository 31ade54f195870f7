package screen

import (
	"image"
	"math"
	"math/bits"
)

// coverage works out how much of each pixel of a picture a shape covers. Each edge
// of the shape leaves, in the row's cells it crosses, by how much the coverage
// changes there; summed from the left they are the coverage. Only blocks of cells
// that an edge touched are summed, and what lies between them is painted in one
// go, so a shape costs what its outline costs and not what its box does: that is
// why this stands here beside golang.org/x/image/vector, which took four times as
// long for a wheel. It keeps its memory from shape to shape, and every cell is 0
// between shapes.
type coverage struct {
	width, height int
	cells         []float32 // stride in each row
	stride        int       // width and two more, which take what lies right of the last
	touched       []uint64  // words in each row, a bit for each block of cells
	words         int
	top, bottom   int // the rows touched, bottom excluded
	start, at     Pixel
}

const block = 8 // cells

// begin readies the coverage for a shape on a picture of this size.
func (c *coverage) begin(size image.Point) {
	if c.width != size.X || c.height != size.Y {
		c.width, c.height, c.stride, c.words = size.X, size.Y, size.X+2, size.X/(64*block)+1
		c.cells, c.touched = roomFor(c.cells, c.stride*size.Y), roomFor(c.touched, c.words*size.Y)
	}
	c.top, c.bottom = c.height, 0
}

// roomFor returns as many noughts as wanted, in the memory there is if it will do,
// which must be of noughts.
func roomFor[T any](there []T, wanted int) []T {
	if cap(there) < wanted {
		return make([]T, wanted)
	}
	return there[:wanted]
}

func (c *coverage) moveTo(p Pixel) { c.start, c.at = p, p }

func (c *coverage) lineTo(p Pixel) {
	c.edge(c.at, p)
	c.at = p
}

func (c *coverage) close() { c.lineTo(c.start) }

// quadTo adds a quadratic curve; letters are small, so a few chords do.
func (c *coverage) quadTo(control, to Pixel) {
	from := c.at
	bulge := math.Hypot(from.X-2*control.X+to.X, from.Y-2*control.Y+to.Y)
	n := 1 + int(math.Min(math.Sqrt(bulge), 20))
	for i := 1; i <= n; i++ {
		t := float64(i) / float64(n)
		c.lineTo(between(between(from, control, t), between(control, to, t), t))
	}
}

// polygon adds a closed polygon.
func (c *coverage) polygon(ps []Pixel) {
	if len(ps) < 3 {
		return
	}
	c.moveTo(ps[0])
	for _, p := range ps[1:] {
		c.lineTo(p)
	}
	c.close()
}

// edge adds a straight edge. What lies above, below or right of the picture
// changes nothing; what lies left of it changes the first cell.
func (c *coverage) edge(p, q Pixel) {
	sign := float32(1)
	if p.Y > q.Y {
		p, q, sign = q, p, -1
	}
	height := float64(c.height)
	if !(q.Y > 0 && p.Y < height && p.Y < q.Y) {
		return
	}
	if p.Y < 0 {
		p = Pixel{p.X + (q.X-p.X)*(0-p.Y)/(q.Y-p.Y), 0}
	}
	if q.Y > height {
		q = Pixel{p.X + (q.X-p.X)*(height-p.Y)/(q.Y-p.Y), height}
	}
	c.top, c.bottom = min(c.top, int(p.Y)), max(c.bottom, min(int(q.Y)+1, c.height))
	if c.inside(p) && c.inside(q) {
		c.rows(p, q, sign)
		return
	}
	c.pieces(p, q, sign)
}

func (c *coverage) inside(p Pixel) bool { return p.X >= 0 && p.X <= float64(c.width) }

// pieces adds an edge piece by piece, cut where it crosses the picture's sides.
func (c *coverage) pieces(p, q Pixel, sign float32) {
	width := float64(c.width)
	at := func(x float64) float64 {
		if p.X == q.X {
			return 0
		}
		return min(max((x-p.X)/(q.X-p.X), 0), 1)
	}
	cuts := [4]float64{0, min(at(0), at(width)), max(at(0), at(width)), 1}
	for i := range 3 {
		a, b := between(p, q, cuts[i]), between(p, q, cuts[i+1])
		if a.Y >= b.Y || (a.X+b.X)/2 >= width {
			continue
		}
		a.X, b.X = min(max(a.X, 0), width), min(max(b.X, 0), width)
		c.rows(a, b, sign)
	}
}

// rows adds a falling edge that lies within the picture, row by row. It and what
// it calls are run for every row of every edge, and compare by hand what min and
// max would, which look for numbers that are none.
func (c *coverage) rows(p, q Pixel, sign float32) {
	slope, width := (q.X-p.X)/(q.Y-p.Y), float64(c.width)
	x, from := p.X, p.Y
	for y := int(p.Y); from < q.Y && y < c.height; y++ {
		to := float64(y + 1)
		if to > q.Y {
			to = q.Y
		}
		next := x + (to-from)*slope
		if next < 0 { // by rounding
			next = 0
		} else if next > width {
			next = width
		}
		if x < next {
			c.cross(y, x, next, sign*float32(to-from))
		} else {
			c.cross(y, next, x, sign*float32(to-from))
		}
		x, from = next, to
	}
}

// cross adds the piece of an edge that crosses one row from x0 to x1 and is high
// high there: each cell it crosses takes what lies right of the edge, and the next
// cell the rest.
func (c *coverage) cross(y int, x0, x1 float64, high float32) {
	first, last := int(x0), int(x1)
	c.touch(y, first, last+1)
	row := c.cells[y*c.stride:][:c.stride]
	if first == last {
		take(row[first:first+2], float32((x0+x1)/2-float64(first)), high)
		return
	}
	each := high / float32(x1-x0)
	from := x0
	for i := first; i < last; i++ {
		to := float64(i + 1)
		take(row[i:i+2], float32((from+to)/2-float64(i)), each*float32(to-from))
		from = to
	}
	take(row[last:last+2], float32((from+x1)/2-float64(last)), each*float32(x1-from))
}

// touch marks the blocks of two cells and of those between.
func (c *coverage) touch(y, first, last int) {
	touched := c.touched[y*c.words:][:c.words]
	if last > c.width {
		last = c.width
	}
	from, to := uint(first)/block, uint(last)/block
	touched[from/64] |= 1 << (from % 64)
	for b := from + 1; b <= to; b++ {
		touched[b/64] |= 1 << (b % 64)
	}
}

// take adds an edge to the cell it crosses and to the next.
func take(cells []float32, middle, high float32) {
	rest := high * middle
	cells[0] += high - rest
	cells[1] += rest
}

// paint paints the covered pixels and leaves every cell 0 again.
func (c *coverage) paint(dst *image.RGBA, with paint) {
	for y := c.top; y < c.bottom; y++ {
		pix := dst.Pix[dst.PixOffset(dst.Rect.Min.X, dst.Rect.Min.Y+y):][:4*c.width]
		c.row(y, pix, with.row(y))
	}
}

func (c *coverage) row(y int, pix []uint8, with rowPaint) {
	touched, cells := c.touched[y*c.words:][:c.words], c.cells[y*c.stride:][:c.stride]
	sum, x := float32(0), 0
	for w, word := range touched {
		touched[w] = 0
		for ; word != 0; word &= word - 1 {
			from := (64*w + bits.TrailingZeros64(word)) * block
			with.run(pix, x, from, shade(sum))
			x = min(from+block, c.width)
			sum = with.cells(pix, from, cells[min(from, x):x], sum)
		}
	}
	with.run(pix, x, c.width, shade(sum))
	clear(cells[c.width:])
}

// shade returns a coverage in 256ths. Windings that add up cover no more than
// once.
func shade(sum float32) uint32 {
	if sum < 0 {
		sum = -sum
	}
	if sum >= 1 {
		return 256
	}
	return uint32(int32(sum*256 + 0.5))
}
