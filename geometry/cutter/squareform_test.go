package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

// farOff returns how far at most points along one edge lie from another.
func farOff(along, from geometry.Chain, moved func(geometry.Point) geometry.Point) float64 {
	most := 0.0
	for i := range along.Len() {
		for k := range 101 {
			p := moved(along.Segment(i).At(float64(k) / 100))
			near, _ := from.Nearest(p)
			most = math.Max(most, near.Dist(p))
		}
	}
	return most
}

// A form square to the clearance face is the form with every depth shrunk: its
// points are the form's, moved, within what the fit is said to be off and 1 µm.
func TestSquareForms(t *testing.T) {
	looked := 0
	eachForm(t, 80, func(i int, p Pointed, c Cut) {
		looked++
		clearance, rake := geometry.Degrees(float64(5+i%15)), geometry.Degrees(float64(i%40-20))
		s, err := c.SquareForm(clearance, rake)
		require.NoError(t, err, "form %d: %+v", i, p)
		require.Equal(t, SquareDepth(1, clearance, rake), s.Share)
		squeeze := func(q geometry.Point) geometry.Point { return geometry.Point{X: q.X, Y: q.Y * s.Share} }
		off := farOff(c.Form.Edge, s.Form.Edge, squeeze)
		require.LessOrEqual(t, off, 1.02*s.Off+1e-9, "form %d: %+v", i, p)
		require.LessOrEqual(t, s.Off, 1e-3, "form %d: %+v", i, p)
		o, err := s.Form.Outline()
		require.NoError(t, err)
		require.True(t, o.Simple(), "form %d: %+v", i, p)
		form, err := c.Form.Outline()
		require.NoError(t, err)
		require.InDelta(t, form.Area()*s.Share, o.Area(), 2e-3*o.Length(), "an affine map's area")
		require.Equal(t, c.Form.StockWidth, s.Form.StockWidth)
		require.InDelta(t, c.Form.Top*s.Share, s.Form.Top, 1e-12)
		for k := 1; k < s.Form.Edge.Len(); k++ { // what was smooth stays so
			a, b := s.Form.Edge.Segment(k-1), s.Form.Edge.Segment(k)
			if a.Quantity == b.Quantity && !a.IsLine() && !b.IsLine() {
				require.InDelta(t, 1, leaving(a.Reverse()).Times(-1).Dot(leaving(b)), 1e-9, "form %d: %+v", i, p)
			}
		}
	})
	require.NotZero(t, looked)
}

// Going back along every piece of a fitted edge finds the form again.
func TestSquareFormsHoldNothingElse(t *testing.T) {
	for _, c := range []Cut{escapeForm(t), hollowCut(t), levelForm(t)} {
		s, err := c.SquareForm(geometry.Degrees(20), 0)
		require.NoError(t, err)
		back := func(q geometry.Point) geometry.Point { return geometry.Point{X: q.X, Y: q.Y / s.Share} }
		require.LessOrEqual(t, farOff(s.Form.Edge, c.Form.Edge, back), (1.02*s.Off+1e-9)/s.Share)
	}
}

// D/cos G is what a depth D is drawn out to along a face at rake G.
func TestFaceForm(t *testing.T) {
	c := escapeForm(t)
	s, err := c.FaceForm(geometry.Degrees(15))
	require.NoError(t, err)
	require.InDelta(t, c.Form.Edge.Bounds().Max.Y/math.Cos(15*math.Pi/180), s.Form.Edge.Bounds().Max.Y, 1e-9)
	same, err := c.FaceForm(0)
	require.NoError(t, err)
	require.Zero(t, same.Off)
	require.Equal(t, c.Form.Edge, same.Form.Edge)
}

func TestAnglesNoBitIsGroundAt(t *testing.T) {
	c := escapeForm(t)
	for _, row := range []struct {
		clearance, rake float64
		field           geometry.Quantity
	}{{0, 0, Clearance}, {31, 0, Clearance}, {math.NaN(), 0, Clearance}, {10, 31, Rake}, {10, -31, Rake}, {10, math.Inf(1), Rake}} {
		_, err := c.SquareForm(geometry.Degrees(row.clearance), geometry.Degrees(row.rake))
		limit := &geometry.Limit{}
		require.ErrorAs(t, err, &limit)
		require.Equal(t, row.field, limit.Quantity)
		require.True(t, words.English().Has(limit.Code))
	}
	_, err := c.FaceForm(geometry.Degrees(40))
	require.Error(t, err)
}
