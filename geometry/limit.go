package geometry

import (
	"fmt"
	"math"
)

// Quantity names a value of a job by its field's path within the part, such as
// "crossing.rim". Segments carry the quantity that made them, and errors the
// quantity that is to blame, so that a click, a lit line and a message all name
// the same thing.
type Quantity string

// Limit is the error of a value that cannot be built with: the quantity, the
// value given and the range that would do, in millimetres or radians or as a
// plain count. Min and Max are −Inf or +Inf where nothing bounds that side. Code
// names the reason, such as "crossing.hub-too-large", and is a key of the
// catalogue of words.
type Limit struct {
	Quantity Quantity
	Value    float64
	Min, Max float64
	Code     string
}

// Error says the limit in plain numbers; the program's own messages are made
// from the catalogue instead.
func (l *Limit) Error() string {
	switch {
	case !math.IsInf(l.Min, -1) && !math.IsInf(l.Max, 1):
		return fmt.Sprintf("%s: %s is %.6g, allowed %.6g to %.6g", l.Code, l.Quantity, l.Value, l.Min, l.Max)
	case !math.IsInf(l.Max, 1):
		return fmt.Sprintf("%s: %s is %.6g, allowed at most %.6g", l.Code, l.Quantity, l.Value, l.Max)
	case !math.IsInf(l.Min, -1):
		return fmt.Sprintf("%s: %s is %.6g, allowed at least %.6g", l.Code, l.Quantity, l.Value, l.Min)
	}
	return fmt.Sprintf("%s: %s is %.6g", l.Code, l.Quantity, l.Value)
}

// AtMost returns the Limit of a value that is larger than max.
func AtMost(q Quantity, value, max float64, code string) *Limit {
	return &Limit{q, value, math.Inf(-1), max, code}
}

// AtLeast returns the Limit of a value that is smaller than min.
func AtLeast(q Quantity, value, min float64, code string) *Limit {
	return &Limit{q, value, min, math.Inf(1), code}
}

// Between returns the Limit of a value outside min to max.
func Between(q Quantity, value, min, max float64, code string) *Limit {
	return &Limit{q, value, min, max, code}
}
