package window

import (
	"reflect"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// sheets are the sorts of sheet and the parts that are printed or left out, each with a
// box to tick. They are seen where sheets are chosen.
type sheets struct {
	*fyne.Container
	window *Window
	ticks  []*tickbox
	shown  [2][]desk.Tick
}

func newSheets(w *Window) *sheets {
	return &sheets{Container: box.New(layout.NewCustomPaddedVBoxLayout(2)), window: w}
}

// show brings the boxes in line with the desk.
func (s *sheets) show() {
	sorts, parts := s.window.desk.Ticks()
	now := [2][]desk.Tick{sorts, parts}
	s.Hidden = len(sorts) == 0
	if reflect.DeepEqual(now, s.shown) {
		return
	}
	if sameTicks(now[0], s.shown[0]) && sameTicks(now[1], s.shown[1]) {
		for i, t := range append(sorts, parts...) {
			s.ticks[i].set(t.On)
		}
	} else {
		s.rebuild(sorts, parts)
	}
	s.shown = now
}

// sameTicks reports whether boxes bear the same names.
func sameTicks(a, b []desk.Tick) bool {
	if len(a) != len(b) {
		return false
	}
	for i := range a {
		if a[i].ID != b[i].ID || a[i].Label != b[i].Label {
			return false
		}
	}
	return true
}

// shape tells when the section has become taller or shorter.
func (s *sheets) shape() float32 {
	if s.Hidden {
		return 0
	}
	return s.MinSize().Height
}

func (s *sheets) rebuild(sorts, parts []desk.Tick) {
	d := s.window.desk
	s.ticks, s.Objects = nil, nil
	for _, t := range sorts {
		s.Add(s.tick(t, columnWidth, d.TickSort))
	}
	if len(parts) == 0 {
		s.Refresh()
		return
	}
	say := d.Words().Say
	s.Add(box.New(layout.NewCustomPaddedHBoxLayout(4), inMiddle(written(say("printing.parts"), readSize, faint, false)),
		quiet(say("printing.all"), func() { d.TickParts(true) }), quiet(say("printing.none"), func() { d.TickParts(false) })))
	s.list(parts)
	s.Refresh()
}

// besideBox returns what a box to tick takes beside its text.
func besideBox() float32 { return grown(20) + 16 }

// list sets the parts two to a line, those with long names one.
func (s *sheets) list(parts []desk.Tick) {
	var line *fyne.Container
	var width float32
	for _, t := range parts {
		wide := float32(columnWidth / 2)
		if fyne.MeasureText(t.Label, textSize, fyne.TextStyle{}).Width+besideBox() > wide {
			wide = columnWidth
		}
		if line == nil || wide != width {
			line, width = box.New(layout.NewGridWrapLayout(fyne.NewSize(wide, inputHeight-6))), wide
			s.Add(line)
		}
		line.Add(s.tick(t, wide, s.window.desk.TickPart))
	}
}

// tickbox is a box to tick that shows itself when it is come to.
type tickbox struct {
	widget.Check
	ring ring
	came func()
}

func (s *sheets) tick(of desk.Tick, room float32, ticked func(id string, on bool)) *tickbox {
	t := &tickbox{came: func() {}}
	t.Text, t.Checked = shortened(of.Label, textSize, fyne.TextStyle{}, room-besideBox()), of.On
	t.OnChanged = func(on bool) { ticked(of.ID, on) }
	t.ExtendBaseWidget(t)
	t.came = func() { reveal(t) }
	s.ticks = append(s.ticks, t)
	return t
}

// set ticks the box or not, which is then not told.
func (t *tickbox) set(on bool) {
	if t.Checked != on {
		t.Checked = on
		t.Refresh()
	}
}

func (t *tickbox) TypedKey(e *fyne.KeyEvent) { pass(t, e) }

func (t *tickbox) CreateRenderer() fyne.WidgetRenderer { return t.ring.round(t.Check.CreateRenderer()) }

func (t *tickbox) FocusGained() {
	t.Check.FocusGained()
	t.ring.show(true)
	t.came()
}

func (t *tickbox) FocusLost() {
	t.Check.FocusLost()
	t.ring.show(false)
}
