package sheet

import (
	"math"

	"tipline/render"
)

// hatchStep is how far apart hatching repeats along x and along y. Tiles lie whole
// steps apart, so that it meets across their seams.
const hatchStep = render.WasteSpacing * math.Sqrt2

// originClear is how far the seams of tiles keep off a drawing's origin, in millimetres: a
// wheel's bore, its hub and the screws about it are cut from one sheet.
const originClear = 40.0

// tiling is a stretch of a drawing, along x or y, that count tiles cover which lie step
// apart and lap so far over their neighbours.
type tiling struct {
	from, to, step, lap float64
	count               int
}

// pieces returns how many pieces of a size cover a length, overlapping, and how far
// apart they lie.
func pieces(length, size float64) (count int, step float64) {
	step = hatchStep * math.Floor((size-overlap)/hatchStep)
	if length <= size {
		return 1, step
	}
	return int(min(math.Ceil((length-size)/step), mostTiles)) + 1, step
}

// start returns where the first tile begins: with the drawing in the middle of them all,
// or moved as little as keeps the seams off the origin, and no farther than the tiles
// still cover the drawing.
func (t tiling) start() float64 {
	spare := float64(t.count)*t.step + t.lap - (t.to - t.from)
	middle := t.from - spare/2
	nearest := math.Round((-middle - t.lap/2) / t.step)
	seam := middle + t.lap/2 + nearest*t.step
	outside := t.from >= 0 || t.to <= 0 || nearest < 1 || nearest > float64(t.count-1)
	clear := min(originClear, t.step/2) // half way to the next seam at most
	if outside || math.Abs(seam) >= clear {
		return middle
	}
	return middle + math.Copysign(min(clear-math.Abs(seam), spare/2), seam)
}
