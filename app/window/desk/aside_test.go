package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/solve"
)

// bench solves aside when it is told to, one job after the other.
type bench struct{ waiting []func() }

func (b *bench) aside(run, done func()) {
	b.waiting = append(b.waiting, func() { run(); done() })
}

// next does the job that has waited longest.
func (b *bench) next() {
	first := b.waiting[0]
	b.waiting = b.waiting[1:]
	first()
}

func TestWhatIsTypedIsSolvedAsideAndTheNewestWins(t *testing.T) {
	d, changes := opened(t)
	var b bench
	d.Aside = b.aside
	before, result := d.wheel(), d.Result()
	for _, text := range []string{"3", "3.", "3.5", "3.5 mm"} {
		d.Type("great", "crossing.rim", text)
	}
	require.Len(t, b.waiting, 1, "one at a time")
	require.Same(t, result, d.Result())
	require.Equal(t, "3.5 mm", fieldOf(t, d, "crossing.rim").Text, "the text is never behind")
	drawing, _ := d.Drawing()
	require.NotNil(t, drawing, "the last good drawing stands")
	require.Zero(t, *changes)
	b.next()
	require.InDelta(t, 3, before.Teeth.RootRadius-d.wheel().Crossing.RimRadius, 1e-9, "what was begun is shown")
	require.Len(t, b.waiting, 1)
	b.next()
	require.InDelta(t, 3.5, before.Teeth.RootRadius-d.wheel().Crossing.RimRadius, 1e-9, "then the newest, without those between")
	require.Empty(t, b.waiting)
	require.Equal(t, 2, *changes)
	d.Undo()
	require.Equal(t, "", fieldOf(t, d, "crossing.rim").Refusal)
	require.NotSame(t, result.Job, d.Result().Job, "it is solved aside too")
	require.Equal(t, 3, *changes, "and shown as it was typed at once")
	b.next()
	require.Same(t, result.Job, d.Result().Job)
}

// rest does all that waits.
func (b *bench) rest() {
	for len(b.waiting) > 0 {
		b.next()
	}
}

// Whatever is done, undone and done again beside the window comes to what it comes to at
// once, and until it does there is something to look at.
func TestEveryKindOfEditIsSolvedAside(t *testing.T) {
	for _, edit := range everyEdit() {
		t.Run(edit.name, func(t *testing.T) {
			d, _ := opened(t)
			d.AddAddition("circle")
			d.Choose(edit.part)
			d.Go(edit.step)
			before := fileOf(t, d)
			var b bench
			d.Aside, d.Changed = b.aside, func() { looked(t, d) }
			edit.do(t, d)
			after := fileOf(t, d)
			require.NotEqual(t, before, after)
			require.NotEmpty(t, b.waiting, "nothing is solved at the window")
			b.rest()
			same(t, d)
			part, step := d.Part(), d.Step()
			d.Undo()
			d.Redo()
			d.Undo()
			require.Equal(t, before, fileOf(t, d))
			b.rest()
			same(t, d)
			d.Redo()
			require.Equal(t, after, fileOf(t, d))
			b.rest()
			same(t, d)
			if d.kindOf(part) != noPart && d.Part() == part {
				require.Contains(t, d.Steps(), step)
			}
		})
	}
}

// looked looks at all that a window shows, and finds the parts of the job as it stands.
func looked(t *testing.T, d *Desk) {
	t.Helper()
	var listed, there []string
	for _, g := range d.Groups() {
		for _, e := range g.Parts {
			listed = append(listed, e.ID)
			d.Picture(e.ID)
			d.Trouble(e.ID)
		}
	}
	for _, p := range solve.Solve(t.Context(), d.Job()).Parts() {
		there = append(there, p.ID())
	}
	require.ElementsMatch(t, there, listed)
	require.Contains(t, listed, d.Part())
	drawing, _ := d.Drawing()
	require.True(t, drawing != nil || d.Awaits() || d.Missing() != "")
	require.NotEmpty(t, d.Summary())
	d.Fields()
	d.Remarks()
	d.Handles()
	d.Tables()
	d.Bit()
	d.PhotographFields()
	d.Additions()
	d.Layers()
	d.Arbors()
	for _, s := range d.Steps() {
		d.Mark(s)
	}
}

// same requires what is shown to be what the job comes to.
func same(t *testing.T, d *Desk) {
	t.Helper()
	require.Same(t, d.Job(), d.Result().Job)
	require.False(t, d.Awaits())
	fresh := solve.Solve(t.Context(), d.Job())
	require.Equal(t, fresh.Findings, d.Result().Findings[:len(fresh.Findings)])
}

// A part that is added while another edit is being solved is still the one that is looked
// at when that comes.
func TestAPartAddedMeanwhileStays(t *testing.T) {
	d, _ := opened(t)
	var b bench
	d.Aside = b.aside
	d.Type("great", "crossing.rim", "3 mm")
	require.NoError(t, d.Duplicate())
	copied := d.Part()
	require.NotEqual(t, "great", copied)
	require.True(t, d.Awaits())
	d.Type(copied, "crossing.rim", "4 mm")
	b.next()
	require.Equal(t, copied, d.Part())
	require.Equal(t, "4 mm", fieldOf(t, d, "crossing.rim").Text)
	b.rest()
	same(t, d)
	require.InDelta(t, 4, d.wheel().Teeth.RootRadius-d.wheel().Crossing.RimRadius, 1e-9)
	require.NoError(t, d.Delete())
	require.NotEqual(t, copied, d.Part())
	drawing, stale := d.Drawing()
	require.NotNil(t, drawing, "its neighbour is known")
	require.False(t, stale)
}

// What must be of the job as it stands ends what is being solved aside, whose result is
// then no longer wanted.
func TestWhatIsSolvedAtOnceOvertakes(t *testing.T) {
	d, _ := opened(t)
	begin, ended := make(chan struct{}), make(chan struct{}, 2)
	var over func()
	d.Aside = func(run, done func()) {
		over = done
		go func() {
			<-begin
			run()
			ended <- struct{}{}
		}()
	}
	d.Type("great", "crossing.rim", "3 mm")
	close(begin)
	d.catchUp()
	<-ended
	require.Same(t, d.Job(), d.Result().Job)
	result := d.Result()
	over()
	require.Same(t, result, d.Result())
	d.Type("great", "crossing.rim", "3.2 mm")
	require.NotNil(t, d.solving)
	require.NoError(t, d.Take(FromSample("signal-cabin")))
	require.Nil(t, d.solving)
	require.Same(t, d.Job(), d.Result().Job)
}

// A drag is solved aside too, and what is printed is the job as it stands.
func TestDraggingAndPrintingWithSolvingAside(t *testing.T) {
	d, _ := opened(t)
	var b bench
	d.Aside = func(run, done func()) {
		over := make(chan struct{})
		go func() { run(); close(over) }()
		b.waiting = append(b.waiting, func() { <-over; done() })
	}
	h := d.Handles()[0]
	d.Drag(h, h.At.Times(0.98))
	require.True(t, d.Dragging())
	b.next()
	require.Same(t, d.Job(), d.Result().Job)
	d.Drop()
	require.True(t, d.CanUndo())
	d.Type("great", "crossing.rim", "3.3 mm")
	var failed error
	d.Export(d.Packet(), t.TempDir()+"/packet.pdf", func(int, int) {}, func(_ int, err error) { failed = err })
	require.Same(t, d.Job(), d.Result().Job)
	b.next()
	require.Nil(t, d.solving)
	b.next()
	require.NoError(t, failed)
}
