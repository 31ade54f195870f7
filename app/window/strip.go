package window

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
)

// strip is the steps of the present part along the top, joined by the order of the
// work.
type strip struct {
	*fyne.Container
	desk  *desk.Desk
	steps []desk.Step
	tabs  []*tab
	help  func()
}

func newStrip(d *desk.Desk, help func()) *strip {
	return &strip{desk: d, help: help, Container: &fyne.Container{Layout: stripLayout{}}}
}

// show brings the steps in line with the desk; it reports whether they are others.
func (s *strip) show() (others bool) {
	steps := s.desk.Steps()
	if others = !slices.Equal(steps, s.steps); others {
		s.rebuild(steps)
	}
	for i, step := range s.steps {
		s.tabs[i].show(step == s.desk.Step(), s.desk.Mark(step))
	}
	return others
}

// rebuild makes the tabs anew, but keeps those whose step stays.
func (s *strip) rebuild(steps []desk.Step) {
	old, had := s.tabs, s.steps
	s.steps, s.tabs, s.Objects = steps, nil, nil
	for _, step := range steps {
		if len(s.tabs) > 0 {
			s.Objects = append(s.Objects, canvas.NewRectangle(edge))
		}
		t := newTab(s.desk.Words().Say("step."+string(step)), func() { s.desk.Go(step) })
		if i := slices.Index(had, step); i >= 0 {
			t = old[i]
		}
		t.help = s.help
		s.tabs = append(s.tabs, t)
		s.Objects = append(s.Objects, t)
	}
	s.Layout.Layout(s.Objects, s.Size())
	s.Refresh()
}

// stripLayout sets tabs side by side with links between them.
type stripLayout struct{}

// linkWidth is between two tabs.
const linkWidth = 14

// MinSize is what the tabs take with nothing of their names cut off.
func (stripLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	tabs := float32(len(objects)/2 + 1)
	return fyne.NewSize(tabs*widest(objects)+(tabs-1)*linkWidth, stripHeight)
}

// widest returns the width of the widest tab.
func widest(objects []fyne.CanvasObject) float32 {
	wide := float32(0)
	for i := 0; i < len(objects); i += 2 {
		wide = max(wide, objects[i].MinSize().Width)
	}
	return wide
}

func (stripLayout) Layout(objects []fyne.CanvasObject, s fyne.Size) {
	tabs := float32(len(objects)/2 + 1)
	room := s.Width - (tabs-1)*linkWidth
	least, more := widest(objects), room
	even, width := room >= least*tabs, min(max(tabWidth, least), room/tabs)
	if !even { // each goes by its own name
		for i := 0; i < len(objects); i += 2 {
			more -= objects[i].MinSize().Width
		}
	}
	x := float32(0)
	for i, o := range objects {
		if i%2 == 1 {
			put(o, x+2, s.Height/2-1, linkWidth-4, 2)
			x += linkWidth
			continue
		}
		if !even {
			width = o.MinSize().Width + more/tabs
		}
		put(o, x, 0, width, s.Height)
		x += width
	}
}
