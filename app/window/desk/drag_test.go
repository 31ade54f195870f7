package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// Every handle of every step of every part, dragged nowhere, leaves what its field
// means to within a step, and dragged aside changes a field that is there.
func TestEveryHandleSetsItsField(t *testing.T) {
	d, _ := opened(t)
	dragged := 0
	for _, id := range d.order() {
		d.Choose(id)
		for _, s := range d.Steps() {
			d.Go(s)
			for _, h := range d.Handles() {
				before := d.Job()
				d.Drag(h, h.At.Add(geometry.Point{X: 0.37, Y: -0.41}))
				require.True(t, d.Dragging(), "%s %s", id, h.Quantity)
				require.False(t, d.CanUndo())
				d.PutBack()
				require.Same(t, before, d.Job())
				_, ok := d.Job().Text(id, h.Quantity)
				require.True(t, ok, "%s %s", id, h.Quantity)
				dragged++
			}
		}
	}
	require.Greater(t, dragged, 60)
}

func TestADragEndsWhereItsPartIsLeft(t *testing.T) {
	for name, leave := range map[string]func(*Desk){
		"another part": func(d *Desk) { d.Turn(1) },
		"another step": func(d *Desk) { d.Go(Blank) },
	} {
		t.Run(name, func(t *testing.T) {
			d, _ := opened(t)
			before := d.Job()
			d.Drag(d.Handles()[0], geometry.Point{X: 3, Y: 30})
			require.NotSame(t, before, d.Job())
			leave(d)
			require.Same(t, before, d.Job())
			require.Same(t, before, d.Result().Job)
		})
	}
}

func TestValuesStepInTheirOwnUnit(t *testing.T) {
	d, _ := opened(t)
	for _, row := range []struct {
		field     geometry.Quantity
		old, want string
		value     float64
	}{
		{"crossing.rim", "4 mm", "3.46 mm", 3.4567},
		{"crossing.rim", "4", "3.46", 3.4567},
		{"crossing.rim", "1/8 in", "0.136 in", 3.4567},
		{"crossing.rim", `0.1"`, `0.136"`, 3.4567},
		{"crossing.rim", "#30", "0.136 in", 3.4567},
		{"crossing.rim", "", "3.46 mm", 3.4567},
		{"crossing.rim", "4 mm", "0 mm", 0},
		{"teeth.undercut", "10 deg", "11.5 deg", 0.2007},
		{"teeth.undercut", "10°", "11.5°", 0.2007},
		{"teeth.undercut", "10", "11.5", 0.2007},
	} {
		require.Equal(t, row.want, d.stepped(row.field, row.old, row.value), "%s %q", row.field, row.old)
	}
	d.Type("", "units", "in")
	require.Equal(t, "0.136", d.stepped("crossing.rim", "1/8", 3.4567))
}

func TestNudgingStaysWithinWhatAFieldMayBe(t *testing.T) {
	d, _ := opened(t)
	for _, row := range []struct {
		field           geometry.Quantity
		text, down, top string
	}{
		{"crossing.rim", "0.01 mm", "0.01 mm", "0.02 mm"},
		{"crossing.fillet_at_hub", "0", "0", "0.01"},
		{"crossing.arms", "3", "3", "4"},
		{"cutter.clearance", "1 deg", "1 deg", "1.1 deg"},
	} {
		d.Type("great", row.field, row.text)
		require.True(t, d.Nudge("great", row.field, -1))
		text, _ := d.Job().Text("great", row.field)
		require.Equal(t, row.down, text)
		require.True(t, d.Nudge("great", row.field, 1))
		text, _ = d.Job().Text("great", row.field)
		require.Equal(t, row.top, text)
	}
	require.False(t, d.Nudge("great", "name", 1))
}

func quantities(d *Desk) []geometry.Quantity {
	var qs []geometry.Quantity
	for _, h := range d.Handles() {
		qs = append(qs, h.Quantity)
	}
	return qs
}

func TestADrilledWheelHasHandles(t *testing.T) {
	d := worked(t, "cycloidal", Mounting)
	require.Empty(t, d.Handles(), "nothing is drilled")
	typed(d, screwed)
	require.Contains(t, quantities(d), geometry.Quantity("mount.screw_circle"))
	for _, h := range d.Handles() {
		if h.Quantity == "mount.screw_circle" {
			d.Drag(h, geometry.Point{Y: 5.5})
		}
	}
	require.Equal(t, "11 mm", fieldOf(t, d, "mount.screw_circle").Text)
}

// What a stack takes from its wheel becomes its own when one field of it is dragged.
func TestAStackWithALentMountIsDragged(t *testing.T) {
	d := stacked(t)
	stack, wheel := d.Part(), d.Job().Wheels[0].ID
	d.Choose(wheel)
	typed(d, map[geometry.Quantity]string{"mount.screws": "5", "mount.thread": "BA 12", "mount.screw_circle": "8 mm"})
	d.Choose(stack)
	require.Contains(t, quantities(d), geometry.Quantity("mount.screw_circle"))
	for _, h := range d.Handles() {
		if h.Quantity == "mount.screw_circle" {
			d.Drag(h, geometry.Point{Y: 3.5})
			d.Drag(h, geometry.Point{Y: 3.75})
		}
	}
	d.Drop()
	require.Equal(t, "7.5 mm", fieldOf(t, d, "mount.screw_circle").Text)
	require.Equal(t, "BA 12", fieldOf(t, d, "mount.thread").Text)
	require.Equal(t, "5 screws BA 12 on a circle of 7.50 mm", d.Summary())
	text, _ := d.Job().Text(wheel, "mount.screw_circle")
	require.Equal(t, "8 mm", text, "the wheel's own stays")
}
