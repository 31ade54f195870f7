package tables

import (
	"slices"
	"strings"
	"sync"
)

// Speed is the cutting speed that is usual for an operation on a material, in
// m/min, from low to high; one figure is both.
type Speed struct {
	Operation string // as in the table: "milling"
	Material  string // as in the table: "brass and bronze"
	Tool      string // what the cutter is made of: "HSS" or "carbon steel"
	Low, High float64
	Note      string
	Source    string
}

// speeds are the cutting speeds there are figures for.
var speeds = sync.OnceValue(func() []Speed {
	var list []Speed
	for _, r := range sheet("speeds.csv") {
		list = append(list, Speed{
			Operation: r["operation"], Material: r["work_material"], Tool: r["tool"],
			Low: r.number("low_m_min"), High: r.number("high_m_min"),
			Note: r["note"], Source: r["source"],
		})
	}
	return list
})

// SpeedFor returns the cutting speed of an HSS cutter, the first in the table,
// for an operation on a material, whatever its case; false where the table has
// none. A row for the material itself goes before one that names it beside
// another, and that before one for its kind: "engraving brass" is a brass.
func SpeedFor(material, operation string) (Speed, bool) {
	material = strings.ToLower(strings.TrimSpace(material))
	for _, suits := range []func(of string) bool{
		func(of string) bool { return of == material },
		func(of string) bool { return slices.Contains(strings.Split(of, " and "), material) },
		func(of string) bool {
			return slices.ContainsFunc(strings.Split(of, " and "), func(kind string) bool {
				return strings.HasSuffix(material, " "+kind)
			})
		},
	} {
		for _, s := range speeds() {
			if s.Tool == "HSS" && strings.EqualFold(s.Operation, strings.TrimSpace(operation)) && suits(s.Material) {
				return s, true
			}
		}
	}
	return Speed{}, false
}
