package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// disc returns a blank of a plain disc.
func disc(t *testing.T, radius float64) Blank {
	t.Helper()
	b, _ := regulator()
	o, err := geometry.Circle(geometry.Point{}, radius, "teeth")
	require.NoError(t, err)
	b.Outline, b.RootRadius, b.TipRadius, b.Bore, b.Thickness = o, radius-2, radius, 0, 2
	return b
}

// worked.csv W47: an uncrossed disk weighs 48.0098 g and has 21604.4 g·mm² about its
// axis. By the formulae there, m R²/2 and the density of C36000 (materials.csv), its
// radius is 30 mm and its thickness 2 mm. The crossed wheel and what its windows
// took must come to that disk.
func TestMetalAndWindowsMakeTheDisk(t *testing.T) {
	_, s := regulator()
	b := disc(t, 30)
	l := laid(t, b, s)
	weight := 8490e-6 * 2
	mass, inertia := l.Mass, l.Inertia
	for _, w := range l.Windows {
		mass += weight * w.Outline.Area()
		inertia += weight * w.Outline.PolarMoment()
	}
	require.InDelta(t, 48.0098, mass, 5e-5)
	require.InDelta(t, 21604.4, inertia, 0.05)
}

// worked.csv W45: an annulus has m(R₁² + R₂²)/2 about its axis. Three arms a hundredth
// wide leave nearly two annuli: rim and hub.
func TestARimAndAHubAreTwoAnnuli(t *testing.T) {
	b := disc(t, 30)
	b.Bore = 6
	s := Spec{Arms: 3, Rim: 2, Hub: 20, ArmAtRim: 0.01, ArmAtHub: 0.01} // the windows reach from 10 to 26
	l := laid(t, b, s)
	weight := 8490e-6 * 2
	annulus := func(r1, r2 float64) (mass, inertia float64) {
		m := weight * math.Pi * (r2*r2 - r1*r1)
		return m, m * (r1*r1 + r2*r2) / 2
	}
	rimMass, rimInertia := annulus(26, 30)
	hubMass, hubInertia := annulus(3, 10)
	arms := 3 * 0.01 * weight // by length; a thin rod from 10 to 26 has (26³ − 10³)/3 of it
	require.InDelta(t, rimMass+hubMass+arms*16, l.Mass, 1e-6)
	require.InDelta(t, rimInertia+hubInertia+arms*(26*26*26-1000)/3, l.Inertia, 1e-3)
}

func TestTheRemovedShareIsOfTheWheelWithoutItsBore(t *testing.T) {
	b, s := regulator()
	l := laid(t, b, s)
	solid := math.Pi * (29*29 - 3*3)
	require.InEpsilon(t, 6*l.Windows[0].Area/solid, l.RemovedShare, 1e-12)
	require.InEpsilon(t, solid*(1-l.RemovedShare), l.Area, 1e-12)
	require.InEpsilon(t, l.Area*1.6*8490e-6, l.Mass, 1e-12)
}

func TestArmsThatDivideTheTeethBalance(t *testing.T) {
	r := trial.Rand(t, 7)
	for range trial.Count(10_000) {
		b, s := someCrossing(r)
		if s.Placing == OnTips && s.Arms > 0 {
			b.Count = s.Arms * (1 + r.IntN(30))
		}
		if l, _, err := lay(b, s); err == nil {
			require.Less(t, l.Unbalance, 1e-9, "%+v %+v", b, s)
			require.Zero(t, l.Heavy)
		}
	}
}

