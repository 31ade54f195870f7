package solve

import (
	"errors"
	"strings"

	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/mount"
)

// asked is a mount as its maker asks for it.
type asked struct {
	collet  mount.Collet
	screws  mount.Screws
	screwed bool // by screws that can all be read; else it is riveted or soldered, or wrong
	sound   bool // nothing in it is wrong
}

// mount reads what is asked of a mount. One that says nothing of screws has none;
// of one that counts all else must be there.
func (r *reader) mount(m *job.Mount, counts bool) asked {
	if m == nil {
		return asked{sound: true}
	}
	mark := len(r.findings)
	a := asked{collet: r.collet(m.Collet)}
	if m.Screws.Empty() && m.Thread.Empty() && m.ScrewCircle.Empty() && m.Start.Empty() {
		a.sound = r.sound(mark)
		return a
	}
	if counts {
		r.need(map[geometry.Quantity]job.Value{
			"mount.screws": m.Screws, "mount.thread": m.Thread, "mount.screw_circle": m.ScrewCircle,
		})
	}
	a.screws = mount.Screws{
		Count:  r.count("mount.screws", m.Screws, 0),
		Thread: r.thread("mount.thread", m.Thread),
		Circle: r.length("mount.screw_circle", m.ScrewCircle, 0),
	}
	if !m.Start.Empty() {
		start := r.angle("mount.start", m.Start, 0)
		a.screws.Start = &start
	}
	a.sound = r.sound(mark)
	a.screwed = a.sound
	return a
}

func (r *reader) collet(c *job.Collet) mount.Collet {
	if c == nil {
		return mount.Collet{}
	}
	return mount.Collet{
		Bore:     r.length("mount.collet.bore", c.Bore, 0),
		Register: r.length("mount.collet.register", c.Register, 0),
		Flange:   r.length("mount.collet.flange", c.Flange, 0),
	}
}

// thread reads a thread by its name.
func (r *reader) thread(field geometry.Quantity, v job.Value) tables.Thread {
	t, ok := tables.ThreadNamed(v.Text)
	if !ok && !v.Empty() {
		r.find(Error, field, "mount.no-such-thread", text("read", v.Text), text("choices", threadChoices()))
	}
	return t
}

// threadChoices names the systems of threads, each with its first and last size.
func threadChoices() string {
	var systems []string
	first, last := map[string]string{}, map[string]string{}
	for _, t := range tables.Threads() {
		if first[t.System] == "" {
			systems, first[t.System] = append(systems, t.System), t.Size
		}
		last[t.System] = t.Size
	}
	for i, s := range systems {
		systems[i] = s + " " + first[s]
		if first[s] != last[s] {
			systems[i] += " – " + last[s]
		}
	}
	return list(systems)
}

// solveMount works out how the wheel is screwed to its collet, and weighs it with
// the holes. What is asked of a stacked wheel is read alone.
func (w *Wheel) solveMount(r *reader, stands standing) {
	w.asked = r.mount(w.Part.Mount, stands != overridden)
	if w.Part.Mount == nil {
		return
	}
	r.wanted(w.Part.Thickness, "thickness")
	if stands != alone {
		return
	}
	w.Collet = w.asked.collet
	if !w.asked.sound || !w.ready() {
		return
	}
	if !w.asked.screwed {
		if !r.fail("mount.collet.register", w.Collet.Check(w.Bore)) {
			r.notes(w.Collet.Notes(w.seat()))
		}
		return
	}
	m, err := mount.Fit(w.seat(), w.Collet, w.asked.screws)
	if r.unmounted(w.asked.screws.Thread, err) {
		return
	}
	w.drill(r, m)
	r.mountFindings(m)
}

// ready reports whether all that screws must find metal in is worked out.
func (w *Wheel) ready() bool {
	return w.Teeth != nil && w.Thickness > 0 && w.Teeth.CheckBore(w.Bore) == nil &&
		(w.Crossing != nil || w.Part.Crossing == nil && w.Uncrossed != nil)
}

// drill puts the holes of a mounting into the wheel.
func (w *Wheel) drill(r *reader, m mount.Mounting) {
	var holes []crossing.Hole
	for _, p := range m.Places {
		holes = append(holes, crossing.Hole{Radius: m.Screws.Circle / 2, Angle: p.Angle, Diameter: m.Clear.MM})
	}
	if !r.fail("mount.screw_circle", w.lay(holes)) {
		w.Mounting = &m
	}
}

// seat is what the wheel offers to the screws.
func (w *Wheel) seat() mount.Seat {
	s := mount.Seat{
		Bore: w.Bore, Root: 2 * w.Teeth.RootRadius, Tip: 2 * w.Teeth.TipRadius, Teeth: w.Teeth.Count, Thickness: w.Thickness,
	}
	if l := w.Crossing; l != nil {
		s.Hub = 2 * l.HubRadius
		for _, a := range l.Arms {
			s.Arms = append(s.Arms, a.Angle)
		}
		for _, o := range l.Windows {
			s.Windows = append(s.Windows, o.Outline)
		}
	}
	for i, a := range w.spec.Additions {
		if a.Kind != crossing.HoleKind {
			continue
		}
		for _, one := range a.EvenlySpread() {
			h := crossing.Hole{Radius: one.Radius, Angle: one.Angle, Diameter: one.Diameter}
			s.Holes = append(s.Holes, mount.Hole{At: h.Centre(), Diameter: h.Diameter, Addition: i})
		}
	}
	return s
}

// unmounted keeps an error of a mounting by screws of a thread. Where a finer one
// would do it is named.
func (r *reader) unmounted(asked tables.Thread, err error) bool {
	var limit *geometry.Limit
	if errors.As(err, &limit) && limit.Code == "mount.thread-too-large" {
		for _, t := range tables.Threads() {
			if t.System == asked.System && t.Major == limit.Max {
				r.find(Error, limit.Quantity, "mount.finer-thread", text("thread", t.Short()))
				return true
			}
		}
	}
	return r.fail("mount.screw_circle", err)
}

// mountFindings says with what the holes are drilled and what will go wrong.
func (r *reader) mountFindings(m mount.Mounting) {
	r.notes(m.Notes)
	t := m.Screws.Thread
	code := "mount.drills"
	if m.Clear.Assumed {
		code = "mount.drills-assumed"
	}
	r.find(Note, "mount.thread", code, text("thread", t.Short()), drillPlace("clear", m.Clear), drillPlace("tap", m.Tap))
	at := places(len(m.Places), Angle, func(i int) float64 { return float64(m.Places[i].Angle) })
	r.find(Note, "mount.screw_circle", "mount.holes", several("at", at), number("circle", m.Screws.Circle, Length))
}

// drillPlace writes a drill by its name, or where it has none by its size.
func drillPlace(name string, d mount.Drill) Place {
	if d.Name == "" {
		return number(name, d.MM, Length)
	}
	return text(name, strings.TrimSpace(d.Name))
}
