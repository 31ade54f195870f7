//go:build outside

package render_test

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// What other programs make of the PDF, whatever this one believes.

func TestPDFIsSound(t *testing.T) {
	said := run(t, "qpdf", "--check", proofPDF(t))
	require.Contains(t, said, "No syntax or stream encoding errors found")
}

func TestTextIsText(t *testing.T) {
	said := run(t, "pdftotext", "-layout", proofPDF(t), "-")
	require.Contains(t, said, "Zähne 5°30′ Ø 8")
	require.Contains(t, said, "Third wheel")
}

// Both faces are embedded, as subsets, with their letters' names.
func TestFontsAreEmbedded(t *testing.T) {
	rows := strings.Split(strings.TrimSpace(run(t, "pdffonts", proofPDF(t))), "\n")
	require.Len(t, rows, 4)
	for i, name := range []string{"+OpenSans-Regular", "+OpenSans-SemiBold"} {
		require.Contains(t, rows[2+i], name)
		require.Regexp(t, `CID TrueType +Identity-H +yes yes yes`, rows[2+i])
	}
}

func TestPageIsThePaper(t *testing.T) {
	said := run(t, "pdfinfo", "-box", proofPDF(t))
	require.Regexp(t, `Title: +Proof`, said)
	require.Regexp(t, `Page size: +351.496 x 351.496 pts`, said) // 124·72/25.4
	require.NotContains(t, said, "Date")
}

func TestViewerIsAskedNotToScale(t *testing.T) {
	said := run(t, "qpdf", "--json", "--json-key=qpdf", proofPDF(t))
	require.Contains(t, said, `"/PrintScaling": "/None"`)
	require.Contains(t, said, `"/Lang": "u:en"`)
	for _, layer := range []string{"sheet", "teeth", "text"} {
		require.Contains(t, said, `"/Name": "u:`+layer+`"`)
	}
}
