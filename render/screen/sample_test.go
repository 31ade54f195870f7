package screen

import (
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// crossed draws a wheel of so many teeth with six filleted windows, its tips on a
// circle of 40 mm, as a template would: teeth, bore, windows with saw lines, ticks
// and centre lines, and a number at every tenth tip.
func crossed(t testing.TB, teeth int) *render.Drawing {
	d := &render.Drawing{Scale: 1}
	add := func(it render.Item) {
		it.Part = "wheel"
		d.Add(it)
	}
	add(render.Item{Layer: render.LayerTeeth, Quantity: "teeth", Pen: render.Visible, Fill: render.Brass, Outlines: []geometry.Outline{toothed(t, teeth)}})
	bore, err := geometry.Circle(geometry.Point{}, 3, "bore")
	require.NoError(t, err)
	add(render.Item{Layer: render.LayerBore, Quantity: "bore", Pen: render.Visible, Fill: render.Paper, Outlines: []geometry.Outline{bore}})
	for i := range 6 {
		turn := geometry.Degrees(float64(60 * i))
		window := windowShape(t, 12, 34, 1.2).Rotate(turn)
		saw := windowShape(t, 12.4, 33.6, 1.7).Rotate(turn)
		add(render.Item{Layer: render.LayerWindows, Quantity: "crossing", Pen: render.Visible, Fill: render.Waste, Outlines: []geometry.Outline{window}})
		add(render.Item{Layer: render.LayerSawLine, Quantity: "crossing.allowance", Pen: render.Hidden, Outlines: []geometry.Outline{saw}})
		line := geometry.Line{From: geometry.Polar(1, turn), To: geometry.Polar(46, turn)}
		add(render.Item{Layer: render.LayerCentreLines, Quantity: "crossing.arms", Pen: render.Centre, Ink: render.Blue, Chains: []geometry.Chain{geometry.ChainOf(line.Segment())}})
	}
	ticks := render.Item{Layer: render.LayerCentreLines, Pen: render.Hair, Ink: render.Blue}
	for i := range teeth {
		a := geometry.Clock(geometry.FullTurn * geometry.Angle(i) / geometry.Angle(teeth))
		line := geometry.Line{From: geometry.Polar(41, a), To: geometry.Polar(42, a)}
		ticks.Chains = append(ticks.Chains, geometry.ChainOf(line.Segment()))
		if i%10 == 0 {
			add(render.Item{Layer: render.LayerText, Ink: render.Blue, Text: &render.Text{At: geometry.Polar(44, a), Height: 1.8, Align: render.Middle, Centred: true, String: fmt.Sprint(i)}})
		}
	}
	add(ticks)
	return d
}

// toothed returns a wheel's outline: round-topped teeth with radial flanks.
func toothed(t testing.TB, teeth int) geometry.Outline {
	var vs []geometry.Vertex
	pitch := 2 * math.Pi / float64(teeth)
	for i := range teeth {
		at := func(r, share float64) geometry.Point {
			return geometry.Polar(r, geometry.Clock(geometry.Angle((float64(i)+share)*pitch)))
		}
		vs = append(vs,
			geometry.Vertex{Point: at(37, -0.25)},
			geometry.Vertex{Point: at(38.8, -0.25), Bulge: -0.15},
			geometry.Vertex{Point: at(40, 0), Bulge: -0.15},
			geometry.Vertex{Point: at(38.8, 0.25)},
			geometry.Vertex{Point: at(37, 0.25), Bulge: -math.Tan(pitch / 8)})
	}
	o, err := geometry.NewOutline(vs)
	require.NoError(t, err)
	return o
}

// windowShape returns a sector from one radius to another, its corners rounded by
// small arcs, and its rim and hub tagged.
func windowShape(t testing.TB, in, out, round float64) geometry.Outline {
	const from, to = 0.1, math.Pi/3 - 0.1
	p := geometry.Polar
	inside, outside := geometry.Angle(round/in), geometry.Angle(round/out)
	rim := math.Tan(float64(to-from-2*outside) / 4)
	hub := math.Tan(float64(to-from-2*inside) / 4)
	const corner = 0.41
	o, err := geometry.NewOutline([]geometry.Vertex{
		{Point: p(out, from+outside), Bulge: rim, Quantity: "crossing.rim"},
		{Point: p(out, to-outside), Bulge: corner, Quantity: "crossing.fillet_at_rim"},
		{Point: p(out-round, to), Quantity: "crossing.arm_at_rim"},
		{Point: p(in+round, to), Bulge: corner, Quantity: "crossing.fillet_at_hub"},
		{Point: p(in, to-inside), Bulge: -hub, Quantity: "crossing.hub"},
		{Point: p(in, from+inside), Bulge: corner, Quantity: "crossing.fillet_at_hub"},
		{Point: p(in+round, from), Quantity: "crossing.arm_at_rim"},
		{Point: p(out-round, from), Bulge: corner, Quantity: "crossing.fillet_at_rim"},
	})
	require.NoError(t, err)
	return o
}
