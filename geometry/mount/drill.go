package mount

import "tipline/assets/tables"

// Drill is a drill to use.
type Drill struct {
	Name    string  // "#50"; empty for one that goes by its millimetres
	MM      float64 // 0 where there is none
	Assumed bool    // no table gives it: common practice, no source
}

// closeFit is how much larger than the screw a clearance drill is taken where no
// table names one. The close fits tabled for inch screws are 1.035 to 1.058 times
// the screw; that of the next drill up lies among them.
const closeFit = 1.04

// clearance returns the close clearance drill: the table's, and else the smallest
// drill at or above closeFit times the screw.
func clearance(t tables.Thread) Drill {
	if t.Clear > t.Major {
		return Drill{Name: t.ClearDrill, MM: t.Clear}
	}
	d := tables.DrillFrom(closeFit * t.Major)
	if d.MM < t.Major {
		return Drill{MM: closeFit * t.Major, Assumed: true}
	}
	return Drill{Name: d.Name, MM: d.MM, Assumed: true}
}

// starter returns the centre drill that gives a tap drill its start: the largest
// whose point is thinner than it. There is none for the finest holes, which start
// from a punch mark.
func starter(t tables.Thread) Drill {
	best := Drill{Assumed: true}
	for _, mm := range tables.CentreDrills() {
		if mm < t.Tap && mm > best.MM {
			best.MM = mm
		}
	}
	return best
}
