package crossing

import (
	"math"

	"tipline/geometry"
	"tipline/geometry/internal/seek"
)

// blame is a field that may be at fault and what to say when it is.
type blame struct {
	field field
	code  string
}

// blames lists, for each fault, the fields that may be to blame, the likeliest
// first. The first that a change of alone would mend takes it.
var blames = map[fault][]blame{
	rimLeavesNothing:  {{rimWidth, "crossing.rim-too-wide"}},
	hubInsideBore:     {{hubUp, "crossing.hub-inside-bore"}},
	hubMeetsRim:       {{hubDown, "crossing.hub-meets-rim"}},
	armsMeetAtRim:     {{armAtRim, "crossing.arms-meet-at-rim"}},
	armsMeetAtHub:     {{armAtHub, "crossing.arms-meet-at-hub"}},
	armMissesHub:      {{armAtRim, "crossing.arm-misses-hub"}},
	rimFilletsOverlap: {{filletAtRim, "crossing.rim-fillets-overlap"}},
	hubFilletsOverlap: {{filletAtHub, "crossing.hub-fillets-overlap"}},
	filletsMeet:       {{filletAtHub, "crossing.fillet-at-hub-meets-rim"}, {filletAtRim, "crossing.fillet-at-rim-meets-hub"}},
	armMissesRim:      {{sweepDown, "crossing.sweep-misses-rim"}, {sweepUp, "crossing.sweep-back-misses-rim"}, {armAtHub, "crossing.arm-misses-rim"}},
	sweepTooFar:       {{sweepDown, "crossing.sweep-too-far"}, {sweepUp, "crossing.sweep-too-far-back"}},
	waistTooWide:      {{waistDown, "crossing.waist-not-narrowest"}},
	waistOffArm:       {{waistAtDown, "crossing.waist-beyond-rim"}, {waistAtUp, "crossing.waist-inside-hub"}},
	armOverhangs:      {{armAtHub, "crossing.arm-at-hub-too-wide"}, {armAtRim, "crossing.arm-at-rim-too-wide"}},
	armPinches:        {{waistAtDown, "crossing.waist-too-far-out"}, {waistAtUp, "crossing.waist-too-far-in"}, {waistUp, "crossing.waist-pinches"}},
	outerMissesArm:    {{outerUp, "crossing.outer-radius-misses-arm"}},
	outerMeetsHub:     {{outerDown, "crossing.outer-radius-meets-hub"}},
	edgesCross:        {{outerUp, "crossing.outer-radius-too-small"}, {outerDown, "crossing.outer-radius-too-large"}},
}

// otherwise is tried when none of a fault's own fields would mend it.
var otherwise = []blame{
	{armAtRim, "crossing.arm-at-rim-too-wide"},
	{armAtHub, "crossing.arm-at-hub-too-wide"},
	{filletAtRim, "crossing.fillet-at-rim-too-large"},
	{filletAtHub, "crossing.fillet-at-hub-too-large"},
	{hubDown, "crossing.hub-too-large"},
	{rimWidth, "crossing.rim-too-wide"},
	{outerUp, "crossing.outer-radius-too-small"},
	{outerDown, "crossing.outer-radius-too-large"},
	{sweepDown, "crossing.sweep-leaves-no-room"},
	{sweepUp, "crossing.sweep-back-leaves-no-room"},
	{waistAtDown, "crossing.waist-too-far-out"},
	{waistAtUp, "crossing.waist-too-far-in"},
}

// limitOf returns the error of a crossing that cannot be laid out: the field to
// blame and the value nearest to the one given that would do, all else being as it
// is. Where no one length would mend it the number of arms is to blame; and where
// several values are wrong at once, the fault's own field is, with the bound it has
// on a crossing of the smallest hub, the thinnest arms and no fillets, or if it would
// do there, the bound past which it is no longer this that is wrong. Where none
// of these can be said the number of arms is named without one.
func limitOf(f fault, b Blank, s Spec) *geometry.Limit {
	first := blamed(f, b, s)
	for _, try := range append(first[:len(first):len(first)], otherwise...) {
		if l, ok := try.limit(b, s, s); ok {
			return l
		}
	}
	for k := s.Arms - 1; k >= FewestArms; k-- {
		fewer := s
		if fewer.Arms = k; check(b, fewer) == sound {
			return geometry.AtMost(ofArms, float64(s.Arms), float64(k), "crossing.too-many-arms")
		}
	}
	for _, try := range append(first[:len(first):len(first)], otherwise...) {
		if l, ok := try.limit(b, s, s.barest(b)); ok {
			return l
		}
	}
	for _, try := range append(first[:len(first):len(first)], otherwise...) {
		if l, ok := try.past(f, b, s); ok {
			return try.further(b, s, l)
		}
	}
	none := geometry.Refused(ofArms, float64(s.Arms), "crossing.no-room")
	if check(b, s.barest(b)) == sound {
		none.Code = "crossing.several-values"
	}
	return none
}

