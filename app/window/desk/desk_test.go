package desk

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render"
)

// opened returns a desk with the sample job on it, and how often it changed.
func opened(t *testing.T) (*Desk, *int) {
	d := New(words.English(), Recent{File: filepath.Join(t.TempDir(), "recent")})
	require.NoError(t, d.Take(FromSample(samples.First)))
	changes := new(int)
	d.Changed = func() { *changes++ }
	return d, changes
}

func TestTypingChangesJobAndDrawing(t *testing.T) {
	d, changes := opened(t)
	before, stale := d.Drawing()
	require.NotNil(t, before)
	require.False(t, stale)
	d.Type(d.Part(), "crossing.rim", "3 mm")
	require.Equal(t, 1, *changes)
	text, _ := d.Job().Text(d.Part(), "crossing.rim")
	require.Equal(t, "3 mm", text)
	after, stale := d.Drawing()
	require.False(t, stale)
	require.NotEqual(t, before.Bounds(), geometry.Box{})
	require.NotSame(t, before, after)
	require.InDelta(t, 3, d.wheel().Teeth.RootRadius-d.wheel().Crossing.RimRadius, 1e-9)
	require.False(t, d.Saved())
}

func TestTheLastGoodDrawingStaysAndTheFieldSaysWhy(t *testing.T) {
	for _, row := range []struct {
		name  string
		field geometry.Quantity
		step  Step
		text  string
	}{
		{"no length at all", "crossing.rim", Crossing, "wide"},
		{"a rim that leaves no room", "crossing.rim", Crossing, "40 mm"},
		{"emptied", "crossing.hub", Crossing, ""},
		{"a count below the least", "teeth.count", Blank, "1"},
		{"no module", "teeth.module", Blank, "x"},
	} {
		t.Run(row.name, func(t *testing.T) {
			d, _ := opened(t)
			d.Go(row.step)
			good, _ := d.Drawing()
			d.Type(d.Part(), row.field, row.text)
			kept, stale := d.Drawing()
			require.Same(t, good, kept)
			require.True(t, stale)
			f := fieldOf(t, d, row.field)
			require.Equal(t, row.text, f.Text)
			require.NotEmpty(t, f.Refusal)
			require.True(t, f.Grave)
			require.Positive(t, d.Mark(row.step).Errors)
			require.Equal(t, solve.Error, d.Trouble(d.Part()))
			d.Undo()
			again, stale := d.Drawing()
			require.False(t, stale)
			require.Equal(t, good.Bounds(), again.Bounds())
		})
	}
}

func fieldOf(t *testing.T, d *Desk, path geometry.Quantity) Field {
	for _, f := range d.Fields() {
		if f.Path == path {
			return f
		}
	}
	require.Failf(t, "no field", "%s on %s", path, d.Step())
	return Field{}
}

func TestUndoTakesARunOfTypingBackAtOnce(t *testing.T) {
	d, _ := opened(t)
	first := d.Job()
	for _, text := range []string{"3", "3 ", "3 m", "3 mm"} {
		d.Type(d.Part(), "crossing.rim", text)
	}
	d.Light("crossing.hub")
	d.Light("crossing.rim")
	d.Type(d.Part(), "crossing.rim", "3.5 mm")
	d.Undo()
	text, _ := d.Job().Text(d.Part(), "crossing.rim")
	require.Equal(t, "3 mm", text)
	d.Undo()
	require.Same(t, first, d.Job())
	require.False(t, d.CanUndo())
	d.Redo()
	d.Redo()
	require.False(t, d.CanRedo())
	text, _ = d.Job().Text(d.Part(), "crossing.rim")
	require.Equal(t, "3.5 mm", text)
}

func TestEveryStepOfEveryPartIsDrawn(t *testing.T) {
	d, _ := opened(t)
	for _, id := range d.order() {
		d.Choose(id)
		for _, s := range d.Steps() {
			d.Go(s)
			drawing, stale := d.Drawing()
			require.NotNil(t, drawing, "%s %s", id, s)
			require.False(t, stale)
			require.NotEmpty(t, d.Fields())
			require.NotContains(t, d.Summary(), "‹")
			require.NotContains(t, d.Summary(), "{")
		}
		require.NotNil(t, d.Picture(id))
	}
}

