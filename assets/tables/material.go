// Package tables holds the tables of the trade: drills, threads, saw blades,
// index plates and materials, each with its source.
package tables

import (
	"strings"
	"sync"
)

// Material is what a wheel is made of.
type Material struct {
	Name    string  // as in a job: "brass"
	Alloy   string  // what it is to a metal merchant
	Density float64 // kg/m³
	Young   float64 // GPa
	Source  string
}

var materials = sync.OnceValue(func() []Material {
	var list []Material
	for _, r := range sheet("materials.csv") {
		list = append(list, Material{
			Name: r["name"], Alloy: r["alloy"],
			Density: r.number("density_kg_m3"), Young: r.number("youngs_modulus_gpa"),
			Source: r["source"],
		})
	}
	return list
})

// Materials lists the materials there are figures for, brass, the usual one,
// first.
func Materials() []Material { return append([]Material(nil), materials()...) }

// MaterialNamed returns the material of that name, whatever its case.
func MaterialNamed(name string) (Material, bool) {
	for _, m := range materials() {
		if strings.EqualFold(m.Name, strings.TrimSpace(name)) {
			return m, true
		}
	}
	return Material{}, false
}
