// Package tables holds the tables of the trade: drills, threads, saw blades,
// index plates and materials, each with its source.
package tables

// Material is what a wheel is made of.
type Material struct {
	Name    string  // as in a job: "brass"
	Density float64 // kg/m³
	Young   float64 // GPa
	Source  string
}
