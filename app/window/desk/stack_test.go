package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

// stacked returns a desk with three wheels of different sizes and a stack of the
// first two.
func stacked(t *testing.T) *Desk {
	d := New(words.English(), Recent{})
	for _, size := range []string{"0.8 mm", "0.5 mm", "0.6 mm"} {
		require.NoError(t, d.Add("cycloidal"))
		d.Type(d.Part(), "teeth.module", size)
		for field, text := range map[geometry.Quantity]string{"crossing.hub": "10 mm", "crossing.rim": "1.5 mm"} {
			d.Type(d.Part(), field, text)
		}
	}
	require.NoError(t, d.Add("stack"))
	return d
}

func wheelIDs(d *Desk) (ids, tips []string) {
	layers, _, _ := d.Layers()
	for _, l := range layers {
		ids, tips = append(ids, l.Wheel.Value), append(tips, l.Tip.Text)
	}
	return ids, tips
}

func TestAStackIsPutTogether(t *testing.T) {
	d := stacked(t)
	require.Equal(t, []Step{Mounting, Paper}, d.Steps())
	ids, tips := wheelIDs(d)
	wheels := d.Job().Wheels
	require.Equal(t, []string{wheels[0].ID, wheels[1].ID}, ids)
	require.Equal(t, []string{"0", "0"}, tips)
	_, free, _ := d.Layers()
	require.Equal(t, wheels[2].ID, free[0].Value)
	drawing, _ := d.Drawing()
	require.NotNil(t, drawing)
	steps := []func(){
		func() { d.TypeTip(1, "5") },
		func() { d.PutOnStack(wheels[2].ID) },
		func() { d.Raise(1) },
		func() { d.TakeOffStack(0) },
	}
	after := [][2][]string{
		{{wheels[0].ID, wheels[1].ID}, {"0", "5"}},
		{{wheels[0].ID, wheels[1].ID, wheels[2].ID}, {"0", "5", "0"}},
		{{wheels[0].ID, wheels[2].ID, wheels[1].ID}, {"0", "0", "5"}},
		{{wheels[2].ID, wheels[1].ID}, {"0", "5"}},
	}
	for i, do := range steps {
		do()
		d.Light("")
		ids, tips = wheelIDs(d)
		require.Equal(t, after[i], [2][]string{ids, tips}, i)
	}
	s := d.result.Stacks[0].Stacked
	require.InDelta(t, 360-5*6.0, s.Turns[1].Degrees(), 1e-9, "tip 5 of 60 is turned back to 12 o'clock")
	for i := len(after) - 2; i >= 0; i-- {
		d.Undo()
		ids, tips = wheelIDs(d)
		require.Equal(t, after[i], [2][]string{ids, tips}, i)
	}
}

func TestAStacksTableTellsTurnsAndError(t *testing.T) {
	d := stacked(t)
	d.Type(d.Part(), "misplacement", "0.1 mm")
	s := d.result.Stacks[0].Stacked
	rows := d.Tables()[0].Rows
	require.Len(t, rows, 4)
	require.Equal(t, d.Style().Units.Angle(s.Twist), rows[2][1])
	large, small := d.result.Wheels[0].Teeth.TipRadius, d.result.Wheels[1].Teeth.TipRadius
	require.Equal(t, d.Style().Units.Number(100/small*large, 0)+" µm", rows[3][1])
}

func TestATipThatIsNoneStaysInItsBox(t *testing.T) {
	d := stacked(t)
	before := d.Job()
	for _, text := range []string{"", "1, 2"} {
		d.TypeTip(0, text)
		_, tips := wheelIDs(d)
		require.Equal(t, text, tips[0])
		require.Same(t, before, d.Job())
		why, grave := d.LayersTrouble()
		require.NotEmpty(t, why)
		require.True(t, grave)
	}
	d.TypeTip(0, "60")
	why, _ := d.LayersTrouble()
	require.Contains(t, why, "59")
	require.Equal(t, 1, d.Mark(Mounting).Errors)
	d.Undo()
	why, _ = d.LayersTrouble()
	require.Empty(t, why)
}

func TestAStackWithoutWheelsIsRefused(t *testing.T) {
	d := New(words.English(), Recent{})
	require.NoError(t, d.Add("stack"))
	d.TakeOffStack(0)
	d.TakeOffStack(0)
	layers, free, ok := d.Layers()
	require.True(t, ok)
	require.Empty(t, layers)
	require.Len(t, free, 2)
	why, grave := d.LayersTrouble()
	require.Contains(t, why, "at least 2 wheels")
	require.True(t, grave)
	require.NotEmpty(t, d.Missing())
}

// A stack without a mount shows whose it takes.
func TestAStackShowsTheMountItTakes(t *testing.T) {
	d := stacked(t)
	wheel := d.Job().Wheels[0]
	require.Equal(t, "none", fieldOf(t, d, "mount.screws").Empty)
	d.Type(wheel.ID, "mount.screws", "3")
	d.Type(wheel.ID, "mount.thread", "BA 12")
	require.Equal(t, "3 ("+wheel.Name+")", fieldOf(t, d, "mount.screws").Empty)
	require.Equal(t, Choice{"", "BA 12 (" + wheel.Name + ")"}, fieldOf(t, d, "mount.thread").Choices[0])
	require.Empty(t, fieldOf(t, d, "mount.screw_circle").Empty)
	d.Type(d.Part(), "mount.screws", "4")
	require.Equal(t, Choice{"", "none"}, fieldOf(t, d, "mount.thread").Choices[0])
}
