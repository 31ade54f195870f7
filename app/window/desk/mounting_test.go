package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/geometry"
)

// worked returns a desk with a new wheel of a kind on it, at a step.
func worked(t *testing.T, kind string, s Step) *Desk {
	d := New(words.English(), Recent{})
	require.NoError(t, d.Add(kind))
	d.Go(s)
	return d
}

// typed puts texts in fields of the present part, one after the other.
func typed(d *Desk, texts map[geometry.Quantity]string) {
	for field, text := range texts {
		d.Type(d.Part(), field, text)
	}
}

var screwed = map[geometry.Quantity]string{"mount.screws": "5", "mount.thread": "BA 12", "mount.screw_circle": "10 mm"}

func TestAWheelIsScrewedToItsCollet(t *testing.T) {
	d := worked(t, "cycloidal", Mounting)
	bare, _ := d.Drawing()
	require.NotNil(t, bare)
	require.Equal(t, Mark{}, d.Mark(Mounting), "no screws are asked for")
	require.Equal(t, "no screws asked for", d.Summary())
	typed(d, screwed)
	require.Len(t, d.wheel().Mounting.Places, 5)
	require.True(t, d.Mark(Mounting).Done)
	require.Equal(t, "5 screws BA 12 on a circle of 10.00 mm", d.Summary())
	drilled, stale := d.Drawing()
	require.NotSame(t, bare, drilled)
	require.False(t, stale)
	for d.CanUndo() {
		d.Undo()
	}
	require.Empty(t, d.Job().Wheels, "adding and mounting are undone")
}

func TestAScrewInTheAirIsRefusedOnItsField(t *testing.T) {
	d := worked(t, "cycloidal", Mounting)
	typed(d, screwed)
	good, _ := d.Drawing()
	d.Type(d.Part(), "mount.screw_circle", "30 mm")
	kept, stale := d.Drawing()
	require.Same(t, good, kept)
	require.True(t, stale)
	f := fieldOf(t, d, "mount.screw_circle")
	require.True(t, f.Grave)
	require.Contains(t, f.Refusal, "at most")
	require.Equal(t, 1, d.Mark(Mounting).Errors)
	d.Go(Blank)
	for _, r := range d.Remarks() {
		if r.Severity == solve.Error {
			require.Equal(t, "Mounting", r.Where)
			d.Follow(r)
			break
		}
	}
	require.Equal(t, Mounting, d.Step())
	require.Equal(t, geometry.Quantity("mount.screw_circle"), d.Lit().Quantity)
}

// A thread goes by any of its names, and by none.
func TestAThreadIsChosen(t *testing.T) {
	d := worked(t, "cycloidal", Mounting)
	typed(d, screwed)
	for _, text := range []string{"BA 12", "12BA", "12 ba"} {
		d.Type(d.Part(), "mount.thread", text)
		require.Contains(t, fieldOf(t, d, "mount.thread").Choices, Choice{text, "BA 12"})
		require.NotNil(t, d.wheel().Mounting, text)
	}
	d.Type(d.Part(), "mount.thread", "9/16 Whitworth")
	f := fieldOf(t, d, "mount.thread")
	require.Contains(t, f.Choices, Choice{"9/16 Whitworth", "9/16 Whitworth"})
	require.Contains(t, f.Refusal, "9/16 Whitworth")
	require.Equal(t, Choice{"", "none"}, f.Choices[0])
	require.Regexp(t, "^M", f.Choices[1].Label)
	d.Type("", "units", "in")
	require.Regexp(t, "^UNF", fieldOf(t, d, "mount.thread").Choices[1].Label)
}

// Each style asks for what it alone needs.
func TestAStyleShowsItsOwnFields(t *testing.T) {
	d := worked(t, "cycloidal", Crossing)
	own := []geometry.Quantity{"crossing.sweep", "crossing.waist", "crossing.waist_at"}
	shown := func() []geometry.Quantity {
		var has []geometry.Quantity
		for _, q := range own {
			for _, f := range d.Fields() {
				if f.Path == q {
					has = append(has, q)
				}
			}
		}
		return has
	}
	require.Empty(t, shown())
	d.Type(d.Part(), "crossing.style", "swept")
	require.Equal(t, own[:1], shown())
	require.InDelta(t, 20, d.wheel().Crossing.Spec.Sweep.Degrees(), 1e-9, "a style begins with what it needs")
	d.Type(d.Part(), "crossing.sweep", "25 deg")
	require.InDelta(t, 25, d.wheel().Crossing.Spec.Sweep.Degrees(), 1e-9)
	d.Type(d.Part(), "crossing.style", "waisted")
	require.Equal(t, own[1:], shown())
	require.InDelta(t, 1.5, d.wheel().Crossing.Narrowest.Width, 1e-6, "of arms of 2 mm")
	d.Type(d.Part(), "crossing.waist", "1.6 mm")
	require.InDelta(t, 1.6, d.wheel().Crossing.Narrowest.Width, 1e-6)
	d.Type(d.Part(), "crossing.style", "swept")
	text, _ := d.Job().Text(d.Part(), "crossing.sweep")
	require.Equal(t, "25 deg", text, "what was typed is kept")
	d.Type(d.Part(), "crossing.style", "wavy")
	require.NotEmpty(t, fieldOf(t, d, "crossing.style").Refusal)
	d.Undo()
	d.Undo()
	d.Redo()
	require.Equal(t, "waisted", fieldOf(t, d, "crossing.style").Text)
}
