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
	s := &seeker{window: w, entry: entry{came: idle, left: idle, escape: idle, help: w.help, nudge: func(int) {}, undo: w.desk.Undo, redo: w.desk.Redo}}
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

// keys returns those of the box.
func (s *seeker) keys() keyTable {
	return keyTable{
		named("keys.first-found", s.first, fyne.KeyReturn, fyne.KeyEnter, fyne.KeyDown),
		named("keys.all-parts", s.all, fyne.KeyEscape),
	}
}

func (s *seeker) TypedKey(k *fyne.KeyEvent) {
	if !s.keys().press(k.Name) {
		s.entry.TypedKey(k)
	}
}

// first goes to the first part found.
func (s *seeker) first() {
	w := s.window
	if found := w.rail.parts; len(found) > 0 {
		w.desk.Choose(found[0].ID)
		w.Canvas().Focus(found[0])
	}
}

// all goes back to all parts.
func (s *seeker) all() {
	s.asked = false
	s.window.Canvas().Unfocus()
	s.window.desk.Search("")
	s.show()
}
