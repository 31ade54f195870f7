package sheet

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

func TestParsePaper(t *testing.T) {
	for _, row := range []struct {
		text          string
		width, height float64
		source        string
	}{
		{"a4", 210, 297, "ISO 216 table, papersizes.org/a-paper-sizes"},
		{"A4", 210, 297, "ISO 216 table, papersizes.org/a-paper-sizes"},
		{" a3 ", 297, 420, "ISO 216 table, papersizes.org/a-paper-sizes"},
		{"letter", 215.9, 279.4, "ASME Y14.1, from memory: 8.5 x 11 in"},
		{"Legal", 215.9, 355.6, "ASME Y14.1, from memory: 8.5 x 14 in"},
		{"tabloid", 279.4, 431.8, "ASME Y14.1, from memory: 11 x 17 in"},
		{"200x280mm", 200, 280, "as typed"},
		{"148.5x210mm", 148.5, 210, "as typed"},
		{"297X210MM", 297, 210, "as typed, lying"},
		{"200mm x 280mm", 200, 280, "as typed, its unit twice"},
		{"10inx12in", 254, 304.8, "as typed, 25.4 mm to the inch"},
		{"8,5 × 13 in", 215.9, 330.2, "as typed, 25.4 mm to the inch"},
	} {
		t.Run(row.text, func(t *testing.T) {
			p, err := ParsePaper(row.text)
			require.NoError(t, err, row.source)
			require.InDelta(t, row.width, p.Width, 1e-9, row.source)
			require.InDelta(t, row.height, p.Height, 1e-9, row.source)
		})
	}
}

func TestParsePaperRefuses(t *testing.T) {
	for _, row := range []struct{ text, code string }{
		{"", "paper.unknown"},
		{"a5x", "paper.unknown"},
		{"b4", "paper.unknown"},
		{"200x280", "paper.unknown"},
		{"-200x280mm", "paper.unknown"},
		{"NaNx280mm", "paper.unknown"},
		{"1e3x280mm", "paper.unknown"},
		{"10inx280mm", "paper.unknown"},
		{"10x12ft", "paper.unknown"},
		{"10x12", "paper.unknown"},
		{"5x7in", "paper.size"},
		{"100x280mm", "paper.size"},
		{"150x150mm", "paper.size"},
		{"200x2001mm", "paper.size"},
		{"0x0mm", "paper.size"},
	} {
		t.Run(row.text, func(t *testing.T) {
			_, err := ParsePaper(row.text)
			var refusal *Refusal
			require.ErrorAs(t, err, &refusal)
			require.Equal(t, Refusal{row.text, row.code}, *refusal)
			require.Contains(t, err.Error(), row.text)
			require.True(t, words.English().Has(row.code))
		})
	}
}

// However its size is written, a paper has one name, which printers' profiles go by.
func TestASizeHasOneName(t *testing.T) {
	for _, text := range []string{"10inx12in", "10x12in", "10 IN × 12 IN", " 10 x 12 in "} {
		p, err := ParsePaper(text)
		require.NoError(t, err, text)
		require.Equal(t, "10x12in", p.Name, text)
	}
}
