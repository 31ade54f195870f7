package window

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"tipline/app/appearance"
)

// dress gives the windows that are furnished from now on their looks; the shade is the
// system's where none was chosen.
func (a *windows) dress(l appearance.Looks) {
	a.looks = l
	paintIn(a.palette())
	enlarge(float32(l.Percent) / 100)
	a.app.Settings().SetTheme(newLook())
}

func (a *windows) palette() palette {
	system := a.looks.Shade == appearance.System && a.app.Settings().ThemeVariant() == theme.VariantDark
	if system || a.looks.Shade == appearance.Dark {
		return dark
	}
	return light
}

// heed follows the system's shade from now on.
func (a *windows) heed() {
	a.app.Settings().AddListener(func(fyne.Settings) {
		if a.palette() != present {
			a.redress(a.looks)
		}
	})
}

// redress gives all windows their looks.
func (a *windows) redress(l appearance.Looks) {
	a.dress(l)
	for _, w := range a.list {
		w.furnish()
		w.show()
	}
	a.guide.furnish()
}

// wear keeps looks and gives them to all windows. Looks that cannot be kept are worn all
// the same.
func (w *Window) wear(l appearance.Looks) {
	err := w.desk.Looks.Keep(l)
	w.all.redress(l)
	w.tell(err)
}

// shades offers the shades, the one that was chosen ticked.
func (m *menu) shades() *fyne.MenuItem {
	kept := m.window.all.looks
	offer := m.item("shade", nil)
	offer.ChildMenu = fyne.NewMenu("")
	for _, s := range appearance.Shades() {
		i := m.item("shade."+string(s), func() { m.window.wear(appearance.Looks{Shade: s, Percent: kept.Percent}) })
		i.Checked = s == kept.Shade
		offer.ChildMenu.Items = append(offer.ChildMenu.Items, i)
	}
	return offer
}

// sizes offers the sizes of type, the one that was chosen ticked.
func (m *menu) sizes() *fyne.MenuItem {
	kept := m.window.all.looks
	offer := m.item("type", nil)
	offer.ChildMenu = fyne.NewMenu("")
	for _, percent := range appearance.Percents() {
		label := m.window.desk.Words().Say("menu.type.percent", "percent", strconv.Itoa(percent))
		i := fyne.NewMenuItem(label, m.unasked(func() { m.window.wear(appearance.Looks{Shade: kept.Shade, Percent: percent}) }))
		i.Checked = percent == kept.Percent
		offer.ChildMenu.Items = append(offer.ChildMenu.Items, i)
	}
	return offer
}
