package job

import (
	"encoding/json"
	"math"
	"strconv"
	"strings"

	"tipline/geometry"
)

// Pixels are points of a photograph as they stand in the file, in pixels from its
// top left corner, x to the right and y down: a list of pairs, or one pair. What is
// of another shape is kept as it stands.
type Pixels json.RawMessage

// Empty reports whether nothing is there.
func (p Pixels) Empty() bool { return len(p) == 0 }

// mostPixel bounds a coordinate: far beyond any picture, and exact as a float64.
const mostPixel = 1e9

// Points returns the points; false when what stands there is no list of pairs of
// numbers.
func (p Pixels) Points() ([]geometry.Point, bool) {
	if p.Empty() {
		return nil, true
	}
	var pairs [][]float64
	if json.Unmarshal(p, &pairs) != nil {
		var one []float64
		if json.Unmarshal(p, &one) != nil {
			return nil, false
		}
		pairs = [][]float64{one}
	}
	points := make([]geometry.Point, len(pairs))
	for i, at := range pairs {
		if len(at) != 2 || math.Abs(at[0]) > mostPixel || math.Abs(at[1]) > mostPixel {
			return nil, false
		}
		points[i] = geometry.Point{X: at[0], Y: at[1]}
	}
	return points, true
}

// String writes the points as they are typed, "120 48.5, 300 52"; what is no list
// of points is written as it stands.
func (p Pixels) String() string {
	points, ok := p.Points()
	if !ok {
		return string(p)
	}
	texts := make([]string, len(points))
	for i, at := range points {
		texts[i] = pixel(at.X) + " " + pixel(at.Y)
	}
	return strings.Join(texts, ", ")
}

func pixel(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }

// PixelsOf returns points of a photograph as a job holds them.
func PixelsOf(points ...geometry.Point) Pixels {
	if len(points) == 0 {
		return nil
	}
	texts := make([]string, len(points))
	for i, at := range points {
		texts[i] = "[" + pixel(at.X) + "," + pixel(at.Y) + "]"
	}
	return Pixels("[" + strings.Join(texts, ",") + "]")
}

// typedPixels reads points as String writes them; a text that is none is kept as a
// JSON text, or as the JSON it is.
func typedPixels(text string) Pixels {
	var points []geometry.Point
	for _, item := range listed(text) {
		x, y, _ := strings.Cut(item, " ")
		at, ok := pixelAt(x, strings.TrimSpace(y))
		if !ok {
			return otherPixels(text)
		}
		points = append(points, at)
	}
	return PixelsOf(points...)
}

func otherPixels(text string) Pixels {
	if n, err := parse([]byte(text)); err == nil {
		return Pixels(compact(n))
	}
	return Pixels(quote(text))
}

func pixelAt(x, y string) (geometry.Point, bool) {
	if !isNumber(x) || !isNumber(y) {
		return geometry.Point{}, false
	}
	at := geometry.Point{}
	var wrong [2]error
	at.X, wrong[0] = strconv.ParseFloat(x, 64)
	at.Y, wrong[1] = strconv.ParseFloat(y, 64)
	return at, wrong == [2]error{} && math.Abs(at.X) <= mostPixel && math.Abs(at.Y) <= mostPixel
}
