package fonts

import (
	"testing"

	"github.com/stretchr/testify/require"
	"golang.org/x/image/font/sfnt"
)

func TestTypefaceIsWhatItsNameSays(t *testing.T) {
	for _, row := range []struct {
		face string
		data []byte
	}{
		{"Open Sans", Regular()},
		{"Open Sans Semibold", Semibold()},
	} {
		t.Run(row.face, func(t *testing.T) {
			font, err := sfnt.Parse(row.data)
			require.NoError(t, err)
			name, err := font.Name(nil, sfnt.NameIDFull)
			require.NoError(t, err)
			require.Equal(t, row.face, name)
		})
	}
}

// The pages need the degree, the diameter, the fractions and the minus.
func TestTypefaceHasTheTradesSigns(t *testing.T) {
	for _, data := range [][]byte{Regular(), Semibold()} {
		font, err := sfnt.Parse(data)
		require.NoError(t, err)
		for _, sign := range "0123456789°Ø×µ½¼¾±−–—’“”·/'\"üéßñ" {
			glyph, err := font.GlyphIndex(nil, sign)
			require.NoError(t, err)
			require.NotZero(t, glyph, "%c", sign)
		}
	}
}
