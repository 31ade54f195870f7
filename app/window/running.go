package window

import (
	"errors"

	"fyne.io/fyne/v2"

	"tipline/app/window/desk"
	"tipline/geometry/fault"
)

// ShowAndRun shows the window, offers what a crash left or shows a newcomer round, and
// runs the program until its last window is closed. From then on what is typed and
// dragged is solved and kept beside the windows' thread, each edit as soon as the one
// before is on the disk. What kept the job of that name from being opened, nil for
// nothing, is told, or asked about where another program has it open. When the last
// window is closed ended is called: the toolkit's own end waits now and then for what
// never comes. A fault of the program itself ends it too and is returned, once what is not
// saved is kept.
func (w *Window) ShowAndRun(name string, refused error, ended func()) *fault.Fault {
	return w.all.guarded(func() { w.showAndRun(name, refused, ended) })
}

func (w *Window) showAndRun(name string, refused error, ended func()) {
	w.all.ended = ended
	w.all.aside = func(run, done func()) {
		go func() {
			f := fault.Caught(run)
			fyne.Do(func() { raise(f, done) })
		}()
	}
	w.all.later = func(do func()) { go fault.Caught(do) }
	w.desk.Aside, w.desk.Later = w.all.aside, w.all.later
	switch lost := w.desk.Lost(); {
	case errors.Is(refused, desk.ErrElsewhere):
		w.offerLost(lost)
		w.askElsewhere(name)
	case refused != nil:
		w.offerLost(lost)
		w.tell(refused)
	case len(lost) > 0:
		w.offerLost(lost)
	default:
		w.receive()
	}
	w.all.watch()
	w.Window.ShowAndRun()
}

// guarded does something to the windows and returns the fault of the program itself that
// ended it, nil for none. What is not saved in any window is kept then as it was typed,
// and is offered back at the next start.
func (a *windows) guarded(run func()) *fault.Fault {
	f := fault.Caught(run)
	if f == nil {
		return nil
	}
	for _, w := range a.list {
		fault.Caught(w.desk.KeepNow)
	}
	return f
}

// raise raises the fault of what was done aside at the window, where it is caught; without
// one it goes on.
func raise(f *fault.Fault, then func()) {
	if f != nil {
		panic(f)
	}
	then()
}
