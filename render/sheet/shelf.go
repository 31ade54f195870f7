package sheet

import "tipline/geometry"

// gap is the room between two templates on one sheet, for a cut with shears.
const gap = 8.0

// shelf is a row of templates on a sheet, by their numbers.
type shelf struct {
	items         []int
	width, height float64 // without what is left over
}

// shelve puts sizes on shelves in their order: each on the first that has room for
// it, or, to be read in their order, on the last one only, or on a new one below the
// others; the last shelf may still become higher. False where one finds no room within
// width × height.
func shelve(sizes []geometry.Point, width, height float64, ordered bool) ([]shelf, bool) {
	var shelves []shelf
	left := height // below the last shelf
	for i, size := range sizes {
		n := 0
		if ordered {
			n = max(0, len(shelves)-1)
		}
		for n < len(shelves) && !shelves[n].takes(size, width, n == len(shelves)-1, left) {
			n++
		}
		if n == len(shelves) {
			if n > 0 {
				left -= gap
			}
			if size.X > width || size.Y > left {
				return nil, false
			}
			shelves = append(shelves, shelf{width: -gap})
		}
		s := &shelves[n]
		higher := max(s.height, size.Y)
		left -= higher - s.height
		s.items, s.width, s.height = append(s.items, i), s.width+gap+size.X, higher
	}
	return shelves, true
}

// takes reports whether a shelf has room for one more.
func (s shelf) takes(size geometry.Point, width float64, last bool, left float64) bool {
	higher := size.Y - s.height
	return s.width+gap+size.X <= width && (higher <= 0 || last && higher <= left)
}

// berths spreads what is left over evenly and returns the box of each size, and the
// lines half way between them along which the sheet is cut apart. Columns, to be read as
// one stands beside the other, reach from the sheet's one margin to the other, and all that
// is left over parts them.
func berths(sizes []geometry.Point, shelves []shelf, free geometry.Box, columns bool) ([]geometry.Box, []geometry.Line) {
	boxes := make([]geometry.Box, len(sizes))
	var cuts []geometry.Line
	spare := free.Height() + gap
	for _, s := range shelves {
		spare -= s.height + gap
	}
	top := free.Max.Y
	for n, s := range shelves {
		low := top - s.height - spare/float64(len(shelves))
		if n == len(shelves)-1 {
			low = free.Min.Y
		} else {
			y := low - gap/2
			cuts = append(cuts, geometry.Line{From: geometry.Point{X: free.Min.X, Y: y}, To: geometry.Point{X: free.Max.X, Y: y}})
		}
		cuts = append(cuts, s.spread(sizes, boxes, geometry.Box{Min: geometry.Point{X: free.Min.X, Y: low}, Max: geometry.Point{X: free.Max.X, Y: top}}, columns)...)
		top = low - gap
	}
	return boxes, cuts
}

// spread gives each template of a shelf its box, and returns the cuts between them.
func (s shelf) spread(sizes []geometry.Point, boxes []geometry.Box, row geometry.Box, columns bool) []geometry.Line {
	var cuts []geometry.Line
	spare, apart := row.Width()-s.width, gap
	more := spare / float64(len(s.items))
	if n := len(s.items); columns && n > 1 {
		more, apart = 0, gap+spare/float64(n-1)
	}
	left := row.Min.X
	for k, i := range s.items {
		right := left + sizes[i].X + more
		boxes[i] = geometry.Box{Min: geometry.Point{X: left, Y: row.Min.Y}, Max: geometry.Point{X: right, Y: row.Max.Y}}
		if k < len(s.items)-1 {
			x := right + apart/2
			cuts = append(cuts, geometry.Line{From: geometry.Point{X: x, Y: row.Min.Y - gap/2}, To: geometry.Point{X: x, Y: row.Max.Y + gap/2}})
		}
		left = right + apart
	}
	return cuts
}
