package tables

import (
	"fmt"
	"sort"
	"strconv"
	"strings"
	"sync"
)

var plates = sync.OnceValue(func() map[string][]int {
	sets := map[string][]int{}
	for _, r := range sheet("plates.csv") {
		for _, cell := range strings.Fields(r["circles"]) {
			circle, err := strconv.Atoi(cell)
			if err != nil {
				panic(fmt.Errorf("plates.csv: %w", err))
			}
			sets[r["set"]] = append(sets[r["set"]], circle)
		}
	}
	for _, circles := range sets {
		sort.Ints(circles)
	}
	return sets
})

// PlateSet returns the hole circles of the three-plate handbook set, the
// smallest first.
func PlateSet() []int { return append([]int(nil), plates()["three-plate"]...) }

// TwoSidedPlate returns the hole circles of the handbook's single plate, drilled
// on both sides, the smallest first.
func TwoSidedPlate() []int { return append([]int(nil), plates()["one-plate"]...) }
