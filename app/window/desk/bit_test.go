package desk

import (
	"testing"

	"github.com/stretchr/testify/require"
)

// A bit begun with the wanted form's corners strays from the form by under 0.01 µm,
// in either unit.
func TestABitOfTheWantedFormIsTheForm(t *testing.T) {
	for _, units := range []string{"mm", "in"} {
		d, _ := opened(t)
		d.Type("", "units", units)
		begun := 0
		for _, id := range d.order() {
			d.Choose(id)
			d.Go(Cutter)
			if !d.HasBit() {
				continue
			}
			d.ClearBit()
			d.StartBit()
			ground := tooling(d.of(id)).Ground
			require.NotNil(t, ground, "%s %s", id, units)
			require.Less(t, max(ground.Worst.Off, -ground.Worst.Off), 1e-5, "%s %s", id, units)
			begun++
		}
		require.Greater(t, begun, 3)
	}
}
