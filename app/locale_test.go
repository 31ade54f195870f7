package main

import (
	"bytes"
	"os"
	"os/exec"
	"testing"

	"github.com/stretchr/testify/require"
)

// A command says one sentence on stderr or nothing, so starting must say nothing,
// whatever the locale. The test starts itself to list no tests.
func TestStartingSaysNothing(t *testing.T) {
	for _, locale := range []string{"C.UTF-8", "C.utf8", "C", "POSIX", "en_GB.UTF-8", ""} {
		for _, name := range []string{"LANG", "LC_ALL", "LC_MESSAGES"} {
			var said bytes.Buffer
			again := exec.Command(os.Args[0], "-test.list=^$")
			again.Env = []string{name + "=" + locale, "HOME=" + t.TempDir()}
			again.Stderr = &said
			require.NoError(t, again.Run())
			require.Empty(t, said.String(), "%s=%s", name, locale)
		}
	}
}
