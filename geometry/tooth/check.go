package tooth

import (
	"math"

	"tipline/geometry"
)

// What a job may ask of a wheel.
const (
	fewestTeeth  = 3
	mostTeeth    = 2000
	fewestLeaves = 3
	mostLeaves   = 2000
)

// checkCount refuses a count outside what a job may have.
func checkCount(count int) error {
	if count < fewestTeeth || count > mostTeeth {
		return geometry.Between("teeth.count", float64(count), fewestTeeth, mostTeeth, "tooth.count")
	}
	return nil
}

// check refuses a wheel that cannot be: too few teeth to leave metal under the
// spaces, or a size outside what a job may have.
func (c Cycloidal) check() error {
	if err := checkCount(c.Count); err != nil {
		return err
	}
	if c.Leaves < fewestLeaves || c.Leaves > mostLeaves {
		return geometry.Between("teeth.leaves", float64(c.Leaves), fewestLeaves, mostLeaves, "tooth.leaves")
	}
	if fewest := fewestCycloidal(); c.Count < fewest {
		return geometry.Between("teeth.count", float64(c.Count), float64(fewest), mostTeeth, "tooth.no-root")
	}
	most := geometry.MostLength / (float64(c.Count) + 2*c.AddendumFactor())
	if !(c.Module >= geometry.LeastLength && c.Module <= most) {
		return geometry.Between("teeth.module", c.Module, geometry.LeastLength, most, "tooth.module")
	}
	return nil
}

// fewestCycloidal returns the fewest teeth whose root circle has a radius: N/2
// must exceed the dedendum, π/2 modules.
func fewestCycloidal() int { return int(math.Floor(math.Pi)) + 1 }
