package window

import (
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/app/language"
	"tipline/app/window/desk"
	"tipline/assets/words"
)

// All windows speak a language as soon as it is chosen, their jobs untouched.
func TestLanguageIsChosenInTheMenu(t *testing.T) {
	app := test.NewTempApp(t)
	d := desk.New(words.English(), desk.Recent{})
	d.Language = language.Choice{File: filepath.Join(t.TempDir(), "language")}
	require.NoError(t, d.Take(desk.FromSample("signal-cabin")))
	w := New(app, d)
	other := w.all.add(d.Another())
	for _, l := range d.Languages()[1:] {
		choose(t, w, l.Label)
		spoken, err := words.Load(l.Value)
		require.NoError(t, err)
		require.Equal(t, l.Value, d.Language.Kept())
		for _, each := range []*Window{w, other} {
			require.Equal(t, l.Value, each.desk.Words().Language())
			require.Equal(t, spoken.Say("menu.job"), each.MainMenu().Items[0].Label)
			require.Same(t, each.menu.MainMenu, each.MainMenu())
		}
		require.True(t, offered(t, w, l.Label).Checked)
		require.True(t, d.Saved())
		require.False(t, d.CanUndo())
	}
}

func choose(t *testing.T, w *Window, label string) { offered(t, w, label).Action() }

// offered returns the item of a language by its own name.
func offered(t *testing.T, w *Window, label string) *fyne.MenuItem {
	for _, m := range w.MainMenu().Items {
		for _, i := range m.Items {
			if i.Label != w.desk.Words().Say("menu.language") {
				continue
			}
			for _, l := range i.ChildMenu.Items {
				if l.Label == label {
					return l
				}
			}
		}
	}
	t.Fatal("no language is called " + label)
	return nil
}
