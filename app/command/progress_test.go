package command

import (
	"bytes"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

// A long packet tells a terminal how far it is and leaves its line clear; a short one, and
// whatever is no terminal, hears nothing.
func TestProgress(t *testing.T) {
	job, out := sampleJob(t), filepath.Join(t.TempDir(), "out.pdf")
	told := func(more ...string) string {
		var heard, said bytes.Buffer
		c := &call{words: words.English(), in: strings.NewReader(""), terminal: &heard}
		require.Equal(t, Done, c.run(append([]string{"packet", job, "-out", out}, more...), io.Discard, &said))
		require.Empty(t, said.String())
		return heard.String()
	}
	lines := strings.Split(told(), "\r")
	require.Empty(t, lines[0])
	require.Regexp(t, `^Sheet 1 of \d\d$`, lines[1])
	for i, line := range lines[1 : len(lines)-2] {
		require.Regexp(t, `^Sheet `, line, i)
	}
	require.Empty(t, strings.TrimSpace(lines[len(lines)-2]))
	require.Empty(t, lines[len(lines)-1])
	require.Empty(t, told("-kinds", "cover"))

	file, err := os.Create(filepath.Join(t.TempDir(), "stderr"))
	require.NoError(t, err)
	require.Nil(t, terminal(file))
	require.Nil(t, terminal(io.Discard))
	require.NoError(t, file.Close())
}
