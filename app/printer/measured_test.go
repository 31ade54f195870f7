package printer

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/measure"
	"tipline/render/sheet"
)

func length(t *testing.T, text string) measure.Length {
	l, err := measure.ParseLength(text, measure.MM)
	require.NoError(t, err)
	return l
}

func TestBarsAreMeasuredInEitherUnit(t *testing.T) {
	for _, row := range []struct{ across, along string }{{"100.3", "99.6 mm"}, {"4.012 in", "3.984 in"}, {"100.3 mm", "3.984 in"}, {"4.012 in", "9.96 cm"}} {
		p, err := Measured(sheet.Profile{}, "Shed", "a4", length(t, row.across), length(t, row.along))
		require.NoError(t, err)
		require.InDelta(t, 1.003, p.X, 1e-12)
		require.InDelta(t, 0.996, p.Y, 1e-12)
		again, err := Measured(p, "Shed", "a4", length(t, "100"), length(t, "100"))
		require.NoError(t, err)
		require.InDelta(t, 1.003, again.X, 1e-4, "a sheet that it had shaped came right")
	}
}

func TestBarsThatNoPrinterPrints(t *testing.T) {
	for _, row := range []struct {
		across, along string
		quantity      geometry.Quantity
		want          string
	}{
		{"97", "100", "", ""},
		{"96.9", "100", "printing.across", "97.000 mm to 103.000 mm"},
		{"103", "3.88 in", "", ""},
		{"4", "4 in", "printing.across", "97.000 mm to 103.000 mm"},
		{"100", "4", "printing.up", "97.000 mm to 103.000 mm"},
		{"100 in", "4 in", "printing.across", "3.8800 in to 4.1200 in"},
		{"100", "4.2 in", "printing.up", "3.8800 in to 4.1200 in"},
		{"4 in", "96 mm", "printing.up", "97.000 mm to 103.000 mm"},
		{"4 in", "4.2 in", "printing.up", "3.8800 in to 4.1200 in"},
	} {
		_, err := Measured(sheet.Profile{}, "Shed", "a4", length(t, row.across), length(t, row.along))
		if row.want == "" {
			require.NoError(t, err)
			continue
		}
		var m *Misprint
		require.ErrorAs(t, err, &m)
		require.Equal(t, row.quantity, m.Limit.Quantity)
		require.Contains(t, m.Say(words.English().Say, false), row.want)
		require.NotEmpty(t, m.Error())
	}
}

// A bar that is read in the other one's unit would make a profile that is out by what the
// two bars differ by: it is refused, across and along, whatever the other measured.
func TestTheOtherBarIsNotTakenForOne(t *testing.T) {
	for _, row := range []struct {
		across, along string
		quantity      geometry.Quantity
		want          string
	}{
		{"101.6", "101.6 mm", "printing.across", "101.600 mm is rather what the 4 in bar measures"},
		{"100", "101.3", "printing.up", "101.300 mm is rather what the 4 in bar measures"},
		{"101.9", "100", "printing.across", "101.900 mm is rather what the 4 in bar measures"},
		{"101.7", "4 in", "printing.across", "101.700 mm is rather what the 4 in bar measures"},
		{"4 in", "3.937 in", "printing.up", "3.9370 in is rather what the 100 mm bar measures"},
		{"3 15/16 in", "100 mm", "printing.across", "3.9375 in is rather what the 100 mm bar measures"},
		{"101.2", "102", "", ""},
		{"3.97 in", "3.92 in", "", ""},
		{"4.064 in", "98.4", "", ""}, // a printer out by as much is measured by the other bar
	} {
		p, err := Measured(sheet.Profile{}, "Shed", "a4", length(t, row.across), length(t, row.along))
		if row.want == "" {
			require.NoError(t, err, row)
			continue
		}
		var m *Misprint
		require.ErrorAs(t, err, &m, row)
		require.Equal(t, row.quantity, m.Limit.Quantity)
		require.Contains(t, m.Say(words.English().Say, false), row.want)
		require.True(t, p.None())
	}
}