// blamed returns the fields to blame for a fault. Of two fillets that meet the
// larger comes first, and before either the hub where it leaves no room for both.
func blamed(f fault, b Blank, s Spec) []blame {
	first := blames[f]
	if f == filletsMeet && s.FilletAtRim > s.FilletAtHub {
		first = []blame{first[1], first[0]}
	}
	fillets := f == filletsMeet || f == rimFilletsOverlap || f == hubFilletsOverlap
	if room := b.RootRadius - s.Rim - s.Hub/2; fillets && room < s.FilletAtRim+s.FilletAtHub {
		first = append([]blame{{hubDown, "crossing.hub-too-large"}}, first...)
	}
	return first
}

// limit returns the blamed field's limit on a crossing whose other values are those
// of rest; false when the field is not what hinders it.
func (t blame) limit(b Blank, s, rest Spec) (*geometry.Limit, bool) {
	*t.field.in(&rest) = *t.field.in(&s)
	if check(b, rest) == sound {
		return nil, false
	}
	return t.bounded(b, rest, func(s Spec) bool { return check(b, s) == sound })
}

// past returns the blamed field's limit for one fault alone: past it nothing is
// wrong that is looked for as early.
func (t blame) past(f fault, b Blank, s Spec) (*geometry.Limit, bool) {
	return t.bounded(b, s, func(s Spec) bool {
		next := check(b, s)
		return next == sound || next > f
	})
}

// further returns the limit with the bound that would be told next, if at the bound it has
// the same is said of the same field again: who follows it is not sent there twice. What is
// wrong there is looked for later than what was, so this comes to an end.
func (t blame) further(b Blank, s Spec, l *geometry.Limit) *geometry.Limit {
	bound := l.Max
	if t.field.up {
		bound = l.Min
	}
	*t.field.in(&s) = bound
	f := check(b, s)
	if f == sound {
		return l
	}
	if next := limitOf(f, b, s); next.Quantity == l.Quantity && next.Code == l.Code {
		l.Min, l.Max = next.Min, next.Max
	}
	return l
}

// bounded returns the limit of the blamed field past which the crossing does; false
// when there is none, or the field has no part in it.
func (t blame) bounded(b Blank, s Spec, does func(Spec) bool) (*geometry.Limit, bool) {
	if t.field.absent != nil && t.field.absent(s) {
		return nil, false
	}
	value := *t.field.in(&s)
	bound, ok := t.field.bound(b, s, does)
	if t.field.up {
		return geometry.AtLeast(t.field.of, value, bound, t.code), ok
	}
	return geometry.AtMost(t.field.of, value, bound, t.code), ok
}

// barest returns the crossing that leaves the most room: the smallest hub, the
// thinnest arms, without fillets, sweep or outer edges of their own.
func (s Spec) barest(b Blank) Spec {
	s.Hub, _ = hubs(b)
	s.Hub = max(s.Hub, MostArms*geometry.LeastLength) // round which the thinnest arms find room
	s.ArmAtRim, s.ArmAtHub, s.FilletAtRim, s.FilletAtHub = geometry.LeastLength, geometry.LeastLength, 0, 0
	s.Sweep, s.Waist, s.WaistAt, s.OuterRadius = 0, geometry.LeastLength, 0, 0
	return s
}

// field is a length of the Spec that can be blamed, and the span in which a value
// that would do is looked for.
type field struct {
	of   geometry.Quantity
	in   func(*Spec) *float64
	span func(Blank) (least, most float64)
	up   bool // a larger value is looked for

	absent func(Spec) bool // tells where the field has no part in the crossing; nil where it always has
}

