package sheet

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/render/template"
)

// Nothing that is written beside a drawing is cut short on small paper, however long the
// names of its figures.
func TestNothingIsCutShortOnSmallPaper(t *testing.T) {
	paper, err := ParsePaper("140x200mm")
	require.NoError(t, err)
	for _, language := range []string{"en", "de", "fr"} {
		w, err := words.Load(language)
		require.NoError(t, err)
		s := style
		s.Words = w
		full := TitleBlock{Job: "Uhr", Part: "Rad", Kind: w.Say("template.kind.drilling"), Date: "2026-11-25", Number: "SC-1"}
		for _, key := range []string{"template.figure.infeed", "template.figure.land", "template.figure.root", "template.figure.laid", "template.figure.fitted", "template.figure.tilt", "template.figure.stock", "template.figure.wheel-edge"} {
			full.Notes.Figures = append(full.Notes.Figures, template.Figure{Label: w.Say(key), Value: "1.2 mm"})
		}
		for n := range full.Notes.Figures {
			few := full
			few.Notes.Figures = full.Notes.Figures[:n]
			for _, size := range []float64{60, 100} {
				pages, err := Place(plate(size, 50, 1), paper, few, s)
				require.NoError(t, err)
				for _, text := range said(pages[0]) {
					require.False(t, strings.HasSuffix(text, "…"), "%s: %q", language, text)
				}
			}
		}
	}
}

// However little stands beside a drawing, what is said for the eyes does.
func TestSmallPaperKeepsTheFirstCaution(t *testing.T) {
	paper, err := ParsePaper("140x200mm")
	require.NoError(t, err)
	block := TitleBlock{Notes: template.Notes{Caution: "Eye protection. Support the work. " + strings.Repeat("Think of the blade. ", 40)}}
	pages, err := Place(plate(100, 110, 1), paper, block, style)
	require.NoError(t, err)
	require.Len(t, pages, 1)
	all := strings.Join(said(pages[0]), " ")
	require.Contains(t, all, "Eye protection. "+style.Words.Say("sheet.caution")[:20])
	require.NotContains(t, all, "Think of the blade")
}
