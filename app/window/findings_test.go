package window

import (
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/window/desk"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry/trial"
)

// Whatever is said of a part, wherever one stands, a click on it goes to that part, or to
// the train beside which an arbor stands, and the keyboard into the field it is about.
func TestEveryRemarkLeadsToItsField(t *testing.T) {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	for _, file := range jobsWithRemarks(t) {
		d := desk.New(words.English(), desk.Recent{})
		require.NoError(t, d.Take(desk.FromCopy(file)))
		w := New(app, d)
		for _, part := range trial.Some(t, 11, 3, partsOf(d)) {
			d.Choose(part)
			for _, from := range []desk.Step{d.Steps()[0], desk.Paper} {
				d.Choose(part)
				d.Go(from)
				for _, r := range d.Remarks() {
					if from == desk.Paper && r.Part != part && part != partsOf(d)[0] {
						continue
					}
					d.Choose(part)
					d.Go(from)
					w.follow(r)
					r = d.Follow(r) // where another part must be mended first, to that
					if r.Field == "" {
						continue
					}
					require.NotNil(t, w.column.placeOf(r), "%s: from %s of %s to %s of %s: %s",
						filepath.Base(file), from, part, r.Field, r.Part, r.Sentence)
					require.Contains(t, d.LitField(), r.Field)
				}
			}
		}
		w.Close()
	}
}

func partsOf(d *desk.Desk) []string {
	var ids []string
	for _, g := range d.Groups() {
		for _, p := range g.Parts {
			ids = append(ids, p.ID)
		}
	}
	return ids
}

// jobsWithRemarks returns the files of the samples and of the awkward jobs that are jobs.
func jobsWithRemarks(t *testing.T) []string {
	files, err := filepath.Glob("../../testdata/jobs/absurd-*.tipline")
	require.NoError(t, err)
	require.NotEmpty(t, files)
	list, err := samples.List()
	require.NoError(t, err)
	for _, s := range list {
		data, err := samples.Read(s.Name)
		require.NoError(t, err)
		files = append(files, filepath.Join(t.TempDir(), s.Name+".tipline"))
		require.NoError(t, os.WriteFile(files[len(files)-1], data, 0o600))
	}
	return files
}
