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

// LeastLength and MostLength bound every length of a job that is not nothing, in
// millimetres: a hundredth, less than a file takes, and two metres, more than any
// clock's wheel.
const (
	LeastLength = 0.01
	MostLength  = 2000.0
)

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

// AtMost returns the Limit of a value that is larger than max. Here and below a
// value that is no number is told as 0, and one beyond ±mostTold as that.
func AtMost(q Quantity, value, max float64, code string) *Limit {
	return &Limit{q, told(value), math.Inf(-1), max, code}
}

// AtLeast returns the Limit of a value that is smaller than min.
func AtLeast(q Quantity, value, min float64, code string) *Limit {
	return &Limit{q, told(value), min, math.Inf(1), code}
}

// Between returns the Limit of a value outside min to max.
func Between(q Quantity, value, min, max float64, code string) *Limit {
	return &Limit{q, told(value), min, max, code}
}

// Refused returns the Limit of a value for which no other of the same quantity
// would do, or that is not one of a few.
func Refused(q Quantity, value float64, code string) *Limit {
	return &Limit{q, told(value), math.Inf(-1), math.Inf(1), code}
}

// mostTold is more than any length of a job comes near.
const mostTold = 1e9

// told returns a value as a message can show it.
func told(v float64) float64 {
	if math.IsNaN(v) {
		return 0
	}
	return math.Min(math.Max(v, -mostTold), mostTold)
}
