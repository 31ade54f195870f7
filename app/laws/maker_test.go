// Package laws holds what every job keeps to, whatever its maker typed: random jobs
// are read and solved as the program does it, and what comes out is measured by
// other means than those that made it.
package laws

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strconv"

	"tipline/app/job"
)

// maker types a job: sensible values as a plan has them, and now and then one that
// no plan has.
type maker struct {
	*rand.Rand
	inches bool    // the job's unit
	wild   float64 // the share of values that are senseless
}

// makerOf returns the maker of one job of a run: the same for the same seed and
// number, whatever jobs were made before.
func makerOf(seed, number uint64) *maker {
	m := &maker{Rand: rand.New(rand.NewPCG(seed, number))}
	m.inches = m.once(5)
	switch m.IntN(10) {
	case 0:
		m.wild = 0.2
	case 1, 2:
		m.wild = 0.03
	}
	return m
}

// once is true one time in n.
func (m *maker) once(n int) bool { return m.IntN(n) == 0 }

// of returns one of the words, an empty one for a field left empty.
func (m *maker) of(words ...string) job.Value {
	if m.odd() {
		return job.Typed(m.senseless())
	}
	return job.Typed(words[m.IntN(len(words))])
}

// between returns a number of a range, all of its sizes as often.
func (m *maker) between(least, most float64) float64 {
	return least * math.Exp(m.Float64()*math.Log(most/least))
}

func (m *maker) odd() bool { return m.wild > 0 && m.Float64() < m.wild }

// senseless is something that nobody should type.
func (m *maker) senseless() string {
	return []string{
		"", "0", "-1", "-0", "NaN", "1e400", "about 3", "0.01 mm", "2000 mm", "1999.99 mm", "0.0000001", "1000000",
		"-40 mm", "1/3 in", "#80", "#97", "Z", "π", "999999999999999999999999999999999999999999999999", "3", "12", "0.01",
		"45 deg", "89.999 deg", "-90 deg", "0.000000000000000000000000000001 deg", "360", "2000", "5'", "1 in 3 mm", "\u00a0",
	}[m.IntN(31)]
}

// length types a length of so many mm, in one of the ways that people do.
func (m *maker) length(mm float64) job.Value {
	if m.odd() {
		return job.Typed(m.senseless())
	}
	switch m.IntN(8) {
	case 0:
		return job.Typed(fmt.Sprintf("%.3f in", mm/25.4))
	case 1:
		return job.Typed(fmt.Sprintf("%d/64 in", max(1, int(math.Round(mm/25.4*64)))))
	case 2:
		return job.Typed(fmt.Sprintf("%.1f mm", mm))
	case 3:
		return job.Typed(fmt.Sprintf("%.0f thou", mm/25.4*1000))
	case 4:
		if m.inches {
			mm /= 25.4
		}
		return job.Counted(jsonNumber(mm))
	case 5:
		return job.Typed(strconv.FormatFloat(mm, 'f', 6, 64) + "mm")
	}
	return job.Typed(fmt.Sprintf("%.2f mm", mm))
}

// maybe types a length, or leaves the field empty one time in n.
func (m *maker) maybe(n int, mm float64) job.Value {
	if m.once(n) {
		return job.Value{}
	}
	return m.length(mm)
}

func (m *maker) angle(degrees float64) job.Value {
	if m.odd() {
		return job.Typed(m.senseless())
	}
	switch m.IntN(4) {
	case 0:
		return job.Typed(fmt.Sprintf("%.1f°", degrees))
	case 1:
		return job.Counted(jsonNumber(degrees))
	case 2:
		return job.Typed(fmt.Sprintf("%.5f rad", degrees*math.Pi/180))
	}
	return job.Typed(fmt.Sprintf("%.0f deg", degrees))
}

func (m *maker) count(n int) job.Value {
	if m.odd() {
		return job.Typed(m.senseless())
	}
	return job.Counted(strconv.Itoa(n))
}

// jsonNumber writes a number as a file may hold it, to 0.1 µm.
func jsonNumber(v float64) string { return strconv.FormatFloat(math.Round(v*1e4)/1e4, 'f', -1, 64) }
