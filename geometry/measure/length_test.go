package measure

import (
	"math/big"
	"strings"
	"sync"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

var english = sync.OnceValue(words.English)

// The inch is 25.4 mm exactly (international inch); the drills' sizes are those
// of assets/tables/drills.csv with their sources.
func TestLengthIsReadExactly(t *testing.T) {
	for _, row := range []struct {
		text string
		unit Unit
		mm   string // exact
	}{
		{"12", MM, "12"},
		{"12", Inch, "304.8"},
		{"12.5 mm", Inch, "12.5"},
		{"12,5mm", MM, "12.5"},
		{"12,5", Inch, "317.5"},
		{".5", MM, "1/2"},
		{"5.", MM, "5"},
		{"0", MM, "0"},
		{"007.50", MM, "7.5"},
		{"5/16 in", MM, "127/16"},
		{"3/8 in", MM, "9.525"},
		{"3/8", Inch, "9.525"},
		{"3/8", MM, "3/8"},
		{"1/3 mm", MM, "1/3"},
		{"1/08 mm", MM, "1/8"},
		{"1 03/08 mm", MM, "11/8"},
		{`1 3/8"`, MM, "34.925"},
		{`1-3/8"`, MM, "34.925"},
		{`1⅜ ″`, MM, "34.925"},
		{"1 ⅜ ”", MM, "34.925"},
		{"½''", MM, "12.7"},
		{"3⁄8 inch", MM, "9.525"},
		{"11/8 inches", MM, "34.925"},
		{"0.250in", MM, "6.35"},
		{"0.250 IN.", MM, "6.35"},
		{"1 cm", MM, "10"},
		{"250 µm", MM, "1/4"},
		{"250μm", MM, "1/4"},
		{"250 um", Inch, "1/4"},
		{"10 thou", MM, "0.254"},
		{"  0.8\u00a0mm\t", MM, "0.8"},
		{"#60", MM, "1.016"},
		{"# 60", Inch, "1.016"},
		{"#1", MM, "5.7912"},
		{"#97", MM, "0.14986"},
		{"F", MM, "6.5278"},
		{"Z", MM, "10.4902"},
		{"1,234 mm", MM, "1.234"},
		{"0.1234567890123456789012345678901234567890 mm", MM, "0.1234567890123456789012345678901234567890"},
	} {
		t.Run(row.text, func(t *testing.T) {
			want, ok := new(big.Rat).SetString(row.mm)
			require.True(t, ok)
			got, err := ParseLength(row.text, row.unit)
			require.NoError(t, err)
			require.Zero(t, got.Rat().Cmp(want), "%v is not %v", got.Rat(), want)
			nearest, _ := want.Float64()
			require.Equal(t, nearest, got.MM())
			require.Equal(t, row.text, got.Text())
		})
	}
}

func TestLengthIsRefusedWithAdvice(t *testing.T) {
	for _, row := range []struct{ text, code, read string }{
		{"", "measure.empty", ""},
		{" \t\u00a0", "measure.empty", ""},
		{"1,234.5", "measure.thousands", "1,234.5"},
		{"1.234,5 mm", "measure.thousands", "1.234,5 mm"},
		{"1,234,567", "measure.thousands", "1,234,567"},
		{"1.2.3", "measure.thousands", "1.2.3"},
		{"1 234.5", "measure.two-numbers", "1 234.5"},
		{"1 2", "measure.two-numbers", "1 2"},
		{"1-3", "measure.two-numbers", "1-3"},
		{"1 1/2 1/4 in", "measure.two-numbers", "1 1/2 1/4 in"},
		{"3/8/2", "measure.two-numbers", "3/8/2"},
		{"1.5 3/8 in", "measure.two-numbers", "1.5 3/8 in"},
		{"½½", "measure.two-numbers", "½½"},
		{"1 in 3 mm", "measure.two-values", "1 in 3 mm"},
		{"12 mm 5", "measure.two-values", "12 mm 5"},
		{"5 mm mm", "measure.unit", "5 mm mm"},
		{"5 mm wide", "measure.unit", "5 mm wide"},
		{"5 °", "measure.unit", "5 °"},
		{"5 ft", "measure.unit", "5 ft"},
		{"5'", "measure.unit", "5'"},
		{"5 mil", "measure.unit", "5 mil"}, // said of thousandths and of millimetres
		{"1e3", "measure.exponent", "1e3"},
		{"1e400", "measure.exponent", "1e400"},
		{"1E-3 mm", "measure.exponent", "1E-3 mm"},
		{"0x10", "measure.two-values", "0x10"},
		{"-5 mm", "measure.negative", "-5 mm"},
		{"−5", "measure.negative", "−5"},
		{"-0", "measure.negative", "-0"},
		{"+5", "measure.not-a-value", "+5"},
		{"NaN", "measure.not-a-value", "NaN"},
		{"Inf", "measure.not-a-value", "Inf"},
		{"-Inf", "measure.not-a-value", "-Inf"},
		{"wide", "measure.not-a-value", "wide"},
		{"f", "measure.not-a-value", "f"},
		{".", "measure.not-a-value", "."},
		{"mm", "measure.not-a-value", "mm"},
		{"/8", "measure.not-a-value", "/8"},
		{"3/", "measure.not-a-value", "3/"},
		{"１２", "measure.not-a-value", "１２"},
		{"3/0", "measure.over-nothing", "3/0"},
		{"1 3/0 in", "measure.over-nothing", "1 3/0 in"},
		{"1 8/8 in", "measure.improper", "1 8/8 in"},
		{"1 11/8 in", "measure.improper", "1 11/8 in"},
		{"#0", "measure.no-such-drill", "#0"},
		{"#98", "measure.no-such-drill", "#98"},
		{"#", "measure.no-such-drill", "#"},
		{"#60 mm", "measure.no-such-drill", "#60 mm"},
		{"1000001 mm", "measure.too-large", "1000001 mm"},
		{strings.Repeat("9", 64), "measure.too-large", strings.Repeat("9", 24) + "…"},
		{strings.Repeat("9", 65), "measure.too-long", strings.Repeat("9", 24) + "…"},
		{strings.Repeat("1/", 1<<20), "measure.too-long", strings.Repeat("1/", 12) + "…"},
		{"5 m\x00m", "measure.unit", "5 m·m"},
		{"5\xff", "measure.not-a-value", "5·"},
	} {
		t.Run(row.code+" "+shown(row.text), func(t *testing.T) {
			_, err := ParseLength(row.text, MM)
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.Equal(t, Refusal{row.read, row.code}, *refusal)
			require.True(t, english().Has(refusal.Code))
			require.Contains(t, refusal.Error(), row.read)
			require.NotContains(t, refusal.Error(), "{")
		})
	}
}

func TestPlaceMayLieEitherSide(t *testing.T) {
	for text, mm := range map[string]float64{
		"-5": -5, "− 1 1/2 in": -38.1, "-0": 0, "2.5 mm": 2.5, "#60": 1.016, "-3/8\"": -9.525,
	} {
		got, err := ParsePlace(text, MM)
		require.NoError(t, err, text)
		require.InDelta(t, mm, got.MM(), 1e-12, text)
		require.Equal(t, text, got.Text())
	}
	for _, text := range []string{"--5", "-#60", "-", "5-", "- mm"} {
		_, err := ParsePlace(text, MM)
		require.Error(t, err, text)
	}
}

func TestLengthRemembersItsUnit(t *testing.T) {
	for text, want := range map[string]Unit{
		"5": MM, "1 cm": MM, "5 µm": MM, "5 in": Inch, `1/4"`: Inch, "8 thou": Inch, "#60": Inch, "F": Inch,
	} {
		got, err := ParseLength(text, MM)
		require.NoError(t, err)
		require.Equal(t, want, got.Unit(), text)
	}
	require.Equal(t, MM, Length{}.Unit())
	require.Zero(t, Length{}.MM())
}

// What was read and typed again is the same; what is written out is read back as
// near as it was written.
func FuzzLength(f *testing.F) {
	for _, text := range []string{
		"12", "12.5 mm", "5/16 in", `1 3/8"`, "0.250in", "#60", "F", "12,5", "1,234.5", "1⅜″", "1e400", "0x10",
		"-1", "NaN", "5 µm", "3/0", "#98", "1-3/8 in", "\xff", "", "5 thou", "1 in 3 mm",
	} {
		f.Add(text, true)
		f.Add(text, false)
	}
	f.Fuzz(func(t *testing.T, text string, inch bool) {
		unit := MM
		if inch {
			unit = Inch
		}
		length, err := ParseLength(text, unit)
		if err != nil {
			require.True(t, english().Has(err.(*Refusal).Code))
			return
		}
		again, err := ParseLength(length.Text(), unit)
		require.NoError(t, err)
		require.Zero(t, length.Rat().Cmp(again.Rat()))
		require.GreaterOrEqual(t, length.MM(), 0.0)
		if length.MM() > 999_000 {
			return // rounded up, it could be longer than is read
		}
		for _, way := range []struct {
			units Units
			off   float64 // half of the last digit
		}{
			{Units{}, 0.005},
			{Units{Comma: true}, 0.005},
			{Units{Unit: Inch}, 25.4 * 0.0005},
			{Units{Unit: Inch, Fractions: true}, 25.4 / 128},
		} {
			written := way.units.Length(length.MM())
			back, err := ParseLength(written, MM)
			require.NoError(t, err, written)
			require.InDelta(t, length.MM(), back.MM(), way.off*1.000001+1e-9, written)
		}
	})
}
