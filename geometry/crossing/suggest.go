package crossing

import (
	"math"

	"tipline/geometry"
)

// usualArms are the counts of arms to start from, the likeliest first: five and six
// are usual (Beckett, Rudimentary Treatise on Clocks, 8th ed. 1903, p. 96, prefers five
// to four and finds six in costly clocks); the rest in the order of common practice,
// no source.
var usualArms = []int{6, 5, 4, 8, 7, 3}

// Suggest returns a crossing to start from, from teeth and size alone: straight arms
// on tips, a number of them that divides the teeth if there is one, a rim about as
// wide as a tooth is deep, arms that narrow from hub to rim by 1.3 to 1, and a hub a
// quarter of the root circle or twice the bore (common practice, no source). Where the
// wheel is too small for these they are made slighter until windows find room. The
// values are not rounded. A blank that leaves no room for any crossing gets one that
// Lay refuses.
func Suggest(b Blank) Spec {
	s := Spec{Arms: suggestArms(b.Count), Placing: OnTips, Style: Straight}
	room := b.RootRadius - b.Bore/2
	s.Rim = math.Min(b.TipRadius-b.RootRadius, room/5)
	s.Rim = math.Max(s.Rim, math.Min(b.RootRadius/20, room/5))
	s.Hub = math.Min(math.Max(b.RootRadius/2, 2*b.Bore), b.Bore+room/2)
	s.ArmAtRim, s.ArmAtHub = s.Rim, 1.3*s.Rim
	s.FilletAtRim, s.FilletAtHub = s.Rim/3, s.Rim/3
	s.Allowance = math.Min(0.3, s.Rim/6)
	for range steps {
		if check(b, s) == sound {
			break
		}
		s = s.slighter(b)
	}
	return s.atLeast()
}

// slighter returns the crossing a tenth slighter all round.
func (s Spec) slighter(b Blank) Spec {
	const less = 0.9
	for _, l := range []*float64{&s.Rim, &s.ArmAtRim, &s.ArmAtHub, &s.FilletAtRim, &s.FilletAtHub, &s.Allowance} {
		*l *= less
	}
	s.Hub = b.Bore + math.Max(2*geometry.LeastLength, less*(s.Hub-b.Bore))
	return s
}

// atLeast returns the crossing with nothing below what a job may hold.
func (s Spec) atLeast() Spec {
	for _, l := range []*float64{&s.Rim, &s.Hub, &s.ArmAtRim, &s.ArmAtHub} {
		*l = math.Max(*l, geometry.LeastLength)
	}
	return s
}

func suggestArms(teeth int) int {
	for _, k := range usualArms {
		if teeth >= k && teeth%k == 0 {
			return k
		}
	}
	return max(FewestArms, min(usualArms[0], teeth))
}
