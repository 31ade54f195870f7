package command

import (
	"encoding/json"
	"math"

	"tipline/app/solve"
	"tipline/assets/words"
)

// Figures are a job's computed figures as they are printed: unrounded, in the
// units their names end with; angles run clockwise from 12 o'clock. What does not
// apply is nil and left out.
type Figures struct {
	Wheels   []WheelFigures  `json:"wheels"`
	Pinions  []PinionFigures `json:"pinions"`
	Pairs    []PairFigures   `json:"pairs"`
	Trains   []TrainFigures  `json:"trains"`
	Stacks   []StackFigures  `json:"stacks"`
	Findings []Finding       `json:"findings"`
}

// Finding is a finding as it is printed.
type Finding struct {
	Severity string `json:"severity"`
	Wheel    string `json:"wheel,omitempty"`
	Field    string `json:"field,omitempty"`
	Code     string `json:"code"`
	Text     string `json:"text"`
}

// Each is a figure of every window, arm j to arm j+1: printed as one number where
// they are all alike, else as a list.
type Each []float64

// alike is how far, as a share, figures that are equal in exact arithmetic may
// differ: closed forms over some thousand segments, each good to 1e-15.
const alike = 1e-9

// One returns the figure that all have, and false where they differ.
func (e Each) One() (float64, bool) {
	for _, v := range e {
		if math.Abs(v-e[0]) > alike*math.Abs(e[0]) {
			return 0, false
		}
	}
	return e[0], true
}

// MarshalJSON writes one number or a list.
func (e Each) MarshalJSON() ([]byte, error) {
	if v, one := e.One(); one {
		return json.Marshal(v)
	}
	return json.Marshal([]float64(e))
}

// FiguresOf gathers the figures of a job worked out. A part that could not be
// built, a pair that does not turn, a train that leads nowhere and a stack that
// cannot be are left out.
func FiguresOf(r *solve.Result, w words.Words) Figures {
	return Figures{
		Wheels:   gathered(r.Wheels, wheelFigures),
		Pinions:  gathered(r.Pinions, pinionFigures),
		Pairs:    gathered(r.Pairs, pairFigures),
		Trains:   gathered(r.Trains, trainFigures),
		Stacks:   gathered(r.Stacks, stackFigures),
		Findings: findingsOf(r, w),
	}
}

// gathered returns the figures of those parts that have some.
func gathered[P, F any](parts []P, figures func(P) (F, bool)) []F {
	list := []F{}
	for _, part := range parts {
		if f, ok := figures(part); ok {
			list = append(list, f)
		}
	}
	return list
}

func findingsOf(r *solve.Result, w words.Words) []Finding {
	units := solve.Units(r.Job, w)
	list := []Finding{}
	for _, f := range r.Findings {
		list = append(list, Finding{string(f.Severity), f.Part, string(f.Field), f.Code, f.Sentence(w, units)})
	}
	return list
}

// some returns nil for a figure of 0, which stands for none.
func some(v float64) *float64 {
	if v == 0 {
		return nil
	}
	return &v
}
