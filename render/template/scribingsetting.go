package template

import "tipline/geometry"

// scribeStep is one step of scribing a wheel: what is done, the settings it takes,
// and how.
type scribeStep struct {
	title, how string
	settings   []scribeSetting
}

// scribeSetting is a setting of dividers or compass: a span, and which field made it.
type scribeSetting struct {
	text     string
	from, to geometry.Point // turned so that its arm stands at 12 o'clock
	quantity geometry.Quantity
	length   float64 // where it is no span of the wheel
	letter   string
	at       scribeAt
}

// scribeAt says where a setting is drawn: over the whole window, or large at an
// arm's mark.
type scribeAt int

const (
	wholeWindow scribeAt = iota
	rimMark
	hubMark
)

func (r scribeSetting) value() float64 {
	if r.from != r.to {
		return r.from.Dist(r.to)
	}
	return r.length
}

// lettered gives the settings of the steps their letters.
func lettered(steps []scribeStep) []scribeStep {
	const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ"
	n := 0
	for i := range steps {
		for k := range steps[i].settings {
			steps[i].settings[k].letter = letters[n%len(letters) : n%len(letters)+1]
			n++
		}
	}
	return steps
}

// again returns the step of a window of another width: its letters are those of the
// first with a 2, small ones where it is another step, and what no width changes is
// left out.
func (s scribeStep) again(first scribeStep) scribeStep {
	kept := s.settings[:0:0]
	for i, setting := range s.settings {
		if setting.from == setting.to {
			continue
		}
		if setting.letter = string(rune('a'+i)) + "2"; len(s.settings) == len(first.settings) {
			setting.letter = first.settings[i].letter + "2"
		}
		kept = append(kept, setting)
	}
	s.settings = kept
	return s
}

func alikeChords(a, b float64) bool { return a-b < alike && b-a < alike }

// differs reports whether a step takes other settings than another.
func (s scribeStep) differs(t scribeStep) bool {
	if len(s.settings) != len(t.settings) {
		return true
	}
	for i := range s.settings {
		if !alikeChords(s.settings[i].value(), t.settings[i].value()) {
			return true
		}
	}
	return false
}
