package solve_test

import (
	"context"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/solve"
	"tipline/geometry"
)

func codesOf(r *solve.Result, part string) []string {
	var codes []string
	for _, f := range r.Findings {
		if f.Part == part {
			codes = append(codes, f.Code)
		}
	}
	return codes
}

func angles(t *testing.T, want []float64, got func(int) geometry.Angle) {
	for i, degrees := range want {
		require.InDelta(t, 0, float64((got(i) - geometry.Degrees(degrees)).Normal()), 1e-12, i)
	}
}

// What follows from the numbers of the job by one line of arithmetic; drills from
// testdata/threads.csv (0-80 UNF).
func TestMountingByHand(t *testing.T) {
	r := solve.Solve(context.Background(), read(t, collets))
	w := r.Wheel("single")
	m := w.Mounting
	require.Len(t, m.Places, 4)
	angles(t, []float64{0, 90, 180, 270}, func(i int) geometry.Angle { return m.Places[i].Angle })
	require.InDelta(t, 1.613, m.Clear.MM, 1e-3)
	require.InDelta(t, 1.191, m.Tap.MM, 1e-3)
	require.InDelta(t, 7*math.Sqrt2, m.Chord, 1e-12)
	require.Equal(t, w.Collet, m.Collet)
	require.Equal(t, 20.0, w.Collet.Flange)
	shape := w.Template()
	require.Same(t, m, shape.Mounting)
	require.Equal(t, "UNF 0-80", shape.Thread.Name())
	require.Len(t, shape.Additions, 2)
	require.Contains(t, codesOf(r, "single"), "mount.drills")
}

// A wheel that is not crossed weighs what its circle does less bore, screws and the
// maker's own holes: a measured wheel is solid to the mean of its radii.
func TestUncrossedWheelIsWeighed(t *testing.T) {
	r := solve.Solve(context.Background(), read(t, collets))
	w := r.Wheel("single")
	holes := 3*2*2.0 + 4*m2(w.Mounting.Clear.MM)
	area := math.Pi * (m2((20+18.5)/2) - m2(3) - holes/4)
	require.InDelta(t, area, w.Uncrossed.Area, 1e-9)
	require.InDelta(t, area*1.2*8490e-6, w.Uncrossed.Mass, 1e-9, "brass")
	require.InDelta(t, 0, w.Uncrossed.Unbalance, 1e-9)
	require.Nil(t, w.Crossing)
	small := r.Wheel("small")
	area = math.Pi * (m2(21) - m2(3) - 3*m2(small.Mounting.Clear.MM)/4)
	require.InDelta(t, area, small.Uncrossed.Area, 1e-9, "with the stack's holes")
}

func m2(v float64) float64 { return v * v }

// A crossed wheel loses the area of its screws' holes.
func TestScrewsAreWeighed(t *testing.T) {
	j := read(t, collets)
	screwed := solve.Solve(context.Background(), j).Wheel("large")
	loose, err := j.Clear("two", "mount")
	require.NoError(t, err)
	whole := solve.Solve(context.Background(), loose).Wheel("large")
	require.Nil(t, whole.Mounting)
	require.InDelta(t, 3*math.Pi/4*m2(screwed.Mounting.Clear.MM), whole.Crossing.Area-screwed.Crossing.Area, 1e-9)
	require.InDelta(t, whole.Crossing.RemovedShare, screwed.Crossing.RemovedShare, 1e-12, "of the windows alone")
}

// The first screw stands midway between arms 0 and 1 unless it is said.
func TestFirstScrew(t *testing.T) {
	j := sample(t)
	for field, text := range map[geometry.Quantity]string{
		"mount.screws": "5", "mount.thread": "M1", "mount.screw_circle": "8 mm", "mount.start": "",
	} {
		j = set(t, j, "third", field, text)
	}
	w := solve.Solve(context.Background(), j).Wheel("third")
	require.NotNil(t, w.Mounting, errorsOf(solve.Solve(context.Background(), j), "third"))
	angles(t, []float64{36, 108}, func(i int) geometry.Angle { return w.Mounting.Places[i].Angle })
	w = solve.Solve(context.Background(), set(t, j, "third", "mount.start", "-15 deg")).Wheel("third")
	angles(t, []float64{345, 57}, func(i int) geometry.Angle { return w.Mounting.Places[i].Angle })
}

// A collet without screws is riveted or soldered on: it is checked against the
// bore, and nothing is drilled.
func TestColletWithoutScrews(t *testing.T) {
	j, err := read(t, collets).Clear("single", "mount")
	require.NoError(t, err)
	j = set(t, j, "single", "mount.collet.register", "6 mm")
	r := solve.Solve(context.Background(), j)
	require.Empty(t, errorsOf(r, "single"))
	require.Nil(t, r.Wheel("single").Mounting)
	require.Equal(t, 6.0, r.Wheel("single").Collet.Register)
	r = solve.Solve(context.Background(), set(t, j, "single", "mount.collet.register", "6.2 mm"))
	require.Contains(t, errorsOf(r, "single")[0], "mount.collet.register: ")
	require.Contains(t, errorsOf(r, "single")[0], "at most 6.00 mm")
}

