package mount

import (
	"fmt"

	"tipline/geometry"
)

// Mark is what is struck beside one hole of a part, so that the parts go back as
// they were drilled.
type Mark struct {
	Part int // a wheel of the stack, from the collet up; −1 for the collet
	Hole int // a place of the stack's Mounting
	Dots int
}

// Stacked is a stack of wheels on one collet. All reference tips stand at 12
// o'clock.
type Stacked struct {
	Mounting Mounting         // holes common to all
	Turns    []geometry.Angle // clockwise, of each wheel out of its own coordinates into the stack's
	OnWheel  [][]Place        // the holes in each wheel's own coordinates

	Smaller, Larger int            // wheels, by their tip circles
	Twist           geometry.Angle // that the misplacement makes between the wheels
	Error           float64        // and how far that is round the larger's tip circle, mm

	Marks []Mark
	Notes []*geometry.Limit
}

// Stack works out how two or more wheels are screwed to one collet, listed from
// the collet up, with the reference tips in line: tips[i] of wheel i, tip 0 where
// none is given. The misplacement is how far to the side, in mm, the smaller
// wheel's tips may come to stand at their circle. Refuses what Fit refuses.
func Stack(wheels []Seat, tips []int, c Collet, screws Screws, misplacement float64) (Stacked, error) {
	s, err := InLine(wheels, tips, misplacement)
	if err != nil {
		return Stacked{}, err
	}
	seats := make([]Seat, len(wheels))
	for i, w := range wheels {
		seats[i] = w.turned(s.Turns[i])
	}
	if s.Mounting, err = fit(seats, c, screws); err != nil {
		return Stacked{}, err
	}
	s.Notes = s.Mounting.Notes
	s.settle()
	return s, nil
}

// InLine works out what Stack does of wheels that no screws hold: how they are
// turned and what a misplacement makes of it, without holes and marks.
func InLine(wheels []Seat, tips []int, misplacement float64) (Stacked, error) {
	if err := checkStack(wheels, tips); err != nil {
		return Stacked{}, err
	}
	s := Stacked{}
	for i, w := range wheels {
		s.Turns = append(s.Turns, turnOf(w, tips, i))
		if w.Tip < wheels[s.Smaller].Tip {
			s.Smaller = i
		}
		if w.Tip > wheels[s.Larger].Tip {
			s.Larger = i
		}
	}
	small := wheels[s.Smaller].Tip / 2
	if !(misplacement >= 0 && misplacement <= small) {
		return Stacked{}, geometry.Between("misplacement", misplacement, 0, small, "mount.misplacement-value")
	}
	s.Twist = geometry.Angle(misplacement / small)
	s.Error = float64(s.Twist) * wheels[s.Larger].Tip / 2
	return s, nil
}

// settle sets the holes out on each wheel and says what to mark: the collet with
// one dot at the first hole, each wheel there with one more than its place, so
// that both order and turn can be read, and the side the dots are on is the top.
func (s *Stacked) settle() {
	s.Marks = []Mark{{Part: -1, Dots: 1}}
	for i, turn := range s.Turns {
		var places []Place
		for _, p := range s.Mounting.Places {
			places = append(places, Place{(p.Angle - turn).Turn(), p.At.Rotate(turn)})
		}
		s.OnWheel = append(s.OnWheel, places)
		s.Marks = append(s.Marks, Mark{Part: i, Dots: i + 1})
	}
}

// turnOf returns how far clockwise wheel i is turned to bring its reference tip
// to 12 o'clock.
func turnOf(w Seat, tips []int, i int) geometry.Angle {
	if i >= len(tips) {
		return 0
	}
	return (-geometry.FullTurn * geometry.Angle(tips[i]) / geometry.Angle(w.Teeth)).Turn()
}

func checkStack(wheels []Seat, tips []int) error {
	if len(wheels) < 2 {
		return geometry.AtLeast("wheels", float64(len(wheels)), 2, "mount.stack-too-low")
	}
	if len(tips) > len(wheels) {
		return geometry.AtMost("tips", float64(len(tips)), float64(len(wheels)), "mount.tip-without-wheel")
	}
	for i, w := range wheels {
		if err := w.check(); err != nil {
			return err
		}
		if i < len(tips) && (tips[i] < 0 || tips[i] >= w.Teeth) {
			of := geometry.Quantity(fmt.Sprintf("tips[%d]", i))
			return geometry.Between(of, float64(tips[i]), 0, float64(w.Teeth-1), "mount.no-such-tip")
		}
	}
	return nil
}
