package window

import "fyne.io/fyne/v2"

// languages offers the languages, the one that was chosen ticked.
func (m *menu) languages() *fyne.MenuItem {
	offer := m.item("language", nil)
	offer.ChildMenu = fyne.NewMenu("")
	d := m.window.desk
	for _, l := range d.Languages() {
		i := fyne.NewMenuItem(l.Label, m.unasked(func() { m.window.speak(l.Value) }))
		i.Checked = l.Value == d.Language.Kept()
		offer.ChildMenu.Items = append(offer.ChildMenu.Items, i)
	}
	return offer
}

// speak keeps the choice of a language and furnishes all windows anew in it.
func (w *Window) speak(code string) {
	for _, other := range w.all.list {
		err := other.desk.Speak(code)
		other.furnish()
		other.show()
		if other == w {
			w.tell(err)
		}
	}
	w.all.guide.furnish()
}
