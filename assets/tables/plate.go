package tables

import (
	"fmt"
	"sort"
	"strconv"
	"strings"
	"sync"
)

// The handbook sets.
const (
	ThreePlates = "three-plate"
	OnePlate    = "one-plate" // drilled on both sides
)

// Plate is one plate, or one side of a plate drilled on both.
type Plate struct {
	Set     string
	Circles []int // holes of each circle
}

var plates = sync.OnceValue(func() []Plate {
	var list []Plate
	for _, r := range sheet("plates.csv") {
		p := Plate{Set: r["set"]}
		for _, cell := range strings.Fields(r["circles"]) {
			circle, err := strconv.Atoi(cell)
			if err != nil {
				panic(fmt.Errorf("plates.csv: %w", err))
			}
			p.Circles = append(p.Circles, circle)
		}
		list = append(list, p)
	}
	return list
})

// PlatesOf returns the plates of a handbook set, each with its circles as they
// are drilled.
func PlatesOf(set string) [][]int {
	var of [][]int
	for _, p := range plates() {
		if p.Set == set {
			of = append(of, append([]int(nil), p.Circles...))
		}
	}
	return of
}

// circlesOf returns all circles of a set, the smallest first.
func circlesOf(set string) []int {
	var all []int
	for _, circles := range PlatesOf(set) {
		all = append(all, circles...)
	}
	sort.Ints(all)
	return all
}

// PlateSet returns the hole circles of the three-plate handbook set, the
// smallest first.
func PlateSet() []int { return circlesOf(ThreePlates) }

// TwoSidedPlate returns the hole circles of the handbook's single plate, drilled
// on both sides, the smallest first.
func TwoSidedPlate() []int { return circlesOf(OnePlate) }
