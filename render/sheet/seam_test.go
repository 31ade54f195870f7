package sheet

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// dial is a drawing of rings with numbers all about them, as tips are numbered.
func dial(random *rand.Rand) *render.Drawing {
	b := template.NewBoard("dial", style)
	b.Drawing.Scale = 1
	radius := 60 + 60*random.Float64()
	for _, share := range []float64{1, 0.85, 0.6, 0.2} {
		b.Circle(template.Stroke{Layer: render.LayerTeeth, Pen: render.Visible}, geometry.Point{}, share*radius)
	}
	for i := range 36 {
		at := geometry.Polar(radius+8, geometry.Degrees(float64(10*i)))
		b.Write(template.Stroke{Layer: render.LayerText}, render.Text{At: at, Height: 3.5, Align: render.Middle, Centred: true, String: fmt.Sprint(10 * i)})
	}
	return b.Drawing
}

// A number is never cut in two: every tile shows it whole or not at all, and where one tile
// lies on the other it does not hide a part of it.
func TestNoNumberIsCutInTwo(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	moved := 0
	for i := range 60 {
		d := dial(random)
		tiles := cut(d.Bounds(), 70+60*random.Float64(), 70+60*random.Float64())
		whole := map[string]bool{}
		settled := offSeams(d, tiles)
		for n, it := range settled.Items {
			if it.Text == nil {
				continue
			}
			whole[it.Text.String] = true
			away := it.Text.At.Dist(d.Items[n].Text.At)
			require.Less(t, away, 4.5, "seed (5, 6), case %d: %s stays at its tip", i, it.Text.String)
			if away > 0 {
				moved++
			}
		}
		shown := map[string]bool{}
		for _, tile := range tiles {
			for _, it := range clipped(settled, tile.region).Items {
				if it.Text != nil {
					require.True(t, whole[it.Text.String], "seed (5, 6), case %d: %q on %s", i, it.Text.String, tile.name())
					bounds := it.Text.Bounds()
					require.True(t, tile.region.Grow(1e-6).Contains(bounds.Min) && tile.region.Grow(1e-6).Contains(bounds.Max), "%v %v %v", it.Text.String, bounds, tile.region)
					shown[it.Text.String] = true
				}
			}
		}
		require.Len(t, shown, 36, "seed (5, 6), case %d", i)
	}
	require.Greater(t, moved, 50, "numbers lay on seams")
}

// Register marks stand where the drawing leaves paper free, if there is such a place in
// the overlap, and whole within it.
func TestRegisterMarksKeepOffTheDrawing(t *testing.T) {
	random := rand.New(rand.NewPCG(7, 8))
	seen, clear := 0, 0
	for i := range 60 {
		d := dial(random)
		tiles := cut(d.Bounds(), 100+60*random.Float64(), 100+60*random.Float64())
		d = offSeams(d, tiles)
		for n, tile := range tiles {
			for _, p := range marks(d, tiles, n) {
				box := geometry.Box{Min: p, Max: p}.Grow(registerReach)
				require.True(t, tile.region.Contains(box.Min) && tile.region.Contains(box.Max), "seed (7, 8), case %d", i)
				seen++
				if len(clipped(d, box).Items) == 0 {
					clear++
				}
			}
		}
	}
	require.Greater(t, seen, 200)
	require.Greater(t, float64(clear), 0.97*float64(seen), "%d of %d marks stand clear", clear, seen)
}