// A mount waits for teeth, crossing and thickness, and says which is missing once.
func TestMountWaits(t *testing.T) {
	for _, row := range []struct {
		part, text string
		field      geometry.Quantity
		errors     int
	}{
		{"single", "", "thickness", 1},
		{"single", "1.2 miles", "thickness", 1},
		{"single", "two", "teeth.count", 1},
		{"large", "", "thickness", 1},
		{"large", "60 mm", "crossing.hub", 1},
	} {
		t.Run(row.part+" "+string(row.field)+" "+row.text, func(t *testing.T) {
			j := read(t, collets)
			j.Stacks = nil
			for field, text := range map[geometry.Quantity]string{"mount.screws": "3", "mount.thread": "10BA", "mount.screw_circle": "12"} {
				j = set(t, j, "large", field, text)
			}
			require.NotNil(t, solve.Solve(context.Background(), j).Wheel("large").Mounting)
			r := solve.Solve(context.Background(), set(t, j, row.part, row.field, row.text))
			require.Nil(t, r.Wheel(row.part).Mounting)
			require.Len(t, errorsOf(r, row.part), row.errors, errorsOf(r, row.part))
		})
	}
}

// Additions are read with their units; what they need and lack is missing.
func TestAdditions(t *testing.T) {
	j := read(t, collets)
	w := solve.Solve(context.Background(), j).Wheel("single")
	require.Len(t, w.Additions(), 2)
	require.InDelta(t, float64(geometry.Degrees(45)), float64(w.Additions()[0].Angle), 1e-12)
	require.Equal(t, 3, w.Additions()[0].Repeat)
	require.Equal(t, "this side up", w.Additions()[1].Text)
	for field, says := range map[geometry.Quantity]string{
		"additions[0].kind": "still empty", "additions[0].radius": "still empty", "additions[0].diameter": "still empty",
		"additions[1].text": "still empty",
	} {
		r := solve.Solve(context.Background(), set(t, j, "single", field, ""))
		require.Contains(t, errorsOf(r, "single")[0], string(field)+": ")
		require.Contains(t, errorsOf(r, "single")[0], says)
	}
	line := set(t, set(t, j, "single", "additions[2].kind", "line"), "single", "additions[2].radius", "5 mm")
	r := solve.Solve(context.Background(), line)
	require.Contains(t, errorsOf(r, "single")[0], "additions[2].to_radius: ")
	a := solve.Solve(context.Background(), set(t, line, "single", "additions[2].to_angle", "30 deg")).Wheel("single").Additions()[2]
	require.Equal(t, [2]float64{5, 5}, [2]float64{a.Radius, a.ToRadius}, "round its circle")
	a = solve.Solve(context.Background(), set(t, line, "single", "additions[2].to_radius", "9 mm")).Wheel("single").Additions()[2]
	require.Equal(t, a.Angle, a.ToAngle, "out along its ray")
}

// Of a style's own fields those that it lacks are missing, and those of another say
// that they do nothing.
func TestStyles(t *testing.T) {
	j := set(t, set(t, alone(t, sample(t), "third"), "third", "crossing.style", "swept"), "third", "crossing.sweep", "")
	r := solve.Solve(context.Background(), j)
	require.Equal(t, []string{"crossing.sweep: “Sweep” is still empty, and what needs it cannot be worked out."}, errorsOf(r, "third"))
	j = set(t, j, "third", "crossing.sweep", "-20 deg")
	l := solve.Solve(context.Background(), j).Wheel("third").Crossing
	require.InDelta(t, -20, l.Spec.Sweep.Degrees(), 1e-9)
	require.Contains(t, codesOf(solve.Solve(context.Background(), set(t, j, "third", "crossing.waist", "1 mm")), "third"), "crossing.style-unused")
	j = set(t, set(t, set(t, j, "third", "crossing.style", "waisted"), "third", "crossing.waist", "1.4 mm"), "third", "crossing.outer_radius", "30 mm")
	r = solve.Solve(context.Background(), j)
	l = r.Wheel("third").Crossing
	require.NotNil(t, l, errorsOf(r, "third"))
	require.InDelta(t, 1.4, l.Narrowest.Width, 1e-9)
	require.InDelta(t, 30, l.Spec.OuterRadius, 1e-12)
	require.Contains(t, codesOf(r, "third"), "crossing.style-unused", "the sweep")
}

// A blade whose teeth are farther apart than half the sheet is thick is told.
func TestBladeTooCoarse(t *testing.T) {
	j := set(t, set(t, sample(t), "third", "thickness", "0.4 mm"), "third", "crossing.blade", "2")
	require.Contains(t, codesOf(solve.Solve(context.Background(), j), "third"), "crossing.blade-too-coarse")
}

// A head that no circle of which divides is told its two moves, and one advice is
// said of the whole job.
func TestTwoMovesAreTold(t *testing.T) {
	j := read(t, collets)
	require.NotContains(t, codesOf(solve.Solve(context.Background(), j), ""), "dividing.one-way")
	j = set(t, j, "large", "dividing.ratio", "40")
	r := solve.Solve(context.Background(), j)
	require.Contains(t, codesOf(r, "large"), "dividing.compound-exact", "96 is not among the divisions of the three plates")
	require.Contains(t, codesOf(r, ""), "dividing.one-way")
	r = solve.Solve(context.Background(), set(t, set(t, j, "large", "teeth.count", "127"), "large", "dividing.circles", "15, 16, 17"))
	require.Contains(t, codesOf(r, "large"), "dividing.compound")
	require.Empty(t, errorsOf(r, "large"))
}
