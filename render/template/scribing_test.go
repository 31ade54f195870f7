package template

import (
	"fmt"
	"math"
	"math/rand/v2"
	"regexp"
	"sort"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/render"
)

// laid returns a wheel of that many teeth with a crossing, and false where it cannot
// be laid out.
func laid(t testing.TB, count int, spec crossing.Spec) (Wheel, bool) {
	t.Helper()
	w := trainWheel(t, count, 5)
	layout, err := crossing.Lay(crossing.Blank{
		Count: count, TipRadius: w.Teeth.TipRadius, RootRadius: w.Teeth.RootRadius, Bore: w.Bore,
		Outline: w.Teeth.Outline, Thickness: w.Thickness, Density: 8490, Young: 97,
	}, spec)
	w.Crossing = &layout
	return w, err == nil
}

func scribedSpec(arms int, style crossing.Style) crossing.Spec {
	return crossing.Spec{
		Arms: arms, Style: style, Rim: 2.4, Hub: 13, ArmAtRim: 2, ArmAtHub: 2.8,
		FilletAtRim: 0.8, FilletAtHub: 1, Allowance: 0.3, StartHole: 0.8,
	}
}

// readStep is a step as a maker reads it off the card.
type readStep struct {
	title    string
	settings []readSetting
}

type readSetting struct {
	letter, text string
	value        float64 // mm
}

var figure = regexp.MustCompile(`^([0-9.]+) (mm|in)$`)

// readCard reads a scribing card's steps and the arms' angles, from its texts alone.
func readCard(t testing.TB, d *render.Drawing) (steps []readStep, arms []float64) {
	t.Helper()
	rows := map[float64][]render.Text{}
	var heights []float64
	for _, it := range d.Items {
		if it.Text == nil {
			continue
		}
		if len(rows[it.Text.At.Y]) == 0 {
			heights = append(heights, it.Text.At.Y)
		}
		rows[it.Text.At.Y] = append(rows[it.Text.At.Y], *it.Text)
	}
	sort.Sort(sort.Reverse(sort.Float64Slice(heights)))
	for _, y := range heights {
		var setting readSetting
		for _, text := range rows[y] {
			switch {
			case text.At.X == scribeLetter && text.Bold && text.Height == 3 && text.String[0] <= '9':
				steps = append(steps, readStep{title: strings.TrimLeft(text.String, "0123456789 ")})
			case text.At.X == scribeLetter && text.Bold && text.Height == 3:
				steps[len(steps)-1].title += " " + text.String
			case text.At.X == scribeLetter && text.Bold:
				setting.letter = text.String
			case text.At.X == scribeText:
				setting.text = text.String
			case text.At.X == scribeFigures:
				m := figure.FindStringSubmatch(text.String)
				require.NotNil(t, m, text.String)
				setting.value, _ = strconv.ParseFloat(m[1], 64)
				if m[2] == "in" {
					setting.value *= 25.4
				}
			case strings.HasSuffix(text.String, "°"):
				a, err := strconv.ParseFloat(strings.TrimSuffix(text.String, "°"), 64)
				require.NoError(t, err)
				arms = append(arms, a*math.Pi/180)
			}
		}
		if setting.letter != "" {
			steps[len(steps)-1].settings = append(steps[len(steps)-1].settings, setting)
		}
	}
	return steps, arms
}

// bench is a maker with compass and rule: curves are circles, or lines where the
// radius is 0.
type bench struct {
	rim, hub float64
	arms     []float64
	steps    map[string][]readSetting
}

type curve struct {
	centre, a, b geometry.Point
	radius       float64
}

// turned is a place x to the clockwise of a tip line and y along it.
func (m bench) turned(x, y, arm float64) geometry.Point {
	sin, cos := math.Sincos(arm)
	return geometry.Point{X: x*cos + y*sin, Y: -x*sin + y*cos}
}

