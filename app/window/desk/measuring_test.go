package desk

import (
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/printer"
)

func TestAPrinterIsMeasured(t *testing.T) {
	own(t)
	d, _ := opened(t)
	d.Go(Paper)
	require.Zero(t, d.Measure(Bars{}), "nothing typed is nothing wrong")
	for _, row := range []struct {
		bars                     Bars
		across, along, line, why string
	}{
		{Bars{Name: "Shed", Across: "100.4"}, "", "", "", "measuring.missing"},
		{Bars{Across: "100.4", Along: "99.5 mm"}, "", "", "", "measuring.missing"},
		{Bars{Name: "Shed", Across: "long", Along: "99.5 mm"}, "long", "", "", "measuring.misprint"},
		{Bars{Name: "Shed", Across: "94", Along: "99.5"}, "97.000 mm to 103.000 mm", "", "", "measuring.misprint"},
		{Bars{Name: "Shed", Across: "100", Along: "4 in"}, "", "", "It prints true both ways: the sheets need no correction.", ""},
		{Bars{Name: "Shed", Across: "100.2", Along: "4.02 in"}, "", "", "It prints +0.20 % across and +0.50 % along", ""},
		{Bars{Name: "Shed", Across: "100", Along: "101.6"}, "", "rather what the 4 in bar measures", "", "measuring.misprint"},
		{Bars{Name: "Shed", Across: "100", Along: "120"}, "", "97.000 mm to 103.000 mm", "", "measuring.misprint"},
		{Bars{Name: "Shed", Across: "4.016 in", Along: "4 in"}, "", "", "+0.40 % across", ""},
	} {
		m := d.Measure(row.bars)
		for got, want := range map[*string]string{&m.Across: row.across, &m.Along: row.along, &m.Line: row.line} {
			if want == "" {
				require.Empty(t, *got, row.bars)
			}
			require.Contains(t, *got, want, row.bars)
		}
		if row.why != "" {
			require.ErrorContains(t, d.KeepMeasured(row.bars), row.why)
		}
	}
	list, err := printer.Usual().List()
	require.NoError(t, err)
	require.Empty(t, list)
	require.Error(t, d.KeepMeasured(Bars{Name: "two\x00", Across: "100", Along: "100.1"}))

	require.NoError(t, d.KeepMeasured(Bars{Name: "Shed", Across: "100.4", Along: "99.5"}))
	require.Equal(t, "Shed", fieldOf(t, d, printerField).Text)
	require.Equal(t, "Shed", d.Shapes())
	p, err := printer.Usual().Load("Shed", "a4")
	require.NoError(t, err)
	require.InDelta(t, 1.004, p.X, 1e-12)
	require.InDelta(t, 0.995, p.Y, 1e-12)
	require.NoError(t, d.KeepMeasured(Bars{Name: "Shed", Across: "100.1", Along: "100", Shaped: true}))
	p, err = printer.Usual().Load("Shed", "a4")
	require.NoError(t, err)
	require.InDelta(t, 1.005, p.X, 1e-4)
	require.InDelta(t, 0.995, p.Y, 1e-12)
}

func TestTheTestSheetIsShapedOrNot(t *testing.T) {
	own(t)
	d, _ := opened(t)
	require.NoError(t, d.KeepMeasured(Bars{Name: "Shed", Across: "102", Along: "98"}))
	sizes := map[bool]int{}
	for _, shaped := range []bool{false, true} {
		name := filepath.Join(t.TempDir(), "test.pdf")
		o := d.TestSheet(shaped)
		require.Equal(t, "Printer test sheet a4.pdf", o.FileName())
		d.Export(o, name, func(int, int) {}, func(n int, err error) {
			require.NoError(t, err)
			sizes[shaped] = n
		})
		require.Equal(t, 1, pagesOf(t, name))
	}
	require.Equal(t, map[bool]int{false: 1, true: 1}, sizes)
}
