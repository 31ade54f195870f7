package job

import (
	"math"
	"strconv"
)

// migration lifts a job file by one version, in place.
type migration func(root *node) error

// migrations lifts version i+1 to version i+2. Version 1 is the first, so that
// there is none yet.
var migrations []migration

// Version is the version of the job files this program writes.
var Version = len(migrations) + 1

// checkVersion returns the version of a job file. It refuses a file that is no
// job, and a version later than the latest.
func checkVersion(root *node, latest int) (int, error) {
	if root.shape != object || root.member("tipline") == nil {
		return 0, root.refuse(&Refusal{Code: "job.foreign"})
	}
	n := root.member("tipline")
	if n.shape != number {
		return 0, wrongShape(n, "tipline", "job.want.version")
	}
	v, err := strconv.ParseFloat(n.raw, 64)
	if err != nil || v < 1 || v != math.Trunc(v) {
		return 0, n.refuse(&Refusal{Code: "job.bad-version", Value: n.raw, Max: strconv.Itoa(latest)})
	}
	if v > float64(latest) {
		return 0, n.refuse(&Refusal{Code: "job.newer", Value: n.raw, Max: strconv.Itoa(latest)})
	}
	return int(v), nil
}

// migrate lifts a job file from its version to the latest, a step at a time.
func migrate(root *node, version int, steps []migration) error {
	for _, step := range steps[version-1:] {
		if err := step(root); err != nil {
			return err
		}
	}
	return nil
}
