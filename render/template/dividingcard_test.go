package template

import (
	"fmt"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry/dividing"
	"tipline/geometry/tooth"
	"tipline/render"
)

// dividedBy is a wheel of n teeth indexed on a head of that ratio.
func dividedBy(t testing.TB, n, ratio int) Wheel {
	teeth, err := tooth.Cycloidal{Count: n, Module: 0.8, Leaves: 8}.Wheel()
	require.NoError(t, err)
	w := Wheel{ID: "train", Name: "Train wheel", Teeth: &teeth}
	a, err := dividing.Head{Ratio: ratio}.Divide(n, w.Teeth.TipRadius)
	require.NoError(t, err)
	w.Dividing = &a
	return w
}

// boxes counts the boxes to tick of a card.
func boxes(d *render.Drawing) int {
	n := 0
	for _, it := range d.Items {
		if it.Quantity == "dividing" && it.Layer == render.LayerText && len(it.Outlines) == 1 {
			n++
		}
	}
	return n
}

// Every tooth has one box to tick, on the card itself or on those that follow it.
func TestEveryToothHasItsBox(t *testing.T) {
	for _, n := range []int{6, 30, 51, 72, 84, 100, 101, 110, 127, 360, 397, 1000, 2000} {
		for _, ratio := range []int{40, 60} {
			w := dividedBy(t, n, ratio)
			d, err := DividingCard(w, metric)
			require.NoError(t, err)
			total := boxes(d)
			require.Greater(t, total, min(n, 40)-1, "%d teeth: the first card is not left empty", n)
			cards := DividingTable(w, metric)
			for _, more := range cards {
				total += boxes(more)
				require.GreaterOrEqual(t, more.Bounds().Min.Y, -cardDown-1, "%d teeth", n)
				if n == 101 { // all are laid out alike
					requireClear(t, more, "dividing table of %d", n)
				}
			}
			require.Equal(t, n, total, "%d teeth, ratio %d", n, ratio)
			require.GreaterOrEqual(t, d.Bounds().Min.Y, -cardDown-1, "%d teeth", n)
			if ratio == 40 {
				requireClear(t, d, "dividing card of %d", n)
			}
		}
	}
}

// A count that no circle gives is told its two moves, which come to a turn of the work.
func TestDividingCardTellsTwoMoves(t *testing.T) {
	for _, row := range []struct{ n, ratio int }{{51, 40}, {127, 60}, {63, 40}, {97, 60}} {
		w := dividedBy(t, row.n, row.ratio)
		m := w.Dividing.Compound
		if m == nil {
			continue
		}
		d, err := DividingCard(w, metric)
		require.NoError(t, err)
		text := strings.Join(said(d), " ")
		second, way := m.Second.Holes, " on."
		if second < 0 {
			second, way = -second, " back."
		}
		require.Regexp(t, fmt.Sprintf("In two moves: %d turns? and %d holes? of %d", m.Turns, m.First.Holes, m.First.Circle), text)
		require.Contains(t, text, strconv.Itoa(second)+" holes of "+strconv.Itoa(m.Second.Circle)+way)
		require.Equal(t, m.Backwards(), strings.Contains(text, "goes backwards"))
		require.Equal(t, m.Every > 1, strings.Contains(text, "It leads "+strconv.Itoa(m.Every)+" teeth on"))
		if m.Exact { // plain fractions: turns + a/A ± b/B = every·ratio/n
			a, b := m.First.Circle, m.Second.Circle
			require.Equal(t, m.Every*row.ratio*a*b, row.n*(m.Turns*a*b+m.First.Holes*b+m.Second.Holes*a), "%+v", *m)
			require.Contains(t, text, "That is exact.")
		}
		view, err := DividingView(w, metric)
		require.NoError(t, err)
		require.Contains(t, strings.Join(said(view), " "), "of "+strconv.Itoa(m.Second.Circle))
		requireClear(t, view, "dividing view of %d", row.n)
	}
	require.NotNil(t, dividedBy(t, 51, 40).Dividing.Compound)
}

// listed returns the teeth that dividing cards list, in the order in which they stand.
func listed(t testing.TB, cards ...*render.Drawing) []int {
	var teeth []int
	for _, d := range cards {
		for _, it := range d.Items {
			if it.Text != nil && it.Text.Align == render.Right && it.Quantity == "dividing" {
				tooth, err := strconv.Atoi(it.Text.String)
				require.NoError(t, err)
				teeth = append(teeth, tooth)
			}
		}
	}
	return teeth
}

// A count without an exact circle is cut from the cards alone: each tooth is ticked as it
// comes, with its turns and holes beside it.
func TestTeethAreListedInTheOrderOfCutting(t *testing.T) {
	for _, row := range []struct{ n, ratio int }{{127, 60}, {2000, 60}, {397, 60}, {72, 60}, {51, 40}} {
		w := dividedBy(t, row.n, row.ratio)
		card, err := DividingCard(w, metric)
		require.NoError(t, err)
		cards := append([]*render.Drawing{card}, DividingTable(w, metric)...)
		require.Equal(t, w.Dividing.Order(), listed(t, cards...), "%d teeth", row.n)
		if w.Dividing.Exact {
			continue
		}
		var places []string
		for _, d := range cards {
			for _, text := range said(d) {
				if turns, _, found := strings.Cut(text, " + "); found && len(turns) < 4 {
					places = append(places, text)
				}
			}
		}
		require.Len(t, places, row.n)
		for i, tooth := range w.Dividing.Order() {
			turns, holes := w.Dividing.Place(tooth)
			require.Equal(t, strconv.Itoa(turns)+" + "+strconv.Itoa(holes), places[i], "tooth %d of %d", tooth, row.n)
		}
	}
	require.Equal(t, 6, dividedBy(t, 127, 60).Dividing.Compound.Every)
}
