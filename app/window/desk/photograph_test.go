package desk

import (
	"image"
	"image/png"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/solve"
	"tipline/geometry"
)

// scanned writes a grey picture of the size under a name in a folder of its own.
func scanned(t *testing.T, name string, wide int) string {
	file := filepath.Join(t.TempDir(), name)
	f, err := os.Create(file)
	require.NoError(t, err)
	require.NoError(t, png.Encode(f, image.NewGray(image.Rect(0, 0, wide, 20))))
	require.NoError(t, f.Close())
	return file
}

// cutting returns a desk on the cutter of the escape wheel.
func cutting(t *testing.T) *Desk {
	d, _ := opened(t)
	d.Choose("escape")
	d.Go(Cutter)
	return d
}

func TestAPhotographWaitsAmongTheProgramsFilesUntilTheJobIsSaved(t *testing.T) {
	d := cutting(t)
	require.NoError(t, d.UsePhotograph(scanned(t, "bit.png", 30)))
	require.FileExists(t, filepath.Join(filepath.Dir(d.recent.File), "photographs", "bit.png"))
	folder := t.TempDir()
	require.NoFileExists(t, filepath.Join(folder, "bit.png"))
	saveAs(t, d, filepath.Join(folder, "job"))
	require.FileExists(t, filepath.Join(folder, "bit.png"))
	require.True(t, d.StartPicking())
	d.StopPicking()
	other := t.TempDir()
	saveAs(t, d, filepath.Join(other, "again"))
	require.FileExists(t, filepath.Join(other, "bit.png"))
}

// A file that is there under the name is never written over.
func TestPhotographsOfOneNameAreKeptApart(t *testing.T) {
	d := cutting(t)
	require.NoError(t, d.UsePhotograph(scanned(t, "bit.png", 30)))
	folder := t.TempDir()
	stranger := []byte("somebody's own")
	require.NoError(t, os.WriteFile(filepath.Join(folder, "bit.png"), stranger, 0o600))
	saveAs(t, d, filepath.Join(folder, "job"))
	text, _ := d.Job().Text("escape", photographFile)
	require.Equal(t, "bit-2.png", text)
	kept, err := os.ReadFile(filepath.Join(folder, "bit.png"))
	require.NoError(t, err)
	require.Equal(t, stranger, kept)
	require.True(t, d.Saved())
	require.NoError(t, d.UsePhotograph(scanned(t, "bit.png", 40)))
	text, _ = d.Job().Text("escape", photographFile)
	require.Equal(t, "bit-3.png", text)
}

// A name that leaves no room for a number beside another's is refused, not tried for ever.
func TestAPhotographThatFindsNoNameIsRefused(t *testing.T) {
	d := cutting(t)
	name := strings.Repeat("x", 251) + ".png"
	require.NoError(t, d.UsePhotograph(scanned(t, name, 30)))
	require.Error(t, d.UsePhotograph(scanned(t, name, 40)))
	text, _ := d.Job().Text("escape", photographFile)
	require.Equal(t, name, text)
}

func TestPickingStopsWhereThereIsNothingLeftToPickOn(t *testing.T) {
	d := cutting(t)
	require.NoError(t, d.UsePhotograph(scanned(t, "bit.png", 30)))
	require.True(t, d.StartPicking())
	d.Pick(geometry.Point{X: 20, Y: -20})
	require.Equal(t, d.Words().Say("pick.2"), d.Prompt())
	d.Undo()
	require.Empty(t, d.Prompt())
	d.Redo()
	require.True(t, d.StartPicking())
	d.Choose("great")
	require.Empty(t, d.Prompt())
}

// A photograph that cannot be shown is told of on its field, its step and its part, once.
func TestAPhotographThatIsGoneIsAFinding(t *testing.T) {
	folder := t.TempDir()
	d := cutting(t)
	require.NoError(t, d.UsePhotograph(scanned(t, "bit.png", 30)))
	errors, trouble := d.Mark(Cutter).Errors, d.Trouble("escape")
	saveAs(t, d, filepath.Join(folder, "job"))
	require.Equal(t, errors, d.Mark(Cutter).Errors, "it lies beside the job")
	require.NoError(t, os.Remove(filepath.Join(folder, "bit.png")))
	require.NoError(t, d.Open(filepath.Join(folder, "job.tipline")))
	d.Choose("escape")
	d.Go(Cutter)
	require.Equal(t, errors+1, d.Mark(Cutter).Errors)
	require.NotEqual(t, solve.Error, trouble)
	require.Equal(t, solve.Error, d.Trouble("escape"))
	require.Contains(t, d.PhotographFields()[0].Refusal, "bit.png")
	require.True(t, d.PhotographFields()[0].Grave)
	told := 0
	for _, r := range d.Remarks() {
		if r.Field == photographFile {
			told++
			require.Equal(t, "Cutter", r.Where)
		}
	}
	require.Equal(t, 1, told)
	d.DropPhotograph()
	require.Equal(t, errors, d.Mark(Cutter).Errors)
}

// However many photographs a job has, one is kept in memory: the one shown last.
func TestOnePhotographIsKept(t *testing.T) {
	d := cutting(t)
	require.NoError(t, d.UsePhotograph(scanned(t, "one.png", 30)))
	require.NoError(t, d.UsePhotograph(scanned(t, "two.png", 40)))
	for _, row := range []struct {
		file string
		wide int
	}{{"one.png", 30}, {"two.png", 40}, {"one.png", 30}} {
		i, err := d.photo(row.file)
		require.NoError(t, err)
		require.Equal(t, row.wide, i.Bounds().Dx())
		require.Same(t, i, d.photos.image)
	}
	_, err := d.photo("none.png")
	require.Error(t, err)
	require.ErrorIs(t, d.seen("none.png"), err)
	require.NoError(t, d.seen("two.png"))
}
