package laws

import (
	"bytes"
	"context"
	"fmt"
	"math/rand/v2"
	"runtime/debug"
	"strings"

	"tipline/app/job"
	"tipline/app/solve"
)

// verdict is what one job is found to break, and what of it could be built.
type verdict struct {
	rnd    *rand.Rand // which of the dearer laws are looked at, and where
	job    *job.Job
	broken []string
	built  []string
}

// breaks notes a law that the job breaks, the first few of them.
func (v *verdict) breaks(law string, args ...any) {
	if len(v.broken) < 8 {
		v.broken = append(v.broken, fmt.Sprintf(law, args...))
	}
}

// holds notes a law that the job breaks unless ok.
func (v *verdict) holds(ok bool, law string, args ...any) {
	if !ok {
		v.breaks(law, args...)
	}
}

// seldom is true for one job in n: for laws that are dear to look at.
func (v *verdict) seldom(n int) bool { return v.rnd.IntN(n) == 0 }

// String shows what is broken, and the job, fit to be kept as a file.
func (v *verdict) String() string {
	var b strings.Builder
	for _, law := range v.broken {
		fmt.Fprintln(&b, law)
	}
	if err := v.job.Write(&b); err != nil {
		fmt.Fprintln(&b, err)
	}
	return b.String()
}

// judge reads a job from its text, solves it and looks at every law.
func judge(j *job.Job, rnd *rand.Rand) (v *verdict) {
	v = &verdict{rnd: rnd, job: j}
	defer func() {
		if p := recover(); p != nil {
			v.breaks("panics: %v\n%s", p, debug.Stack())
		}
	}()
	var file bytes.Buffer
	if err := j.Write(&file); err != nil {
		v.breaks("cannot be written: %v", err)
		return v
	}
	read, err := job.Read(&file)
	if err != nil {
		v.breaks("cannot be read back: %v", err)
		return v
	}
	r := solve.Solve(context.Background(), read)
	v.numbers(r)
	v.findings(r)
	for _, w := range r.Wheels {
		v.wheel(w)
	}
	for _, p := range r.Pinions {
		v.pinion(p)
	}
	v.pairs(r)
	v.stacks(r)
	if v.seldom(8) {
		v.otherHand(read, r)
	}
	if v.seldom(64) {
		v.drawn(r)
	}
	return v
}
