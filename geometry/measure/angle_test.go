package measure

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func TestAngleIsRead(t *testing.T) {
	for _, row := range []struct {
		text    string
		degrees float64
	}{
		{"5", 5},
		{"5.5", 5.5},
		{"5,5°", 5.5},
		{"22 1/2", 22.5},
		{"5°", 5},
		{"5 deg", 5},
		{"5 Degrees", 5},
		{"5deg.", 5},
		{"5 deg 30'", 5.5},
		{"5°30'", 5.5},
		{"5° 30′ 36″", 5.51},
		{`5 deg 30' 36"`, 5.51},
		{"5°30'36''", 5.51},
		{"5 deg 30 min 36 sec", 5.51},
		{"5° 36''", 5.01},
		{"30'", 0.5},
		{`18"`, 0.005},
		{"5° 30.6'", 5.51},
		{"0.1 rad", 18 / math.Pi},
		{"-5", -5},
		{"− 5° 30'", -5.5},
		{"3600", 3600},
	} {
		t.Run(row.text, func(t *testing.T) {
			got, err := ParseAngle(row.text)
			require.NoError(t, err)
			require.InDelta(t, float64(geometry.Degrees(row.degrees)), float64(got), 1e-15*math.Max(1, math.Abs(row.degrees)))
		})
	}
}

func TestAngleIsRefusedWithAdvice(t *testing.T) {
	for _, row := range []struct{ text, code string }{
		{"", "measure.angle-empty"},
		{"steep", "measure.not-an-angle"},
		{"NaN", "measure.not-an-angle"},
		{"--5", "measure.not-an-angle"},
		{"5 6", "measure.not-an-angle"},
		{strings.Repeat("5° ", 40), "measure.not-an-angle"},
		{"5 mm", "measure.angle-unit"},
		{"5° 30", "measure.angle-unit"},
		{"5° 6°", "measure.angle-unit"},
		{"30' 5°", "measure.angle-unit"},
		{"5° 0.1 rad", "measure.angle-unit"},
		{"5.5° 30'", "measure.angle-broken"},
		{"5° 60'", "measure.angle-sixty"},
		{"5° 0' 61\"", "measure.angle-sixty"},
		{"1e3", "measure.exponent"},
		{"1,234.5", "measure.thousands"},
		{"1/0", "measure.over-nothing"},
		{"3600.1", "measure.angle-too-large"},
		{strings.Repeat("9", 60) + "rad", "measure.angle-too-large"},
	} {
		t.Run(shown(row.text), func(t *testing.T) {
			_, err := ParseAngle(row.text)
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.Equal(t, row.code, refusal.Code)
			require.True(t, english().Has(refusal.Code))
		})
	}
}

func TestCountIsRead(t *testing.T) {
	for _, row := range []struct {
		text string
		n    int
		code string
	}{
		{"72", 72, ""},
		{" 0072 ", 72, ""},
		{"0", 0, ""},
		{"1000000", 1000000, ""},
		{"", 0, "measure.count-empty"},
		{"72 teeth", 0, "measure.not-a-count"},
		{"7.0", 0, "measure.not-a-count"},
		{"1,000", 0, "measure.not-a-count"},
		{"-3", 0, "measure.not-a-count"},
		{"1e3", 0, "measure.not-a-count"},
		{"0x10", 0, "measure.not-a-count"},
		{"#60", 0, "measure.not-a-count"},
		{"½", 0, "measure.not-a-count"},
		{"\xff", 0, "measure.not-a-count"},
		{"1000001", 0, "measure.count-too-large"},
		{"99999999999999999999", 0, "measure.count-too-large"},
		{strings.Repeat("1", 1000), 0, "measure.count-too-large"},
	} {
		t.Run(shown(row.text), func(t *testing.T) {
			n, err := ParseCount(row.text)
			if row.code == "" {
				require.NoError(t, err)
				require.Equal(t, row.n, n)
				return
			}
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.Equal(t, row.code, refusal.Code)
			require.True(t, english().Has(refusal.Code))
		})
	}
}

// Any angle that is read is a number and is read back as near as it is written.
func FuzzAngle(f *testing.F) {
	for _, text := range []string{
		"5", "5.5°", "5 deg 30'", "5°30'20''", "-5", "0.1 rad", "22 1/2", "5,5", "1e9", "5° 30", "3600", "⅛°", "\xff", "",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		angle, err := ParseAngle(text)
		if err != nil {
			require.True(t, english().Has(err.(*Refusal).Code))
			return
		}
		require.LessOrEqual(t, math.Abs(angle.Degrees()), 3600.000001)
		for _, units := range []Units{{}, {Comma: true}} {
			back, err := ParseAngle(units.Angle(angle))
			require.NoError(t, err, units.Angle(angle))
			require.InDelta(t, angle.Degrees(), back.Degrees(), 0.005000001)
		}
	})
}

// A hostile text costs no more than a glance.
func TestLongTextIsNotRead(t *testing.T) {
	huge := strings.Repeat("9", 16<<20)
	allocations := testing.AllocsPerRun(10, func() {
		_, err := ParseLength(huge, MM)
		require.Error(t, err)
		_, err = ParseAngle(huge)
		require.Error(t, err)
		_, err = ParseCount(huge)
		require.Error(t, err)
	})
	require.Less(t, allocations, 100.0)
}
