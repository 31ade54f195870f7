package window

import (
	"slices"
	"time"

	"fyne.io/fyne/v2"

	"tipline/app/appearance"
	"tipline/app/window/desk"
)

// windows are the program's windows, each over a desk of its own, in the order they
// were opened.
type windows struct {
	app   fyne.App
	list  []*Window
	aside func(run, done func()) // for their desks; nil to do everything at once
	later func(do func())
	ended func()           // called when the last is closed
	looks appearance.Looks // of all windows
	guide *guideWindow     // nil while it is closed
}

// add makes a window over a desk.
func (a *windows) add(d *desk.Desk) *Window {
	d.Aside, d.Later = a.aside, a.later
	w := newWindow(a, d)
	a.list = append(a.list, w)
	return w
}

// of returns the window whose job is kept in a file or is brought from it, nil for none.
func (a *windows) of(file string) *Window {
	for _, w := range a.list {
		if w.desk.Holds(file) || w.desk.Brings(file) {
			return w
		}
	}
	return nil
}

// drop forgets a window that is closed.
func (a *windows) drop(w *Window) {
	a.list = slices.DeleteFunc(a.list, func(other *Window) bool { return other == w })
}

// quit closes all windows, after asking in each whose job is not saved.
func (a *windows) quit() { a.ask(slices.Clone(a.list)) }

// ask asks in the windows that are left to ask in, then closes all.
func (a *windows) ask(left []*Window) {
	for len(left) > 0 && left[0].desk.Saved() {
		left = left[1:]
	}
	if len(left) > 0 {
		left[0].raise()
		left[0].careful(func() { a.ask(left[1:]) })
		return
	}
	for _, w := range slices.Clone(a.list) {
		w.end()
	}
}

// look looks after the files of all windows' jobs.
func (a *windows) look() {
	for _, w := range slices.Clone(a.list) {
		w.look()
	}
}

// looking is how often the files of the jobs are looked after, besides whenever the
// program is come back to.
const looking = 2 * time.Second

// watch looks after the files for as long as the program runs.
func (a *windows) watch() {
	a.app.Lifecycle().SetOnEnteredForeground(a.look)
	go func() {
		for range time.Tick(looking) {
			fyne.Do(a.look)
		}
	}()
}

// raise brings the window before all others.
func (w *Window) raise() {
	w.Show()
	w.RequestFocus()
}

// end closes the window and what it held.
func (w *Window) end() {
	w.all.drop(w)
	w.desk.Close()
	w.Close()
	if len(w.all.list) == 0 {
		w.all.guide.close()
		w.all.ended()
	}
}

// leave closes the window, after asking where its job is not saved. The last one ends
// the program.
func (w *Window) leave() {
	if w.question == nil && w.asking == nil {
		w.careful(w.end)
	}
}
