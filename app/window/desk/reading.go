package desk

import (
	"math"

	"tipline/geometry"
	"tipline/render/screen"
)

// Reading is one thing read off the rule: what it is, in the job's unit, and in the
// other, which an angle has not.
type Reading struct{ Label, Value, Other string }

// Readings returns what is read off the rule as it lies, and would lie on the place that
// the pointer is drawn to, nil for none. The note says what else is to be known: what
// to do, and where the lengths are no lengths of the work.
func (d *Desk) Readings(pointer *screen.Snap) (list []Reading, note string) {
	at := d.along(pointer)
	scale, note := d.ruleScale()
	if last := len(at) - 1; last >= 0 && at[last].Radius > 0 && scale > 0 {
		list = append(list, d.long("radius", at[last].Radius/scale), d.long("diameter", 2*at[last].Radius/scale))
	}
	if len(at) < 2 {
		if len(list) == 0 {
			return nil, joined(d.words.Say("rule.start"), note)
		}
		return list, note
	}
	from, to := at[len(at)-2].At, at[len(at)-1].At
	way := to.Sub(from)
	if scale > 0 {
		way := way.Times(1 / scale)
		list = append([]Reading{
			d.long("distance", way.Norm()), d.long("across", math.Abs(way.X)), d.long("up", math.Abs(way.Y)),
		}, list...)
	}
	list = append(list, d.angle("lean", lean(way)))
	if len(at) == rulePicks {
		list = append(list, d.angle("between", between(at[0].At, from, to)))
	}
	return list, note
}

// ruleScale returns how many times larger than the work the drawing shows it, 0 where it
// is not to scale, and what is to be said about that.
func (d *Desk) ruleScale() (scale float64, note string) {
	drawing, _ := d.Seen()
	switch {
	case d.at() == Paper:
		return 1, d.words.Say("rule.paper")
	case drawing == nil || drawing.Scale <= 0:
		return 0, d.words.Say("rule.no-scale")
	}
	return drawing.Scale, ""
}

// ToScale reports whether lengths can be read off the present drawing.
func (d *Desk) ToScale() bool {
	scale, _ := d.ruleScale()
	return scale > 0
}

func (d *Desk) long(key string, mm float64) Reading {
	u := d.Style().Units
	return Reading{d.words.Say("rule." + key), u.Fine(mm), u.Other().Fine(mm)}
}

func (d *Desk) angle(key string, a geometry.Angle) Reading {
	return Reading{Label: d.words.Say("rule." + key), Value: d.Style().Units.Angle(a)}
}

// lean returns the angle between a line and the level, 0 to a quarter turn.
func lean(way geometry.Point) geometry.Angle {
	return geometry.Angle(math.Atan2(math.Abs(way.Y), math.Abs(way.X)))
}

// between returns the angle at a corner between the ways to two points, 0 to half a
// turn.
func between(from, corner, to geometry.Point) geometry.Angle {
	return geometry.Angle(math.Abs(float64(from.Sub(corner).Angle(to.Sub(corner)))))
}

func joined(a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + " " + b
}
