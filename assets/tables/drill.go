package tables

import (
	"math"
	"strings"
	"sync"
)

// TwistDrill is one drill of the inch series. Its size is given in inches by the
// standard, so Inches holds it exactly, as decimals or as a fraction.
type TwistDrill struct {
	Series string // "number", "letter" or "fraction"
	Name   string // "#60", "F", "1/16"
	Inches string // "0.0400", "1/16"
	MM     float64
	Status string
	Source string
}

// drills are number drills 1 to 97, letter drills A to Z and every 64th of an inch to 1/2.
var drills = sync.OnceValue(func() []TwistDrill {
	var list []TwistDrill
	for _, r := range sheet("drills.csv") {
		list = append(list, twistDrill(r))
	}
	return list
})

func twistDrill(r row) TwistDrill {
	d := TwistDrill{
		Series: r["series"], Name: r["designation"], Inches: r["diameter_in"],
		MM: 25.4 * r.number("diameter_in"), Status: r["status"], Source: r["source"],
	}
	switch d.Series {
	case "number":
		d.Name = "#" + d.Name
	case "fraction":
		d.Inches = d.Name
	}
	return d
}

// DrillNamed returns the drill of that name: "#60", "F", "1/16".
func DrillNamed(name string) (TwistDrill, bool) {
	for _, d := range drills() {
		if d.Name == strings.TrimSpace(name) {
			return d, true
		}
	}
	return TwistDrill{}, false
}

// NearestDrill returns the drill nearest to a diameter in millimetres, the
// smaller of two equally near; the smallest there is for a diameter that is no
// number.
func NearestDrill(mm float64) TwistDrill {
	least, _ := DrillNamed("#97")
	if math.IsNaN(mm) {
		return least
	}
	mm = min(max(mm, 0), 1e3)
	best := least
	for _, d := range drills() {
		off, kept := math.Abs(d.MM-mm), math.Abs(best.MM-mm)
		if off < kept || off == kept && d.MM < best.MM {
			best = d
		}
	}
	return best
}

// DrillFrom returns the smallest drill of at least a diameter in millimetres, the
// largest there is where none is, or where the diameter is no number.
func DrillFrom(mm float64) TwistDrill {
	best, _ := DrillNamed("1/2")
	for _, d := range drills() {
		if d.MM >= mm && d.MM < best.MM {
			best = d
		}
	}
	return best
}