// find strikes two arcs: about the wheel's centre and about the arm's mark; ways says
// to which side of the tip line they cross.
func (m bench) find(fromCentre, fromMark readSetting, arm, next, side float64) geometry.Point {
	mark := m.rim
	if strings.Contains(fromMark.text, "across the window") {
		arm, side = next, -side
	}
	if strings.Contains(fromMark.text, "hub mark") {
		mark = m.hub
	}
	along := (fromCentre.value*fromCentre.value + mark*mark - fromMark.value*fromMark.value) / (2 * mark)
	across := math.Sqrt(math.Max(0, fromCentre.value*fromCentre.value-along*along))
	return m.turned(side*across, along, arm)
}

// step is a place stepped off along a circle from an arm's mark.
func (m bench) step(r float64, s readSetting, arm, side float64) geometry.Point {
	turn := 2 * math.Asin(s.value/2/r)
	return m.turned(side*r*math.Sin(turn), r*math.Cos(turn), arm)
}

// sideOf says to which side a setting is struck; for both, to the one that is asked.
func sideOf(s readSetting, asked float64) float64 {
	switch {
	case strings.HasSuffix(s.text, "anticlockwise"):
		return -1
	case strings.HasSuffix(s.text, "clockwise"):
		return 1
	}
	return asked
}

// side scribes an arm's side.
func (m bench) side(ss []readSetting, arm, next, asked float64) curve {
	if ss[0].text == "radius" {
		return curve{centre: m.find(ss[1], ss[2], arm, next, sideOf(ss[2], asked)), radius: ss[0].value}
	}
	c := curve{a: m.step(m.rim, ss[0], arm, sideOf(ss[0], asked)), b: m.step(m.hub, ss[1], arm, sideOf(ss[1], asked))}
	if len(ss) == 2 {
		return c
	}
	middle, chord := c.a.Toward(c.b, 0.5), c.b.Sub(c.a)
	out := chord.Left().Times(1 / chord.Norm())
	if out.Dot(m.turned(asked, 0, arm)) < 0 {
		out = out.Times(-1)
	}
	if strings.HasSuffix(ss[2].text, "arm") {
		out = out.Times(-1)
	}
	h, half := ss[2].value, chord.Norm()/2
	c.radius = (half*half + h*h) / (2 * h)
	c.centre = middle.Add(out.Times(h - c.radius))
	return c
}

// nearest is the place of a curve nearest to a point: where an arc about it touches.
func (c curve) nearest(p geometry.Point) geometry.Point {
	if c.radius == 0 {
		way := c.b.Sub(c.a)
		return c.a.Add(way.Times(p.Sub(c.a).Dot(way) / way.Dot(way)))
	}
	way := p.Sub(c.centre)
	return c.centre.Add(way.Times(c.radius / way.Norm()))
}

// corner finds the centre of a rounding beside an arm.
func (m bench) corner(ss []readSetting, arm, next, asked float64) curve {
	at := 1
	if len(ss) > 3 && asked < 0 {
		at = 3
	}
	return curve{centre: m.find(ss[at], ss[at+1], arm, next, sideOf(ss[at+1], asked)), radius: ss[0].value}
}

// settings returns a step's settings by the beginning of its title.
func (m bench) settings(title string) []readSetting { return m.steps[title] }

