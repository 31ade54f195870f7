package dividing

import "fmt"

// Reading is an angle as a rotary table shows it, to the nearest second.
type Reading struct{ Degrees, Minutes, Seconds int }

// String writes the reading as 8° 03' 25".
func (r Reading) String() string {
	return fmt.Sprintf(`%d° %02d' %02d"`, r.Degrees, r.Minutes, r.Seconds)
}

// Row is one tooth of the table.
type Row struct {
	Tooth   int
	Reading Reading // from tooth 0
	Turns   int     // of the crank, from tooth 0
	Holes   int
}

// Table returns a row for every tooth, tooth 0 first. Each is worked out from
// tooth 0, so that nothing adds up.
func (a Answer) Table() []Row {
	rows := make([]Row, a.Divisions)
	for i := range rows {
		turns, holes := a.Place(i)
		rows[i] = Row{i, a.Reading(i), turns, holes}
	}
	return rows
}

// Reading returns tooth i's angle from tooth 0, rounded to the nearest second,
// halves up.
func (a Answer) Reading(i int) Reading {
	const turn = 360 * 60 * 60 // seconds
	s := (2*i*turn + a.divisions()) / (2 * a.divisions())
	return Reading{s / 3600, s / 60 % 60, s % 60}
}
