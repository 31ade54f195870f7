package template

import (
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Everything is listed once with a box to tick, on as many cards as it takes, in order.
func TestStockCards(t *testing.T) {
	for _, n := range []int{0, 1, 25, 26, 90} {
		groups := []StockGroup{{Title: "Nothing of this"}, {Title: "Drills"}, {Title: "Taps", Rows: []StockRow{{"M1", "wheel", true}}}}
		for i := range n {
			groups[1].Rows = append(groups[1].Rows, StockRow{Item: "drill " + strconv.Itoa(i), For: strings.Repeat("a hole in the wheel; ", 1+i%4)})
		}
		if n == 0 {
			groups = groups[:1]
		}
		var all []string
		boxes := 0
		for _, d := range StockCards("Clock", groups, 176, metric) {
			all = append(all, said(d)...)
			requireClear(t, d, "%d rows", n)
			require.GreaterOrEqual(t, d.Bounds().Min.Y, -cardDown, "%d rows", n)
			for _, it := range d.Items {
				boxes += len(it.Outlines)
			}
		}
		text := strings.Join(all, "\n")
		require.NotContains(t, text, "Nothing of this")
		if n == 0 {
			require.Contains(t, text, "nothing is needed")
			continue
		}
		require.Equal(t, n+1, boxes)
		require.Equal(t, n > 1, slices.Contains(all, "Drills, continued"), "%d rows", n)
		require.Equal(t, n, strings.Count(text, "drill "))
		require.Contains(t, text, "M1 (usual)")
	}
}

func TestTheStockOfAJobWithoutATitle(t *testing.T) {
	require.Equal(t, "What to get in", StockCards("", nil, 176, metric)[0].Title)
	require.Equal(t, "Clock: what to get in", StockCards("Clock", nil, 176, metric)[0].Title)
}
