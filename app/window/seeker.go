package window

import "fyne.io/fyne/v2"

// seeker is the box at the head of the rail in which a part is searched for. It is there
// when the job has more than a handful of parts, or when it is asked for.
type seeker struct {
	entry
	window *Window
	asked  bool
}

func newSeeker(w *Window) *seeker {
	idle := func() {}
	s := &seeker{window: w, entry: entry{came: idle, left: idle, escape: idle, nudge: func(int) {}, undo: w.desk.Undo, redo: w.desk.Redo}}
	s.Wrapping, s.Scroll = fyne.TextWrapOff, fyne.ScrollHorizontalOnly
	s.ExtendBaseWidget(s)
	s.SetPlaceHolder(w.desk.Words().Say("rail.find"))
	s.OnChanged = w.desk.Search
	s.Hidden = true
	return s
}

// show brings the box in line with the desk.
func (s *seeker) show() {
	d := s.window.desk
	if s.Text != d.Sought() {
		s.SetText(d.Sought())
	}
	hidden := !d.Searchable() && !s.asked
	if s.Hidden != hidden {
		if s.Hidden = hidden; s.window.rail != nil {
			s.window.rail.Refresh()
		}
	}
}

// ask shows the box and gives it the keyboard.
func (s *seeker) ask() {
	s.asked = true
	s.show()
	s.window.Canvas().Focus(s)
}

// TypedKey goes to the first part found with Return, and back to all parts with Escape.
func (s *seeker) TypedKey(k *fyne.KeyEvent) {
	w := s.window
	switch k.Name {
	case fyne.KeyReturn, fyne.KeyEnter, fyne.KeyDown:
		if found := w.rail.parts; len(found) > 0 {
			w.desk.Choose(found[0].ID)
			w.Canvas().Focus(found[0])
		}
	case fyne.KeyEscape:
		s.asked = false
		w.Canvas().Unfocus()
		w.desk.Search("")
		s.show()
	default:
		s.entry.TypedKey(k)
	}
}
