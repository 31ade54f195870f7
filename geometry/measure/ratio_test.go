package measure_test

import (
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
