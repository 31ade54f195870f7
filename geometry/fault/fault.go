// Package fault catches faults of the program itself, so that they end what was being done
// and not all else with it.
package fault

import (
	"fmt"
	"path"
	"runtime"
	"strings"
	"sync"
	"sync/atomic"
)

// Fault is what went wrong and where in the program's text, "crossing/window.go:112".
type Fault struct {
	What any
	At   string
}

// String says the fault on one line, for who mends it.
func (f *Fault) String() string {
	return strings.Join(strings.Fields(fmt.Sprint(f.What)), " ") + " (" + f.At + ")"
}

// Caught does something and returns its fault, nil for none. A fault that was caught
// before and raised again, as by panic, comes as it was.
func Caught(do func()) (f *Fault) {
	defer func() {
		switch what := recover().(type) {
		case nil:
		case *Fault:
			f = what
		default:
			f = &Fault{what, raised()}
		}
	}()
	do()
	return nil
}

// raised returns where the fault was raised that is being recovered from: in what called
// the runtime's panic last.
func raised() string {
	callers := make([]uintptr, 64)
	frames := runtime.CallersFrames(callers[:runtime.Callers(2, callers)])
	panicked := false
	for {
		frame, more := frames.Next()
		ofRuntime := strings.HasPrefix(frame.Function, "runtime.")
		if panicked && !ofRuntime || !more {
			return fmt.Sprintf("%s/%s:%d", path.Base(path.Dir(frame.File)), path.Base(frame.File), frame.Line)
		}
		panicked = panicked || ofRuntime
	}
}

// Each does n things side by side and waits for all. The fault of one is raised again where
// they were asked for, so that who catches faults there catches it.
func Each(n int, do func(i int)) {
	faults := make([]*Fault, n)
	var busy sync.WaitGroup
	for i := 1; i < n; i++ {
		busy.Go(func() { faults[i] = Caught(func() { do(i) }) })
	}
	if n > 0 {
		faults[0] = Caught(func() { do(0) })
	}
	busy.Wait()
	for _, f := range faults {
		if f != nil {
			panic(f)
		}
	}
}

// All does n things, as many at a time as there are processors, as Each does its few.
func All(n int, do func(i int)) {
	var taken atomic.Int64
	Each(min(n, runtime.GOMAXPROCS(0)), func(int) {
		for i := int(taken.Add(1)) - 1; i < n; i = int(taken.Add(1)) - 1 {
			do(i)
		}
	})
}
