//go:build unix

package desk

import (
	"os"
	"path/filepath"
	"syscall"
	"testing"

	"github.com/stretchr/testify/require"
)

// What is read but once is not read beforehand to know it by.
func TestAJobFromAPipe(t *testing.T) {
	d, _ := opened(t)
	pipe := filepath.Join(t.TempDir(), "pipe.tipline")
	require.NoError(t, syscall.Mkfifo(pipe, 0o600))
	go func() { _ = os.WriteFile(pipe, []byte(`{"tipline": 1, "title": "Piped"}`), 0o600) }()
	require.NoError(t, d.Open(pipe))
	require.Equal(t, "Piped", d.Title())
	require.Equal(t, Kept, d.Look())
}
