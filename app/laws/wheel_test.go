package laws

import (
	"fmt"
	"math"

	"tipline/app/job"
)

// blanked is a wheel that a maker has begun with, and about what size it will be.
type blanked struct {
	part      *job.Wheel
	count     int
	tip, root float64 // radii
}

// teeth returns how many teeth a wheel has: mostly as clocks do, now and then as few
// or as many as may be.
func (m *maker) teeth() int {
	switch m.IntN(20) {
	case 0:
		return 3 + m.IntN(9)
	case 1:
		return int(m.between(180, 500))
	case 2:
		if m.once(10) {
			return int(m.between(500, 2000))
		}
	}
	return int(m.between(12, 150))
}

// wheel types a wheel that is to be called so.
func (m *maker) wheel(id string) *job.Wheel {
	w := &job.Wheel{
		ID: id, Hand: m.of("", "clockwise", "anticlockwise"), Material: m.of("", "", "brass", "steel"),
		Thickness: m.maybe(15, m.between(0.4, 5)),
	}
	b := blanked{part: w, count: m.teeth()}
	m.toothed(&b)
	w.Bore = m.maybe(5, m.between(0.05, 0.4)*b.root)
	if m.once(3) {
		w.Blank = &job.Blank{Oversize: m.length(0.2), Holding: m.of("", "mandrel", "adhesive")}
	}
	if m.once(2) {
		w.Cutter = m.cutter(b.tip)
	}
	if m.once(3) {
		w.Dividing = m.dividing()
	}
	if !m.once(4) {
		m.crossing(b)
	}
	if m.once(3) {
		w.Mount = m.mount(b.root)
	}
	for m.once(5) && len(w.Additions) < 4 {
		w.Additions = append(w.Additions, m.addition(b.root))
	}
	return w
}

func (m *maker) toothed(b *blanked) {
	form := []string{"cycloidal", "cycloidal", "lantern driver", "measured", "pointed", "pointed", "pointed", "ratchet"}[m.IntN(8)]
	t := &job.Teeth{Form: m.of(form), Count: m.count(b.count)}
	b.part.Teeth = t
	switch form {
	case "cycloidal", "lantern driver":
		module := m.between(0.2, 1.5)
		b.tip, b.root = module*float64(b.count)/2+module, module*(float64(b.count)/2-1.57)
		t.Module, t.Leaves = m.length(module), m.count(6+m.IntN(11))
		if form != "cycloidal" && m.once(3) {
			t.Trundle = m.length(module * m.between(0.8, 1.4))
		}
	default:
		b.tip = m.between(8, 120)
		b.root = b.tip * (1 - m.between(0.03, 0.3))
		t.TipDiameter, t.RootDiameter = m.length(2*b.tip), m.length(2*b.root)
		if form != "measured" {
			m.pointed(t, b)
		}
	}
	b.root = math.Max(b.root, 0.3)
}

// pointed types the rest of a pointed tooth, one of whose figures is left to be
// worked out.
func (m *maker) pointed(t *job.Teeth, b *blanked) {
	pitch := 2 * math.Pi * b.tip / float64(b.count)
	deep := math.Min(b.tip-b.root, 1.5*pitch)
	b.root = b.tip - deep
	t.RootDiameter = m.length(2 * b.root)
	t.Undercut = m.angle(m.Float64() * 15)
	t.Floor = m.maybe(8, pitch*m.between(0.03, 0.3))
	t.FloorSlope = m.angle([]float64{0, 0, m.Float64() * 20}[m.IntN(3)])
	t.FrontRelief = m.angle([]float64{0, 0, m.Float64() * 8}[m.IntN(3)])
	t.Land = m.length([]float64{0, pitch * m.between(0.01, 0.3)}[m.IntN(2)])
	if m.once(3) {
		t.CornerRadius = m.length(pitch * m.between(0.005, 0.05))
	}
	straight := m.once(2)
	if straight {
		t.BackAngle = m.angle(10 + m.Float64()*45)
		t.BackFillet = m.maybe(2, pitch*m.between(0.01, 0.2))
	} else {
		t.BackRadius = m.length(pitch * m.between(0.4, 4))
	}
	m.leaveOut(t, straight)
}

// leaveOut leaves out the figure that is to be worked out, most of the time.
func (m *maker) leaveOut(t *job.Teeth, straight bool) {
	if m.once(20) {
		return
	}
	solve := "root_diameter"
	switch {
	case m.once(3):
		solve, t.Land = "land", job.Value{}
	case m.once(2) && straight:
		solve, t.BackAngle = "back_angle", job.Value{}
	case m.once(2) && !straight:
		solve, t.BackRadius = "back_radius", job.Value{}
	default:
		t.RootDiameter = job.Value{}
	}
	if straight && solve == "back_angle" || m.once(2) {
		t.Solve = m.of(solve)
	}
}

// cutter types the bit for teeth of a wheel of such a tip radius.
func (m *maker) cutter(tip float64) *job.Cutter {
	c := &job.Cutter{
		StockWidth: m.maybe(3, m.between(2, 16)), StockThickness: m.maybe(3, m.between(1.5, 12)),
		Clearance: m.angle(float64(5 + m.IntN(15))), Swing: m.maybe(2, m.between(8, 40)),
		Enters: m.of("", "front", "back"), Ground: m.of("", "facets", "formed"),
	}
	if m.once(4) {
		c.Rake = m.angle(float64(m.IntN(25) - 10))
	}
	if m.once(4) {
		c.WheelEdge = m.length(m.between(0.05, 2))
	}
	if m.once(8) {
		c.Bit = m.bit(tip)
	}
	return c
}

// bit types a bit as it was measured: down, along and up, with an arc here and there.
func (m *maker) bit(tip float64) *job.Bit {
	size := tip * m.between(0.02, 0.2)
	x := -size * m.Float64()
	b := &job.Bit{}
	for i, y := range []float64{2, 0.1 * m.Float64(), 0, 0.3 * m.Float64(), 2.5} {
		c := &job.Corner{X: m.length(x), Y: m.length(y * size)}
		if i > 0 && m.once(3) {
			c.Radius = m.length(size * m.between(0.5, 8) * float64(1-2*m.IntN(2)))
		}
		b.Chain = append(b.Chain, c)
		x += size * m.between(0.02, 0.8)
	}
	return b
}

func (m *maker) dividing() *job.Dividing {
	d := &job.Dividing{Ratio: m.count([]int{40, 60, 72, 90, 1 + m.IntN(200)}[m.IntN(5)])}
	if m.once(3) {
		for range 1 + m.IntN(6) {
			d.Circles = append(d.Circles, m.count(15+m.IntN(60)))
		}
	}
	if m.once(4) {
		d.Direct = append(d.Direct, m.count(24), m.count(60))
	}
	return d
}

// pinion types a pinion.
func (m *maker) pinion(id string, module float64) *job.Pinion {
	p := &job.Pinion{
		ID: id, Form: m.of("cycloidal", "cycloidal", "lantern"), Leaves: m.count(6 + m.IntN(11)), Module: m.length(module),
		Bore: m.maybe(3, module*m.between(0.2, 4)), Thickness: m.maybe(3, m.between(1, 10)),
	}
	if m.once(3) {
		p.Ratio = job.Typed(fmt.Sprintf("%.2f", m.between(1, 12)))
	}
	if m.once(4) {
		p.Trundle = m.length(module * m.between(0.7, 1.5))
	}
	if m.once(2) {
		p.Cutter = m.cutter(module * 6)
	}
	if m.once(3) {
		p.Dividing = m.dividing()
	}
	return p
}
