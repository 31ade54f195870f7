package keep

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func saying(text string) func(io.Writer) error {
	return func(w io.Writer) error { _, err := io.WriteString(w, text); return err }
}

func folderWith(t *testing.T, name, text string, mode os.FileMode) string {
	path := filepath.Join(t.TempDir(), name)
	require.NoError(t, os.WriteFile(path, []byte(text), 0o600))
	require.NoError(t, os.Chmod(path, mode))
	return path
}

func requireOnly(t *testing.T, path, text string) {
	data, err := os.ReadFile(path)
	require.NoError(t, err)
	require.Equal(t, text, string(data))
	entries, err := os.ReadDir(filepath.Dir(path))
	require.NoError(t, err)
	require.Len(t, entries, 1, "something was left beside the file")
}

func TestANewFileAndOneWrittenOver(t *testing.T) {
	path := filepath.Join(t.TempDir(), "job.tipline")
	require.NoError(t, Write(path, saying("first")))
	requireOnly(t, path, "first")
	require.NoError(t, Write(path, saying("second")))
	requireOnly(t, path, "second")
}

func TestPermissionsAreKept(t *testing.T) {
	path := folderWith(t, "job.tipline", "old", 0o640)
	require.NoError(t, Write(path, saying("new")))
	info, err := os.Stat(path)
	require.NoError(t, err)
	require.Equal(t, os.FileMode(0o640), info.Mode().Perm())
}

func TestAFailureLeavesTheOldFile(t *testing.T) {
	path := folderWith(t, "job.tipline", "old", 0o644)
	full := errors.New("disk full")
	err := Write(path, func(w io.Writer) error {
		_, err := io.WriteString(w, strings.Repeat("half of it ", 1<<16))
		require.NoError(t, err)
		return full
	})
	require.ErrorIs(t, err, full)
	requireOnly(t, path, "old")
}

func TestAFailureLeavesNoFileWhereNoneWas(t *testing.T) {
	folder := t.TempDir()
	require.Error(t, Write(filepath.Join(folder, "new"), func(io.Writer) error { return io.ErrShortWrite }))
	entries, err := os.ReadDir(folder)
	require.NoError(t, err)
	require.Empty(t, entries)
}

func TestAReadOnlyFileIsNotWrittenOver(t *testing.T) {
	path := folderWith(t, "job.tipline", "old", 0o444)
	require.ErrorIs(t, Write(path, saying("new")), ErrProtected)
	requireOnly(t, path, "old")
}

func TestAFolderIsNotWrittenOver(t *testing.T) {
	require.ErrorIs(t, Write(t.TempDir(), saying("new")), ErrFolder)
}

func TestAMissingFolder(t *testing.T) {
	require.ErrorIs(t, Write(filepath.Join(t.TempDir(), "none", "file"), saying("new")), os.ErrNotExist)
}

func TestALinkStillPointsAtItsFile(t *testing.T) {
	path := folderWith(t, "job.tipline", "old", 0o644)
	link := filepath.Join(t.TempDir(), "link")
	require.NoError(t, os.Symlink(path, link))
	require.NoError(t, Write(link, saying("new")))
	requireOnly(t, path, "new")
	at, err := os.Readlink(link)
	require.NoError(t, err)
	require.Equal(t, path, at)
}

func TestALongNameStillFits(t *testing.T) {
	path := filepath.Join(t.TempDir(), strings.Repeat("n", 255))
	require.NoError(t, Write(path, saying("new")))
	requireOnly(t, path, "new")
}
