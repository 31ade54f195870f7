package desk

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

func sentences(d *Desk) (list []string, stand int) {
	stages, stand := d.Stages()
	for _, s := range stages {
		list = append(list, s.Sentence)
	}
	return list, stand
}

func TestEveryStepIsASentence(t *testing.T) {
	d, _ := opened(t)
	d.Type("great", "crossing.rim", "3.8 mm")
	d.Type("great", "crossing.placing", "equal")
	d.Type("", "title", "Another")
	require.NoError(t, d.Add("pinion"))
	require.NoError(t, d.Move(-1))
	d.Choose("third")
	require.NoError(t, d.Delete())
	require.NoError(t, d.Rename(""), "a wheel may be without a name")
	list, stand := sentences(d)
	require.Equal(t, 7, stand)
	require.Equal(t, []string{
		"Rim of Great wheel: 4 mm → 3.8 mm",
		"Arms stand of Great wheel: on tips → evenly",
		"Title: Signal-cabin timepiece → Another",
		"Added Pinion",
		"Moved Pinion",
	}, list[:5])
	require.Regexp(t, `^Deleted Third wheel, and \d+ more$`, list[5], "its pair goes with it")
	require.Regexp(t, `^Name of .+: .+ → nothing$`, list[6])
}

func TestArunOfTypingIsOneSentence(t *testing.T) {
	d, _ := opened(t)
	for _, text := range []string{"3", "3 ", "3 m", "3 mm"} {
		d.Type("great", "crossing.rim", text)
		list, _ := sentences(d)
		require.Equal(t, []string{"Rim of Great wheel: 4 mm → " + text}, list)
	}
}

func TestUndoGoesToWhereTheStepWasTaken(t *testing.T) {
	d, _ := opened(t)
	for _, row := range []struct {
		part  string
		step  Step
		field geometry.Quantity
		text  string
	}{
		{"great", Crossing, "crossing.rim", "3.9 mm"},
		{"escape", Cutter, "cutter.swing", "23 mm"},
		{"great", Blank, "bore", "5 mm"},
		{"", Paper, "title", "Another"},
	} {
		if row.part != "" {
			d.Choose(row.part)
		}
		d.Go(row.step)
		d.Type(row.part, row.field, row.text)
		where := d.Part()
		for _, back := range []func(){d.Undo, d.Redo} {
			d.Choose("centre")
			d.Go(Dividing)
			back()
			if row.part != "" {
				require.Equal(t, where, d.Part(), row.field)
			}
			require.Equal(t, row.step, d.Step(), row.field)
			require.Equal(t, row.field, d.Lit().Quantity, row.field)
		}
	}
}

func TestGoingToAStepOfTheList(t *testing.T) {
	d, changes := opened(t)
	first := d.Job()
	for _, arms := range []string{"5", "6", "4"} {
		d.Type("great", "crossing.arms", arms)
		d.Light("")
		d.Light("crossing.arms")
	}
	all, stand := d.Stages()
	require.Len(t, all, stand)
	last := d.Job()
	d.GoTo(0)
	require.Same(t, first, d.Job())
	all, stand = d.Stages()
	require.Zero(t, stand)
	require.True(t, all[0].Undone)
	d.GoTo(len(all))
	require.Same(t, last, d.Job())
	*changes = 0
	d.GoTo(99)
	require.Zero(t, *changes, "there is nothing further")
}

func TestUndoSurvivesSaving(t *testing.T) {
	d, _ := opened(t)
	d.Type("great", "crossing.rim", "3 mm")
	file := filepath.Join(t.TempDir(), "job.tipline")
	saveAs(t, d, file)
	d.Type("great", "crossing.rim", "3.5 mm")
	saveAs(t, d, d.File())
	require.True(t, d.Saved())
	for _, want := range []string{"3 mm", "4 mm"} {
		d.Undo()
		text, _ := d.Job().Text("great", "crossing.rim")
		require.Equal(t, want, text)
		require.False(t, d.Saved())
	}
	require.False(t, d.CanUndo())
	d.GoTo(2)
	require.True(t, d.Saved())
}

func TestTheListSpeaksTheLanguageChosen(t *testing.T) {
	d := New(words.English(), Recent{})
	require.NoError(t, d.Add("cycloidal"))
	d.Stages()
	require.NotEmpty(t, d.staged)
	require.NoError(t, d.Speak("en"))
	require.Empty(t, d.staged, "the sentences are made anew")
}
