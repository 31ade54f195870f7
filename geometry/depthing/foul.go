package depthing

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// closestSteps is how many steps of a pitch are looked at to find the closest
// centres: play changes smoothly over a pitch, and 200 steps miss the least of it
// by a part in 40,000. roughSteps, every fifth of them, come near it, and firstSteps,
// every fifth of those, find most of what jams; what jams in some of the steps jams in
// all.
const (
	finer        = 5
	firstSteps   = fewestSteps
	roughSteps   = firstSteps * finer
	closestSteps = roughSteps * finer
)

// Foul says why the turned pair jams and from which distance of centres on it
// would not, as Closest returns it; nil where it does not jam, and Closest is not asked.
func (t Turn) Foul(closest func() (float64, error)) *geometry.Limit {
	if !t.Jams() {
		return nil
	}
	code := "depthing.jams"
	switch {
	case t.DriverClearance < 0:
		code = "depthing.driver-tips"
	case t.FollowerClearance < 0:
		code = "depthing.follower-tips"
	}
	least, err := closest()
	if err != nil {
		return geometry.Between("centres", t.Centres, 0, t.Centres, "depthing.never")
	}
	return geometry.AtLeast("centres", t.Centres, least, code)
}

// Closest returns the least distance of centres in mm, to 1 µm and rounded up, at
// which the pair turns without jamming. The error is Mesh's, or says that the
// pair jams at any distance at which it meets.
func Closest(driver, follower Gear) (float64, error) {
	for _, g := range [2]Gear{driver, follower} {
		if err := g.check(); err != nil {
			return 0, err
		}
	}
	a, b := driver.TipRadius(), follower.TipRadius()
	low := math.Max(math.Max(a, b), math.Max(a+follower.Floor, b+driver.Floor)) + hair
	high := farthest(driver, follower) - hair
	turns := func(centres float64, steps int) bool {
		for n := firstSteps; n <= steps; n *= finer {
			if _, t, err := meshed(driver, follower, centres, n); err != nil || t.Jams() {
				return false
			}
		}
		return true
	}
	switch {
	case low < high && turns(low, closestSteps):
		return low, nil
	case low >= high || !turns(high, closestSteps):
		return 0, geometry.Between("centres", low, low, high, "depthing.never")
	}
	rough := seek.Last(high, low, closeEnough, func(c float64) bool { return turns(c, roughSteps) })
	low = math.Max(low, rough-closeEnough)
	for step := closeEnough; rough < high; step *= 2 {
		if turns(rough, closestSteps) {
			high = rough
			break
		}
		low, rough = rough, rough+step
	}
	return seek.Last(high, low, closeEnough, func(c float64) bool { return turns(c, closestSteps) }), nil
}

// closeEnough is how near, in mm, the closest centres are found: 1 µm.
const closeEnough = 1e-3

// hair is by how much, in mm, the ends of the search keep clear of the centres at
// which a tip would run through the other's middle, or two tips pass.
const hair = 1e-6
