package command

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

// failing is what comes in or is told of the work where the program itself fails.
type failing struct{}

func (failing) Read([]byte) (int, error)  { panic("no bottom\nto the cup") }
func (failing) Write([]byte) (int, error) { panic("no bottom\nto the cup") }

// A fault of the program itself, while it reads, draws or prints, ends a command in one
// sentence that says what to do; the file that was there is whole.
func TestAFaultOfTheProgramItself(t *testing.T) {
	job := sampleJob(t)
	for name, row := range map[string]struct {
		call call
		args []string
	}{
		"reading":           {call{in: failing{}}, []string{"figures", "-"}},
		"reading, to write": {call{in: failing{}}, []string{"packet", "-", "-out"}},
		"drawing":           {call{terminal: failing{}}, []string{"packet", job, "-out"}},
		"drawing, a zip":    {call{terminal: failing{}}, []string{"packet", job, "-as", "zip", "-out"}},
	} {
		t.Run(name, func(t *testing.T) {
			out := filepath.Join(t.TempDir(), "out")
			require.NoError(t, os.WriteFile(out, []byte("old"), 0o644))
			if row.args[len(row.args)-1] == "-out" {
				row.args = append(row.args, out)
			}
			for _, language := range words.Languages() {
				w, err := words.Load(language)
				require.NoError(t, err)
				var said, printed bytes.Buffer
				row.call.words = w
				require.Equal(t, Nothing, row.call.run(row.args, &printed, &said))
				reason := "no bottom to the cup (command/fault_test.go:"
				require.Contains(t, said.String(), reason)
				begin, end, _ := strings.Cut(w.Say("command.fault", "reason", "|"), "|")
				require.True(t, strings.HasPrefix(said.String(), "tipline: "+begin+reason), said.String())
				require.True(t, strings.HasSuffix(said.String(), ")"+end+"\n"), said.String())
				require.Equal(t, 1, strings.Count(said.String(), "\n"))
				require.Empty(t, printed.String())
				untouched(t, out)
			}
		})
	}
}
