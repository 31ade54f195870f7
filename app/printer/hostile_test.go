package printer

import (
	"errors"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/render/sheet"
)

// A file of a gigabyte in a profile's place is told, costs next to no memory and is
// not lost by saving.
func TestAProfileOfAGigabyte(t *testing.T) {
	f := folder(t)
	require.NoError(t, os.MkdirAll(f.Path, 0o700))
	key, err := keyOf(laser.Name, laser.Paper)
	require.NoError(t, err)
	name := filepath.Join(f.Path, key)
	file, err := os.Create(name)
	require.NoError(t, err)
	require.NoError(t, errors.Join(file.Truncate(1<<30), file.Close()))

	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	_, loading := f.Load(laser.Name, laser.Paper)
	list, listing := f.List()
	saving := f.Save(laser)
	runtime.ReadMemStats(&after)

	require.Empty(t, list)
	require.Less(t, after.TotalAlloc-before.TotalAlloc, uint64(4<<20))
	for _, err := range []error{loading, listing, saving} {
		require.ErrorContains(t, refused(t, err), "too large")
	}
	info, err := os.Stat(name)
	require.NoError(t, err)
	require.EqualValues(t, 1<<30, info.Size())
}

// Whatever stands in a profile's file is a possible profile of the printer and paper
// that the file is named for, or an error of one line.
func FuzzProfile(f *testing.F) {
	key, err := keyOf(laser.Name, laser.Paper)
	require.NoError(f, err)
	for _, data := range []string{
		`{"printer": "Workshop laser", "paper": "a4", "x": 0.9971, "y": 1.0042}`,
		`{"printer": "WORKSHOP  laser", "paper": " A4", "x": 1, "y": 1}`,
		`{"printer": "Workshop laser", "paper": "a4", "x": 0.2, "y": 1}`,
		`{"printer": "Workshop laser", "paper": "a4", "x": 1e400, "y": -1}`,
		`{"printer": "Other", "paper": "a4", "x": 1, "y": 1}`, `{}`, `[1, 2]`, "", "\x00\xff", "{\"printer\": \"\xff\"}",
		strings.Repeat("[", 20_000),
	} {
		f.Add([]byte(data))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		p, err := profileIn(data, key)
		if err != nil {
			require.NotContains(t, refused(t, &Refusal{Code: "printer.damaged", File: key, Reason: err}).Error(), "\n")
			require.Equal(t, sheet.Profile{}, p)
			return
		}
		require.NoError(t, p.Check())
		again, err := keyOf(p.Name, p.Paper)
		require.NoError(t, err)
		require.Equal(t, key, again)
		require.InDelta(t, 1, p.X, sheet.MostError+1e-6)
		require.InDelta(t, 1, p.Y, sheet.MostError+1e-6)
	})
}

// Any names of printer and paper make the name of a plain file inside the folder, or
// are refused.
func FuzzNames(f *testing.F) {
	for _, name := range []string{"Workshop laser", "../../etc/passwd", `C:\lpt1`, ".hidden", "Büro", "激光", "CON", "a\x00b", "\xff", ""} {
		f.Add(name, "a4")
		f.Add("laser", name)
	}
	f.Add("laser", strings.Repeat("wide", 1000))
	f.Fuzz(func(t *testing.T, name, paper string) {
		key, err := keyOf(name, paper)
		if err != nil {
			require.Equal(t, "printer.nameless", refused(t, err).Code)
			return
		}
		require.Regexp(t, `^[a-z0-9-]+\.json$`, key)
		require.LessOrEqual(t, len(key), 255)
		loud, err := keyOf("  "+strings.ToUpper(name)+" ", paper)
		if err == nil && strings.EqualFold(strings.ToUpper(name), name) {
			require.Equal(t, key, loud, "capitals and spacing do not matter")
		}
	})
}
