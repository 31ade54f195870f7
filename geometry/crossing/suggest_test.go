package crossing

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/trial"
)

// Any wheel of 3 to 60 times its bore's metal, of any number of teeth, gets a
// crossing that can be laid out as it stands, with nothing to be said against it
// and arms on tips exactly wherever a usual number divides.
func TestWhatIsSuggestedCanBeMade(t *testing.T) {
	r := trial.Rand(t, 57)
	for i := range trial.Count(5_000) {
		root := math.Exp(1 + 4.5*r.Float64()) // 2.7 to 245 mm
		b := Blank{
			Count: 3 + r.IntN(500), RootRadius: root, TipRadius: root * (1 + 0.001 + 0.3*r.Float64()*r.Float64()),
			Bore: root * 1.4 * r.Float64() * r.Float64(), Thickness: 0.5 + 2*r.Float64(), Density: 8490, Young: 97,
		}
		disc, err := geometry.Circle(geometry.Point{}, b.TipRadius, "teeth")
		require.NoError(t, err)
		b.Outline = disc
		s := Suggest(b)
		l, err := Lay(b, s)
		require.NoError(t, err, "case %d: %+v %+v", i, b, s)
		require.Greater(t, s.ArmAtHub, s.ArmAtRim, "case %d", i)
		require.Len(t, l.Windows[0].SawLine, 1, "case %d: %+v %+v", i, b, s)
		for _, k := range []int{3, 4, 5, 6, 7, 8} {
			if b.Count%k == 0 {
				require.Empty(t, l.Divides, "case %d: %d arms on %d teeth", i, s.Arms, b.Count)
			}
		}
	}
}

func TestAnOrdinaryWheelGetsOrdinaryProportions(t *testing.T) {
	b, _ := regulator() // teeth 2 mm deep, bore 6
	s := Suggest(b)
	require.Equal(t, 6, s.Arms)
	require.InDelta(t, 2, s.Rim, 1e-12)
	require.InDelta(t, 14, s.Hub, 1e-12)
	require.InDelta(t, 1.3, s.ArmAtHub/s.ArmAtRim, 1e-12)
	require.Empty(t, laid(t, b, s).Notes)
}

// A bore that leaves a thread of metal leaves no room for a crossing, and Lay says so.
func TestNoCrossingIsSuggestedWhereThereIsNoRoom(t *testing.T) {
	b, _ := regulator()
	b.Bore = 2*b.RootRadius - 0.03
	_, err := Lay(b, Suggest(b))
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit)
}
