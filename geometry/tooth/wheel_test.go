package tooth

import (
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

func TestMeasuredWheel(t *testing.T) {
	w, err := Measured{Count: 30, TipRadius: 20, RootRadius: 17}.Wheel()
	require.NoError(t, err)
	require.Equal(t, "measured", w.Form)
	require.Equal(t, 30, w.Count)
	require.Zero(t, w.PitchRadius)
	require.Zero(t, w.Space.Len())
	require.InDelta(t, 2*math.Pi*20, perimeter(w.Outline), near)
	require.InDelta(t, 2*math.Pi*18.5, perimeter(w.Solid()), near, "solid to the mean of root and tip")
}

func TestSolidOfATrainWheelIsItsTeeth(t *testing.T) {
	w, err := Cycloidal{72, 0.8, 8}.Wheel()
	require.NoError(t, err)
	require.Equal(t, w.Outline, w.Solid())
}

func perimeter(o geometry.Outline) float64 {
	length := 0.0
	for i := range o.Len() {
		length += o.Segment(i).Length()
	}
	return length
}

func TestMeasuredThatCannotBeIsRefused(t *testing.T) {
	for _, row := range []struct {
		name     string
		m        Measured
		quantity geometry.Quantity
		value    float64
		min, max float64
	}{
		{"two teeth", Measured{2, 20, 17}, "teeth.count", 2, 3, 2000},
		{"no size", Measured{30, 0, 17}, "teeth.tip_diameter", 0, 0.02, 2000},
		{"no number", Measured{30, math.NaN(), 17}, "teeth.tip_diameter", 0, 0.02, 2000},
		{"too large", Measured{30, 1000.5, 17}, "teeth.tip_diameter", 2001, 0.02, 2000},
		{"root outside the tips", Measured{30, 20, 20}, "teeth.root_diameter", 40, 0.01, 39.99},
		{"no root", Measured{30, 20, 0}, "teeth.root_diameter", 0, 0.01, 39.99},
		{"root is no number", Measured{30, 20, math.NaN()}, "teeth.root_diameter", 0, 0.01, 39.99},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := row.m.Wheel()
			var limit *geometry.Limit
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.quantity, limit.Quantity)
			require.InDelta(t, row.value, limit.Value, near)
			require.InDelta(t, row.min, limit.Min, near)
			require.InDelta(t, row.max, limit.Max, near)
			require.True(t, words.English().Has(limit.Code))
		})
	}
}

func TestBoreMustLeaveMetal(t *testing.T) {
	w := Wheel{Count: 30, TipRadius: 20, RootRadius: 17}
	require.NoError(t, w.CheckBore(0))
	require.NoError(t, w.CheckBore(33.99))
	for _, bore := range []float64{34, -1, math.NaN(), math.Inf(1)} {
		var limit *geometry.Limit
		require.ErrorAs(t, w.CheckBore(bore), &limit)
		require.Equal(t, geometry.Quantity("bore"), limit.Quantity)
		require.InDelta(t, 33.99, limit.Max, near)
		require.True(t, words.English().Has(limit.Code))
	}
}
