package template

import (
	"math"
	"math/big"

	"tipline/geometry"
)

// meshPlace is where a turning pair stands, in the driver's frame: its centre at
// the origin, the follower's at 12 o'clock.
type meshPlace struct {
	turn     float64        // share of the driver's pitch
	driver   geometry.Angle // as depthing.Step has it
	follower geometry.Angle
	tooth    int            // of the driver that pushes, counted clockwise from tooth 0
	at       geometry.Point // where it touches
	speed    float64        // turns of the follower to one of the driver
}

// place returns where the pair stands at a share of the driver's pitch, 0 to 1,
// between the steps it was turned in; the pair must have been turned.
func (p Pair) place(turn float64) meshPlace {
	if !(turn > 0) {
		turn = 0
	}
	turn = math.Min(turn, 1)
	n := len(p.Turn.Steps)
	i := min(int(turn*float64(n)), n-1)
	a, b, share := p.stepPlace(i), p.stepPlace(i+1), turn*float64(n)-float64(i)
	at := meshPlace{
		turn:     turn,
		driver:   a.driver + geometry.Angle(share)*(b.driver-a.driver),
		follower: a.follower + geometry.Angle(share)*(b.follower-a.follower),
		tooth:    a.tooth, at: a.at, speed: a.speed,
	}
	switch {
	case a.tooth == b.tooth:
		at.at, at.speed = a.at.Toward(b.at, share), a.speed+share*(b.speed-a.speed)
	case share > 0.5:
		at.tooth, at.at, at.speed = b.tooth, b.at, b.speed
	}
	return at
}

// stepPlace returns step i, or the first step of the next pitch after the last.
func (p Pair) stepPlace(i int) meshPlace {
	n, round := len(p.Turn.Steps), 0
	if i >= n {
		i, round = i-n, 1
	}
	s, pitch := p.Turn.Steps[i], geometry.Angle(round)*p.Driver.Pitch()
	return meshPlace{
		driver: s.Driver + pitch, follower: s.Follower - pitch*geometry.Angle(p.Turn.Mean),
		tooth: s.Tooth + round, at: s.At, speed: s.Speed,
	}
}

// normal returns where the common normal of the contact crosses the line of
// centres: it divides the distance of centres as the speeds are.
func (p Pair) normal(at meshPlace) geometry.Point {
	return geometry.Point{Y: p.Turn.Centres * at.speed / (1 + at.speed)}
}

// pitchPoint returns the point of the line of centres that the mean speeds divide
// it at.
func (p Pair) pitchPoint() geometry.Point {
	return geometry.Point{Y: p.Turn.Centres * p.Turn.Mean / (1 + p.Turn.Mean)}
}

// ratio returns the turns of the follower to one of the driver, exactly.
func (p Pair) ratio() *big.Rat {
	return big.NewRat(int64(p.Driver.Count), int64(max(p.Follower.Count, 1)))
}
