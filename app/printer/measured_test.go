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
	for _, row := range []struct{ across, along string }{{"100.3", "99.6 mm"}, {"4.012 in", "3.984 in"}} {
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
		{"4", "4 in", "printing.across", "97.000 mm to 103.000 mm"},
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
