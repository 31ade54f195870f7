package tooth

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/trial"
)

// worked returns one row of testdata/worked.csv; its source is in its last column.
func worked(t *testing.T, id string) map[string]string {
	t.Helper()
	return trial.Of(t, trial.Reference(t, "worked.csv"), "id", id)[0]
}

// W01: of a distance of centres of 8.5 parts the pinion has 1 and the wheel 7.5,
// with any of 60 to 8, 75 to 10 and 90 to 12. W03: 7.5 pinions of 12 make 90 teeth.
func TestCentresAreSharedAsTheCounts(t *testing.T) {
	pinion, wheel, _ := strings.Cut(worked(t, "W01")["exact_value"], " / ")
	for _, c := range []Cycloidal{{60, 0.8, 8}, {75, 1, 10}, {90, 0.35, 12}} {
		p := Pinion{c.Leaves, c.Module, 7.5}
		centres := c.PitchRadius() + p.PitchRadius()
		require.InDelta(t, c.Module*float64(c.Count+c.Leaves)/2, centres, near)
		require.InDelta(t, decimals(t, pinion), p.PitchRadius()/centres, 5e-7)
		require.InDelta(t, decimals(t, wheel), c.PitchRadius()/centres, 5e-7)
	}
	lost := decimals(t, worked(t, "W03")["exact_value"])
	require.InDelta(t, 7.5*Pinion{12, 0.7, 7.5}.PitchRadius(), Cycloidal{int(lost), 0.7, 12}.PitchRadius(), near)
}

// W05: a pinion of 12 leaves, 3 in across, leaf to space as 2 to 3. Our leaf of 1.25
// modules is that within a hundredth. W07: a pinion of 8 at 32 diametral pitch is
// a quarter of an inch across its pitch circle.
func TestWorkedPinions(t *testing.T) {
	const inch = 25.4
	p := Pinion{12, 3 * inch / 12, 8}
	require.InDelta(t, 3*inch/2, p.PitchRadius(), near)
	require.InEpsilon(t, decimals(t, worked(t, "W05")["exact_value"]), p.Thickness()*p.Module/inch, 0.01)
	pitch, _, _ := strings.Cut(worked(t, "W07")["exact_value"], " / ")
	require.InDelta(t, decimals(t, pitch), 2*Pinion{8, inch / 32, 8}.PitchRadius()/inch, near)
}

// W15: 32 teeth stand 11.25 degrees apart. W17: eleven holes on a circle of 8 in
// are stepped off with 2.25386 in; the source prints 2.252, rounding the sine.
func TestWorkedSpacing(t *testing.T) {
	w := Wheel{Count: 32}
	require.InDelta(t, decimals(t, worked(t, "W15")["exact_value"]), (w.Tip(0) - w.Tip(1)).Degrees(), 1e-9)
	l, err := Lantern{Leaves: 11, Module: 8.0 / 11, Trundle: 0.5}.Pinion()
	require.NoError(t, err)
	require.InDelta(t, decimals(t, worked(t, "W17")["exact_value"]), l.Step, 5e-6)
}

// The wheel's proportions, from memory of BS 978-2:1952 as the rows say, and a
// pinion measured round its pitch circle in tooth widths, 16 for 8 leaves, which is
// 5.09 across (Encyclopaedia Londinensis).
func TestWheelProportionsOfTheRows(t *testing.T) {
	value := map[string]float64{}
	for _, row := range published(t, "BS 978-2 proportions") {
		value[row["quantity_and_unit"]] = decimals(t, row["value"])
	}
	c := Cycloidal{72, 1, 8}
	require.InDelta(t, value["wheel dedendum (module = 1)"], c.PitchRadius()-c.RootRadius(), 0.005)
	require.InDelta(t, value["wheel tooth thickness (module = 1)"], 2*float64(c.tooth().half)*c.PitchRadius(), 0.0005)
	round, across, _ := strings.Cut(published(t, "Londinensis")[0]["value"], " -> ")
	width := math.Pi / 2 // of a tooth half a pitch wide
	require.InDelta(t, decimals(t, round)*width, 2*math.Pi*Pinion{Leaves: 8, Module: 1}.PitchRadius(), near)
	require.InDelta(t, decimals(t, across)*width, 2*Pinion{Leaves: 8, Module: 1}.PitchRadius(), 0.006)
}

// Rows of testdata/escape.csv that a wheel of pointed teeth answers: the pitches of 30 and
// 32 teeth, and the circle that the faces' lines touch, the sine of the undercut
// in tip radii: the hub's of a dead beat, and a club tooth's locking face.
func TestPublishedEscapeWheels(t *testing.T) {
	value := func(item string) string {
		return trial.Of(t, trial.Reference(t, "escape.csv"), "item", item)[0]["value"]
	}
	one, other, _ := strings.Cut(value("tooth pitch 30 / 32"), " / ")
	for count, pitch := range map[int]string{30: one, 32: other} {
		w, err := Pointed(escapeCut(t, count, 0), Clockwise)
		require.NoError(t, err)
		require.InDelta(t, decimals(t, pitch), (w.Tip(0) - w.Tip(1)).Degrees(), 1e-9)
	}
	club := decimals(t, value("club tooth locking face undercut")) * math.Pi / 180
	for undercut, circle := range map[float64]float64{
		10 * math.Pi / 180: decimals(t, value("hub radius")), club: math.Sin(club),
	} {
		cut, err := cutter.Pointed{
			Count: 15, TipRadius: 20, Undercut: geometry.Angle(undercut), Floor: 0.6, BackRadius: 9, Land: 0.4, Solve: cutter.RootDiameter,
		}.Cut()
		require.NoError(t, err)
		w, err := Pointed(cut, Clockwise)
		require.NoError(t, err)
		at, ok := vertexAt(w.Outline, geometry.Point{Y: w.TipRadius})
		require.True(t, ok)
		for _, face := range []geometry.Segment{w.Outline.Segment(at), w.Outline.Segment(at - 1)} {
			if face.Quantity == cutter.Undercut {
				way := face.To.Sub(face.From)
				require.InDelta(t, circle, math.Abs(face.From.Cross(way))/way.Norm()/w.TipRadius, 5e-5)
				circle = -1
			}
		}
		require.Negative(t, circle, "the face at tip 0 was measured")
	}
}
