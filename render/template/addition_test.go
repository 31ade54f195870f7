package template

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/render"
	"tipline/render/dxf"
)

func added(t testing.TB) Wheel {
	w := trainWheel(t, 72, 6)
	w.Additions = []crossing.Addition{
		{Kind: crossing.HoleKind, Radius: 25.9, Angle: geometry.Degrees(30), Diameter: 1.2, Repeat: 3},
		{Kind: crossing.CircleKind, Diameter: 9},
		{Kind: crossing.LineKind, Radius: 6, ToRadius: 26, Angle: geometry.Degrees(45), ToAngle: geometry.Degrees(60)},
		{Kind: crossing.NoteKind, Radius: 14, Angle: geometry.Degrees(120), Text: "this side up"},
	}
	return w
}

// What the maker adds stands on its own layer, repeated, clockwise from 12 o'clock.
func TestAdditionsAreDrawn(t *testing.T) {
	w := added(t)
	d, err := Crossing(w, metric)
	require.NoError(t, err)
	holes := itemsOn(d, render.LayerAdditions, "additions[0].diameter")
	require.Len(t, holes, 3)
	for i, it := range holes {
		sin, cos := math.Sincos((30 + 120*float64(i)) * math.Pi / 180)
		a, b := it.Outlines[0].Vertex(0).Point, it.Outlines[0].Vertex(1).Point
		require.InDelta(t, 0, a.Toward(b, 0.5).Dist(geometry.Point{X: 25.9 * sin, Y: 25.9 * cos}), 1e-9)
		require.InDelta(t, 1.2, a.Dist(b), 1e-9)
	}
	require.Len(t, itemsOn(d, render.LayerAdditions, "additions[1].diameter"), 1)
	line := itemsOn(d, render.LayerAdditions, "additions[2].to_radius")[0].Chains[0].Segment(0)
	require.InDelta(t, 0, line.From.Dist(geometry.Point{X: 6 * math.Sqrt2 / 2, Y: 6 * math.Sqrt2 / 2}), 1e-9)
	require.InDelta(t, 0, line.To.Dist(geometry.Point{X: 26 * math.Sqrt(3) / 2, Y: 13}), 1e-9)
	require.Equal(t, "this side up", itemsOn(d, render.LayerAdditions, "additions[3].text")[0].Text.String)

	var file bytes.Buffer
	require.NoError(t, dxf.Write(&file, d))
	_, after, _ := strings.Cut(file.String(), "ENTITIES")
	additions := 0
	for _, entity := range strings.Split(after, "CIRCLE")[1:] {
		if layer := strings.Fields(entity)[1]; layer == "additions" {
			additions++
		}
	}
	require.Equal(t, 4, additions, "three holes and a scribed circle")
}

// Each addition is dragged by its place, its size or a line's end.
func TestAdditionsAreDragged(t *testing.T) {
	w := added(t)
	w.Crossing, w.Bore = nil, 0
	want := []geometry.Quantity{
		"additions[0].radius", "additions[0].diameter", "additions[1].radius", "additions[1].diameter",
		"additions[2].radius", "additions[2].to_radius", "additions[3].radius",
	}
	handles := CrossingHandles(w)
	require.Equal(t, want, quantities(handles))
	for i, a := range []struct{ radius, degrees float64 }{0: {25.9, 30}, 4: {6, 45}, 5: {26, 60}, 6: {14, 120}} {
		if a.radius == 0 {
			continue
		}
		settings, err := handles[i].Set(handles[i].At)
		require.NoError(t, err)
		require.Len(t, settings, 2)
		require.InDelta(t, a.radius, settings[0].Value, 1e-9)
		require.InDelta(t, a.degrees, geometry.Angle(settings[1].Value).Degrees(), 1e-9)
	}
	note := w.Additions[3]
	at := geometry.Polar(note.Radius, geometry.Clock(note.Angle))
	require.InDelta(t, at.Y, handles[6].At.Y, 1e-9)
	require.Less(t, handles[6].At.X, at.X-render.Text{Height: noteHeight, String: note.Text}.Width()/2, "a note's stands before it")
	v, err := handles[1].Value(handles[1].At.Add(geometry.Point{X: 0.1}))
	require.NoError(t, err)
	require.InDelta(t, 1.4, v, 1e-9)
	_, err = handles[0].Set(geometry.Point{Y: math.Inf(1)})
	require.ErrorIs(t, err, ErrNowhere)
}

// The hole that would balance a wheel is shown and told, but is no hole of the work.
func TestBalanceIsShown(t *testing.T) {
	spec := scribedSpec(5, crossing.Waisted)
	spec.Waist, spec.OuterRadius, spec.Hub = 1.4, 20, 16
	w, ok := laid(t, 77, spec)
	require.True(t, ok)
	require.NotNil(t, w.Crossing.Balance)
	d, err := Crossing(w, metric)
	require.NoError(t, err)
	found := itemsOn(d, render.LayerDimensions, "crossing.placing")
	require.NotEmpty(t, found)
	a, b := found[0].Outlines[0].Vertex(0).Point, found[0].Outlines[0].Vertex(1).Point
	require.InDelta(t, w.Crossing.Balance.Diameter, a.Dist(b), 1e-9)
	require.InDelta(t, w.Crossing.Balance.Radius, a.Toward(b, 0.5).Norm(), 1e-9)
	var told []string
	for _, m := range CrossingNotes(w, metric).Legend {
		told = append(told, m.Text)
	}
	require.Contains(t, strings.Join(told, "\n"), "balance it: a hole of "+metric.Units.Length(w.Crossing.Balance.Diameter))
}

func TestCrossingTellsItsSizes(t *testing.T) {
	for style, want := range map[crossing.Style]map[string]string{
		crossing.Straight: {"Rim, hub diameter": "2.40 / 13.00 mm", "Arm at rim, at hub": "2.00 / 2.80 mm"},
		crossing.Swept:    {"Sweep": "15°"},
		crossing.Waisted:  {"Waist": "1.30 mm", "Windows' outer edge, radius": "24.00 mm"},
	} {
		s := scribedSpec(6, style)
		s.Sweep, s.Waist = geometry.Degrees(15), 1.3
		if style == crossing.Waisted {
			s.OuterRadius = 24
		}
		w, ok := laid(t, 84, s)
		require.True(t, ok)
		values := map[string]string{}
		for _, f := range CrossingNotes(w, metric).Figures {
			values[f.Label] = f.Value
		}
		for label, value := range want {
			require.Equal(t, value, values[label], label)
		}
	}
}