// window lays out the window after arm j, all its corners rounded.
func (m bench) window(t testing.TB, j int) geometry.Outline {
	t.Helper()
	a, b := m.arms[j], m.arms[(j+1)%len(m.arms)]
	sides := m.settings("Both sides of every arm")
	other := sides
	if sides == nil {
		sides, other = m.settings("Every arm's clockwise side"), m.settings("Every arm's anticlockwise side")
	}
	after, before := m.side(sides, a, b, 1), m.side(other, b, a, -1)
	edge := curve{radius: m.rim}
	if own := m.settings("Windows' outer edges"); own != nil {
		edge = curve{centre: m.find(own[1], own[2], a, b, sideOf(own[2], 1)), radius: own[0].value}
	}
	rim := m.settings("Corners at the rim")
	upper, lower := m.corner(rim, a, b, 1), m.corner(rim, b, a, -1)
	p := pen{t: t}
	p.to(edge.nearest(upper.centre), &edge)
	p.to(after.nearest(upper.centre), &upper)
	if end := m.settings("Windows' ends at the hub, one arc each"); end != nil {
		arc := m.corner(end, a, b, 1)
		p.to(after.nearest(arc.centre), &after)
		p.to(before.nearest(arc.centre), &arc)
	} else {
		hub := m.settings("Corners at the hub")
		first, second, circle := m.corner(hub, a, b, 1), m.corner(hub, b, a, -1), curve{radius: m.hub}
		p.to(after.nearest(first.centre), &after)
		p.to(circle.nearest(first.centre), &first)
		p.to(circle.nearest(second.centre), &circle)
		p.to(before.nearest(second.centre), &second)
	}
	p.to(before.nearest(lower.centre), &before)
	p.to(edge.nearest(lower.centre), &lower)
	return p.closed(&edge)
}

// pen follows curves from place to place.
type pen struct {
	t  testing.TB
	vs []geometry.Vertex
}

func (p *pen) to(at geometry.Point, along *curve) {
	if n := len(p.vs); n > 0 {
		p.vs[n-1].Bulge = along.bulge(p.vs[n-1].Point, at)
	}
	p.vs = append(p.vs, geometry.Vertex{Point: at})
}

func (c curve) bulge(from, to geometry.Point) float64 {
	if c.radius == 0 {
		return 0
	}
	a, b := from.Sub(c.centre), to.Sub(c.centre)
	return math.Tan(math.Atan2(a.X*b.Y-a.Y*b.X, a.X*b.X+a.Y*b.Y) / 4)
}

// closed runs back along the outer edge, which may turn more than half a circle.
func (p *pen) closed(edge *curve) geometry.Outline {
	last := &p.vs[len(p.vs)-1]
	if last.Bulge = edge.bulge(last.Point, p.vs[0].Point); last.Bulge < -0.5 {
		last.Bulge = -1 / last.Bulge
	}
	o, err := geometry.NewOutline(p.vs)
	require.NoError(p.t, err)
	return o
}

// scribedFrom reads a card and gets the bench ready for window j: of windows of
// another width what is said of them counts.
func scribedFrom(t testing.TB, d *render.Drawing, w Wheel, j int) bench {
	t.Helper()
	steps, arms := readCard(t, d)
	m := bench{arms: arms, steps: map[string][]readSetting{}}
	require.Len(t, arms, len(w.Crossing.Arms))
	for _, s := range steps {
		title, tips, other := strings.Cut(s.title, ", in the windows after tips ")
		if !other {
			m.steps[title] = append([]readSetting(nil), s.settings...)
			continue
		}
		for _, tip := range strings.Split(tips, ", ") {
			if tip != strconv.Itoa(w.Crossing.Arms[j].Tip) {
				continue
			}
			if m.steps[title] == nil { // this window ends otherwise at the hub than the first
				delete(m.steps, "Corners at the hub")
				delete(m.steps, "Windows' ends at the hub, one arc each")
				m.steps[title] = s.settings
			}
			for _, again := range s.settings {
				for i := range m.steps[title] {
					if m.steps[title][i].letter+"2" == again.letter {
						m.steps[title][i].value, m.steps[title][i].text = again.value, again.text
					}
				}
			}
		}
	}
	circles := m.settings("Circles about the wheel's centre")
	m.rim, m.hub = circles[0].value, circles[1].value
	return m
}

// A wheel laid out from the card's printed figures alone, by plane trigonometry, is
// the wheel.
func requireScribed(t testing.TB, w Wheel, s Style, within float64, what string) {
	t.Helper()
	d, err := Scribing(w, s)
	require.NoError(t, err, what)
	for j, win := range w.Crossing.Windows {
		got := scribedFrom(t, d, w, j).window(t, j)
		for _, p := range got.Flatten(0.001) {
			q, _ := win.Outline.Nearest(p)
			require.LessOrEqual(t, p.Dist(q), within, "%s: window %d scribed at %v", what, j, p)
		}
		for _, p := range win.Outline.Flatten(0.001) {
			q, _ := got.Nearest(p)
			require.LessOrEqual(t, p.Dist(q), within, "%s: window %d at %v is not scribed", what, j, p)
		}
	}
}

