package depthing

import (
	"math"

	"tipline/geometry"
)

// closestSteps is how many steps of a pitch are looked at to find the closest
// centres: play changes smoothly over a pitch, and 200 steps miss the least of it
// by a part in 40,000.
const closestSteps = 200

// Foul says why the turned pair jams and from which distance of centres on it
// would not; nil where it does not jam.
func Foul(driver, follower Gear, t Turn) *geometry.Limit {
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
	closest, err := Closest(driver, follower)
	if err != nil {
		return geometry.Between("centres", t.Centres, 0, t.Centres, "depthing.never")
	}
	return geometry.AtLeast("centres", t.Centres, closest, code)
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
	low := math.Max(math.Max(a, b), math.Max(a+follower.Floor, b+driver.Floor)) + 1e-6
	high := farthest(driver, follower) - 1e-6
	turns := func(centres float64) bool {
		t, err := Mesh(driver, follower, centres, closestSteps)
		return err == nil && !t.Jams()
	}
	switch {
	case low < high && turns(low):
		return low, nil
	case low >= high || !turns(high):
		return 0, geometry.Between("centres", low, low, high, "depthing.never")
	}
	for high-low > 1e-3 {
		if middle := (low + high) / 2; turns(middle) {
			high = middle
		} else {
			low = middle
		}
	}
	return high, nil
}
