package template

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry/dividing"
	"tipline/geometry/measure"
	"tipline/render"
)

// The figures below an axis stand apart, however short the axis is.
func TestAnAxisHasNoMoreTicksThanItsFiguresLeaveRoomFor(t *testing.T) {
	for _, width := range []float64{20, 36, 50, 72} {
		for _, to := range []float64{0.051, 0.4, 1.3, 12, 0.0021} {
			a := newAxis(0, to, 1, 6, false, "").thinned(width, measure.Units{})
			require.GreaterOrEqual(t, len(a.ticks()), 1)
			widest := 0.0
			for _, v := range a.ticks() {
				widest = max(widest, render.Text{Height: plotFigure, String: metric.Units.Number(v, a.decimals)}.Width())
			}
			if len(a.ticks()) > 2 {
				require.GreaterOrEqual(t, a.share(a.step)*width, widest+figuresApart-1e-9, "to %v over %v mm", to, width)
			}
		}
	}
}

// A cutter on the centre line is not set over, and no card tells one to.
func TestNoSetOverWhereThereIsNone(t *testing.T) {
	for _, row := range []struct {
		wheel Wheel
		over  bool
	}{{trainWheel(t, 72, 6), false}, {pointedWheel(t, "clockwise"), true}} {
		d, err := SettingCard(row.wheel, metric)
		require.NoError(t, err)
		all := strings.ToLower(d.Description + " " + strings.Join(said(d), " "))
		require.Equal(t, row.over, strings.Contains(all, "set over"))
	}
}

// Whole turns are for each tooth of a wheel, each leaf of a pinion.
func TestWholeTurnsNameWhatIsDivided(t *testing.T) {
	w := trainWheel(t, 60, 6)
	w.Dividing = &dividing.Answer{Divisions: 60, Ratio: 60, Turns: 1, Exact: true}
	d, err := DividingCard(w, metric)
	require.NoError(t, err)
	require.Contains(t, said(d), "whole turns for each tooth")
}

// Every footer that begins with eye protection says so in one sentence, so that cards
// that share a sheet say it once.
func TestFootersSayEyeProtectionAlike(t *testing.T) {
	for _, code := range words.Languages() {
		spoken, err := words.Load(code)
		require.NoError(t, err)
		first := func(step string) string {
			sentence, _, _ := strings.Cut(spoken.Say("cautions.foot."+step), ". ")
			return sentence
		}
		for _, step := range []string{"grinding", "crossing", "setting", "shroud", "drilling"} {
			require.Equal(t, first("blank"), first(step), "%s in %s", step, code)
		}
	}
}
