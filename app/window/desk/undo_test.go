package desk

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// fileOf returns the present job as it would be saved.
func fileOf(t *testing.T, d *Desk) string {
	var b strings.Builder
	require.NoError(t, d.Job().Write(&b))
	return b.String()
}
