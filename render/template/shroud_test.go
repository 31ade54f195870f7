package template

import (
	"bytes"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/dividing"
	"tipline/geometry/tooth"
	"tipline/render"
	"tipline/render/dxf"
	"tipline/render/svg"
)

// lanternWheel is a lantern pinion with a bore that leaves half a trundle of metal.
func lanternWheel(t testing.TB, leaves int, module float64) Wheel {
	t.Helper()
	l, err := tooth.Lantern{Leaves: leaves, Module: module}.Pinion()
	require.NoError(t, err)
	answer, err := dividing.Head{Ratio: 60}.Divide(leaves, l.PitchRadius)
	require.NoError(t, err)
	return Wheel{ID: "lantern", Name: "Lantern pinion", Bore: l.LargestBore / 2, Thickness: 5, Lantern: &l, Dividing: &answer}
}

// circlesOn returns the circles of a drawing's outlines on a layer.
func circlesOn(t *testing.T, d *render.Drawing, layer render.Layer) (centres []geometry.Point, radii []float64) {
	for _, it := range d.Items {
		if it.Layer != layer {
			continue
		}
		for _, o := range it.Outlines {
			require.Equal(t, 2, o.Len(), "a circle is two half arcs")
			a, b := o.Vertex(0).Point, o.Vertex(1).Point
			centres, radii = append(centres, a.Toward(b, 0.5)), append(radii, a.Dist(b)/2)
		}
	}
	return centres, radii
}

// Every hole stands on the trundle circle where plane trigonometry puts it, in both
// shrouds, the second as the first seen from behind.
func TestShroudHoles(t *testing.T) {
	for _, n := range []int{3, 6, 8, 11, 24, 60} {
		const module = 0.7
		d, err := Shroud(lanternWheel(t, n, module), metric)
		require.NoError(t, err)
		require.Equal(t, 1.0, d.Scale)
		holes, radii := circlesOn(t, d, render.LayerTrundles)
		require.Len(t, holes, 2*n, "closed circles, one for each hole")
		second := secondShroud(*lanternWheel(t, n, module).Lantern)
		thickness := 1.05 * module
		if n > 10 {
			thickness = 1.25 * module
		}
		for i := range n {
			sin, cos := math.Sincos(2 * math.Pi * float64(i) / float64(n))
			r := module * float64(n) / 2
			require.InDelta(t, 0, holes[i].Dist(geometry.Point{X: r * sin, Y: r * cos}), 1e-9, "hole %d of %d", i, n)
			require.InDelta(t, 0, holes[n+i].Dist(second.Add(geometry.Point{X: -r * sin, Y: r * cos})), 1e-9, "hole %d of %d", i, n)
			require.InDelta(t, thickness/2, radii[i], 1e-9)
		}
		discs, edges := circlesOn(t, d, render.LayerTeeth)
		require.Equal(t, []geometry.Point{{}, second}, discs)
		require.InDelta(t, module*float64(n)/2+thickness, edges[0], 1e-9, "half a trundle of metal outside the holes")
		circles, radius := circlesOn(t, d, render.LayerPitchCircle)
		require.Equal(t, discs, circles)
		require.InDelta(t, module*float64(n)/2, radius[0], 1e-9)
		require.Greater(t, second.Norm(), 2*edges[0], "the two stand apart")
	}
}

// No line runs through a hole's centre, where the punch goes, nor into the next hole.
func TestShroudCrossesAreOpen(t *testing.T) {
	w := lanternWheel(t, 8, 0.6)
	d, err := Shroud(w, metric)
	require.NoError(t, err)
	holes, radii := circlesOn(t, d, render.LayerTrundles)
	crosses := 0
	for _, it := range d.Items {
		if it.Layer != render.LayerCentreLines {
			continue
		}
		for _, c := range it.Chains {
			s := c.Segment(0)
			for i, h := range holes {
				at, _ := s.Nearest(h)
				require.Greater(t, at.Dist(h), 0.07, "hole %d", i)
				if at.Dist(h) < radii[i] {
					crosses++
				}
			}
		}
	}
	require.Equal(t, 4*len(holes), crosses, "four arms reach into each hole")
}

