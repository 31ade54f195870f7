//go:build geos

package main

import (
	"bytes"
	"context"
	"fmt"
	"strings"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/samples"
)

// crossed is a cycloidal wheel of brass with six arms, 84 mm across its pitch circle
// whatever its count.
const crossed = `{"id": "w%d", "name": "Wheel", "thickness": "1.6 mm", "bore": "6 mm",
	"teeth": {"form": "cycloidal", "count": %d, "module": "%v mm", "leaves": 8},
	"crossing": {"arms": 6, "style": "straight", "placing": "on tips", "rim": "%v mm", "hub": "16 mm", "arm_at_rim": "3 mm",
		"arm_at_hub": "4 mm", "fillet_at_rim": "1.5 mm", "fillet_at_hub": "1 mm", "allowance": "0.3 mm"}}`

// wheels returns a job of so many crossed wheels of a count of teeth, no two alike: a
// solver that takes a wheel for another has nothing to gain.
func wheels(number, teeth int) (*job.Job, error) {
	list := make([]string, number)
	for i := range list {
		list[i] = fmt.Sprintf(crossed, i, teeth, 84/float64(teeth), 3+float64(i)/1000)
	}
	return job.Read(strings.NewReader(`{"tipline": 1, "title": "Speed", "units": "mm", "wheels": [` + strings.Join(list, ",") + `]}`))
}

// wheel returns one crossed wheel worked out.
func wheel(teeth int) (*solve.Wheel, error) {
	j, err := wheels(1, teeth)
	if err != nil {
		return nil, err
	}
	r := solve.Solve(context.Background(), j)
	if worst, any := solve.Worst(r.Findings); any && worst == solve.Error {
		return nil, fmt.Errorf("the wheel of %d teeth cannot be made", teeth)
	}
	return r.Wheels[0], nil
}

// sample returns the sample job.
func sample() (*job.Job, error) {
	data, err := samples.Read(samples.First)
	if err != nil {
		return nil, err
	}
	return job.Read(bytes.NewReader(data))
}
