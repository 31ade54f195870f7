package cutter

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/trial"
)

// The rows give the swing over the cutter's ends, a diameter, and the turns a
// minute, rounded, in their notes.
func TestSpindleSpeeds(t *testing.T) {
	for _, row := range trial.Reference(t, "speeds.csv") {
		t.Run(row["tool"], func(t *testing.T) {
			across, err := strconv.ParseFloat(regexp.MustCompile(`[0-9.]+`).FindString(row["tool"]), 64)
			require.NoError(t, err)
			speed, err := strconv.ParseFloat(row["cutting_speed_m_min"], 64)
			require.NoError(t, err)
			_, after, _ := strings.Cut(row["note"], "= ")
			rpm, err := strconv.ParseFloat(strings.Fields(after)[0], 64)
			require.NoError(t, err)
			require.InDelta(t, rpm, SpindleSpeed(speed, across/2), 0.5, row["source"])
		})
	}
	require.Zero(t, SpindleSpeed(75, 0))
	require.Zero(t, SpindleSpeed(75, math.NaN()))
}

// Land and dials of every row are those of the cut there, the rows run from first
// touch to depth and closer and closer, and what a division takes off the land is
// what the land at the next division says.
func TestDepthCard(t *testing.T) {
	eachForm(t, 71, func(i int, p Pointed, c Cut) {
		const n = 40
		rows := c.Depths(n)
		require.Len(t, rows, n+1)
		require.Zero(t, rows[0].Infeed)
		require.Zero(t, rows[0].Radial)
		last := rows[n]
		require.InDelta(t, c.Infeed, last.Infeed, 1e-12)
		require.InDelta(t, 0, last.Left, 1e-12)
		require.InDelta(t, 0, last.RadialLeft, 1e-12)
		require.InDelta(t, c.Height(), last.Height, 1e-12)
		require.InDelta(t, c.Land, last.Land, noLand, "form %d: %+v", i, p)
		for k, d := range rows {
			require.InDelta(t, c.LandAt(d.Infeed), d.Land, 1e-12)
			require.InDelta(t, c.Infeed, d.Infeed+d.Left, 1e-9)
			// The zero's distance from the centre, at touch and here.
			from, to := math.Sqrt(c.SetOver*c.SetOver+c.TouchHeight*c.TouchHeight), math.Sqrt(c.SetOver*c.SetOver+d.Height*d.Height)
			require.InDelta(t, from-to, d.Radial, 1e-9)
			require.InDelta(t, c.LandAt(d.Infeed+0.01), d.Land-d.Fall.Hundredth, 1e-9)
			require.InDelta(t, c.LandAt(d.Infeed+25.4/1000), d.Land-d.Fall.Thou, 1e-9)
			require.InDelta(t, d.Infeed, c.InfeedAtRadial(d.Radial), 1e-6*c.TipRadius, "form %d: %+v", i, p)
			for step, fall := range map[float64]float64{0.01: d.RadialFall.Hundredth, 0.0254: d.RadialFall.Thou} {
				// By halving: where the distance is a division less.
				lo, hi := d.Infeed, c.TouchHeight
				for range 60 {
					if mid := (lo + hi) / 2; math.Hypot(c.SetOver, c.TouchHeight-mid) > to-step {
						lo = mid
					} else {
						hi = mid
					}
				}
				require.InDelta(t, d.Land-c.LandAt(lo), fall, 1e-6*c.TipRadius, "form %d: %+v", i, p)
			}
			if k > 1 {
				before := rows[k-1]
				require.Less(t, d.Infeed-before.Infeed, before.Infeed-rows[k-2].Infeed)
				require.LessOrEqual(t, d.Land, before.Land+1e-9)
			}
		}
	})
}

// Without set-over both dials read alike.
func TestDialsWithoutSetOver(t *testing.T) {
	p := plain()
	p.Undercut = 0
	c, err := p.Cut()
	require.NoError(t, err)
	for _, d := range c.Depths(10) {
		require.InDelta(t, d.Infeed, d.Radial, 1e-12)
		require.InDelta(t, d.Left, d.RadialLeft, 1e-12)
		require.InDelta(t, d.Fall.Hundredth, d.RadialFall.Hundredth, 1e-9)
	}
}

func TestDepthsLeft(t *testing.T) {
	c := escapeForm(t)
	rows := c.DepthsLeft(100, c.Infeed, 0.5, 0.02, 0, -0.1)
	require.Len(t, rows, 4)
	for i, left := range []float64{0.5, 0.02, 0, -0.1} {
		require.InDelta(t, left, rows[i].Left, 1e-12)
	}
	require.Less(t, rows[3].Land, c.Land)
	require.Len(t, c.Depths(-3), 2)
}

// The infeed for a land leaves it, a hair less leaves more.
func TestInfeedForLand(t *testing.T) {
	eachForm(t, 72, func(i int, p Pointed, c Cut) {
		pitch := c.TipRadius * 2 * math.Pi / float64(c.Count)
		for _, share := range []float64{0.02, 0.1, 0.3} {
			want := c.Land + share*(pitch-c.Land)
			infeed, ok := c.InfeedFor(want)
			require.True(t, ok, "form %d: %+v", i, p)
			require.LessOrEqual(t, c.LandAt(infeed), want)
			require.Greater(t, c.LandAt(infeed-1e-7), want, "form %d: %+v", i, p)
			require.Less(t, infeed, c.Infeed+1e-9)
		}
	})
	c := escapeForm(t)
	for _, land := range []float64{math.NaN(), 100, -100} {
		_, ok := c.InfeedFor(land)
		require.False(t, ok, land)
	}
}
