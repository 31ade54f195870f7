package screen

func between(p, q Pixel, t float64) Pixel { return Pixel{p.X + t*(q.X-p.X), p.Y + t*(q.Y-p.Y)} }

// part returns which share of the line from p to q lies in the box, and false for
// none (Liang and Barsky, 1984).
func (b box) part(p, q Pixel) (t0, t1 float64, ok bool) {
	t0, t1 = 0, 1
	dx, dy := q.X-p.X, q.Y-p.Y
	for _, side := range [4][2]float64{{-dx, p.X - b.x0}, {dx, b.x1 - p.X}, {-dy, p.Y - b.y0}, {dy, b.y1 - p.Y}} {
		way, room := side[0], side[1]
		switch {
		case way == 0 && room < 0:
			return 0, 0, false
		case way < 0:
			t0 = max(t0, room/way)
		case way > 0:
			t1 = min(t1, room/way)
		}
	}
	return t0, t1, t0 < t1
}
