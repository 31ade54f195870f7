package desk

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
)

// Every part to start from can be made and printed as it stands, in a job of its own and
// beside the sample's.
func TestEveryStartCanBeMadeAndPrinted(t *testing.T) {
	for _, units := range []string{"mm", "in"} {
		for _, s := range New(words.English(), Recent{}).Starts() {
			t.Run(units+" "+s.Kind, func(t *testing.T) {
				d := New(words.English(), Recent{})
				d.lay(&Brought{history: job.NewHistory(job.New(units))})
				require.NoError(t, d.Add(s.Kind))
				require.NotEmpty(t, s.Name)
				require.NotEmpty(t, s.Line)
				require.NotNil(t, d.Sketch(s.Kind))
				for _, f := range d.Result().Findings {
					require.NotEqual(t, solve.Error, f.Severity, "%s: %s", f.Part, f.Sentence(d.words, d.Style().Units))
				}
				for _, step := range d.Steps() {
					if s.Kind != "measured" || step != Cutter {
						d.Go(step)
						drawing, stale := d.Drawing()
						require.NotNil(t, drawing, step)
						require.False(t, stale)
					}
				}
				pages, err := exported(d, filepath.Join(t.TempDir(), "packet.pdf"))
				require.NoError(t, err)
				require.Greater(t, pages, 2)
				d.Undo()
				require.Empty(t, d.Part(), "with what it brought along it is one step")
			})
		}
	}
}

func TestAPairMeetsTheWheelThatIsThere(t *testing.T) {
	for form, want := range map[string]string{"cycloidal": "cycloidal", "lantern driver": "lantern"} {
		d := New(words.English(), Recent{})
		require.NoError(t, d.Add(form))
		d.Type(d.Part(), "teeth.module", "0.6 mm")
		d.Type(d.Part(), "teeth.leaves", "10")
		require.NoError(t, d.Add("pair"))
		p := d.Job().Pinions[0]
		require.Equal(t, []string{want, "10", "0.6 mm"}, []string{p.Form.Text, p.Leaves.Text, p.Module.Text})
		require.Equal(t, p.ID, d.Job().Pairs[0].Pinion)
		require.Len(t, d.Job().Wheels, 1)
	}
}
