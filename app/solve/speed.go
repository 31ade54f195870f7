package solve

import (
	"tipline/app/job"
	"tipline/assets/tables"
	"tipline/geometry/cutter"
)

// Speed is how fast a swung cutter is run.
type Speed struct {
	Material   string  // as in the table of speeds
	Low, High  float64 // cutting speed, m/min
	Slow, Fast float64 // of the spindle, turns a minute
}

// solveSpeed takes the speed of a swung cutter from the table. A single point that
// is swung round cuts as a milling cutter does.
func (t *Tooling) solveSpeed(r *reader, c *job.Cutter, material string) {
	if t.Relief == nil || t.Relief.Swing == 0 {
		return
	}
	v, ok := tables.SpeedFor(material, "milling")
	if !ok {
		return
	}
	t.Speed = &Speed{
		Material: v.Material, Low: v.Low, High: v.High,
		Slow: cutter.SpindleSpeed(v.Low, t.Relief.Swing), Fast: cutter.SpindleSpeed(v.High, t.Relief.Swing),
	}
	r.find(Note, "cutter.swing", "cutter.speed", choice("material", "material", v.Material),
		number("low", v.Low, Count), number("high", v.High, Count),
		number("slow", t.Speed.Slow, Count), number("fast", t.Speed.Fast, Count))
}
