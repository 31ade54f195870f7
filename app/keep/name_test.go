package keep

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestTitlesAreNamesOnEveryDisk(t *testing.T) {
	for _, row := range []struct{ title, want string }{
		{"Hilltop regulator", "Hilltop regulator"},
		{`A / B: "tower"`, "A - B- -tower-"},
		{"../../etc", "-..-etc"},
		{" Räderuhr\n2. ", "Räderuhr-2"},
		{"...", ""},
		{"", ""},
		{"\xff", "-"},
		{strings.Repeat("é", 300), strings.Repeat("é", 100)},
		{"x" + strings.Repeat("é", 300), "x" + strings.Repeat("é", 99)},
	} {
		require.Equal(t, row.want, Name(row.title), row.title)
	}
}
