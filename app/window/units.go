package window

import (
	"fyne.io/fyne/v2"

	"tipline/app/window/desk"
)

// lengths offers the units that the job's lengths may be in, the one they are in ticked.
func (m *menu) lengths() *fyne.MenuItem {
	d := m.window.desk
	m.units = fyne.NewMenuItem(d.Words().Say("field.units"), nil)
	m.units.ChildMenu = fyne.NewMenu("")
	for _, c := range d.UnitChoices() {
		m.units.ChildMenu.Items = append(m.units.ChildMenu.Items, fyne.NewMenuItem(c.Label, m.unasked(func() { d.Type("", desk.UnitsField, c.Value) })))
	}
	m.tickUnit()
	return m.units
}

// tickUnit ticks the unit that the job's lengths are in, and reports whether that is
// another than was ticked.
func (m *menu) tickUnit() (another bool) {
	choices, unit := m.window.desk.UnitChoices(), m.window.desk.Job().Units
	for i, item := range m.units.ChildMenu.Items {
		on := choices[i].Value == unit
		another = another || on != item.Checked
		item.Checked = on
	}
	return another
}
