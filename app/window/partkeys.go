package window

import "fyne.io/fyne/v2"

// TypedKey chooses the part, renames it with F2, deletes it with Delete, and goes to its
// neighbours with the arrow keys.
func (p *part) TypedKey(e *fyne.KeyEvent) {
	w := p.rail.window
	switch e.Name {
	case fyne.KeySpace, fyne.KeyReturn, fyne.KeyEnter:
		p.Tapped(nil)
	case fyne.KeyF2:
		p.Tapped(nil)
		w.askRename()
	case fyne.KeyDelete, fyne.KeyBackspace:
		p.Tapped(nil)
		w.askDelete()
	case fyne.KeyDown:
		p.rail.step(p, 1)
	case fyne.KeyUp:
		p.rail.step(p, -1)
	default:
		w.turn(e)
	}
}

// TypedShortcut copies the part and pastes one.
func (p *part) TypedShortcut(s fyne.Shortcut) {
	w := p.rail.window
	switch s.ShortcutName() {
	case (&fyne.ShortcutCopy{}).ShortcutName():
		p.Tapped(nil)
		w.copyPart()
	case (&fyne.ShortcutPaste{}).ShortcutName():
		w.pastePart()
	case (&fyne.ShortcutCut{}).ShortcutName():
		p.Tapped(nil)
		w.copyPart()
		w.tell(w.desk.Delete())
	}
}

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
