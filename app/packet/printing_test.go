package packet_test

import (
	"context"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/render/sheet"
)

// How sheets are printed reaches every one: a profile stretches them all, copies
// share sheets, and a template's look leaves cards alone.
func TestPrinting(t *testing.T) {
	j := sample(t)
	o := options(t, j)
	plain := build(t, j, o)

	o.Printing.Profile = sheet.Profile{Name: "Shed laser", Paper: o.Paper.Name, X: 0.995, Y: 1.005}
	for _, p := range build(t, j, o).Pages {
		x, y := p.Stretch.Factors()
		require.InDelta(t, 1, x*y, 1e-4)
		require.NotEqual(t, 1.0, x)
		require.True(t, says(p, "Shed laser"), p.Drawing.Title)
	}

	o = options(t, j)
	o.Copies = 3
	apart := build(t, j, o)
	o.Printing.Together = true
	together := build(t, j, o)
	require.Less(t, len(together.Pages), len(apart.Pages))
	require.Greater(t, len(together.Pages), len(plain.Pages)/2)
	require.Equal(t, plain.Pages[0].Drawing.Title, together.Pages[0].Drawing.Title)

	o = options(t, j)
	o.Printing.Look.Mirrored = true
	mirrored := 0
	for _, p := range build(t, j, o).Pages {
		if p.Drawing.Scale <= 0 {
			require.False(t, says(p, "Mirrored"), p.Drawing.Title)
		} else if says(p, "Mirrored") {
			mirrored++
		}
	}
	require.Greater(t, mirrored, 5)
}

// A packet that is stopped gives way between two sheets.
func TestAPacketIsStopped(t *testing.T) {
	j := sample(t)
	ctx, stop := context.WithCancel(t.Context())
	o := options(t, j)
	drawn := 0
	o.Printing.Progress = func(done, total int) {
		require.Greater(t, total, 20)
		if drawn = done; done == 4 {
			stop()
		}
	}
	_, err := packet.Build(ctx, solve.Solve(t.Context(), j), o)
	require.ErrorIs(t, err, context.Canceled)
	require.Equal(t, 4, drawn)
}