// What another program reads is the work at full size and nothing enlarged.
func TestShroudComesBackFromFiles(t *testing.T) {
	w := lanternWheel(t, 8, 0.6)
	d, err := Shroud(w, metric)
	require.NoError(t, err)
	var file bytes.Buffer
	require.NoError(t, dxf.Write(&file, d))
	require.Len(t, dxfCircles(t, file.String(), "trundles", 0.315), 16)
	require.Len(t, dxfCircles(t, file.String(), "teeth", 3.03), 2)
	require.Len(t, dxfCircles(t, file.String(), "bore", w.Bore/2), 2)
	for i, at := range dxfCircles(t, file.String(), "trundles", 0.315)[:8] {
		require.InDelta(t, 0, at.Dist(w.Lantern.Holes[i].At), 1e-3)
	}

	file.Reset()
	require.NoError(t, svg.Write(&file, d))
	layer := file.String()[strings.Index(file.String(), `id="trundles"`):]
	layer = layer[:strings.Index(layer, "</g>")]
	radii := regexp.MustCompile(`A\s*([0-9.]+)`).FindAllStringSubmatch(layer, -1)
	require.GreaterOrEqual(t, len(radii), 2*16)
	for _, r := range radii {
		v, err := strconv.ParseFloat(r[1], 64)
		require.NoError(t, err)
		require.InDelta(t, 0.315, v, 1e-3)
	}
}

// dxfCircles returns the centres of the circles on a layer, which are all to have
// the radius.
func dxfCircles(t *testing.T, file, layer string, radius float64) []geometry.Point {
	var centres []geometry.Point
	lines := strings.Split(strings.ReplaceAll(file, "\r", ""), "\n")
	for i := 0; i+1 < len(lines); i += 2 {
		if strings.TrimSpace(lines[i]) != "0" || lines[i+1] != "CIRCLE" {
			continue
		}
		codes := map[string]string{}
		for j := i + 2; strings.TrimSpace(lines[j]) != "0"; j += 2 {
			codes[strings.TrimSpace(lines[j])] = lines[j+1]
		}
		if codes["8"] != layer {
			continue
		}
		number := func(code string) float64 {
			v, err := strconv.ParseFloat(strings.TrimSpace(codes[code]), 64)
			require.NoError(t, err)
			return v
		}
		require.InDelta(t, radius, number("40"), 1e-3)
		centres = append(centres, geometry.Point{X: number("10"), Y: number("20")})
	}
	return centres
}

func TestShroudSaysWhatTheBenchNeeds(t *testing.T) {
	w := lanternWheel(t, 8, 0.6)
	d, err := Shroud(w, metric)
	require.NoError(t, err)
	texts := said(d)
	for _, text := range []string{
		"45° 00' 00\"", "315° 00' 00\"", "hole Ø 0.630 mm", "trundle circle Ø 4.800 mm", "shroud Ø 6.060 mm", "10 : 1, to read from",
		"4.800 mm", // from hole 0 to the one opposite: the circle's diameter
		"1.837 mm", // 4.8·sin 22.5°
	} {
		require.Contains(t, texts, text)
	}
	notes := ShroudNotes(w, metric)
	values := map[string]string{}
	for _, f := range notes.Figures {
		values[f.Label] = f.Value
	}
	require.Equal(t, "1.837 mm", values["Dividers, hole to hole"])
	require.Equal(t, "#72, 0.635 mm", values["Nearest drill"], "0.0250 in, assets/tables/drills.csv")
	require.Contains(t, notes.Caution, "fine drill")
	_, err = Shroud(trainWheel(t, 60, 5), metric)
	require.ErrorIs(t, err, ErrNothing)
}

// A large lantern's shrouds stand one above the other and need no enlargement; one
// of very many trundles lists as many as there is room for.
func TestLargeShrouds(t *testing.T) {
	w := lanternWheel(t, 200, 1.2)
	d, err := Shroud(w, metric)
	require.NoError(t, err)
	require.Negative(t, secondShroud(*w.Lantern).Y)
	require.NotContains(t, strings.Join(said(d), "\n"), "to read from")
	rows := 0
	for _, text := range said(d) {
		if strings.HasSuffix(text, `"`) {
			rows++
		}
	}
	require.Equal(t, 20, rows, "every tenth")
}

func TestShroudSheetsStandClear(t *testing.T) {
	for _, n := range []int{3, 4, 6, 8, 11, 16, 31, 60} {
		for _, module := range []float64{0.3, 1.1} {
			w := lanternWheel(t, n, module)
			for unit, s := range map[string]Style{"mm": metric, "in": inches} {
				for name, draw := range map[string]func(Wheel, Style) (*render.Drawing, error){
					"shroud": Shroud, "view": PinionView, "blank": BlankCard, "dividing": DividingCard,
				} {
					d, err := draw(w, s)
					require.NoError(t, err)
					requireClear(t, d, "%s of %d trundles of module %v in %s", name, n, module, unit)
					require.NotContains(t, strings.Join(append(said(d), d.Title, d.Description), " "), "‹")
				}
			}
		}
	}
}
