package cutter

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"tipline/geometry"
	"tipline/geometry/trial"
)

// reference is a row of a table of published or computed values.
type reference struct {
	topic, item, unit, value, status, source string
}

func references(t *testing.T, name string) []reference {
	t.Helper()
	var list []reference
	for _, r := range trial.Reference(t, name) {
		list = append(list, reference{r["topic"], r["item"], r["quantity_and_unit"], r["value"], r["status"], r["source"]})
	}
	return list
}

// number returns the number after a name such as "C=" in a row's item.
func number(t *testing.T, item, name string) float64 {
	t.Helper()
	m := regexp.MustCompile(name + `\s*=?\s*([0-9.]+)`).FindStringSubmatch(item)
	require.NotNil(t, m, "%s in %q", name, item)
	v, err := strconv.ParseFloat(m[1], 64)
	require.NoError(t, err)
	return v
}

// Every row of formtool.csv by itself. What published tables say of form tools
// beyond these rows is not worked out, for want of a place in the program:
//   - circular tools (r = √((√(R²−h²)−t)² + h²), clearance asin(h/R), sizes for
//     screw machines): bits here are flat;
//   - T for turning between two radii with rake: a blank here is cut across its
//     edge by a bit fed or swung past it, and does not turn while it is cut;
//   - advice without a figure to work out: clearances for flat forming tools,
//     lathe tools and side cutters, rake and wedge angles for brass, side relief by
//     metal, the least side clearance of a form tool's wall. All of it lies within
//     the range of clearance and rake that a bit may have here.
func TestFormingToolRows(t *testing.T) {
	rows := references(t, "formtool.csv")
	require.Len(t, rows, 17)
	for _, r := range rows {
		t.Run(r.topic+" "+r.item, func(t *testing.T) {
			want, err := strconv.ParseFloat(r.value, 64)
			require.NoError(t, err)
			c := geometry.Degrees(number(t, r.item, "C"))
			if r.topic == "side clearance" {
				got := SideClearance(c, geometry.Degrees(number(t, r.item, "phi"))).Degrees()
				require.InDelta(t, want, got, 0.0006, r.source)
				return
			}
			got := SquareDepth(number(t, r.item, "D"), c, geometry.Degrees(number(t, r.item, "rake")))
			places := len(r.value) - strings.Index(r.value, ".") - 1
			require.InDelta(t, want, got, 0.51*math.Pow10(-places), r.source)
			form, err := stepForm(t, number(t, r.item, "D")).SquareForm(c, geometry.Degrees(number(t, r.item, "rake")))
			require.NoError(t, err)
			require.InDelta(t, got, form.Form.Edge.Bounds().Height(), 1e-12, "the template's depth is T")
		})
	}
}

// stepForm is a form with nothing but a step of a depth.
func stepForm(t *testing.T, depth float64) Cut {
	t.Helper()
	edge, err := NewEdge([]Corner{{0, depth, 0}, {0, 0, 0}, {1, 0, 0}, {1, depth, 0}})
	require.NoError(t, err)
	return Cut{Form: Form{Edge: edge, Top: depth}}
}

// A straight-sided tooth's back, produced, is tangent to a circle about the
// wheel's centre, whose radius tells how far the back leans from the radius.
func backFromRadius(t *testing.T, c Cut) float64 {
	t.Helper()
	e := c.Form.Edge
	for i := range e.Len() {
		if g := e.Segment(i); g.Quantity == BackAngle {
			way := g.To.Sub(g.From)
			centre := geometry.Point{X: c.SetOver, Y: -c.Height()}
			return centre.Sub(g.From).Cross(way) / way.Norm()
		}
	}
	t.Fatal("no straight back")
	return 0
}

func TestPublishedEscapeTeeth(t *testing.T) {
	rows := references(t, "escape.csv")
	find := func(item string) reference {
		for _, r := range rows {
			if r.item == item {
				return r
			}
		}
		t.Fatal("no row " + item)
		return reference{}
	}
	value := func(text string) float64 {
		v, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
		require.NoError(t, err)
		return v
	}
	front, back := find("tooth front behind radius (undercut)"), find("tooth back from radius")
	lever := strings.Split(find("ratchet tooth front / back").value, "/")
	for _, tooth := range []struct {
		name                   string
		count                  int
		front, back, backAngle float64
		source                 string
	}{
		{"dead beat", 30, value(front.value), value(back.value), 22, back.source},
		{"lever ratchet", 15, value(lever[0]), value(lever[1]), 36, find("ratchet tooth front / back").source},
	} {
		t.Run(tooth.name, func(t *testing.T) {
			const r = 23.8125 // 1 7/8 in over the tips
			p := Pointed{
				Count: tooth.count, TipRadius: r, Undercut: geometry.Degrees(tooth.front), Floor: 0.4,
				Straight: true, BackAngle: geometry.Degrees(tooth.backAngle), Solve: RootDiameter,
			}
			c, err := p.Cut()
			require.NoError(t, err)
			require.InDelta(t, r*math.Sin(tooth.front*math.Pi/180), c.SetOver, 1e-12, tooth.source)
			require.InDelta(t, r*math.Sin(tooth.back*math.Pi/180), backFromRadius(t, c), 1e-9, tooth.source)

			p.RootRadius, p.Solve = c.RootRadius, BackAngle
			c, err = p.Cut()
			require.NoError(t, err)
			require.InDelta(t, tooth.backAngle, c.BackAngle.Degrees(), 1e-8, tooth.source)
			p.BackAngle, p.Solve = geometry.Degrees(tooth.backAngle), Land
			c, err = p.Cut()
			require.NoError(t, err)
			require.Zero(t, c.Land)
		})
	}
}

// The two teeth of which every setting was worked out beforehand, independently,
// by dense sampling of form and tip circle.
func TestSampledBeforehand(t *testing.T) {
	source := "worked out independently by dense sampling"
	deg := geometry.Degrees
	for _, row := range []struct {
		name                         string
		p                            Pointed
		setOver, touch, infeed, root float64
	}{
		{
			"level floor, sharp corner",
			Pointed{Count: 30, TipRadius: 20, Undercut: deg(10), Floor: 0.4, BackRadius: 6, Land: 0.25},
			3.472964, 19.817763, 0.964579, 19.042441,
		},
		{
			"sloping floor, rounded corner",
			Pointed{
				Count: 30, TipRadius: 25, Undercut: deg(12), Floor: 0.5, FloorSlope: deg(12),
				FrontRelief: deg(5), CornerRadius: 0.15, BackRadius: 8, Land: 0.2,
			},
			5.197792, 24.488228, 2.299293, 22.750271,
		},
	} {
		for _, solve := range []geometry.Quantity{RootDiameter, Land, BackRadius} {
			t.Run(row.name+" "+string(solve), func(t *testing.T) {
				p := row.p
				p.Solve = RootDiameter
				first, err := p.Cut()
				require.NoError(t, err)
				p.RootRadius, p.Solve = first.RootRadius, solve
				c, err := p.Cut()
				require.NoError(t, err)
				require.InDelta(t, row.setOver, c.SetOver, 6e-7, source)
				require.InDelta(t, row.touch, c.TouchHeight, 6e-7, source)
				require.InDelta(t, row.infeed, c.Infeed, 6e-7, source)
				require.InDelta(t, row.root, c.RootRadius, 6e-7, source)
				require.InDelta(t, row.p.Land, c.Land, 1e-9)
				require.InDelta(t, row.p.BackRadius, c.BackRadius, 1e-8)
				require.InDelta(t, c.Land, c.LandAt(c.Infeed), 1e-10)
			})
		}
	}
}
