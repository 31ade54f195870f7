package window

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/layout"
)

// keyLine is a line of the page of keys: which keys, and what they do.
type keyLine struct{ pressed, does string }

// keyGroup is the lines of one menu, or of one thing that can have the keyboard.
type keyGroup struct {
	title string
	lines []keyLine
}

// keyGroups lists all keys, from the tables they work by.
func (w *Window) keyGroups() []keyGroup {
	say := w.desk.Words().Say
	var all []keyGroup
	for _, m := range w.menu.Items {
		g := keyGroup{title: m.Label}
		for _, i := range m.Items {
			if i.Shortcut != nil {
				g.add(w.spelled(i.Shortcut), strings.TrimSuffix(i.Label, "…"))
			}
			if i == w.menu.redo {
				g.add(w.spelled(redoAgain), i.Label)
			}
		}
		all = append(all, g)
	}
	idle := func() {}
	for _, of := range []struct {
		title string
		keys  keyTable
	}{
		{say("keys.of.all"), append(toolkits(), w.keys()...)},
		{say("keys.of.drawing"), w.board.keys()},
		{say("keys.of.rule"), w.board.ruleKeys()},
		{say("keys.of.layers"), (&veil{}).keys()},
		{say("keys.of.part"), (&part{rail: w.rail}).keys()},
		{say("keys.of.seeker"), w.rail.sought.keys()},
		{say("keys.of.field"), newEntry().keys()},
		{say("keys.of.history"), w.column.history.list.keys()},
		{say("keys.of.pages"), w.pages.keys()},
		{say("keys.of.press"), pressing(idle)},
		{say("keys.of.guide"), (&guideWindow{}).keys()},
		{say("keys.of.question"), (&question{}).keys()},
	} {
		g := keyGroup{title: of.title}
		for _, k := range of.keys {
			g.add(w.spelledOf(k), say(k.says))
		}
		all = append(all, g)
	}
	return all
}

// toolkits returns the keys that the toolkit has everywhere.
func toolkits() keyTable {
	return keyTable{
		named("keys.next", nil, fyne.KeyTab),
		{says: "keys.previous", shortcut: &desktop.CustomShortcut{KeyName: fyne.KeyTab, Modifier: fyne.KeyModifierShift}},
	}
}

// add adds a line, or to the one that does the same.
func (g *keyGroup) add(pressed, does string) {
	i := slices.IndexFunc(g.lines, func(l keyLine) bool { return l.does == does })
	if i < 0 {
		g.lines = append(g.lines, keyLine{pressed, does})
		return
	}
	g.lines[i].pressed += "  " + pressed
}

// spelledOf names what is pressed for a key.
func (w *Window) spelledOf(k keyStroke) string {
	var all []string
	for _, name := range k.names {
		if name != fyne.KeyEnter { // the other Return key
			all = append(all, w.keyName(name))
		}
	}
	for i, r := range k.runes {
		switch {
		case r == ' ':
			all = append(all, w.keyName(fyne.KeySpace))
		case i == 0:
			all = append(all, strings.ToUpper(string(r)))
		}
	}
	if k.shortcut != nil {
		all = append(all, w.spelled(k.shortcut))
	}
	return strings.Join(all, "  ")
}

// spelled names a shortcut.
func (w *Window) spelled(s fyne.Shortcut) string {
	of, ok := s.(fyne.KeyboardShortcut)
	if !ok {
		return s.ShortcutName()
	}
	say, text := w.desk.Words().Say, ""
	for _, m := range []struct {
		is    fyne.KeyModifier
		named string
	}{
		{fyne.KeyModifierControl, say("key.ctrl")},
		{fyne.KeyModifierSuper, say("key.cmd")},
		{fyne.KeyModifierAlt, say("key.alt")},
		{fyne.KeyModifierShift, say("key.shift")},
	} {
		if of.Mod()&m.is != 0 {
			text += m.named + "+"
		}
	}
	return text + w.keyName(of.Key())
}

// keyName returns what stands on a key.
func (w *Window) keyName(name fyne.KeyName) string {
	say := w.desk.Words().Say
	names := map[fyne.KeyName]string{
		fyne.KeyLeft: "←", fyne.KeyRight: "→", fyne.KeyUp: "↑", fyne.KeyDown: "↓",
		fyne.KeyReturn: say("key.return"), fyne.KeySpace: say("key.space"), fyne.KeyEscape: say("key.escape"),
		fyne.KeyDelete: say("key.delete"), fyne.KeyBackspace: say("key.backspace"), fyne.KeyTab: say("key.tab"),
		fyne.KeyPageUp: say("key.page-up"), fyne.KeyPageDown: say("key.page-down"),
		fyne.KeyHome: say("key.home"), fyne.KeyEnd: say("key.end"),
	}
	if known, ok := names[name]; ok {
		return known
	}
	return string(name)
}

// showKeys shows the page of keys.
func (w *Window) showKeys() {
	s := w.Canvas().Size()
	wide := widened(400)
	columns := max(1, min(2, int((s.Width-90)/(wide+24))))
	scroll := box.NewVScroll(w.keysPage(columns, min(wide, s.Width-120)))
	q := w.ask("keys.title", scroll)
	q.scroll = scroll
	q.offer("ask.ok", func() {})
	q.Resize(fyne.NewSize(float32(columns)*(wide+24)+50, min(s.Height-40, grown(640))))
	q.put()
}

// keysPage sets the groups in columns of about one height.
func (w *Window) keysPage(columns int, wide float32) fyne.CanvasObject {
	groups := w.keyGroups()
	total := 0
	for _, g := range groups {
		total += len(g.lines) + 2
	}
	page, column, used := box.New(layout.NewCustomPaddedHBoxLayout(24)), (*fyne.Container)(nil), 0
	for _, g := range groups {
		if column == nil || used >= (total+1)/2 && len(page.Objects) < columns {
			column = box.New(layout.NewCustomPaddedVBoxLayout(3))
			page.Add(column)
		}
		column.Add(box.New(layout.NewCustomPaddedLayout(8, 0, 0, 0), written(g.title, textSize, ink, true)))
		for _, l := range g.lines {
			column.Add(keyRow(l, wide))
			used++
		}
		used += 2
	}
	return page
}

// keyRow sets what keys do beside them, both broken into lines where they are long.
func keyRow(l keyLine, wide float32) fyne.CanvasObject {
	pressed, does := newFlow(readSize, ink), newFlow(readSize, faint)
	left := 0.44 * wide
	pressed.set(l.pressed, ink)
	does.set(l.does, faint)
	pressed.lay(left - 10)
	does.lay(wide - left)
	row := box.NewWithoutLayout(pressed.Container, does.Container)
	high := max(pressed.tall(left-10), does.tall(wide-left))
	put(pressed.Container, 0, 0, left-10, high)
	put(does.Container, left, 0, wide-left, high)
	return box.New(layout.NewGridWrapLayout(fyne.NewSize(wide, high)), row)
}