// Every field that a step shows exists, has a label, and is found again by its
// step.
func TestFieldsHaveLabelsAndSteps(t *testing.T) {
	for _, kind := range Kinds() {
		d := New(words.English(), Recent{})
		require.NoError(t, d.Add(kind))
		for _, s := range d.Steps() {
			d.Go(s)
			for _, f := range d.Fields() {
				require.NotContains(t, f.Label, "‹", f.Path)
				for _, c := range f.Choices {
					require.NotContains(t, c.Label, "‹", f.Path)
				}
				if s == Paper {
					continue
				}
				_, known := job.FieldAt(f.Path)
				require.True(t, known, f.Path)
				step, ok := d.StepOf(f.Path)
				require.True(t, ok)
				require.Equal(t, s, step, f.Path)
			}
		}
	}
}

// What is said once of the whole job is shown where it can be minded.
func TestARemarkOnDividingIsForPartsThatAreDivided(t *testing.T) {
	d, _ := opened(t)
	d.result.Findings = append(d.result.Findings, solve.Finding{Severity: solve.Note, Code: "dividing.one-way"})
	said := d.Words().Say("dividing.one-way")
	has := func() bool {
		return slices.ContainsFunc(d.Remarks(), func(r Remark) bool { return r.Sentence == said })
	}
	require.True(t, has())
	d.Choose("great-centre")
	require.False(t, has())
	d.Choose("third-pinion")
	require.True(t, has())
}

func TestASolvedFieldShowsWhatItCameTo(t *testing.T) {
	d, _ := opened(t)
	d.Choose("escape")
	d.Go(Cutter)
	f := fieldOf(t, d, "teeth.root_diameter")
	require.Equal(t, d.Style().Units.Length(2*d.wheel().Cut.RootRadius), f.Worked)
	d.Type("escape", "teeth.root_diameter", f.Worked)
	d.Type("escape", "teeth.solve", "land")
	require.Empty(t, fieldOf(t, d, "teeth.root_diameter").Worked)
	require.Equal(t, d.Style().Units.Length(d.wheel().Cut.Land), fieldOf(t, d, "teeth.land").Worked)
	require.InDelta(t, 0.2, d.wheel().Cut.Land, 0.02)
}

func TestARemarkLeadsToItsField(t *testing.T) {
	d, _ := opened(t)
	d.Type("escape", "teeth.undercut", "sideways")
	d.Choose("great")
	d.Go(Paper)
	var found bool
	for _, r := range d.Remarks() {
		if r.Part != "escape" {
			continue
		}
		found = true
		d.Follow(r)
	}
	require.True(t, found)
	require.Equal(t, "escape", d.Part())
	require.Equal(t, Cutter, d.Step())
	require.Equal(t, geometry.Quantity("teeth.undercut"), d.Lit().Quantity)
	require.Equal(t, "× sideways", d.LitText())
}

func TestPartsAreAddedTurnedToAndTakenAway(t *testing.T) {
	d := New(words.English(), Recent{})
	require.Empty(t, d.Part())
	require.Empty(t, d.Missing())
	for _, kind := range Kinds() {
		require.NoError(t, d.Add(kind))
		require.Equal(t, d.Steps()[0], d.Step(), kind)
		for _, s := range d.Steps()[:len(d.Steps())-1] {
			require.True(t, d.Mark(s).Done || kind == "measured" && s == Cutter || kind == "train" || s == Mounting, "%s %s", kind, s)
		}
	}
	require.Len(t, d.Groups(), 5)
	require.Equal(t, train, d.kindOf(d.Part()))
	d.Turn(-1)
	require.Equal(t, pair, d.kindOf(d.Part()))
	require.Equal(t, Depthing, d.Step())
	d.Turn(-9)
	require.Equal(t, d.Job().Wheels[0].ID, d.Part())
	d.Turn(50)
	require.Equal(t, train, d.kindOf(d.Part()))
}

// Every kind of part can be copied, moved, renamed and taken away, and undone.
func TestEveryKindOfPartIsEdited(t *testing.T) {
	for _, id := range []string{"great", "centre-pinion", "great-centre", "going"} {
		t.Run(id, func(t *testing.T) {
			d, _ := opened(t)
			d.Choose(id)
			k, all := d.kindOf(id), len(d.order())
			require.NoError(t, d.Duplicate())
			twin := d.Part()
			require.NotEqual(t, id, twin)
			require.Equal(t, k, d.kindOf(twin))
			require.Len(t, d.order(), all+1)
			at := slices.Index(d.order(), twin)
			require.NoError(t, d.Move(-1))
			require.Equal(t, at-1, slices.Index(d.order(), twin))
			d.Type(twin, "id", "renamed")
			require.Equal(t, "renamed", d.Part())
			require.NoError(t, d.Delete())
			require.Equal(t, k, d.kindOf(d.Part()))
			require.Len(t, d.order(), all)
			for d.CanUndo() {
				d.Undo()
			}
			require.Len(t, d.order(), all)
			require.True(t, d.Saved())
		})
	}
}

