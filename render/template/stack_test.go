package template

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/mount"
	"tipline/render"
	"tipline/render/dxf"
)

// stacked is a large wheel of 84 teeth under a small one of 60, with 4 screws, tip 7
// of the small one in line with tip 0 of the large.
func stacked(t testing.TB) Stack {
	t.Helper()
	spec := scribedSpec(6, crossing.Straight)
	spec.Hub = 16
	large, ok := laid(t, 84, spec)
	require.True(t, ok)
	spec.Arms = 4
	small, ok := laid(t, 60, spec)
	require.True(t, ok)
	large.ID, large.Name = "large", "Escape wheel, large"
	small.ID, small.Name = "small", "Escape wheel, small"
	c := mount.Collet{Bore: 2, Register: 5, Flange: 15}
	st, err := mount.Stack([]mount.Seat{seatOf(large), seatOf(small)}, []int{0, 7}, c,
		mount.Screws{Count: 4, Thread: threadNamed(t, "BA 10"), Circle: 10}, 0.05)
	require.NoError(t, err)
	return Stack{ID: "compound", Wheels: []Wheel{large, small}, Stacked: st, Collet: c}
}

// Both wheels have a tip at 12 o'clock: their outlines reach their tip circles there.
func TestStackedTipsAreInLine(t *testing.T) {
	st := stacked(t)
	d, err := StackTemplate(st, metric)
	require.NoError(t, err)
	require.Equal(t, 1.0, d.Scale)
	teeth := itemsOn(d, render.LayerTeeth, "wheels")
	require.Len(t, teeth, 2, "a closed outline each")
	for i, w := range st.Wheels {
		tip := geometry.Point{Y: w.Teeth.TipRadius}
		near, _ := teeth[i].Outlines[0].Nearest(tip)
		require.InDelta(t, 0, near.Dist(tip), 1e-6, w.Name)
		require.NotEqual(t, teeth[0].Ink, teeth[1].Ink)
	}
	require.Contains(t, said(d), "Escape wheel, small, tip 7")
	require.Contains(t, said(d), "Escape wheel, large, tip 0")
	// of two 60-tooth outlines turned by 7 tips there is no telling; the windows tell
	unturned := st.Wheels[1].Crossing.Windows[0].Outline
	sin, cos := math.Sincos(2 * math.Pi * 7 / 60)
	p := unturned.Vertex(0).Point
	want := geometry.Point{X: p.X*cos - p.Y*sin, Y: p.X*sin + p.Y*cos} // anticlockwise
	best := math.Inf(1)
	for _, it := range itemsOn(d, render.LayerWindows, "wheels") {
		near, _ := it.Outlines[0].Nearest(want)
		best = min(best, near.Dist(want))
	}
	require.InDelta(t, 0, best, 1e-9)
}

// The parts bear as many dots as they are high up, the collet one, beside hole 1.
func TestStackedPartsAreMarked(t *testing.T) {
	st := stacked(t)
	d, err := StackTemplate(st, metric)
	require.NoError(t, err)
	dots := 0
	for _, it := range d.Items {
		if it.Fill == render.Solid && it.Layer == render.LayerDimensions && it.Pen == render.NoPen && it.Quantity == "wheels" {
			dots++
		}
	}
	require.Equal(t, 1+1+2, dots, "collet, lower and upper wheel")
	require.Contains(t, said(d), "2 dots")
	card, err := StackCard(st, metric)
	require.NoError(t, err)
	require.Contains(t, said(card), "2 dots")
	requireClear(t, card, "stack card")
	requireClear(t, d, "stack template")
	require.NotContains(t, strings.Join(append(said(card), said(d)...), " "), "‹")
}

// 0.05 mm at the small wheel's tips comes to R/r as much at the large one's.
func TestStackTellsItsError(t *testing.T) {
	st := stacked(t)
	values := map[string]string{}
	for _, f := range StackNotes(st, metric).Figures {
		values[f.Label] = f.Value
	}
	small, large := st.Wheels[1].Teeth.TipRadius, st.Wheels[0].Teeth.TipRadius
	require.Equal(t, metric.Units.Fine(0.05*large/small)+" at the larger's, "+metric.Units.Number(0.05/small*180/math.Pi, 2)+"°",
		values["Smaller's tips out by 0.050 mm"])
	var names []string
	for _, m := range StackNotes(st, metric).Legend {
		names = append(names, m.Text)
	}
	require.Subset(t, names, []string{"Escape wheel, large", "Escape wheel, small"})
}

func TestStackComesBackFromFiles(t *testing.T) {
	st := stacked(t)
	d, err := StackView(st, metric)
	require.NoError(t, err)
	var file bytes.Buffer
	require.NoError(t, dxf.Write(&file, d))
	require.Len(t, dxfCircles(t, file.String(), "screws", st.Stacked.Mounting.Clear.MM/2), 4)
	requireOpen(t, d, punched(st.Stacked.Mounting))
}

func punched(m mount.Mounting) []geometry.Point {
	var at []geometry.Point
	for _, p := range m.Places {
		at = append(at, p.At)
	}
	return at
}

func TestStackThatCannotBeDrawn(t *testing.T) {
	st := stacked(t)
	st.Wheels[1].Teeth = nil
	for _, draw := range []func(Stack, Style) (*render.Drawing, error){StackView, StackTemplate, StackCard} {
		_, err := draw(st, metric)
		require.ErrorIs(t, err, ErrNothing)
		_, err = draw(Stack{}, metric)
		require.ErrorIs(t, err, ErrNothing)
	}
}

// Riveted together, a stack is drawn without holes and has no card of its screws.
func TestStackWithoutScrews(t *testing.T) {
	st := stacked(t)
	st.Stacked.Mounting, st.Stacked.Marks = mount.Mounting{}, nil
	d, err := StackTemplate(st, metric)
	require.NoError(t, err)
	require.Empty(t, itemsOn(d, render.LayerScrews, "mount.screws"))
	require.NotEmpty(t, StackNotes(st, metric).Legend)
	_, err = StackCard(st, metric)
	require.ErrorIs(t, err, ErrNothing)
	require.Len(t, StackHandles(stacked(t)), 3)
}