// Where arms on tips stand unevenly, the unbalance is that of the windows' polygons,
// and hanging free the wheel comes to rest with its heavy side down: the moment of
// its metal about the line square to that side is nothing.
func TestUnevenArmsUnbalanceAsTheirPolygonsSay(t *testing.T) {
	b, s := regulator()
	for _, teeth := range []int{71, 73, 77, 79, 359} {
		b.Count = teeth
		l := laid(t, b, s)
		var moment geometry.Point
		for _, w := range l.Windows {
			moment = moment.Sub(firstMoment(w.Outline.Flatten(1e-6)))
		}
		moment = moment.Times(8490e-6 * 1.6)
		require.Greater(t, l.Unbalance, 1e-3, "%d teeth", teeth)
		require.InDelta(t, moment.Norm(), l.Unbalance, 1e-5, "%d teeth", teeth)
		off := (geometry.Clock(l.Heavy) - moment.Direction()).Normal()
		require.InDelta(t, 0, float64(off), 1e-4, "%d teeth", teeth)
		s.Placing = Equal
		require.Zero(t, laid(t, b, s).Unbalance)
		s.Placing = OnTips
	}
}

// Whatever the style, mass, inertia and unbalance are those of the disc less its
// windows as polygons of chords within 1e-6 mm.
func TestEveryStyleWeighsAsItsPolygonsSay(t *testing.T) {
	for _, style := range []Style{Straight, Swept, Waisted} {
		for _, outer := range []float64{0, 15, 60} {
			b, s := regulator()
			b.Count, s.Style, s.Sweep, s.Waist, s.OuterRadius = 71, style, 0.3, 1.5, outer
			l := laid(t, b, s)
			area, polar, first := math.Pi*(29*29-9), math.Pi/2*(math.Pow(29, 4)-81), geometry.Point{}
			for _, w := range l.Windows {
				corners := w.Outline.Flatten(1e-6)
				first = first.Sub(firstMoment(corners))
				for i, p := range corners {
					q := corners[(i+1)%len(corners)]
					area -= p.Cross(q) / 2
					polar -= p.Cross(q) * (p.Dot(p) + p.Dot(q) + q.Dot(q)) / 12
				}
			}
			weight := 8490e-6 * 1.6
			require.InEpsilon(t, weight*area, l.Mass, 1e-6)
			require.InEpsilon(t, weight*polar, l.Inertia, 1e-6)
			require.InDelta(t, weight*first.Norm(), l.Unbalance, 1e-5)
		}
	}
}

// firstMoment returns ∫ place dA over a polygon.
func firstMoment(corners []geometry.Point) geometry.Point {
	var sum geometry.Point
	for i, p := range corners {
		q := corners[(i+1)%len(corners)]
		sum = sum.Add(p.Add(q).Times(p.Cross(q) / 6))
	}
	return sum
}

func TestCompareSaysWhatLayWould(t *testing.T) {
	b, s := regulator()
	for _, row := range Compare(b, s, []int{4, 5, 6, 2}) {
		s.Arms = row.Arms
		l, err := Lay(b, s)
		if row.Arms == 2 {
			require.Error(t, row.Err)
			continue
		}
		require.NoError(t, err)
		require.Equal(t, Row{row.Arms, l.Mass, l.Inertia, l.WindUp, l.Unbalance, l.RemovedShare, l.Narrowest, row.Arms != 5, nil}, row)
	}
}

// A wheel weighed by one tooth weighs what the whole outline does, whichever way it
// runs, and one whose teeth are not alike is weighed whole.
func TestABlankIsWeighedByItsTooth(t *testing.T) {
	for _, teeth := range []int{7, 72, 360} {
		o := toothed(t, teeth, 30, 28)
		odd := o.Vertices()
		odd[0].Point = odd[0].Times(1.001)
		uneven, err := geometry.NewOutline(odd)
		require.NoError(t, err)
		for _, whole := range []geometry.Outline{o, o.Reverse(), uneven} {
			b, _ := regulator()
			b.Count, b.Outline = teeth, whole
			_, alike := b.tooth()
			require.Equal(t, whole.Area() == o.Area() || whole.Area() < 0, alike)
			require.InEpsilon(t, math.Abs(whole.Area()), b.Weighed().Area, 1e-12)
			require.InEpsilon(t, math.Abs(whole.PolarMoment()), b.Weighed().Polar, 1e-12)
		}
	}
}
