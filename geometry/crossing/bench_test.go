package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// regulator is a plain disc of brass the size of a regulator's centre wheel, 72
// teeth, and a crossing of six arms that divides them.
func regulator() (Blank, Spec) {
	disc, err := geometry.Circle(geometry.Point{}, 29, "teeth")
	if err != nil {
		panic(err)
	}
	b := Blank{
		Count: 72, TipRadius: 30, RootRadius: 28, Bore: 6, Outline: disc,
		Thickness: 1.6, Density: 8490, Young: 97, // materials.csv: C36000
	}
	s := Spec{
		Arms: 6, Placing: OnTips, Rim: 2.4, Hub: 14, ArmAtRim: 2.2, ArmAtHub: 3,
		FilletAtRim: 0.8, FilletAtHub: 0.8, Allowance: 0.3, StartHole: 1.2, BladeTurning: 0.3,
	}
	return b, s
}

// toothed returns an outline of that many teeth of four lines and two arcs each,
// as heavy to work out as a real wheel's.
func toothed(t testing.TB, teeth int, tip, root float64) geometry.Outline {
	vs := make([]geometry.Vertex, 0, 6*teeth)
	pitch := 2 * math.Pi / float64(teeth)
	for i := range teeth {
		at := func(r, share, bulge float64) geometry.Vertex {
			return geometry.Vertex{Point: geometry.Polar(r, geometry.Angle(pitch*(float64(i)+share))), Bulge: bulge}
		}
		mid := (tip + root) / 2
		vs = append(vs, at(root, 0.2, 0), at(mid, 0.22, 0.1), at(tip, 0.45, 0), at(tip, 0.55, 0.1),
			at(mid, 0.78, 0), at(root, 0.8, math.Tan(0.4*pitch/4)))
	}
	o, err := geometry.NewOutline(vs)
	require.NoError(t, err)
	return o
}

func BenchmarkLay(b *testing.B) {
	blank, spec := regulator()
	blank.Count, blank.TipRadius, blank.RootRadius = 360, 100, 97
	blank.Outline = toothed(b, 360, 100, 97)
	for b.Loop() {
		if _, err := Lay(blank, spec); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLayUnequal(b *testing.B) {
	blank, spec := regulator()
	blank.Count, blank.TipRadius, blank.RootRadius = 359, 100, 97
	blank.Outline = toothed(b, 359, 100, 97)
	for b.Loop() {
		if _, err := Lay(blank, spec); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkLayRefused(b *testing.B) {
	blank, spec := regulator()
	blank.Count = 71
	spec.FilletAtRim = 20
	for b.Loop() {
		if _, err := Lay(blank, spec); err == nil {
			b.Fatal("built")
		}
	}
}

func BenchmarkCompareThreeToTwelve(b *testing.B) {
	blank, spec := regulator()
	blank.Count, blank.TipRadius, blank.RootRadius = 360, 100, 97
	blank.Outline = toothed(b, 360, 100, 97)
	counts := []int{3, 4, 5, 6, 7, 8, 9, 10, 11, 12}
	for _, style := range []Style{Straight, Swept, Waisted} {
		b.Run(string(style), func(b *testing.B) {
			spec.Style, spec.Sweep, spec.Waist = style, 0.3, 1.8
			for b.Loop() {
				for _, row := range Compare(blank, spec, counts) {
					if row.Err != nil {
						b.Fatal(row.Err)
					}
				}
			}
		})
	}
}
