package measure

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func TestLengthIsWritten(t *testing.T) {
	mm, comma := Units{}, Units{Unit: MM, Comma: true}
	inch, sixtyFourths := Units{Unit: Inch}, Units{Unit: Inch, Fractions: true}
	for _, row := range []struct{ got, want string }{
		{mm.Length(2.6), "2.60 mm"},
		{mm.Length(-0.001), "0.00 mm"},
		{mm.Length(-2.6), "-2.60 mm"},
		{comma.Length(2.6), "2,60 mm"},
		{inch.Length(2.6), "0.102 in"},
		{sixtyFourths.Length(2.6), "7/64 in"},
		{sixtyFourths.Length(0.203125 * 25.4), "13/64 in"},
		{sixtyFourths.Length(34.925), "1 3/8 in"},
		{sixtyFourths.Length(25.4), "1 in"},
		{sixtyFourths.Length(25.3), "1 in"},
		{sixtyFourths.Length(-12.7), "-1/2 in"},
		{sixtyFourths.Length(0), "0 in"},
		{sixtyFourths.Length(0.1), "0.004 in"},
		{sixtyFourths.Length(0.197), "0.008 in"},
		{sixtyFourths.Length(0.199), "1/64 in"},
		{sixtyFourths.Length(math.Inf(1)), "– in"},
		{sixtyFourths.Length(math.NaN()), "– in"},
		{sixtyFourths.Length(1e300), "– in"},
		{mm.Bare(2.6), "2.60"},
		{mm.Both(12.7), "12.70 mm (0.500 in)"},
		{comma.Both(12.7), "12,70 mm (0,500 in)"},
		{inch.Both(12.7), "0.500 in (12.70 mm)"},
		{sixtyFourths.Both(12.7), "1/2 in (12.70 mm)"},
		{mm.Fine(3.472964), "3.473 mm"},
		{sixtyFourths.Fine(3.472964), "0.1367 in"},
		{mm.Angle(geometry.Degrees(12)), "12°"},
		{mm.Angle(geometry.Degrees(5.5)), "5.5°"},
		{comma.Angle(geometry.Degrees(5.5)), "5,5°"},
		{mm.Angle(geometry.Degrees(100)), "100°"},
		{mm.Angle(geometry.Degrees(-0.001)), "0°"},
		{mm.Angle(geometry.Degrees(15.652)), "15.65°"},
		{mm.Number(1234.5, 0), "1234"},
		{mm.Number(math.NaN(), 2), "–"},
		{mm.Number(0.5, -3), "0"},
		{mm.Number(0.5, 99), "0.500000000"},
	} {
		require.Equal(t, row.want, row.got)
	}
}

func TestEverySixtyFourthIsWrittenAndReadBack(t *testing.T) {
	units := Units{Unit: Inch, Fractions: true}
	for n := 0; n <= 640; n++ {
		mm := float64(n) * 25.4 / 64
		length, err := ParseLength(units.Length(mm), MM)
		require.NoError(t, err)
		require.InDelta(t, mm, length.MM(), 1e-12)
	}
}
