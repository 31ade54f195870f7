package command

import (
	"encoding/csv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestStockAsText(t *testing.T) {
	r := run("stock", sampleJob(t))
	require.Equal(t, Done, r.code, r.err)
	require.True(t, strings.HasPrefix(r.out, "Sheet\n  brass, "), r.out)
	require.Regexp(t, `\n  brass, Ø \d+\.\d\d mm, 2.38 mm thick +Great wheel: the blank\n`, r.out, "3/32 in")
	require.Contains(t, r.out, "\nTool bits\n")
	require.Contains(t, r.out, "8 × Ø 0.73 mm, at least 6.00 mm long")
	require.NotContains(t, r.out, "‹")
	require.NotContains(t, r.out, "{")
}

// The table reads back with a row for each part that a line of the list is for.
func TestStockAsCSV(t *testing.T) {
	out := run("stock", "-csv", sampleJob(t))
	require.Equal(t, Done, out.code, out.err)
	rows, err := csv.NewReader(strings.NewReader(out.out)).ReadAll()
	require.NoError(t, err)
	require.Equal(t, []string{
		"kind", "part", "for", "name", "count", "diameter_mm", "width_mm", "thickness_mm", "length_mm", "usual",
	}, rows[0])
	lines := 0
	for line := range strings.Lines(run("stock", sampleJob(t)).out) {
		if strings.HasPrefix(line, "  ") {
			lines += 1 + strings.Count(line, "; ")
		}
	}
	require.Len(t, rows[1:], lines)
	bits := 0
	for _, row := range rows[1:] {
		require.False(t, row[0] == "rod" && row[3] == "", row)
		if row[0] == "bit" && row[1] == "great" {
			bits++
			require.Equal(t, []string{"bit", "great", "the cutter", "", "1", "", "7.9375", "7.9375", "", "false"}, row, "5/16 in")
		}
	}
	require.Equal(t, 1, bits)
}

func TestNoStock(t *testing.T) {
	require.Equal(t, ran{Done, "No part can be built yet, so nothing is needed.\n", ""}, run("stock", awkward+"byte-order-mark.tipline"))
	require.Equal(t, ran{Done, "kind,part,for,name,count,diameter_mm,width_mm,thickness_mm,length_mm,usual\n", ""},
		run("stock", awkward+"byte-order-mark.tipline", "--csv"))
	none := run("stock")
	require.Equal(t, Nothing, none.code)
	require.Equal(t, "tipline: stock needs the name of a job file.\n", none.err)
}
