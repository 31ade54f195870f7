package window

import "fyne.io/fyne/v2"

// keys returns those of a part on the rail.
func (p *part) keys() keyTable {
	w := p.rail.window
	chosen := func(do func()) func() { return func() { p.Tapped(nil); do() } }
	return keyTable{
		named("keys.choose", func() { p.Tapped(nil) }, fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter),
		named("keys.neighbour", func() { p.rail.step(p, -1) }, fyne.KeyUp),
		named("keys.neighbour", func() { p.rail.step(p, 1) }, fyne.KeyDown),
		named("keys.rename", chosen(w.askRename), fyne.KeyF2),
		named("keys.delete", chosen(w.askDelete), fyne.KeyDelete, fyne.KeyBackspace),
		{says: "keys.copy", shortcut: &fyne.ShortcutCopy{}, do: chosen(w.copyPart)},
		{says: "keys.cut", shortcut: &fyne.ShortcutCut{}, do: chosen(func() { w.copyPart(); w.tell(w.desk.Delete()) })},
		{says: "keys.paste", shortcut: &fyne.ShortcutPaste{}, do: w.pastePart},
	}
}

func (p *part) TypedKey(e *fyne.KeyEvent) {
	if !p.keys().press(e.Name) {
		p.rail.window.turn(e)
	}
}

func (p *part) TypedShortcut(s fyne.Shortcut) { p.keys().cut(s) }

// Dragged takes the part along; where it is let go it stands from then on.
func (p *part) Dragged(e *fyne.DragEvent) {
	p.pulled += e.Dragged.DY
	p.Move(p.Position().AddXY(0, e.Dragged.DY))
}

// DragEnd moves the part by as many places as it was dragged past.
func (p *part) DragEnd() {
	by := p.rail.passed(p)
	p.Move(p.Position().AddXY(0, -p.pulled))
	p.pulled = 0
	if by != 0 {
		p.Tapped(nil)
		p.rail.window.tell(p.rail.desk.Move(by))
	}
}

// step gives the keyboard to a part's neighbour and looks at that.
func (r *rail) step(p *part, by int) {
	for i, q := range r.parts {
		if to := i + by; q == p && to >= 0 && to < len(r.parts) {
			r.window.Canvas().Focus(r.parts[to])
			r.parts[to].Tapped(nil)
			return
		}
	}
}

// passed counts the parts of its own kind that a part was dragged past, less than nothing
// upwards.
func (r *rail) passed(p *part) int {
	was, by := p.Position().Y-p.pulled, 0
	for _, q := range r.parts {
		switch middle := q.Position().Y + q.Size().Height/2; {
		case q == p || q.kind != p.kind || r.desk.Sought() != "":
		case q.Position().Y > was && p.Position().Y+p.Size().Height > middle:
			by++
		case q.Position().Y < was && p.Position().Y < middle:
			by--
		}
	}
	return by
}
