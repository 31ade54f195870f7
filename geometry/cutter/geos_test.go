//go:build geos

package cutter

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
	"github.com/twpayne/go-geos"

	"tipline/geometry"
)

// quarters is into how many chords GEOS cuts a quarter circle.
const quarters = 64

// simplified is the share of the inset by which GEOS 3 takes corners off a ring
// before it makes a buffer, here taken over a half circle of the inset's radius.
const simplified = 0.01

func polygon(o geometry.Outline, tolerance float64) *geos.Geom {
	corners := o.Flatten(tolerance)
	ring := make([][]float64, 0, len(corners)+1)
	for _, p := range corners {
		ring = append(ring, []float64{p.X, p.Y})
	}
	return geos.NewPolygon([][][]float64{append(ring, ring[0])})
}

// Random forms are valid polygons of the area that the closed form says, and
// their heels are what GEOS' own buffer makes of the form, away from the stock's
// sides and the shank.
func TestFormsAndHeelsAgreeWithGEOS(t *testing.T) {
	eachForm(t, 60, func(i int, p Pointed, c Cut) {
		o, err := c.Form.Outline()
		require.NoError(t, err)
		tolerance := 1e-5 * c.Form.Top
		form := polygon(o, tolerance)
		require.True(t, form.IsValid(), "form %d: %+v", i, p)
		require.InDelta(t, form.Area(), o.Area(), o.Length()*tolerance, "form %d: %+v", i, p)

		clearance := geometry.Degrees(10)
		r, err := c.Relieve(clearance, math.Max(c.Infeed, geometry.LeastLength), 0)
		require.NoError(t, err, "form %d: %+v", i, p)
		inset := r.UsableThickness * math.Tan(float64(clearance))
		area := 0.0
		heel := geos.NewEmptyPolygon()
		for _, h := range r.Heel {
			g := polygon(h, tolerance)
			require.True(t, g.IsValid(), "heel %d: %+v", i, p)
			require.InDelta(t, g.Area(), h.Area(), h.Length()*tolerance, "heel %d: %+v", i, p)
			area += h.Area()
			heel = heel.Union(g)
		}
		// Away from the sides that are not ground the section is all that lies
		// further than the inset from the form's edge.
		box := o.Bounds()
		window := geos.NewPolygon([][][]float64{{
			{box.Min.X, box.Min.Y},
			{box.Max.X - inset, box.Min.Y},
			{box.Max.X - inset, box.Max.Y - inset},
			{box.Min.X, box.Max.Y - inset},
			{box.Min.X, box.Min.Y},
		}})
		if box.Max.X-inset <= box.Min.X || box.Max.Y-inset <= box.Min.Y {
			return
		}
		buffer := form.Buffer(-inset, quarters).Intersection(window)
		difference := buffer.SymDifference(heel.Intersection(window)).Area()
		require.Less(t, difference, o.Length()*4*tolerance+simplified*inset*math.Pi*inset, "heel %d inset %g: %+v", i, inset, p)
	})
}
