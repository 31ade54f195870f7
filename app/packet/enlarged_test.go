package packet_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/packet"
	"tipline/render"
	"tipline/render/sheet"
)

// On paper however small, a grinding template is enlarged so far that what is ground to is
// written on it; where it fits on no one sheet so, it is tiled.
func TestGrindingTemplatesKeepTheirLettering(t *testing.T) {
	j := sample(t)
	for _, size := range []string{"148x210mm", "140x200mm"} {
		o := options(t, j)
		paper, err := sheet.ParsePaper(size)
		require.NoError(t, err)
		o.Paper, o.Kinds = paper, []packet.Kind{packet.Grinding, packet.Clearance}
		lettered := map[string]bool{}
		for _, p := range build(t, j, o).Pages {
			lettered[p.Drawing.Title] = lettered[p.Drawing.Title] || noted(p.Drawing)
			require.GreaterOrEqual(t, p.Drawing.Scale, 5.0, "%s: %s", size, p.Drawing.Title)
		}
		for title, is := range lettered {
			require.True(t, is, "%s: %s", size, title)
		}
		require.Len(t, lettered, 24)
	}
}

// noted reports whether a drawing says how wide the stock is.
func noted(d *render.Drawing) bool {
	for _, it := range d.Items {
		if it.Text != nil && strings.HasPrefix(it.Text.String, "stock ") {
			return true
		}
	}
	return false
}
