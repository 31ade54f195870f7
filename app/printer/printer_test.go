package printer

import (
	"errors"
	"io/fs"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render/sheet"
)

var laser = sheet.Profile{Name: "Workshop laser", Paper: "a4", X: 0.9971, Y: 1.0042}

func folder(t *testing.T) Folder { return Folder{filepath.Join(t.TempDir(), "config", "printers")} }

// files returns what stands in the folder, name by name.
func (f Folder) files(t *testing.T) map[string]string {
	found := map[string]string{}
	entries, err := os.ReadDir(f.Path)
	require.NoError(t, err)
	for _, e := range entries {
		data, err := os.ReadFile(filepath.Join(f.Path, e.Name()))
		require.NoError(t, err)
		found[e.Name()] = string(data)
	}
	return found
}

func TestWhatIsSavedIsLoaded(t *testing.T) {
	f := folder(t)
	list, err := f.List()
	require.NoError(t, err)
	require.Empty(t, list, "a folder that is not there holds none")
	other := laser
	other.Paper, other.X = "letter", 1.01
	for _, p := range []sheet.Profile{other, laser} {
		require.NoError(t, f.Save(p))
	}
	for _, name := range []string{"Workshop laser", "WORKSHOP LASER", "  workshop   laser "} {
		p, err := f.Load(name, "A4")
		require.NoError(t, err)
		require.Equal(t, laser, p)
	}
	again := laser
	again.X = 1.0123456789012345
	require.NoError(t, f.Save(again))
	list, err = f.List()
	require.NoError(t, err)
	require.Equal(t, []sheet.Profile{again, other}, list)
	require.Len(t, f.files(t), 2)
}

// Names that differ are kept apart, whatever letters they are of, in files whose
// names hold none but plain ones.
func TestNamesAreKeptApart(t *testing.T) {
	f := folder(t)
	names := []string{"HP 1/2", "HP 1-2", "HP 1 2", "../../etc/passwd", "Büro", "Bro", "激光", "CON", "a", strings.Repeat("W", longestName), ".hidden", `C:\lpt1`}
	for i, name := range names {
		require.NoError(t, f.Save(sheet.Profile{Name: name, Paper: "210x297.5mm", X: 1 + float64(i)/1000, Y: 1}))
	}
	for i, name := range names {
		p, err := f.Load(name, "210x297.5mm")
		require.NoError(t, err)
		require.Equal(t, name, p.Name)
		require.InDelta(t, 1+float64(i)/1000, p.X, 1e-12)
	}
	found := f.files(t)
	require.Len(t, found, len(names))
	for name := range found {
		require.Regexp(t, `^[a-z0-9-]+\.json$`, name)
		require.LessOrEqual(t, len(name), 120)
	}
	siblings, err := os.ReadDir(filepath.Dir(f.Path))
	require.NoError(t, err)
	require.Len(t, siblings, 1, "nothing outside the folder")
}

func TestNamesThatAreNone(t *testing.T) {
	f := folder(t)
	for _, name := range []string{"", "  ", "two\x00", "bell\a", "\xff\xfe", strings.Repeat("W", longestName+1)} {
		_, err := f.Load(name, "a4")
		require.Equal(t, "printer.nameless", refused(t, err).Code)
		require.Equal(t, "printer.nameless", refused(t, f.Save(sheet.Profile{Name: name, Paper: "a4", X: 1, Y: 1})).Code)
	}
	_, err := os.Stat(f.Path)
	require.ErrorIs(t, err, fs.ErrNotExist)
}

// refused returns the refusal, which the catalogue can say in one line.
func refused(t *testing.T, err error) *Refusal {
	t.Helper()
	var r *Refusal
	require.ErrorAs(t, err, &r)
	require.True(t, words.English().Has(r.Code), r.Code)
	said := r.Say(words.English().Say)
	require.NotContains(t, said, "{")
	require.NotContains(t, said, "\n")
	require.NotEmpty(t, r.Error())
	return r
}

func TestAPrinterThatIsNotKnown(t *testing.T) {
	f := folder(t)
	_, err := f.Load("Laser", "a4")
	require.Equal(t, "There is no profile of a printer Laser for a4 paper.", refused(t, err).Say(words.English().Say))
	require.NoError(t, f.Save(laser))
	_, err = f.Load(laser.Name, "a3")
	require.Equal(t, "printer.unknown", refused(t, err).Code)
}

