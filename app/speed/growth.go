//go:build geos

package main

import (
	"context"
	"fmt"
	"math"
	"runtime"
	"time"

	"tipline/app/solve"
)

// grown is what a job of so many wheels takes to work out.
type grown struct {
	wheels int
	took   time.Duration
	bytes  float64 // held by its result
}

// growth measures jobs of 1 to 1,000 crossed wheels of 60 teeth, no two alike, by turns.
func growth(p *page) error {
	took, jobs := map[int][]time.Duration{}, map[int]func() *solve.Result{}
	for _, number := range numbers {
		j, err := wheels(number, 60)
		if err != nil {
			return err
		}
		jobs[number] = func() *solve.Result { return solve.Solve(context.Background(), j) }
		jobs[number]()
	}
	for range p.turns {
		for _, number := range numbers {
			took[number] = append(took[number], timed(max(1, least/number), func() { jobs[number]() }))
		}
	}
	for _, number := range numbers {
		p.grown = append(p.grown, grown{number, median(took[number]), held(jobs[number])})
	}
	first, last := p.grown[tenth], p.grown[len(p.grown)-1]
	p.add(row{
		what: fmt.Sprintf("a wheel among %d", last.wheels), beside: fmt.Sprintf("a wheel among %d", first.wheels), goal: 1.25,
		ours: told(last.each()), theirs: told(first.each()), ratio: float64(last.each()) / float64(first.each()),
		note: fmt.Sprintf("time goes as the number to the power %.2f; linear is 1", p.power()),
	})
	return nil
}

// numbers are how many wheels the jobs have, least how many are worked out in a turn at
// least, and tenth the place of the job from which on every processor has its share.
var numbers = []int{1, 3, 10, 30, 100, 300, 1000}

const least, tenth = 1000, 2

func (g grown) each() time.Duration { return g.took / time.Duration(g.wheels) }

// held returns how many bytes a result keeps.
func held(work func() *solve.Result) float64 {
	var before, after runtime.MemStats
	runtime.GC()
	runtime.ReadMemStats(&before)
	r := work()
	runtime.GC()
	runtime.ReadMemStats(&after)
	runtime.KeepAlive(r)
	return float64(after.HeapAlloc) - float64(before.HeapAlloc)
}

// power returns the slope of the time over the number of wheels, both in logarithms,
// from 10 wheels on: by least squares.
func (p *page) power() float64 {
	var n, sx, sy, sxx, sxy float64
	for _, g := range p.grown[tenth:] {
		x, y := math.Log(float64(g.wheels)), math.Log(float64(g.took))
		n, sx, sy, sxx, sxy = n+1, sx+x, sy+y, sxx+x*x, sxy+x*y
	}
	return (n*sxy - sx*sy) / (n*sxx - sx*sx)
}
