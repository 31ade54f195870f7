package window

import "tipline/geometry/fault"

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
