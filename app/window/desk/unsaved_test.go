package desk

import (
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

// moments are what waits for its moment.
type moments struct{ waiting []func() }

func (m *moments) later(do func()) { m.waiting = append(m.waiting, do) }

// pass lets the moment come.
func (m *moments) pass() {
	waiting := m.waiting
	m.waiting = nil
	for _, do := range waiting {
		do()
	}
}

// keeping returns a desk with the sample job on it that keeps what is not saved.
func keeping(t *testing.T) (*Desk, *moments) {
	d, _ := opened(t)
	m := &moments{}
	d.Later = m.later
	return d, m
}

// crashed ends a desk as a crash does, and returns one that starts after it.
func crashed(t *testing.T, d *Desk) *Desk {
	if d.unsaved.hold != nil {
		require.NoError(t, d.unsaved.hold.LetGo())
	}
	if d.held.hold != nil {
		require.NoError(t, d.held.hold.LetGo())
	}
	return New(words.English(), d.recent)
}

func TestAnUnsavedJobIsOfferedBackAfterACrash(t *testing.T) {
	d, m := keeping(t)
	file := filepath.Join(t.TempDir(), "job.tipline")
	saveAs(t, d, file)
	for _, text := range []string{"3", "3.", "3.5 mm"} {
		d.Type("great", "crossing.rim", text)
	}
	require.Len(t, m.waiting, 1, "once for a run of typing")
	m.pass()
	require.Empty(t, New(words.English(), d.recent).Lost(), "its program still runs")
	kept := time.Date(2001, 2, 3, 4, 5, 6, 0, time.UTC)
	require.NoError(t, os.Chtimes(d.unsaved.name+copyEnding, kept, kept))

	next := crashed(t, d)
	lost := next.Lost()
	require.Len(t, lost, 1)
	require.Equal(t, d.Title(), lost[0].Title)
	require.True(t, kept.Equal(lost[0].When))
	require.Empty(t, New(words.English(), d.recent).Lost(), "it is offered by one program only")
	next.Later = m.later
	require.NoError(t, next.Take(FromLost(lost[0])))
	text, _ := next.Job().Text("great", "crossing.rim")
	require.Equal(t, "3.5 mm", text)
	require.Equal(t, file, next.File())
	require.False(t, next.Saved())
	next.Type("great", "bore", "7 mm")
	m.pass()
	again := crashed(t, next)
	lost = again.Lost()
	require.Len(t, lost, 1, "what was taken up is kept on")
	require.NoError(t, again.Take(FromLost(lost[0])))
	text, _ = again.Job().Text("great", "bore")
	require.Equal(t, "7 mm", text)
	again.Undo()
	text, _ = again.Job().Text("great", "crossing.rim")
	require.NotEqual(t, "3.5 mm", text, "undo goes back to the file")
}

// The clock may have been set back since the copy was kept.
func TestACopyOfALaterTimeIsOfferedBack(t *testing.T) {
	d, m := keeping(t)
	d.Type("great", "bore", "7 mm")
	m.pass()
	later := time.Date(2201, 2, 3, 4, 5, 6, 0, time.UTC)
	for _, ending := range []string{copyEnding, lockEnding} {
		require.NoError(t, os.Chtimes(d.unsaved.name+ending, later, later))
	}
	next := crashed(t, d)
	lost := next.Lost()
	require.Len(t, lost, 1)
	require.NoError(t, next.Take(FromLost(lost[0])))
	text, _ := next.Job().Text("great", "bore")
	require.Equal(t, "7 mm", text)
}

func TestNothingIsOfferedBackOfWhatEndedWell(t *testing.T) {
	for name, end := range map[string]func(*testing.T, *Desk){
		"saved":         func(t *testing.T, d *Desk) { saveAs(t, d, filepath.Join(t.TempDir(), "job")) },
		"closed":        func(_ *testing.T, d *Desk) { d.Close() },
		"another begun": func(_ *testing.T, d *Desk) { d.Begin() },
		"all undone":    func(_ *testing.T, d *Desk) { d.Undo() },
		"thrown away": func(t *testing.T, d *Desk) {
			next := crashed(t, d)
			next.ThrowAway(next.Lost()[0])
		},
	} {
		t.Run(name, func(t *testing.T) {
			d, m := keeping(t)
			d.Type("great", "crossing.rim", "3 mm")
			m.pass()
			require.FileExists(t, d.unsaved.name+copyEnding)
			end(t, d)
			m.pass()
			left, err := os.ReadDir(d.unsaved.folder)
			require.NoError(t, err)
			require.Empty(t, left)
		})
	}
}

// A moment that comes after the job was saved writes nothing.
func TestAMomentThatComesTooLate(t *testing.T) {
	d, m := keeping(t)
	d.Type("great", "crossing.rim", "3 mm")
	d.Close()
	m.pass()
	require.NoDirExists(t, d.unsaved.folder)
}

func TestACopyThatCannotBeReadIsLeftAlone(t *testing.T) {
	d, m := keeping(t)
	d.Type("great", "crossing.rim", "3 mm")
	m.pass()
	require.NoError(t, os.WriteFile(d.unsaved.name+copyEnding, []byte("half a li"), 0o600))
	require.Empty(t, crashed(t, d).Lost())
	require.FileExists(t, d.unsaved.name+copyEnding)
}
