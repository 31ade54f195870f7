package window

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"testing"

	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry/fault"
)

// Where the program itself fails, as while it draws, what was typed last in each window is
// kept at once, though its moment has not come, and the next program offers it back.
func TestAFaultLosesNothingThatWasTyped(t *testing.T) {
	recent := desk.Recent{File: filepath.Join(t.TempDir(), "recent")}
	d := desk.New(words.English(), recent)
	require.NoError(t, d.Take(desk.FromSample(samples.First)))
	d.Later = func(func()) {} // a moment that never comes
	app := test.NewApp()
	defer app.Quit()
	w := New(app, d)
	other := w.all.add(d.Another())
	for n, each := range []*Window{w, other} {
		each.desk.Aside = nil
		if n > 0 {
			require.NoError(t, each.desk.Take(desk.FromSample(samples.First)))
		}
		each.desk.Type("great", "crossing.rim", []string{"3.5 mm", "4.5 mm"}[n])
	}
	require.Nil(t, w.all.guarded(func() {}))
	require.Empty(t, desk.New(words.English(), recent).Lost())
	f := w.all.guarded(func() {
		raise(fault.Caught(func() { panic("the pen broke") }), func() { t.Error("it goes on") })
	})
	require.Equal(t, "the pen broke", f.What)
	require.Equal(t, []string{"3.5 mm", "4.5 mm"}, unsavedIn(t, recent))
}

// unsavedIn returns the rims of the jobs that are kept beside what is remembered.
func unsavedIn(t *testing.T, recent desk.Recent) (rims []string) {
	copies, err := filepath.Glob(filepath.Join(filepath.Dir(recent.File), "unsaved", "*.unsaved"))
	require.NoError(t, err)
	for _, c := range copies {
		rims = append(rims, rimIn(t, c))
	}
	slices.Sort(rims)
	return rims
}

func rimIn(t *testing.T, file string) string {
	data, err := os.ReadFile(file)
	require.NoError(t, err)
	_, text, _ := bytes.Cut(data, []byte("\n"))
	j, err := job.Read(bytes.NewReader(text))
	require.NoError(t, err)
	rim, _ := j.Text("great", "crossing.rim")
	return rim
}
