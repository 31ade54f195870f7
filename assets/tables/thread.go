package tables

import (
	"strings"
	"sync"
)

// Thread is a screw thread of the sizes that clocks use. Lengths are in
// millimetres; what no source was found for is 0, and a drill without a name
// has the size alone.
type Thread struct {
	System     string // "UNF", "BA", "ISO metric coarse", …
	Size       string // "0-80", "10", "M2"
	Major      float64
	Pitch      float64
	TapDrill   string
	Tap        float64
	ClearDrill string // close fit
	Clear      float64
	Status     string
	Source     string
}

// Name returns the thread's name as in a job: "UNF 0-80", "BA 10".
func (t Thread) Name() string { return t.System + " " + t.Size }

// Short returns what the thread is called on the bench: a metric one of coarse pitch by
// its size alone, "M1", as ISO 965-1 lets it be called (from memory).
func (t Thread) Short() string {
	if strings.HasPrefix(t.Size, "M") {
		return t.Size
	}
	return t.Name()
}

var threads = sync.OnceValue(func() []Thread {
	var list []Thread
	for _, r := range sheet("threads.csv") {
		list = append(list, Thread{
			System: r["system"], Size: strings.TrimSpace(strings.TrimSuffix(r["size"], r["system"])),
			Major: r.number("major_mm"), Pitch: r.number("pitch_mm"),
			TapDrill: drillName(r["tap_drill"]), Tap: r.number("tap_drill_mm"),
			ClearDrill: drillName(r["clear_close"]), Clear: r.number("clear_close_mm"),
			Status: r["status"], Source: r["source"],
		})
	}
	return list
})

// drillName returns a cell that names a drill, and nothing for one that says how
// the size was found.
func drillName(cell string) string {
	if _, ok := DrillNamed(cell); !ok {
		return ""
	}
	return cell
}

// Threads lists the threads.
func Threads() []Thread { return append([]Thread(nil), threads()...) }

// ThreadNamed returns the thread of that name, "system size". It may also go by
// names in use on the bench: a metric one by its size alone or as "ISO M2", a BA
// one as "BA10", "10BA" or "10 BA", an inch one without its pitch, "UNF 0", or by its
// size alone or first, "2-56" or "2-56 UNC". Case does not matter.
func ThreadNamed(name string) (Thread, bool) {
	name = strings.Join(strings.Fields(name), " ")
	for _, t := range threads() {
		for _, known := range t.names() {
			if strings.EqualFold(known, name) {
				return t, true
			}
		}
	}
	return Thread{}, false
}

func (t Thread) names() []string {
	names := []string{t.Name()}
	number, _, inch := strings.Cut(t.Size, "-")
	switch {
	case strings.HasPrefix(t.Size, "M"):
		names = append(names, t.Size, "ISO "+t.Size)
	case inch:
		names = append(names, t.System+" "+number, t.Size, t.Size+" "+t.System)
	default:
		names = append(names, t.System+t.Size, t.Size+t.System, t.Size+" "+t.System)
	}
	return names
}
