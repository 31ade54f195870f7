package keep

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestAFileIsHeldByOneUntilItIsLetGo(t *testing.T) {
	name := filepath.Join(t.TempDir(), "lock")
	first, err := Take(name)
	require.NoError(t, err)
	_, err = Take(name)
	require.ErrorIs(t, err, ErrHeld)
	require.NoError(t, first.LetGo())
	second, err := Take(name)
	require.NoError(t, err)
	require.NoError(t, second.LetGo())
	require.FileExists(t, name)
}

func TestNothingIsHeldInAMissingFolder(t *testing.T) {
	_, err := Take(filepath.Join(t.TempDir(), "none", "lock"))
	require.ErrorIs(t, err, os.ErrNotExist)
}
