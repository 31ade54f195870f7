package crossing

import (
	"math"
	"math/rand/v2"

	"tipline/geometry"
)

// someCrossing returns a blank and a crossing of any size and proportion: most can
// be laid out, a good part cannot. Now and then a value is absurd.
func someCrossing(r *rand.Rand) (Blank, Spec) {
	root := math.Exp(r.Float64()*3.4) * 5 // 5 to 150 mm
	share := func(least, most float64) float64 { return root * (least + (most-least)*r.Float64()) }
	b := Blank{
		Count: 6 + r.IntN(355), RootRadius: root, TipRadius: root + share(0.01, 0.1), Bore: share(0, 0.4),
		Thickness: 0.5 + 3*r.Float64(), Density: 8490, Young: 97,
	}
	if r.IntN(10) == 0 {
		b.Count, b.Bore = 3+r.IntN(12), 0
	}
	disc, err := geometry.Circle(geometry.Point{}, (b.TipRadius+b.RootRadius)/2, "teeth")
	if err != nil {
		panic(err)
	}
	b.Outline = disc
	s := Spec{
		Arms: FewestArms + r.IntN(MostArms-FewestArms+1), Placing: OnTips,
		Rim: share(0.02, 0.2), Hub: b.Bore + share(0.02, 0.7),
		ArmAtRim: share(0.01, 0.2), ArmAtHub: share(0.01, 0.25),
		FilletAtRim: share(0, 0.1), FilletAtHub: share(0, 0.1),
		Allowance: share(0, 0.03), StartHole: share(0, 0.06), BladeTurning: share(0, 0.03),
	}
	if r.IntN(2) == 0 {
		s.Placing = Equal
	}
	spoil(r, &s, root)
	dress(r, &s, root)
	return b, s
}

// dress gives the crossing a style, and in one of three outer edges of their own.
func dress(r *rand.Rand, s *Spec, root float64) {
	s.Style = []Style{Straight, Swept, Waisted}[r.IntN(3)]
	s.Sweep = geometry.Angle(r.NormFloat64() * 0.4)
	s.Waist = min(s.ArmAtHub, s.ArmAtRim) * (0.3 + 0.72*r.Float64())
	if r.IntN(2) == 0 {
		hub, rim := s.Hub/2, root-s.Rim
		s.WaistAt = hub + (0.2+0.6*r.Float64())*(rim-hub)
	}
	if r.IntN(3) == 0 {
		s.OuterRadius = root * math.Exp(2*r.Float64()-1)
	}
	switch r.IntN(40) {
	case 0:
		s.Sweep = geometry.Angle(r.NormFloat64() * 1e-6)
	case 1:
		s.Sweep = geometry.Angle(r.NormFloat64())
	case 2:
		s.Waist = root * r.NormFloat64() / 3
	case 3:
		s.WaistAt = root * r.NormFloat64()
	case 4:
		s.OuterRadius = root * r.NormFloat64() / 3
	case 5:
		s.Sweep, s.Waist = 0, min(s.ArmAtHub, s.ArmAtRim)
	}
}

// spoil makes one value in some crossings extreme, and round where it was rough.
func spoil(r *rand.Rand, s *Spec, root float64) {
	lengths := []*float64{&s.Rim, &s.Hub, &s.ArmAtRim, &s.ArmAtHub, &s.FilletAtRim, &s.FilletAtHub, &s.Allowance, &s.StartHole}
	l := lengths[r.IntN(len(lengths))]
	switch r.IntN(12) {
	case 0:
		*l = 0
	case 1:
		*l = -*l
	case 2:
		*l = root * 3 * r.Float64()
	case 3:
		s.FilletAtHub = s.FilletAtRim
	case 4:
		s.ArmAtHub = s.ArmAtRim
	}
}