func TestAShortNameIsTypedInOneStepAndATakenOneRefused(t *testing.T) {
	d, _ := opened(t)
	d.Choose("great-centre")
	id := "great-centre"
	for _, text := range []string{"great-centr", "first"} {
		d.Type(id, "id", text)
		id = text
	}
	d.Type(id, "id", "")
	f := fieldOf(t, d, "id")
	require.Empty(t, f.Text)
	require.NotEmpty(t, f.Refusal)
	d.Type(id, "id", "escape")
	f = fieldOf(t, d, "id")
	require.Equal(t, "escape", f.Text)
	require.NotEmpty(t, f.Refusal)
	require.Equal(t, "first", d.Part())
	d.Light("centres")
	require.Equal(t, "first", fieldOf(t, d, "id").Text)
	d.Undo()
	require.NotNil(t, d.Result().Part("great-centre"))
	require.False(t, d.CanUndo())
}

func TestOpenSaveAndSaveAs(t *testing.T) {
	d, _ := opened(t)
	folder := t.TempDir()
	d.Type("", "title", "A / B: tower?")
	require.Equal(t, "A - B- tower-.pdf", d.FileName(".pdf"))
	name := filepath.Join(folder, "tower")
	saveAs(t, d, name)
	require.Equal(t, name+Extension, d.File())
	require.True(t, d.Saved())
	d.Type("great", "bore", "9 mm")
	require.False(t, d.Saved())
	saveAs(t, d, d.File())
	saveAs(t, d, filepath.Join(folder, "second.tipline"))
	require.Equal(t, []string{filepath.Join(folder, "second.tipline"), name + Extension}, d.Recent())
	require.Equal(t, folder, d.Folder())
	other := New(words.English(), Recent{})
	require.NoError(t, other.Open(name+Extension))
	text, _ := other.Job().Text("great", "bore")
	require.Equal(t, "9 mm", text)
	require.True(t, other.Saved())
}

func TestWhatCannotBeReadOrWrittenLeavesTheDeskAlone(t *testing.T) {
	d, changes := opened(t)
	before := d.Job()
	require.Error(t, d.Open(filepath.Join(t.TempDir(), "missing.tipline")))
	broken := filepath.Join(t.TempDir(), "broken.tipline")
	require.NoError(t, os.WriteFile(broken, []byte(`{"tipline": 1`), 0o600))
	require.Error(t, d.Open(broken))
	failed := error(nil)
	d.SaveAs(filepath.Join(t.TempDir(), "no", "such", "folder.tipline"), func(err error) { failed = err })
	require.Error(t, failed)
	require.Error(t, d.Take(FromSample("no such sample")))
	require.Same(t, before, d.Job())
	require.Empty(t, d.File())
	require.Empty(t, d.Recent())
	require.Zero(t, *changes)
}

// Undoing and redoing look at the part that they change; where that is no more, at its
// neighbour.
func TestUndoShowsThePartThatItChanges(t *testing.T) {
	d, _ := opened(t)
	wheels := idsOf(d.result.Wheels)
	require.NoError(t, d.Add("cycloidal"))
	added := d.Part()
	d.Undo()
	require.Equal(t, wheels[len(wheels)-1], d.Part(), "the neighbour of what is gone")
	d.Redo()
	require.Equal(t, added, d.Part(), "redoing shows what it does")
	require.NoError(t, d.Delete())
	require.Equal(t, wheels[len(wheels)-1], d.Part())
	d.Choose(wheels[1])
	d.Undo()
	require.Equal(t, added, d.Part(), "undoing shows what it brings back")
	d.Choose(wheels[1])
	d.Redo()
	require.Equal(t, wheels[1], d.Part(), "what goes is not looked at")
}

// Driver and follower light their own teeth and circle, not the speed's plot.
func TestDriverAndFollowerLightTheirOwnLines(t *testing.T) {
	d, _ := opened(t)
	d.Choose(d.result.Pairs[0].ID())
	drawing, _ := d.Drawing()
	for _, field := range []geometry.Quantity{"wheel", "pinion"} {
		d.Light(field)
		lines := 0
		for _, it := range drawing.Items {
			if it.Part == d.Lit().Part && it.Quantity == d.Lit().Quantity {
				require.Contains(t, []render.Layer{render.LayerTeeth, render.LayerPitchCircle, render.LayerText}, it.Layer)
				require.True(t, it.Layer != render.LayerText || it.Text != nil, field)
				lines++
			}
		}
		require.Positive(t, lines, field)
	}
}
