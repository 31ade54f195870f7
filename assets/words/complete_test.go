package words

import (
	"testing"

	"github.com/stretchr/testify/require"
)

func TestEveryKeyTheProgramUsesHasItsText(t *testing.T) {
	w := English()
	var without []string
	for _, u := range uses(t) {
		if !w.Has(u.key) {
			without = append(without, u.key+" at "+u.at)
		}
	}
	require.Empty(t, without)
}
