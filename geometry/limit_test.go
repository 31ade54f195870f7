package geometry

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestALimitTellsAPlainNumber(t *testing.T) {
	for _, row := range []struct {
		name        string
		value, told float64
	}{
		{"a length", -2.5, -2.5},
		{"no number", math.NaN(), 0},
		{"endless", math.Inf(1), 1e9},
		{"endless below", math.Inf(-1), -1e9},
		{"absurd", math.MaxFloat64, 1e9},
	} {
		t.Run(row.name, func(t *testing.T) {
			for _, l := range []*Limit{
				AtMost("rim", row.value, 3, "code"), AtLeast("rim", row.value, 3, "code"),
				Between("rim", row.value, 1, 3, "code"), Refused("rim", row.value, "code"),
			} {
				require.Equal(t, row.told, l.Value)
			}
		})
	}
}

func TestALimitSaysWhatWouldDo(t *testing.T) {
	for _, row := range []struct {
		limit *Limit
		says  string
	}{
		{AtMost("rim", 4, 3, "too-wide"), "too-wide: rim is 4, allowed at most 3"},
		{AtLeast("rim", 2, 3, "too-thin"), "too-thin: rim is 2, allowed at least 3"},
		{Between("rim", 4, 1, 3, "out"), "out: rim is 4, allowed 1 to 3"},
		{Refused("style", 4, "unknown"), "unknown: style is 4"},
	} {
		require.EqualError(t, row.limit, row.says)
	}
}
