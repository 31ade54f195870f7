package job

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/samples"
)

func TestSampleWritesBackAsItStands(t *testing.T) {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	j, err := Read(strings.NewReader(string(data)))
	require.NoError(t, err)
	var b strings.Builder
	require.NoError(t, j.Write(&b))
	again, err := Read(strings.NewReader(b.String()))
	require.NoError(t, err)
	require.Equal(t, j, again)
	var twice strings.Builder
	require.NoError(t, again.Write(&twice))
	require.Equal(t, b.String(), twice.String())
}