// The printed precision, 0.01 mm or 0.001 in for every setting, comes to no more than
// this on a window.
const scribedWithin = 0.05

func TestWheelsAreScribedFromTheCardAlone(t *testing.T) {
	for _, row := range []struct {
		name  string
		count int
		spec  func() crossing.Spec
	}{
		{"straight", 84, func() crossing.Spec { return scribedSpec(6, crossing.Straight) }},
		{"arms on uneven tips", 77, func() crossing.Spec { return scribedSpec(5, crossing.Straight) }},
		{"arms spread evenly", 77, func() crossing.Spec {
			s := scribedSpec(4, crossing.Straight)
			s.Placing = crossing.Equal
			return s
		}},
		{"one arc at the hub", 100, func() crossing.Spec { return scribedSpec(12, crossing.Straight) }},
		{"swept", 84, func() crossing.Spec {
			s := scribedSpec(5, crossing.Swept)
			s.Sweep = geometry.Degrees(25)
			return s
		}},
		{"swept the other way", 90, func() crossing.Spec {
			s := scribedSpec(6, crossing.Swept)
			s.Sweep = geometry.Degrees(-14)
			return s
		}},
		{"waisted", 84, func() crossing.Spec {
			s := scribedSpec(5, crossing.Waisted)
			s.Waist = 1.3
			return s
		}},
		{"hardly waisted", 84, func() crossing.Spec {
			s := scribedSpec(5, crossing.Waisted)
			s.Waist = 1.95
			return s
		}},
		{"outer edges of their own", 83, func() crossing.Spec {
			s := scribedSpec(5, crossing.Waisted)
			s.Waist, s.OuterRadius = 1.3, 20
			return s
		}},
		{"flat outer edges", 83, func() crossing.Spec {
			s := scribedSpec(6, crossing.Straight)
			s.OuterRadius = 45
			return s
		}},
	} {
		t.Run(row.name, func(t *testing.T) {
			w, ok := laid(t, row.count, row.spec())
			require.True(t, ok)
			requireScribed(t, w, metric, scribedWithin, row.name)
			requireScribed(t, w, inches, scribedWithin, row.name+" in inches")
		})
	}
}

// Of any proportion: where arms, corners and edges crowd, the roundings of several
// settings add up.
func TestRandomWheelsAreScribedFromTheCardAlone(t *testing.T) {
	r := rand.New(rand.NewPCG(17, 1))
	done := 0
	for range 150 {
		style := []crossing.Style{crossing.Straight, crossing.Swept, crossing.Waisted}[r.IntN(3)]
		s := scribedSpec(3+r.IntN(8), style)
		s.Rim, s.Hub = 1.5+3*r.Float64(), 9+8*r.Float64()
		s.ArmAtRim, s.ArmAtHub = 1+2*r.Float64(), 1.5+2.5*r.Float64()
		s.FilletAtRim, s.FilletAtHub = 0.4+r.Float64(), 0.4+1.5*r.Float64()
		s.Sweep = geometry.Degrees(30 * (2*r.Float64() - 1))
		s.Waist = min(s.ArmAtRim, s.ArmAtHub) * (0.5 + 0.4*r.Float64())
		if r.IntN(3) == 0 {
			s.OuterRadius = 15 + 30*r.Float64()
		}
		w, ok := laid(t, 60+r.IntN(60), s)
		if !ok {
			continue
		}
		done++
		requireScribed(t, w, metric, 2*scribedWithin, fmt.Sprintf("seed (17, 1): %d teeth, %+v", w.Teeth.Count, s))
	}
	require.Positive(t, done)
}