func TestImpossibleProfilesAreNotKept(t *testing.T) {
	f := folder(t)
	for _, p := range []sheet.Profile{
		{Name: "L", Paper: "a4", X: 0.9, Y: 1},
		{Name: "L", Paper: "a4", X: 1, Y: math.NaN()},
		{Name: "L", Paper: "a4"},
		{Name: "L", Paper: "a4", X: -1, Y: -1},
	} {
		var limit *geometry.Limit
		require.ErrorAs(t, f.Save(p), &limit)
	}
	_, err := os.Stat(f.Path)
	require.ErrorIs(t, err, fs.ErrNotExist)
}

// A file that is no profile is told, left as it is by reading, and kept beside the
// new one by saving; the others are not the worse for it.
func TestADamagedFile(t *testing.T) {
	for name, damaged := range map[string]string{
		"empty": "", "cut off": `{"printer": "Workshop la`, "of other things": `[1, 2]`, "no fields": `{}`,
		"impossible": `{"printer": "Workshop laser", "paper": "a4", "x": 0.2, "y": 1}`,
		"another's":  `{"printer": "Office laser", "paper": "a4", "x": 1, "y": 1}`,
		"binary":     "\x00\x01\xff",
	} {
		t.Run(name, func(t *testing.T) {
			f, other := folder(t), laser
			other.Name = "Zebra"
			require.NoError(t, f.Save(other))
			key, err := keyOf(laser.Name, laser.Paper)
			require.NoError(t, err)
			file := filepath.Join(f.Path, key)
			require.NoError(t, os.WriteFile(file, []byte(damaged), 0o600))
			was := f.files(t)

			_, err = f.Load(laser.Name, laser.Paper)
			r := refused(t, err)
			require.Equal(t, "printer.damaged", r.Code)
			require.Contains(t, r.Say(words.English().Say), file)
			list, err := f.List()
			require.Equal(t, []sheet.Profile{other}, list)
			require.Equal(t, "printer.damaged", refused(t, err).Code)
			require.Equal(t, was, f.files(t), "reading changes nothing")

			require.NoError(t, f.Save(laser))
			p, err := f.Load(laser.Name, laser.Paper)
			require.NoError(t, err)
			require.Equal(t, laser, p)
			require.Equal(t, damaged, f.files(t)[key+".damaged"])
			require.Len(t, f.files(t), 3)
			require.NoError(t, os.WriteFile(file, []byte("once more"), 0o600))
			require.NoError(t, f.Save(laser))
			require.Equal(t, damaged, f.files(t)[key+".damaged"])
			require.Equal(t, "once more", f.files(t)[key+".damaged-2"])
		})
	}
}

// Where the folder cannot be made or written to, one sentence says so and what was
// there stays.
func TestAFolderThatCannotBeWritten(t *testing.T) {
	inTheWay := filepath.Join(t.TempDir(), "file")
	require.NoError(t, os.WriteFile(inTheWay, []byte("mine"), 0o600))
	f := Folder{filepath.Join(inTheWay, "printers")}
	r := refused(t, f.Save(laser))
	require.Equal(t, "printer.unwritable", r.Code)
	require.Contains(t, r.Say(words.English().Say), "not a directory")
	data, err := os.ReadFile(inTheWay)
	require.NoError(t, err)
	require.Equal(t, "mine", string(data))

	f = folder(t)
	key, err := keyOf(laser.Name, laser.Paper)
	require.NoError(t, err)
	require.NoError(t, os.MkdirAll(filepath.Join(f.Path, key), 0o700))
	require.Equal(t, "printer.unwritable", refused(t, f.Save(laser)).Code)
	_, err = f.Load(laser.Name, laser.Paper)
	require.Equal(t, "printer.damaged", refused(t, err).Code)
}

func TestARefusalKeepsItsReason(t *testing.T) {
	reason := errors.New("because")
	require.ErrorIs(t, &Refusal{Code: "printer.unwritable", Reason: reason}, reason)
}
