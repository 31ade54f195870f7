package window

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"github.com/stretchr/testify/require"

	"tipline/app/appearance"
	"tipline/app/window/desk"
)

// sub returns an item of a menu within the menu.
func sub(t *testing.T, w *Window, of, label string) *fyne.MenuItem {
	for _, i := range item(t, w, of).ChildMenu.Items {
		if i.Label == label {
			return i
		}
	}
	require.Failf(t, "no item", label)
	return nil
}

func TestTheShadeAndTheSizeOfTypeAreChosen(t *testing.T) {
	w := opened(t)
	t.Cleanup(func() { w.all.dress(appearance.Usual) })
	w.desk.Looks = appearance.Choice{File: filepath.Join(t.TempDir(), "looks")}
	w.desk.Go(desk.Paper)
	sub(t, w, "Light or dark", "Dark").Action()
	require.Equal(t, dark, present)
	require.Equal(t, desk.Paper, w.desk.Step())
	require.Equal(t, dark.ink, w.title.name.Color)
	require.Equal(t, paper, w.board.painter.Theme.Paper, "the drawing is ink on paper in either shade")
	require.True(t, sub(t, w, "Light or dark", "Dark").Checked)
	sub(t, w, "Size of type", "150 %").Action()
	require.InDelta(t, 1.5*13, readSize, 1e-3)
	require.True(t, sub(t, w, "Size of type", "150 %").Checked)
	require.False(t, sub(t, w, "Size of type", "100 %").Checked)
	require.Equal(t, appearance.Looks{Shade: appearance.Dark, Percent: 150}, w.desk.Looks.Kept())
	w.all.dress(w.desk.Looks.Kept())
	require.Equal(t, dark, present)
}