var (
	rimWidth    = field{of: ofRim, in: func(s *Spec) *float64 { return &s.Rim }, span: lengths}
	hubDown     = field{of: ofHub, in: func(s *Spec) *float64 { return &s.Hub }, span: hubs}
	hubUp       = field{of: ofHub, in: func(s *Spec) *float64 { return &s.Hub }, span: hubs, up: true}
	armAtRim    = field{of: ofArmAtRim, in: func(s *Spec) *float64 { return &s.ArmAtRim }, span: lengths}
	armAtHub    = field{of: ofArmAtHub, in: func(s *Spec) *float64 { return &s.ArmAtHub }, span: lengths}
	filletAtRim = field{of: ofFilletAtRim, in: func(s *Spec) *float64 { return &s.FilletAtRim }, span: fillets}
	filletAtHub = field{of: ofFilletAtHub, in: func(s *Spec) *float64 { return &s.FilletAtHub }, span: fillets}
	sweepDown   = field{of: ofSweep, in: sweep, span: onward, absent: not(Swept, func(s Spec) bool { return s.Sweep > 0 })}
	sweepUp     = field{of: ofSweep, in: sweep, span: back, up: true, absent: not(Swept, func(s Spec) bool { return s.Sweep < 0 })}
	waistDown   = field{of: ofWaist, in: waist, span: lengths, absent: not(Waisted, always)}
	waistUp     = field{of: ofWaist, in: waist, span: lengths, up: true, absent: not(Waisted, always)}
	waistAtDown = field{of: ofWaistAt, in: waistRadius, span: lengths, absent: not(Waisted, waistPlaced)}
	waistAtUp   = field{of: ofWaistAt, in: waistRadius, span: lengths, up: true, absent: not(Waisted, waistPlaced)}
	outerUp     = field{of: ofOuterRadius, in: outer, span: outers, up: true, absent: concentric}
	outerDown   = field{of: ofOuterRadius, in: outer, span: outers, absent: concentric}
)

func sweep(s *Spec) *float64       { return (*float64)(&s.Sweep) }
func waist(s *Spec) *float64       { return &s.Waist }
func waistRadius(s *Spec) *float64 { return &s.WaistAt }
func outer(s *Spec) *float64       { return &s.OuterRadius }

func always(Spec) bool        { return true }
func waistPlaced(s Spec) bool { return s.WaistAt != 0 }
func concentric(s Spec) bool  { return s.OuterRadius == 0 }

// not tells where a field has no part in a crossing: in one of another style, or
// where there says so.
func not(style Style, there func(Spec) bool) func(Spec) bool {
	return func(s Spec) bool { return s.Style != style || !there(s) }
}

func onward(Blank) (least, most float64)   { return 0, mostSweep }
func back(Blank) (least, most float64)     { return -mostSweep, 0 }
func outers(b Blank) (least, most float64) { return geometry.LeastLength, 1000 * b.RootRadius }

func lengths(b Blank) (least, most float64) { return geometry.LeastLength, 2 * b.RootRadius }
func hubs(b Blank) (least, most float64)    { return b.Bore + 2*geometry.LeastLength, 2 * b.RootRadius }
func fillets(b Blank) (least, most float64) { return 0, 2 * b.RootRadius }

// steps is how finely a field's span is searched for a value that would do, before
// the bound is narrowed down.
const steps = 64

// picometre, in mm, is how near a bound is told: a few times what rounding leaves of a
// length of a metre.
const picometre = 1e-12

// bound returns the value nearest to the field's own, on the side looked to, that
// will do, all else being as it is: that value does, and one a picometre nearer
// does not. False when there is none.
func (f field) bound(b Blank, s Spec, does func(Spec) bool) (float64, bool) {
	value := f.in(&s)
	least, most := f.span(b)
	bad, end := math.Min(*value, most), least
	if f.up {
		bad, end = math.Max(*value, least), most
	}
	builds := func(v float64) bool {
		*value = v
		return does(s)
	}
	if asked := *value; asked != bad && builds(bad) {
		return seek.Last(bad, asked, picometre, builds), true
	}
	for i := 1; i <= steps; i++ {
		good := bad + (end-bad)*float64(i)/steps
		if i == steps {
			good = end
		}
		if builds(good) {
			return seek.Last(good, bad+(end-bad)*float64(i-1)/steps, picometre, builds), true
		}
	}
	return 0, false
}
