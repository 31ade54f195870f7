package command

import (
	"math/big"

	"tipline/app/solve"
)

// PairFigures are how a pair meshes. The ratio is turns of the pinion to one of
// the wheel, whichever is which; approach and recess are turns of the wheel. The
// contact ratio is the mean number of teeth in contact, the arc of action the
// pitches that one tooth drives through.
type PairFigures struct {
	ID              string  `json:"id"`
	Wheel           string  `json:"wheel"`
	Pinion          string  `json:"pinion"`
	Ratio           float64 `json:"ratio"`
	Centres         float64 `json:"centre_distance_mm"`
	PitchCentres    float64 `json:"pitch_centre_distance_mm"`
	Backlash        float64 `json:"backlash_mm"`
	BacklashAngle   float64 `json:"backlash_deg"`
	VelocityError   float64 `json:"velocity_error_share"`
	Contact         float64 `json:"contact_ratio"`
	Approach        float64 `json:"approach_deg"`
	Recess          float64 `json:"recess_deg"`
	WheelClearance  float64 `json:"wheel_tip_clearance_mm"`
	PinionClearance float64 `json:"pinion_tip_clearance_mm"`
}

func pairFigures(p *solve.Pair) (PairFigures, bool) {
	t := p.Turn
	if t == nil || t.Jams() {
		return PairFigures{}, false
	}
	return PairFigures{
		ID: p.ID(), Wheel: p.Part.Wheel, Pinion: p.Part.Pinion, Ratio: t.Mean,
		Centres: t.Centres, PitchCentres: p.Nominal, Backlash: t.PitchPlay, BacklashAngle: t.Backlash.Degrees(),
		VelocityError: t.WorstError, Contact: t.Contact,
		Approach: t.Approach.Degrees(), Recess: t.Recess.Degrees(),
		WheelClearance: t.DriverClearance, PinionClearance: t.FollowerClearance,
	}, true
}

// TrainFigures are a train's counts. The ratio is turns of the last part to one of
// the first, exact as "a/b" also where b is 1; Reverse says that the last turns
// against the first.
type TrainFigures struct {
	ID           string   `json:"id"`
	From         string   `json:"from"`
	To           string   `json:"to"`
	Ratio        float64  `json:"ratio"`
	RatioExact   string   `json:"ratio_exact"`
	Pairs        []string `json:"pairs"`
	Reverse      bool     `json:"reverse"`
	TurnsPerHour *float64 `json:"turns_per_hour,omitempty"`
	BeatsPerHour *float64 `json:"beats_per_hour,omitempty"`
	BeatsExact   string   `json:"beats_per_hour_exact,omitempty"`
	Beat         *float64 `json:"beat_s,omitempty"`
	Pendulum     *float64 `json:"pendulum_mm,omitempty"`
}

func trainFigures(t *solve.Train) (TrainFigures, bool) {
	if t.Way == nil {
		return TrainFigures{}, false
	}
	f := TrainFigures{
		ID: t.ID(), From: t.Part.From, To: t.Part.To, Ratio: *decimal(t.Way.Ratio), RatioExact: t.Way.Ratio.String(),
		Pairs: []string{}, Reverse: t.Way.Reverse, TurnsPerHour: decimal(t.PerHour),
	}
	for _, p := range t.Pairs {
		f.Pairs = append(f.Pairs, p.ID())
	}
	if b := t.Beat; b != nil {
		f.BeatsPerHour, f.BeatsExact, f.Beat, f.Pendulum = decimal(b.PerHour), b.PerHour.String(), &b.Seconds, &b.Length
	}
	return f, true
}

// decimal returns nil for no number.
func decimal(r *big.Rat) *float64 {
	if r == nil {
		return nil
	}
	v, _ := r.Float64()
	return &v
}
