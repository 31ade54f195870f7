package measure_test

import (
	"math/big"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/measure"
)

func TestRatios(t *testing.T) {
	for text, want := range map[string]string{"8": "8", "7.5": "15/2", "15/2": "15/2", "7 1/2": "15/2", " 1/12 ": "1/12", "0": "0"} {
		ratio, err := measure.ParseRatio(text)
		require.NoError(t, err, text)
		require.Equal(t, want, ratio.RatString(), text)
	}
	for _, text := range []string{"", "seven", "-2", "1/0", "8 mm", "1e3", "1,234.5", "2 3"} {
		_, err := measure.ParseRatio(text)
		require.ErrorContains(t, err, "ratio", text)
	}
}

func TestARatioIsWrittenAsItIsSaid(t *testing.T) {
	for _, row := range []struct {
		of, point, comma string
	}{
		{"10", "10 : 1", "10 : 1"},
		{"60/8", "7.5 : 1", "7,5 : 1"},
		{"8/96", "1 : 12", "1 : 12"},
		{"8/60", "1 : 7.5", "1 : 7,5"},
		{"64/15", "64 : 15", "64 : 15"},
		{"15/64", "15 : 64", "15 : 64"},
		{"1", "1 : 1", "1 : 1"},
		{"1/16", "1 : 16", "1 : 16"},
		{"1001/1000", "1.001 : 1", "1,001 : 1"},
		{"10001/10000", "10001 : 10000", "10001 : 10000"},
		{"0", "", ""},
		{"-2", "", ""},
	} {
		t.Run(row.of, func(t *testing.T) {
			r, ok := new(big.Rat).SetString(row.of)
			require.True(t, ok)
			require.Equal(t, row.point, measure.Units{}.Ratio(r))
			require.Equal(t, row.comma, measure.Units{Comma: true}.Ratio(r))
		})
	}
	require.Empty(t, measure.Units{}.Ratio(nil))
}

func TestExactNumbers(t *testing.T) {
	for of, want := range map[string]string{"720": "720", "15/2": "7,5", "1/8": "0,125", "1/16": "1/16", "-5/2": "-2,5", "0": "0", "100": "100"} {
		r, ok := new(big.Rat).SetString(of)
		require.True(t, ok)
		require.Equal(t, want, measure.Units{Comma: true}.Exact(r), of)
	}
}
