package screen

import "math"

// dasher walks along marks and gaps.
type dasher struct {
	pattern []float64 // marks and gaps in turn, in pixels
	at      int       // which of them
	left    float64   // of it
}

// skip goes on by a length without drawing.
func (d *dasher) skip(length float64) {
	total := 0.0
	for _, l := range d.pattern {
		total += l
	}
	length = math.Mod(length, total)
	for length >= d.left {
		length -= d.left
		d.next()
	}
	d.left -= length
}

// run goes from one place of an edge to another and draws the marks between.
func (d *dasher) run(from, to float64, draw func(from, to float64)) {
	for from < to {
		end := math.Min(from+d.left, to)
		if d.at%2 == 0 && end > from {
			draw(from, end)
		}
		d.left -= end - from
		from = end
		if d.left <= 1e-9 {
			d.next()
		}
	}
}

func (d *dasher) next() {
	d.at = (d.at + 1) % len(d.pattern)
	d.left = d.pattern[d.at]
}
