package laws

import (
	"fmt"

	"tipline/app/job"
)

// job types a whole job: mostly one wheel, now and then a pinion, a pair with its
// train, or a stack.
func (m *maker) job() *job.Job {
	units := "mm"
	if m.inches {
		units = "in"
	}
	j := job.New(units)
	j.Title, j.Revised = "Any job", "2026-11-25"
	switch m.IntN(50) {
	case 0, 1, 2:
		j.Pinions = append(j.Pinions, m.pinion("pinion", m.between(0.2, 1.5)))
	case 3:
		m.train(j)
	case 4, 5:
		m.stack(j)
	default:
		j.Wheels = append(j.Wheels, m.wheel("wheel"))
	}
	return j
}

// train types wheels and pinions that drive each other, from arbor to arbor.
func (m *maker) train(j *job.Job) {
	module := m.between(0.3, 1.2)
	last := ""
	for i := range 1 + m.IntN(2) {
		wheel, pinion := fmt.Sprintf("wheel-%d", i), fmt.Sprintf("pinion-%d", i)
		p := m.pinion(pinion, module)
		w := &job.Wheel{ID: wheel, Teeth: &job.Teeth{
			Form: m.of("cycloidal", "lantern driver"), Count: m.count(24 + m.IntN(80)), Module: m.length(module), Leaves: p.Leaves,
		}}
		if w.Teeth.Form.Text == "lantern driver" {
			p.Form, p.Trundle = m.of("lantern"), w.Teeth.Trundle
		}
		j.Wheels, j.Pinions = append(j.Wheels, w), append(j.Pinions, p)
		pair := &job.Pair{ID: fmt.Sprintf("pair-%d", i), Wheel: wheel, Pinion: pinion}
		if m.once(4) {
			pair.Centres = m.length(module * m.between(10, 60))
		}
		j.Pairs = append(j.Pairs, pair)
		if last != "" {
			j.Arbors = append(j.Arbors, &job.Arbor{ID: "arbor-" + last, Parts: []string{last, wheel}})
		}
		last = pinion
	}
	j.Trains = append(j.Trains, &job.Train{ID: "train", From: "wheel-0", To: last, Turns: m.of("", "1", "1/12", "7 1/2")})
	if m.once(10) {
		j.Pairs[0].Wheel = m.of("pinion-0", "", "no-such", "train").Text
	}
}

// stack types wheels on one collet.
func (m *maker) stack(j *job.Job) {
	s := &job.Stack{ID: "stack", Misplacement: m.maybe(2, 0.05)}
	size := 0.0
	for i := range 2 + m.IntN(2) {
		w := m.wheel(fmt.Sprintf("wheel-%d", i))
		if !m.once(3) {
			w.Mount = nil
		}
		j.Wheels = append(j.Wheels, w)
		s.Wheels = append(s.Wheels, w.ID)
		if m.once(2) {
			s.Tips = append(s.Tips, m.count(m.IntN(12)))
		}
		size = 20
	}
	switch m.IntN(12) {
	case 0:
		s.Wheels = append(s.Wheels, s.Wheels[0])
	case 1:
		s.Wheels = append(s.Wheels, "stack", "")
	}
	if !m.once(4) {
		s.Mount = m.mount(size)
	}
	j.Stacks = append(j.Stacks, s)
}
