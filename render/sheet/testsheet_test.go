package sheet

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

// The test sheet takes one sheet of every paper, without changing its size, and
// holds a circle that is the size it says wherever there is room for one.
func TestTheTestSheetFitsEveryPaper(t *testing.T) {
	for _, paper := range papers(t) {
		sh := TestSheet(paper, style)
		worst := Options{Profile: Profile{"Printer of a man whose name is long, in the shed", paper.Name, 0.97, 0.97}}
		shaped, err := LayContext(t.Context(), []Sheet{sh}, paper, style, worst)
		require.NoError(t, err)
		require.Len(t, shaped, 1, paper.Name)
		pages, err := Lay([]Sheet{sh}, paper, style)
		require.NoError(t, err)
		require.Len(t, pages, 1, paper.Name)
		require.Equal(t, paper.Width, pages[0].Width, "%s lies as it is named", paper.Name)
		require.Contains(t, said(pages[0]), "100 mm bar, across")
		require.Contains(t, said(pages[0]), "corner crosses, rising")
		for _, it := range pages[0].Drawing.Items {
			if it.Quantity == "sheet.test" {
				d := it.Outlines[0].Bounds().Width()
				require.GreaterOrEqual(t, d, testLeast)
				require.Contains(t, said(pages[0]), "Ø "+whole(d)+" mm")
				require.InDelta(t, math.Round(d), d, 1e-9)
			}
		}
	}
}

// crosses returns the middles of the corner crosses of a page.
func crosses(p render.Page) (at []geometry.Point) {
	for _, it := range p.Drawing.Items {
		if it.Quantity == cornerQuantity {
			bounds, _ := it.Bounds()
			at = append(at, bounds.Centre())
		}
	}
	return at
}

// Four crosses stand at the corners of a rectangle, clear of all else, both
// diagonals as long as is written.
func TestCornerCrosses(t *testing.T) {
	for _, paper := range papers(t) {
		for _, d := range []*render.Drawing{plate(60, 40, 1), plate(250, 120, 5), plate(900, 700, 1), plate(170, 60, 0)} {
			pages, err := Place(d, paper, block, style)
			require.NoError(t, err)
			for _, page := range pages {
				at := crosses(page)
				require.Len(t, at, 4)
				require.InDelta(t, at[0].Dist(at[2]), at[1].Dist(at[3]), 1e-9)
				require.InDelta(t, 0, at[1].Sub(at[0]).Dot(at[3].Sub(at[0])), 1e-9, "square")
				diagonal := at[0].Dist(at[2])
				require.InDelta(t, math.Round(diagonal), diagonal, 1e-9)
				require.True(t, strings.Contains(strings.Join(said(page), "\n"), "Corner cross to corner cross: "+whole(diagonal)+" mm"), paper.Name)
				for _, it := range page.Drawing.Items {
					bounds, ok := it.Bounds()
					for _, c := range at {
						reach := geometry.Box{Min: c, Max: c}.Grow(cornerReach)
						require.False(t, ok && it.Quantity != cornerQuantity && it.Layer == render.LayerSheet && len(it.Outlines) == 0 && bounds.Touches(reach),
							"%s: a cross stands on %v", paper.Name, it)
					}
				}
			}
		}
	}
}

// The crosses and the lettering of the upright bars stay out of what a card is read in.
func TestTheMarginKeepsClearOfTheDrawing(t *testing.T) {
	const clear = 4.0
	for _, paper := range papers(t) {
		pages, err := Place(plate(60, 40, 0), paper, block, style)
		require.NoError(t, err)
		for _, page := range pages {
			for _, at := range crosses(page) {
				require.True(t, at.X+cornerReach <= marginFiling-clear || at.X-cornerReach >= paper.Width-margin, "%s: a cross at %v", paper.Name, at)
			}
			for _, it := range page.Drawing.Items {
				if it.Layer == render.LayerSheet && it.Text != nil && it.Text.Turn != 0 && it.Text.At.X < paper.Width/2 {
					require.LessOrEqual(t, it.Text.Bounds().Max.X, marginFiling-clear, "%s: %s", paper.Name, it.Text.String)
				}
			}
		}
	}
}
