package sheet

import (
	"context"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// named returns a plate as a sheet of a part.
func named(part string, width, height, scale float64) Sheet {
	b := block
	b.Part = part
	return Sheet{Drawing: plate(width, height, scale), Block: b}
}

// plates returns the boxes of the plates on a page.
func plates(p render.Page) (boxes []geometry.Box) {
	for _, it := range p.Drawing.Items {
		if it.Layer == render.LayerTeeth {
			bounds, _ := it.Bounds()
			boxes = append(boxes, bounds)
		}
	}
	return boxes
}

// Whatever is put together: every template is there once, in its own size, at least
// 6 mm from any other, and no cut, no lettering and no other template crosses it.
func TestTemplatesTogether(t *testing.T) {
	random := rand.New(rand.NewPCG(5, 6))
	for i := range 40 {
		var sheets []Sheet
		for n := range 2 + random.IntN(12) {
			one := named(fmt.Sprint("Part ", n), float64(40+random.IntN(60)), float64(10+random.IntN(90)), 1)
			sheets = append(sheets, slices.Repeat([]Sheet{one}, 1+random.IntN(3))...)
		}
		paper := papers(t)[random.IntN(5)]
		pages, err := LayContext(t.Context(), sheets, paper, style, Options{Together: true})
		require.NoError(t, err)
		var sizes []string
		for _, page := range pages {
			boxes := plates(page)
			for a, box := range boxes {
				sizes = append(sizes, fmt.Sprintf("%.6f x %.6f", box.Width(), box.Height()))
				for _, other := range boxes[a+1:] {
					require.False(t, box.Grow(3).Touches(other.Grow(3)), "seed (5, 6), case %d", i)
				}
				clear(t, page, box)
			}
		}
		var want []string
		for _, sh := range sheets {
			b := sh.Drawing.Bounds()
			want = append(want, fmt.Sprintf("%.6f x %.6f", b.Width(), b.Height()))
		}
		require.ElementsMatch(t, want, sizes, "seed (5, 6), case %d", i)
		again, err := LayContext(t.Context(), sheets, paper, style, Options{Together: true})
		require.NoError(t, err)
		require.Equal(t, dumps(t, pages), dumps(t, again))
	}
}

// clear checks that nothing of the sheet's own stands on a template.
func clear(t *testing.T, page render.Page, box geometry.Box) {
	for _, it := range page.Drawing.Items {
		if it.Layer == render.LayerSheet {
			for _, c := range it.Chains {
				require.False(t, c.Bounds().Touches(box.Grow(1.5)), "%s crosses a template", it.Quantity)
			}
			require.False(t, it.Text != nil && it.Text.Bounds().Touches(box), "%v stands on a template", it.Text)
		}
	}
}

func dumps(t *testing.T, pages []render.Page) string {
	var b strings.Builder
	for _, p := range pages {
		require.NoError(t, p.Drawing.Dump(&b))
	}
	return b.String()
}

// One title block lists what is on the sheet, and each template has its own label.
func TestWhatSharesASheetIsNamed(t *testing.T) {
	escape, third := named("Escape wheel", 50, 50, 1), named("Third wheel", 60, 50, 1)
	pages, err := LayContext(t.Context(), []Sheet{escape, escape, third}, Papers()[0], style, Options{Together: true})
	require.NoError(t, err)
	require.Len(t, pages, 1)
	text := said(pages[0])
	for _, want := range []string{"Templates together", "Escape wheel × 2", "3 templates", "Escape wheel, copy 1 of 2", "Escape wheel, copy 2 of 2", "1 of 1"} {
		require.Contains(t, text, want)
	}
	named := 0
	for _, s := range text {
		if s == "Third wheel" {
			named++
		}
	}
	require.Equal(t, 2, named, "in the title block and below it")
}

// Cards, other scales, other jobs and what is too large stay on sheets of their own,
// each in its place in the order of the work.
func TestWhatStaysAlone(t *testing.T) {
	small, card := named("Small", 30, 30, 1), named("Card", 150, 60, 0)
	enlarged, large := named("Enlarged", 60, 60, 10), named("Large", 600, 150, 1)
	foreign := named("Foreign", 30, 30, 1)
	foreign.Block.Job = "Another"
	pages, err := LayContext(t.Context(), []Sheet{card, small, enlarged, large, small, foreign, card}, Papers()[0], style, Options{Together: true})
	require.NoError(t, err)
	var order []string
	for _, p := range pages {
		text := strings.Join(said(p), "\n")
		for _, name := range []string{"Card", "Small, copy", "Enlarged", "Large", "Foreign"} {
			if strings.Contains(text, name) {
				order = append(order, name)
			}
		}
	}
	require.Equal(t, []string{"Card", "Small, copy", "Enlarged", "Large", "Foreign", "Card"}, slices.Compact(order))
}

func TestOneTemplateAloneIsAsItAlwaysWas(t *testing.T) {
	one := named("Escape wheel", 50, 50, 1)
	together, err := LayContext(t.Context(), []Sheet{one}, Papers()[0], style, Options{Together: true})
	require.NoError(t, err)
	apart, err := Lay([]Sheet{one}, Papers()[0], style)
	require.NoError(t, err)
	require.Equal(t, dumps(t, apart), dumps(t, together))
}

func TestProgressAndStop(t *testing.T) {
	sheets := []Sheet{named("A", 50, 50, 1), named("B", 400, 300, 1), named("C", 50, 50, 1)}
	var told []string
	o := Options{Progress: func(done, total int) { told = append(told, fmt.Sprint(done, "/", total)) }}
	pages, err := LayContext(t.Context(), sheets, Papers()[0], style, o)
	require.NoError(t, err)
	require.Len(t, told, len(pages))
	require.Equal(t, fmt.Sprint(1, "/", len(pages)), told[0])
	require.Equal(t, fmt.Sprint(len(pages), "/", len(pages)), told[len(told)-1])

	ctx, stop := context.WithCancel(t.Context())
	o.Progress = func(done, _ int) {
		if done == 3 {
			stop()
		}
	}
	run, err := Plan(ctx, sheets, Papers()[0], style, o)
	require.NoError(t, err)
	require.Equal(t, len(pages), run.Len())
	drawn := 0
	for _, err = range run.Pages(ctx) {
		if err == nil {
			drawn++
		}
	}
	require.ErrorIs(t, err, context.Canceled)
	require.Equal(t, 3, drawn)
	_, err = LayContext(ctx, sheets, Papers()[0], style, Options{})
	require.ErrorIs(t, err, context.Canceled)
}

// The legend of a shared sheet says what lines mean one thing on it; what a line
// means on one template alone stands below that template.
func TestTheLegendOfASharedSheet(t *testing.T) {
	a, b, plain := named("A", 50, 40, 1), named("B", 50, 40, 1), named("Plain", 50, 40, 1)
	a.Block.Notes.Legend = append(slices.Clone(a.Block.Notes.Legend[:1]), template.Mark{Pen: render.Hidden, Text: "saw line, 0.3 mm"})
	b.Block.Notes.Legend = append(slices.Clone(b.Block.Notes.Legend[:1]), template.Mark{Pen: render.Hidden, Text: "saw line, 0.4 mm"})
	plain.Block.Notes.Legend = nil
	pages, err := LayContext(t.Context(), []Sheet{a, b, plain}, Papers()[0], style, Options{Together: true})
	require.NoError(t, err)
	require.Len(t, pages, 1)
	legend := 0
	for _, it := range pages[0].Drawing.Items {
		if it.Text == nil {
			continue
		}
		below := it.Text.Align == render.Middle
		require.True(t, below || !strings.Contains(it.Text.String, "saw line"))
		if it.Text.String == "hatched: waste" && !below {
			legend++
		}
	}
	require.Equal(t, 1, legend)
	all := strings.Join(said(pages[0]), " ")
	require.Contains(t, all, "saw line, 0.3 mm")
	require.Contains(t, all, "saw line, 0.4 mm")
}
