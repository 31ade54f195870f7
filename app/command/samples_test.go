package command

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/samples"
)

// Every sample job is complete enough to print: nothing stands in the way of it, and
// none but the one that shows what findings are has anything to warn of.
func TestEverySampleJobPrints(t *testing.T) {
	list, err := samples.List()
	require.NoError(t, err)
	require.GreaterOrEqual(t, len(list), 4)
	for _, s := range list {
		t.Run(s.Name, func(t *testing.T) {
			data, err := samples.Read(s.Name)
			require.NoError(t, err)
			job := jobFile(t, string(data))
			findings := run("findings", job)
			require.Equal(t, Done, findings.code, findings.out)
			if s.Name != samples.First {
				require.NotContains(t, findings.out, "Caution")
			}
			out := filepath.Join(t.TempDir(), "packet.pdf")
			require.Equal(t, Done, run("packet", job, "-out", out).code)
			pdf, err := os.ReadFile(out)
			require.NoError(t, err)
			require.True(t, strings.HasPrefix(string(pdf), "%PDF-"))
		})
	}
}
