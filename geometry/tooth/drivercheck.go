package tooth

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// The fields of a job that a wheel for a lantern pinion is refused for.
const (
	driverModule  geometry.Quantity = "teeth.module"
	driverLeaves  geometry.Quantity = "teeth.leaves"
	driverTrundle geometry.Quantity = "teeth.trundle"
	driverPlay    geometry.Quantity = "teeth.play"
)

// check refuses a count or size outside what a job may have, and a wheel that
// cannot drive.
func (d LanternDriver) check() error {
	if err := checkCount(d.Count); err != nil {
		return err
	}
	if d.Leaves < fewestLeaves || d.Leaves > mostLeaves {
		return geometry.Between(driverLeaves, float64(d.Leaves), fewestLeaves, mostLeaves, "tooth.leaves")
	}
	if most := geometry.MostLength / float64(d.Count); !(d.Module >= geometry.LeastLength && d.Module <= most) {
		return geometry.Between(driverModule, d.Module, geometry.LeastLength, d.largestModule(most), "tooth.module")
	}
	thickest := Lantern{Leaves: d.Leaves, Module: d.Module}.thickestTrundle()
	if t := d.TrundleDiameter(); !(t >= geometry.LeastLength && t <= thickest) {
		return d.blameTrundle(t, thickest)
	}
	if most := math.Pi * d.Module; !(d.Play >= 0 && d.Play <= most) {
		return geometry.Between(driverPlay, d.Play, 0, d.largestPlay(most), "tooth.driver-play")
	}
	if flaw := d.flaw(); flaw != "" {
		return d.blame(flaw)
	}
	if !d.fits() {
		return geometry.Between(driverModule, d.Module, geometry.LeastLength, d.largestModule(d.Module), "tooth.module")
	}
	return nil
}

// flaw returns why the wheel cannot drive, as a key of the catalogue; nothing if
// it can. Its trundles must not meet.
func (d LanternDriver) flaw() string {
	root := d.RootRadius()
	if root < geometry.LeastLength {
		return "tooth.driver-no-root"
	}
	a := d.action()
	from := a.at(a.from).Rotate(a.eased)
	pitch := 2 * math.Pi / float64(d.Count)
	switch floor := 2 * math.Asin(math.Min(-from.X/root, 1)); {
	case root*(pitch-floor) < geometry.LeastLength || a.aside(a.from) >= a.middle():
		return "tooth.driver-no-tooth"
	case a.contact() < 1:
		return "tooth.driver-contact"
	}
	return ""
}

// sound reports whether the wheel can drive.
func (d LanternDriver) sound() bool {
	meet := d.TrundleDiameter() > Lantern{Leaves: d.Leaves, Module: d.Module}.thickestTrundle()
	return !meet && d.flaw() == ""
}

// fits reports whether a sound wheel is no larger than a job may have.
func (d LanternDriver) fits() bool { return 2*d.action().tipRadius() <= geometry.MostLength }

// blame finds a value that would do instead: less play than was asked for, else a
// thinner trundle, else more leaves, else a larger module, with trundles of any
// thickness.
func (d LanternDriver) blame(flaw string) error {
	usual := d
	if usual.Play = 0; d.SidePlay() > usual.SidePlay() {
		if usual.sound() {
			return geometry.AtMost(driverPlay, d.Play, d.largestPlay(d.Play), "tooth.driver-play-most")
		}
		d = usual
	}
	thinner := func(t float64) bool { d.Trundle = t; return d.sound() }
	t := d.TrundleDiameter()
	if thinner(geometry.LeastLength) {
		return geometry.AtMost(driverTrundle, t, largest(geometry.LeastLength, t, thinner), flaw)
	}
	leaves := float64(d.Leaves)
	for d.Leaves < mostLeaves && !thinner(geometry.LeastLength) {
		d.Leaves++
	}
	if !thinner(geometry.LeastLength) {
		return d.blameModule()
	}
	return geometry.AtLeast(driverLeaves, leaves, float64(d.Leaves), "tooth.driver-leaves")
}

// blameModule refuses a module of which the thinnest trundle a job may have is too
// thick, even for the most leaves.
func (d LanternDriver) blameModule() error {
	least := seek.Last(geometry.MostLength/float64(d.Count), d.Module, 0, func(m float64) bool {
		usual := LanternDriver{d.Count, m, mostLeaves, geometry.LeastLength, 0}
		return usual.sound()
	})
	return geometry.AtLeast(driverModule, d.Module, least, "tooth.driver-module")
}

// largestModule returns the largest module up to most of a sound wheel that fits;
// where there is none, the least a job may have.
func (d LanternDriver) largestModule(most float64) float64 {
	return largest(geometry.LeastLength, most, func(m float64) bool {
		d.Module = m
		return d.sound() && d.fits()
	})
}

// blameTrundle refuses a trundle that cannot be for the thickest that would do, up
// to most; where none would, it blames what stands in the way.
func (d LanternDriver) blameTrundle(t, most float64) error {
	if d.Trundle = geometry.LeastLength; !d.sound() {
		return d.blame(d.flaw())
	}
	would := largest(geometry.LeastLength, most, func(t float64) bool { d.Trundle = t; return d.sound() })
	return geometry.Between(driverTrundle, t, geometry.LeastLength, would, "tooth.driver-trundles-meet")
}

// largestPlay returns the most play up to most that leaves a sound wheel.
func (d LanternDriver) largestPlay(most float64) float64 {
	return largest(0, most, func(play float64) bool { d.Play = play; return d.sound() })
}

// largest returns the greatest value from yes to no for which ok holds, to the
// last digit; it is taken to hold at yes, and not to hold again beyond where it
// ends.
func largest(yes, no float64, ok func(float64) bool) float64 {
	if ok(no) {
		return no
	}
	return seek.Last(yes, no, 0, ok)
}
