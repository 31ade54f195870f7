package template

import (
	"bytes"
	"cmp"
	"math"
	"slices"
	"strconv"
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
	require.Contains(t, said(d), "B: Escape wheel, small, tip 7")
	require.Contains(t, said(d), "A: Escape wheel, large, tip 0")
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

// The smallest and the largest of three wheels lie in no order of size: on a printer with
// one ink each has its own pen, a letter at its tips, and one place in every list.
func TestStackedWheelsAreToldApart(t *testing.T) {
	var wheels []Wheel
	for i, count := range []int{60, 54, 80} {
		w, ok := laid(t, count, scribedSpec(6, crossing.Straight))
		require.True(t, ok)
		w.ID, w.Name = "w"+strconv.Itoa(i), "Wheel of "+strconv.Itoa(count)
		wheels = append(wheels, w)
	}
	c := mount.Collet{Bore: 2, Register: 5, Flange: 13}
	stacked, err := mount.Stack([]mount.Seat{seatOf(wheels[0]), seatOf(wheels[1]), seatOf(wheels[2])}, []int{0, 0, 0}, c,
		mount.Screws{Count: 3, Thread: threadNamed(t, "BA 10"), Circle: 9}, 0.05)
	require.NoError(t, err)
	st := Stack{ID: "three", Wheels: wheels, Stacked: stacked, Collet: c}
	d, err := StackTemplate(st, metric)
	require.NoError(t, err)
	requireClear(t, d, "three wheels")
	pens, inks := map[render.Pen]bool{}, map[render.Ink]bool{render.Blue: true}
	for _, it := range itemsOn(d, render.LayerTeeth, "wheels") {
		pens[it.Pen], inks[it.Ink] = true, true
	}
	require.Len(t, pens, 3)
	require.NotContains(t, pens, render.Centre, "the screw circle's")
	require.Len(t, inks, 4, "and none the centre lines' blue")
	names := []string{"A: Wheel of 60", "B: Wheel of 54", "C: Wheel of 80"}
	texts := textsOf(d)
	slices.SortFunc(texts, func(a, b render.Text) int { return cmp.Or(cmp.Compare(b.At.Y, a.At.Y), cmp.Compare(a.At.X, b.At.X)) })
	var heading, letters, parts, legend []string
	for _, text := range texts {
		switch name, tip := strings.CutSuffix(text.String, ", tip 0"); {
		case tip:
			heading = append(heading, name)
		case slices.Contains(names, name):
			parts = append(parts, name)
		case len(name) == 1 && name >= "A":
			letters = append(letters, name)
		}
	}
	for _, m := range StackNotes(st, metric).Legend {
		if slices.Contains(names, m.Text) {
			legend = append(legend, m.Text)
		}
	}
	require.Equal(t, names, heading)
	require.Equal(t, names, parts)
	require.Equal(t, names, legend)
	require.ElementsMatch(t, []string{"A", "B", "C"}, letters)
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
	require.Contains(t, said(d), "2 dots", "the template, which lies beside the card")
	card, err := StackCard(st, metric)
	require.NoError(t, err)
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
	require.Subset(t, names, []string{"A: Escape wheel, large", "B: Escape wheel, small"})
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
