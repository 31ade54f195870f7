//go:build outside

package render_test

import (
	"bytes"
	"context"
	"regexp"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/template"
)

// Every kind of sheet, as other programs read it: sound, all its readable text
// found, and of the sizes of paper it was laid on.
func TestEveryKindOfSheetIsSound(t *testing.T) {
	style := template.Style{Words: words.English()}
	paper, err := sheet.ParsePaper("a4")
	require.NoError(t, err)
	block := sheet.TitleBlock{Job: "Proof", Part: "Third wheel", Kind: "Crossing template"}
	small, large := proof(t), proof(t).Placed(point(0, 0), 5, 0)
	small.Description, large.Title = "glue on", "Proof five times"
	sheets := []sheet.Sheet{{Drawing: small, Block: block}, {Drawing: large, Block: block}}
	for _, row := range []struct {
		name   string
		sheets []sheet.Sheet
		how    sheet.Options
		says   []string
	}{
		{"test sheet", []sheet.Sheet{sheet.TestSheet(paper, style)}, sheet.Options{}, []string{"Printer test sheet", "100 mm bar, across", "Ø 80 mm"}},
		{"tiled", sheets[1:], sheet.Options{}, []string{"Tile A1 of", "Proof five times", "A2"}},
		{"together", []sheet.Sheet{{Drawing: half(small), Block: block}, {Drawing: half(small), Block: block}}, sheet.Options{Together: true}, []string{"Templates together", "Third wheel"}},
		{"mirrored", sheets[:1], sheet.Options{Look: sheet.Look{Mirrored: true}}, []string{"Mirrored: transferred to the metal"}},
		{"thin and black", sheets, sheet.Options{Look: sheet.Look{Thin: true, BlackOnly: true, OutlinesOnly: true}}, []string{"1:1", "5:1"}},
		{"corrected", sheets, sheet.Options{Profile: sheet.Profile{Name: "Laser", Paper: "a4", X: 0.99, Y: 1.01}}, []string{"Shaped for Laser"}},
	} {
		t.Run(row.name, func(t *testing.T) {
			plan, err := sheet.Plan(context.Background(), row.sheets, paper, style, row.how)
			require.NoError(t, err)
			var b bytes.Buffer
			require.NoError(t, pdf.WriteEach(&b, render.Document{Title: row.name}, plan.Pages(context.Background())))
			file := kept(t, "kind.pdf", b.Bytes())
			require.Contains(t, run(t, "qpdf", "--check", file), "No syntax or stream encoding errors found")
			said := strings.Join(strings.Fields(run(t, "pdftotext", "-layout", file, "-")), " ")
			for _, want := range append(row.says, "Corner cross to corner cross") {
				require.Contains(t, said, want)
			}
			require.Len(t, pageSize.FindAllString(run(t, "pdfinfo", "-l", "999", file), -1), plan.Len())
		})
	}
}

// pageSize is what pdfinfo says of a sheet of A4, either way round.
var pageSize = regexp.MustCompile(`Page +\d+ size: +(595\.276 x 841\.89|841\.89 x 595\.276) pts`)

// half returns a drawing at half its size.
func half(d *render.Drawing) *render.Drawing { return d.Placed(point(0, 0), 0.5, 0) }
