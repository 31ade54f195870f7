package sheet

import (
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render"
)

// Whatever shares paper keeps its order and its size, and stands clear of the others and
// of all lettering; apart, each has a sheet of its own.
func TestSheetsAreFilledInOrder(t *testing.T) {
	random := rand.New(rand.NewPCG(17, 19))
	for i := range 40 {
		var sheets []Sheet
		var want []string
		for n := range 2 + random.IntN(8) {
			width, height := float64(40+random.IntN(80)), float64(20+random.IntN(80))
			one := named(fmt.Sprint("Part ", n), width, height, []float64{0, 1, 10}[random.IntN(3)])
			one.With = "of one"
			sheets, want = append(sheets, one), append(want, fmt.Sprintf("%.9f x %.9f", width, height))
		}
		pages, err := Lay(sheets, Papers()[0], style)
		require.NoError(t, err)
		require.LessOrEqual(t, len(pages), len(sheets))
		var got []string
		for _, page := range pages {
			boxes := plates(page)
			for a, box := range boxes {
				got = append(got, fmt.Sprintf("%.9f x %.9f", box.Width(), box.Height()))
				require.False(t, slices.ContainsFunc(boxes[a+1:], box.Touches), "seed (17, 19), case %d", i)
				free(t, page, box)
			}
		}
		require.Equal(t, want, got, "seed (17, 19), case %d", i)
		apart, err := LayContext(t.Context(), sheets, Papers()[0], style, Options{Apart: true})
		require.NoError(t, err)
		require.Len(t, apart, len(sheets))
	}
}

// Parts that the title block has no room for are counted, none is cut short.
func TestPartsAreListedAsThereIsRoom(t *testing.T) {
	require.Equal(t, "going, motion", partsOf([]string{"going", "motion"}, style.Words.Say))
	long := "Centre wheel – Third pinion"
	require.Equal(t, long, partsOf([]string{long}, style.Words.Say))
	two := []string{long, "Third wheel – Escape pinion"}
	require.Equal(t, listOf(two[:1])+", "+two[1], partsOf(two, style.Words.Say), "two have a line each")
	many := partsOf(append(two, "Cannon pinion – Minute wheel"), style.Words.Say)
	require.Equal(t, long+" and 2 more", many)
	for _, text := range lettered(many, partRoom) {
		require.GreaterOrEqual(t, text.Height, heightSmall)
		require.LessOrEqual(t, text.Width(), partRoom)
	}
}

// On the narrowest paper no field of the title block is cut short, that the printer is not
// measured least of all, in any language.
func TestANarrowTitleBlockIsNotCutShort(t *testing.T) {
	narrow := Paper{Width: 140, Height: 200, Name: "140x200mm"}
	for _, code := range words.Languages() {
		spoken, err := words.Load(code)
		require.NoError(t, err)
		of := style
		of.Words = spoken
		pages, err := Place(plate(60, 40, 1), narrow, TitleBlock{Job: "Hilltop regulator", Part: "Centre wheel", Number: "HR-1", Date: "2026-11-28"}, of)
		require.NoError(t, err)
		for _, text := range said(pages[0]) {
			require.NotContains(t, text, "…", code)
		}
		require.Contains(t, strings.Join(said(pages[0]), " "), spoken.Say("sheet.profile.none"), code)
	}
}

// free checks that no lettering of the sheet's own stands on a drawing.
func free(t *testing.T, page render.Page, box geometry.Box) {
	for _, it := range page.Drawing.Items {
		if it.Layer == render.LayerSheet && it.Text != nil {
			require.False(t, it.Text.Bounds().Touches(box), "%v", it.Text)
		}
	}
}
