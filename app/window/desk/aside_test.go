package desk

import (
	"testing"

	"github.com/stretchr/testify/require"
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
	require.Same(t, result.Job, d.Result().Job)
}

// An edit that is solved at once ends what is being solved aside, whose result is
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
	d.Undo()
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
