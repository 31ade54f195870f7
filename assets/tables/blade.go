package tables

import (
	"math"
	"strings"
	"sync"
)

// Blade is a piercing-saw blade. Lengths are in millimetres. Makers differ by
// about 0.01 mm and two or three teeth an inch.
type Blade struct {
	Name         string  // "2/0"
	Thickness    float64 // the width of the kerf, nearly
	Depth        float64 // from the teeth to the back
	TeethPerInch float64
	StartHole    float64 // usual diameter of the hole it is threaded through
	StartDrill   string  // the drill for it, "#75"
	Status       string
	Source       string
}

var blades = sync.OnceValue(func() []Blade {
	var list []Blade
	for _, r := range sheet("blades.csv") {
		list = append(list, Blade{
			Name: r["blade_number"], Thickness: 25.4 * r.number("thickness_in"), Depth: 25.4 * r.number("depth_in"),
			TeethPerInch: r.number("teeth_per_in"),
			StartHole:    25.4 * r.number("starting_hole_in"), StartDrill: r["starting_hole_number_drill"],
			Status: r["status"], Source: r["source"],
		})
	}
	return list
})

// Blades lists the blades, the finest first.
func Blades() []Blade { return append([]Blade(nil), blades()...) }

// BladeNamed returns the blade of that number: "2/0", "1"; "0" is the same as
// "1/0".
func BladeNamed(name string) (Blade, bool) {
	name = strings.TrimSpace(name)
	if name == "0" {
		name = "1/0"
	}
	for _, b := range blades() {
		if b.Name == name {
			return b, true
		}
	}
	return Blade{}, false
}

// Turning returns the least radius of an inside corner the blade can saw round,
// in millimetres: half the diagonal of its section, √(thickness² + depth²)/2.
// The saw turns a sharp corner by running on the spot while the blade is turned
// about itself, and what it then clears is a round hole as wide as the diagonal.
// Common practice, no source; reasoned from the blade's section alone.
func (b Blade) Turning() float64 { return math.Hypot(b.Thickness, b.Depth) / 2 }
