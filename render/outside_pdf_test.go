//go:build outside

package render_test

import (
	"bytes"
	"encoding/json"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/render"
	"tipline/render/pdf"
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

// The list of bookmarks is as deep as it was given, closed below its first level, and
// leads to the pages it names; a page that is not there is not listed.
func TestBookmarksLeadToTheirPages(t *testing.T) {
	page := render.Page{Width: side, Height: side, Drawing: proof(t)}
	var b bytes.Buffer
	require.NoError(t, pdf.Write(&b, render.Document{Title: "Proof", Pages: []render.Page{page, page, page}, Bookmarks: []render.Bookmark{
		{Title: "Gangräder", Page: 1, Under: []render.Bookmark{{Title: "Zähne (1)", Page: 2}, {Title: "nowhere", Page: 4}, {Title: "Kreuz", Page: 3}}},
		{Title: "nowhere", Page: 0},
		{Title: "Cautions", Page: 3},
	}}))
	file := kept(t, "marked.pdf", b.Bytes())
	require.Contains(t, run(t, "qpdf", "--check", file), "No syntax or stream encoding errors found")
	type mark struct {
		Title string
		Page  int `json:"destpageposfrom1"`
		Open  bool
		Kids  []mark
	}
	var said struct{ Outlines []mark }
	require.NoError(t, json.Unmarshal([]byte(run(t, "qpdf", "--json", "--json-key=outlines", file)), &said))
	require.Equal(t, []mark{
		{"Gangräder", 1, false, []mark{{"Zähne (1)", 2, true, []mark{}}, {"Kreuz", 3, true, []mark{}}}},
		{"Cautions", 3, true, []mark{}},
	}, said.Outlines)
}
