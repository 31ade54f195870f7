package measure

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestListKeepsItsCommasApartFromDecimalOnes(t *testing.T) {
	lengths := func(u Units) []string { return []string{u.Length(7.5), u.Length(8)} }
	point, comma := Units{}, Units{Comma: true}
	require.Equal(t, "7.50 mm, 8.00 mm", point.List(lengths(point)))
	require.Equal(t, "7,50 mm; 8,00 mm", comma.List(lengths(comma)))
	require.Empty(t, comma.List(nil))
}
