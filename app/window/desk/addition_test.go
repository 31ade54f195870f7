package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/dividing"
	"tipline/geometry/measure"
	"tipline/render"
)

// drawnOn counts what a layer of the present drawing holds.
func drawnOn(t *testing.T, d *Desk, layer render.Layer) int {
	drawing, stale := d.Drawing()
	require.False(t, stale)
	n := 0
	for _, it := range drawing.Items {
		if it.Layer == layer {
			n++
		}
	}
	return n
}

// Every kind of addition starts with values that can be, is seen at once, is changed,
// and goes again.
func TestAdditionsAreAddedChangedAndTakenAway(t *testing.T) {
	for _, kind := range []string{"hole", "circle", "line", "note"} {
		t.Run(kind, func(t *testing.T) {
			d := worked(t, "cycloidal", Crossing)
			first, before := d.Job(), drawnOn(t, d, render.LayerAdditions)
			mass := d.wheel().Crossing.Mass
			d.AddAddition(kind)
			list, ok := d.Additions()
			require.True(t, ok)
			require.Len(t, list, 1)
			require.Equal(t, kind, list[0].Kind.Text)
			require.Greater(t, drawnOn(t, d, render.LayerAdditions), before)
			require.Equal(t, kind == "hole", d.wheel().Crossing.Mass < mass)
			why, _ := d.AdditionTrouble(0)
			require.Empty(t, why)
			for _, f := range list[0].Fields {
				require.NotContains(t, f.Label, "‹")
				step, ok := d.StepOf(f.Path)
				require.True(t, ok)
				require.Equal(t, Crossing, step)
			}
			d.Undo()
			require.Same(t, first, d.Job(), "one step of undoing")
			d.Redo()
			d.DropAddition(0)
			list, _ = d.Additions()
			require.Empty(t, list)
		})
	}
}

func TestAnAdditionInTheAirIsToldOfItself(t *testing.T) {
	d := worked(t, "cycloidal", Crossing)
	d.AddAddition("hole")
	d.AddAddition("hole")
	d.Type(d.Part(), "additions[1].angle", "36 deg")
	d.Type(d.Part(), "additions[1].radius", "15 mm")
	why, grave := d.AdditionTrouble(1)
	require.NotEmpty(t, why)
	require.True(t, grave)
	why, _ = d.AdditionTrouble(0)
	require.Empty(t, why)
	require.Positive(t, d.Mark(Crossing).Errors)
	d.Type(d.Part(), "additions[1].kind", "note")
	list, _ := d.Additions()
	require.Equal(t, geometry.Quantity("additions[1].text"), list[1].Fields[0].Path)
}

func TestSuggestedValuesAreOneStepOfUndoing(t *testing.T) {
	for _, units := range []measure.Unit{measure.MM, measure.Inch} {
		d := worked(t, "cycloidal", Crossing)
		d.Type("", "units", string(units))
		d.Type(d.Part(), "crossing.style", "swept")
		d.Light("")
		before := d.Job()
		require.True(t, d.CanSuggest())
		require.True(t, d.Suggest())
		require.NotNil(t, d.wheel().Crossing)
		require.Empty(t, d.Mark(Crossing).Errors)
		rim, _ := d.Job().Text(d.Part(), "crossing.rim")
		require.Contains(t, rim, string(units))
		d.Undo()
		require.Same(t, before, d.Job())
	}
	d := worked(t, "cycloidal", Blank)
	require.False(t, d.Suggest(), "on another step")
	d = worked(t, "cycloidal", Crossing)
	d.Type(d.Part(), "teeth.count", "x")
	require.False(t, d.CanSuggest())
}

// A wheel that is not crossed gets its crossing from the suggestion.
func TestAnUncrossedWheelIsSuggestedOne(t *testing.T) {
	d := worked(t, "cycloidal", Crossing)
	j, err := d.Job().Clear(d.Part(), "crossing")
	require.NoError(t, err)
	d.do(j)
	require.Nil(t, d.wheel().Crossing)
	require.True(t, d.Suggest())
	require.NotNil(t, d.wheel().Crossing)
}

func TestDividingTellsTwoMovesAndDirectPlates(t *testing.T) {
	d := worked(t, "cycloidal", Dividing)
	rows := d.Tables()[0].Rows
	require.Equal(t, [][]string{{"one move", "1 turn"}, {"worst tooth out", "exact"}}, rows)
	d.Type(d.Part(), "dividing.direct", "24, 60, 120")
	rows = d.Tables()[0].Rows
	require.Equal(t, []string{"direct plates that do", "60, 120"}, rows[2])
	d.Type(d.Part(), "dividing.direct", "")
	d.Type(d.Part(), "teeth.count", "127")
	a := d.wheel().Dividing
	require.False(t, a.Exact)
	require.Less(t, a.Compound.Error, a.Error)
	rows = d.Tables()[0].Rows
	require.Len(t, rows, 6)
	require.Equal(t, d.Style().Units.Number(a.Error, 1)+" µm", rows[1][1])
	require.Equal(t, d.Style().Units.Number(a.Compound.Error, 1)+" µm", rows[5][1])
	require.Equal(t, "23 of 49", d.move(0, dividing.Move{Holes: 23, Circle: 49}))
	require.Equal(t, "3 turns 12 of 49", d.move(3, dividing.Move{Holes: 12, Circle: 49}))
	require.Equal(t, "16 of 39 back", d.move(0, dividing.Move{Holes: -16, Circle: 39}))
}
