package solve

import (
	"errors"
	"math/big"

	"tipline/app/job"
	"tipline/geometry"
	"tipline/geometry/depthing"
)

// Train is the way from one part of a job to another through its pairs, from
// arbor to arbor. What could not be worked out is nil, and a finding says why.
type Train struct {
	Part     *job.Train
	Way      *depthing.Train
	Pairs    []*Pair        // passed, in order
	PerHour  *big.Rat       // turns of the last arbor an hour, exact
	Escape   *Wheel         // where the train ends at an escape wheel
	Beat     *depthing.Beat // that wheel's
	Findings []Finding

	name string
}

// ID returns the train's id.
func (t *Train) ID() string { return t.Part.ID }

// Name returns what the train is called: the names of where it begins and ends.
func (t *Train) Name() string { return t.name }

// Said returns what there is to say of the train.
func (t *Train) Said() []Finding { return t.Findings }

// solveTrain works one train out.
func solveTrain(part *job.Train, w works) *Train {
	r := &reader{part: part.ID, unit: w.unit}
	t := &Train{Part: part, name: part.ID}
	if part.From != "" && part.To != "" {
		t.name = w.name(part.From) + " – " + w.name(part.To)
	}
	t.follow(r, w)
	t.Findings = sorted(r.findings)
	return t
}

func (t *Train) follow(r *reader, w works) {
	mark := len(r.findings)
	from, to := r.arbor(w, "from", t.Part.From), r.arbor(w, "to", t.Part.To)
	if from != "" && t.Part.From == t.Part.To {
		r.find(Error, "to", "train.itself", text("part", w.name(t.Part.From)))
	}
	hour := from
	if t.Part.Hour != "" {
		hour = r.arbor(w, "hour", t.Part.Hour)
	}
	turns := r.ratio("turns", t.Part.Turns, big.NewRat(1, 1))
	if !r.sound(mark) {
		return
	}
	way, ok := r.way(w, "to", from, to, t.Part.From, t.Part.To)
	if !ok {
		return
	}
	t.Way = &way
	for _, i := range way.Pairs {
		p := w.engages[i]
		t.Pairs = append(t.Pairs, p)
		if p.Turn == nil || p.foul != nil {
			r.find(Caution, "to", "train.stuck", waitsAs("pair", p))
		}
	}
	if known, ok := r.way(w, "hour", hour, to, named(t.Part.Hour, t.Part.From), t.Part.To); ok && r.sound(mark) {
		t.PerHour = known.Ratio.Mul(known.Ratio, turns)
	}
	t.ratioFinding(r, w)
	t.beat(r, w)
}

// arbor returns the arbor that a part stands on, its own where it shares none, or
// that bears the id itself.
func (r *reader) arbor(w works, field geometry.Quantity, id string) string {
	arbor, known := w.arborOf[id]
	switch {
	case id == "":
		r.find(Error, field, "finding.missing")
	case !known:
		r.find(Error, field, "train.no-such-part", text("read", id))
	}
	return arbor
}

// way returns the way between two arbors, and a finding on the field where there
// is none.
func (r *reader) way(w works, field geometry.Quantity, from, to, first, last string) (depthing.Train, bool) {
	way, err := w.gearing.Train(from, to)
	switch {
	case errors.Is(err, depthing.ErrLocks):
		r.find(Error, field, depthing.ErrLocks.Error())
	case err != nil:
		places := []Place{text("from", first), text("to", last)}
		if len(w.idle) > 0 {
			places = append(places, waitsAs("pair", w.idle[0])) // it may be the way
		}
		r.find(Error, field, depthing.ErrNoWay.Error(), places...)
	}
	return way, err == nil
}

// ratioFinding says how the last part turns to the first.
func (t *Train) ratioFinding(r *reader, w works) {
	code := "train.ratio"
	if t.Way.Reverse {
		code = "train.ratio-against"
	}
	r.find(Note, "to", code, text("from", w.name(t.Part.From)), text("to", w.name(t.Part.To)),
		text("exact", t.Way.Ratio.RatString()))
}

// beat counts the beats where the train ends at an escape wheel.
func (t *Train) beat(r *reader, w works) {
	t.Escape = w.escapeOn(t.Part.To)
	if t.Escape == nil || t.PerHour == nil {
		return
	}
	beat, err := depthing.Beats(big.NewRat(1, 1), t.PerHour, TeethOf(t.Escape))
	if r.fail("turns", err) {
		return
	}
	t.Beat = &beat
	perHour, _ := beat.PerHour.Float64()
	r.find(Note, "to", "train.beat", number("beats", perHour, Fine), number("seconds", beat.Seconds, Fine),
		number("pendulum", beat.Length, Length))
	t.usualHour(r, w, perHour)
	perMinute := new(big.Rat).Quo(beat.PerHour, big.NewRat(60, 1))
	minute, _ := perMinute.Float64()
	switch {
	case !beat.Whole:
		r.find(Note, "to", "train.no-whole-hour", text("exact", beat.PerHour.RatString()))
	case !perMinute.IsInt():
		r.find(Note, "to", "train.no-whole-minute", number("beats", minute, Fine))
	}
}

// The beats an hour of clocks and watches: of two seconds each in a turret clock to ten
// in a second (common practice, no source).
const (
	fewestBeats = 1800
	mostBeats   = 36000
)

// usualHour says what is taken to turn once an hour where nothing is said of it and the
// beats that come of it are no clock's.
func (t *Train) usualHour(r *reader, w works, beats float64) {
	if t.Part.Hour != "" || !t.Part.Turns.Empty() || beats >= fewestBeats && beats <= mostBeats {
		return
	}
	r.find(Note, "hour", "train.usual-hour", text("from", w.name(t.Part.From)))
}