// The table of arms gives tip, angle and chords by the formula 2R·sin(Δ/2).
func TestScribingCardsArms(t *testing.T) {
	w, ok := laid(t, 77, scribedSpec(5, crossing.Straight))
	require.True(t, ok)
	d, err := Scribing(w, metric)
	require.NoError(t, err)
	texts := map[string]bool{}
	for _, text := range textsOf(d) {
		texts[text.String] = true
	}
	for j, tip := range []int{0, 15, 31, 46, 62} { // j·77/5 rounded, halves up
		angle := 360 * float64(tip) / 77
		next := 360 * float64([]int{15, 31, 46, 62, 77}[j]) / 77
		require.Contains(t, texts, strconv.Itoa(tip))
		chord := func(degrees float64) string {
			return strconv.FormatFloat(2*w.Teeth.TipRadius*math.Sin(degrees/2*math.Pi/180), 'f', 2, 64)
		}
		require.Contains(t, texts, chord(next-angle))
		require.Contains(t, texts, chord(angle))
	}
}

func TestScribingCardsLettersAreDrawnAndClear(t *testing.T) {
	for _, style := range []crossing.Style{crossing.Straight, crossing.Swept, crossing.Waisted} {
		s := scribedSpec(5, style)
		s.Sweep, s.Waist = geometry.Degrees(20), 1.3
		w, ok := laid(t, 84, s)
		require.True(t, ok)
		d, err := Scribing(w, metric)
		require.NoError(t, err)
		steps, _ := readCard(t, d)
		times := map[string]int{}
		for _, text := range textsOf(d) {
			times[text.String]++
		}
		for _, step := range steps {
			for _, setting := range step.settings {
				drawn := 2
				if strings.HasSuffix(setting.letter, "2") || strings.Contains(setting.text, "diameter") || strings.Contains(setting.text, "inside") {
					drawn = 1
				}
				require.Equal(t, drawn, times[setting.letter], "%s: letter %s, %s", style, setting.letter, setting.text)
			}
		}
	}
}

func TestScribingCardsStandClear(t *testing.T) {
	for _, arms := range []int{3, 4, 5, 6, 8, 12} {
		for _, style := range []crossing.Style{crossing.Straight, crossing.Swept, crossing.Waisted} {
			for unit, s := range map[string]Style{"mm": metric, "in": inches} {
				spec := scribedSpec(arms, style)
				spec.Sweep, spec.Waist = geometry.Degrees(12), 1.3
				w, ok := laid(t, 101, spec)
				require.True(t, ok)
				d, err := Scribing(w, s)
				require.NoError(t, err)
				requireClear(t, d, "scribing card of %d %s arms in %s", arms, style, unit)
				require.LessOrEqual(t, d.Bounds().Width(), CardWidth+1)
				require.NotContains(t, strings.Join(append(said(d), d.Title, d.Description), " "), "‹")
			}
		}
	}
}

// Windows with sharp corners have none to scribe.
func TestSharpWindowsAreScribed(t *testing.T) {
	spec := scribedSpec(6, crossing.Straight)
	spec.FilletAtRim, spec.FilletAtHub, spec.Allowance, spec.StartHole = 0, 0, 0, 0
	w, ok := laid(t, 84, spec)
	require.True(t, ok)
	d, err := Scribing(w, metric)
	require.NoError(t, err)
	steps, arms := readCard(t, d)
	var titles []string
	for _, s := range steps {
		titles = append(titles, s.title)
	}
	require.Equal(t, []string{"Tip lines", "Circles about the wheel's centre", "Both sides of every arm", "Check"}, titles)
	require.Len(t, arms, 6)
}

func TestNothingToScribe(t *testing.T) {
	w := trainWheel(t, 60, 5)
	w.Crossing = nil
	_, err := Scribing(w, metric)
	require.ErrorIs(t, err, ErrNothing)
}

func BenchmarkScribing(b *testing.B) {
	w, _ := laid(b, 84, scribedSpec(5, crossing.Straight))
	for b.Loop() {
		_, _ = Scribing(w, metric)
	}
}
