package tables

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestSpeedFor(t *testing.T) {
	const carvill, sheet = "Carvill", "docslib.org/doc/5103932"
	for _, row := range []struct {
		material, operation string
		low, high           float64
		source              string
	}{
		{"brass", "turning rough", 75, 75, carvill},
		{"brass", "drilling", 60, 60, carvill},
		{" Brass", "Milling ", 46, 137, sheet},
		{"bronze", "drilling", 61, 61, sheet},
		{"engraving brass", "turning fine", 100, 100, carvill},
		{"brass", "turning", 76, 152, sheet},
		{"aluminium", "milling", 76, 152, sheet},
		{"mild steel", "milling", 21, 37, sheet},
	} {
		t.Run(row.material+" "+row.operation, func(t *testing.T) {
			s, ok := SpeedFor(row.material, row.operation)
			require.True(t, ok)
			require.Equal(t, row.low, s.Low)
			require.Equal(t, row.high, s.High)
			require.Equal(t, "HSS", s.Tool)
			require.Contains(t, s.Source, row.source)
		})
	}
	for _, none := range [][2]string{{"", "milling"}, {"brass", ""}, {"steel", "milling"}, {"ass", "milling"}, {"brass", "planing"}} {
		_, ok := SpeedFor(none[0], none[1])
		require.False(t, ok, none)
	}
}

func TestSpeedsAreSpeeds(t *testing.T) {
	require.Len(t, speeds(), 15)
	for _, s := range speeds() {
		require.True(t, s.Low > 0 && s.Low <= s.High && s.High < 300, "%+v", s)
	}
}
