package laws

import (
	"tipline/app/job"
)

// crossing types the arms of a wheel: of every style, mostly such as can be made.
func (m *maker) crossing(b blanked) {
	size := b.root
	share := func(least, most float64) job.Value { return m.length(size * m.between(least, most)) }
	hub := size * m.between(0.25, 0.6)
	rim := size * m.between(0.04, 0.15)
	c := &job.Crossing{
		Arms: m.count([]int{3, 4, 5, 5, 6, 6, 6, 7, 8, 10, 12}[m.IntN(11)]), Placing: m.of("", "on tips", "equal"),
		Rim: m.length(rim), Hub: m.length(hub), ArmAtRim: share(0.03, 0.12), ArmAtHub: share(0.04, 0.16),
		FilletAtRim: m.maybe(4, size*m.between(0.01, 0.06)), FilletAtHub: m.maybe(4, size*m.between(0.01, 0.06)),
		Allowance: m.maybe(2, size*m.between(0.003, 0.02)), Blade: m.of("", "", "2/0", "4/0", "1"),
		StartHole: m.maybe(2, size*m.between(0.01, 0.05)),
	}
	b.part.Crossing = c
	switch m.IntN(3) {
	case 0:
		c.Style = m.of("", "straight")
	case 1:
		c.Style, c.Sweep = m.of("swept"), m.angle(m.NormFloat64()*20)
		if m.once(20) {
			c.Sweep = job.Typed("0.000000000001 rad")
		}
	case 2:
		c.Style, c.Waist = m.of("waisted"), share(0.02, 0.06)
		if m.once(2) {
			c.WaistAt = m.length(hub/2 + (size-rim-hub/2)*(0.2+0.6*m.Float64()))
		}
	}
	if m.once(6) {
		c.OuterRadius = share(0.5, 2)
	}
}

// mount types how a wheel or stack is screwed to its collet.
func (m *maker) mount(size float64) *job.Mount {
	w := &job.Mount{}
	if !m.once(6) {
		w.Screws = m.count([]int{2, 3, 4, 6, 1 + m.IntN(24)}[m.IntN(5)])
		w.Thread = m.of("BA 10", "BA 8", "M2", "M1.6", "BA 14", "2-56")
		w.ScrewCircle = m.length(size * m.between(0.15, 0.8))
	}
	if m.once(3) {
		w.Start = m.angle(m.Float64()*400 - 200)
	}
	if m.once(2) {
		w.Collet = &job.Collet{
			Bore: m.maybe(3, size*m.between(0.03, 0.2)), Register: m.maybe(2, size*m.between(0.05, 0.4)),
			Flange: m.maybe(2, size*m.between(0.2, 1)),
		}
	}
	return w
}

// addition types a hole, circle, line or note of the maker's own.
func (m *maker) addition(size float64) *job.Addition {
	a := &job.Addition{
		Kind: m.of("hole", "hole", "circle", "line", "note"), Radius: m.maybe(8, size*m.between(0.1, 1.1)),
		Angle: m.angle(m.Float64()*720 - 360), Diameter: m.maybe(4, size*m.between(0.01, 0.15)), Text: "here",
	}
	if m.once(3) {
		a.ToRadius, a.ToAngle = m.maybe(3, size*m.between(0.1, 1)), m.angle(m.Float64()*360)
	}
	if m.once(4) {
		a.Repeat = m.count(1 + m.IntN(12))
	}
	return a
}
