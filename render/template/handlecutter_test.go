package template

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
)

// straightBacked is a pointed wheel of 30 teeth with a straight back.
func straightBacked(fillet, corner float64) cutter.Pointed {
	return cutter.Pointed{
		Count: 30, TipRadius: 20, RootRadius: 17.5, Undercut: geometry.Degrees(10), Floor: 0.9, FloorSlope: geometry.Degrees(6),
		FrontRelief: geometry.Degrees(3), CornerRadius: corner, Straight: true, BackFillet: fillet, Land: 0.2, StockWidth: 8,
		Solve: cutter.BackAngle,
	}
}

func cutWheel(t testing.TB, p cutter.Pointed, hand, enters string) Wheel {
	t.Helper()
	cut, err := p.Cut()
	require.NoError(t, err)
	teeth, err := tooth.Pointed(cut, hand)
	require.NoError(t, err)
	return Wheel{ID: "w", Name: "W", Hand: hand, Enters: enters, Teeth: &teeth, Cut: &cut}
}

func TestCutterHandlesStandWhereTheirDimensionsAre(t *testing.T) {
	arc := cutter.Pointed{
		Count: 30, TipRadius: 25, Undercut: geometry.Degrees(12), Floor: 0.5, FloorSlope: geometry.Degrees(12),
		FrontRelief: geometry.Degrees(5), CornerRadius: 0.15, BackRadius: 8, Land: 0.2, StockWidth: 7.9375, Solve: cutter.RootDiameter,
	}
	sharp := arc
	sharp.CornerRadius, sharp.FrontRelief, sharp.Land, sharp.Undercut = 0, 0, 0, 0
	for name, p := range map[string]cutter.Pointed{
		"arc": arc, "sharp": sharp, "straight": straightBacked(0.3, 0.1), "straight, sharp": straightBacked(0, 0),
	} {
		for _, hand := range []string{"clockwise", "anticlockwise"} {
			t.Run(name+" "+hand, func(t *testing.T) {
				w := cutWheel(t, p, hand, "")
				want := map[geometry.Quantity]float64{
					cutter.FrontRelief: float64(p.FrontRelief), cutter.CornerRadius: p.CornerRadius, cutter.Floor: p.Floor,
					cutter.FloorSlope: float64(p.FloorSlope), cutter.Undercut: float64(p.Undercut), cutter.RootDiameter: 2 * w.Cut.RootRadius,
					cutter.Land: p.Land,
				}
				if p.Straight {
					want[cutter.BackAngle], want[cutter.BackFillet] = float64(w.Cut.BackAngle), p.BackFillet
				} else {
					want[cutter.BackRadius] = p.BackRadius
				}
				if last := w.Cut.Form.Edge.Segment(w.Cut.Form.Edge.Len() - 1); last.Quantity == cutter.StockWidth {
					want[cutter.StockWidth] = p.StockWidth
				}
				handles := CutterHandles(w)
				require.ElementsMatch(t, keys(want), quantities(handles))
				for _, h := range handles {
					rises(t, newView(w, metric), h, want[h.Quantity])
				}
			})
		}
	}
}

func keys(m map[geometry.Quantity]float64) []geometry.Quantity {
	var list []geometry.Quantity
	for k := range m {
		list = append(list, k)
	}
	return list
}

// rises checks that a handle stands at its value and, pulled the way that makes it
// greater, gives greater and greater ones.
func rises(t *testing.T, e *enlargement, h Handle, want float64) {
	t.Helper()
	way := map[geometry.Quantity]geometry.Point{
		cutter.FrontRelief: {X: 1}, cutter.CornerRadius: {X: 1, Y: 1}, cutter.Floor: {X: 1}, cutter.FloorSlope: {Y: 1},
		cutter.BackRadius: {X: 1, Y: -0.5}, cutter.BackAngle: {X: 1}, cutter.BackFillet: {X: -1, Y: 1}, cutter.Undercut: {X: 1},
		cutter.RootDiameter: {Y: -1}, cutter.Land: {X: -1}, cutter.StockWidth: {X: 1},
	}[h.Quantity]
	if e.mirror {
		way.X = -way.X
	}
	got, err := h.Value(h.At)
	require.NoError(t, err)
	require.InDelta(t, want, got, 1e-9, "%s where it stands", h.Quantity)
	before := got
	for i := 1; i <= 20; i++ {
		v, err := h.Value(h.At.Add(way.Times(0.05 * float64(i))))
		require.NoError(t, err)
		require.Greater(t, v, before, "%s", h.Quantity)
		before = v
	}
}

// A form built with what a dragged handle sets runs through the place it was
// dragged to, the wheel's centre and the sharp corner standing still.
func TestADraggedFormFollowsThePointer(t *testing.T) {
	p := straightBacked(0.3, 0.1)
	p.Solve = cutter.Land
	p.BackAngle = geometry.Degrees(20)
	w := cutWheel(t, p, "clockwise", "back")
	e := newView(w, metric)
	require.False(t, e.mirror)
	dragged := 0
	for _, h := range CutterHandles(w) {
		q := p
		field := map[geometry.Quantity]func(float64){
			cutter.FrontRelief: func(v float64) { q.FrontRelief = geometry.Angle(v) },
			cutter.FloorSlope:  func(v float64) { q.FloorSlope = geometry.Angle(v) },
			cutter.BackAngle:   func(v float64) { q.BackAngle = geometry.Angle(v) },
			cutter.Floor:       func(v float64) { q.Floor = v },
			cutter.BackFillet:  func(v float64) { q.BackFillet = v },
		}[h.Quantity]
		if field == nil {
			continue
		}
		dragged++
		to := h.At.Add(geometry.Point{X: 0.3, Y: 0.2})
		settings, err := h.Set(to)
		require.NoError(t, err)
		field(settings[0].Value)
		cut, err := q.Cut()
		require.NoError(t, err, "%s", h.Quantity)
		near, _ := cut.Form.Edge.Nearest(e.tool(to))
		require.InDelta(t, 0, near.Dist(e.tool(to)), 0.05, "%s", h.Quantity)
	}
	require.Equal(t, 5, dragged)
}

func TestATrainWheelsFormHasNoHandles(t *testing.T) {
	require.Empty(t, CutterHandles(trainWheel(t, 72, 6)))
	require.Empty(t, CutterHandles(Wheel{}))
}

// A corner of a measured bit is set in x and y at once, counted from where its
// maker counted.
func TestBitHandlesSetTheCorner(t *testing.T) {
	for _, hand := range []string{"clockwise", "anticlockwise"} {
		w := pointedWheel(t, hand)
		corners := w.Cut.Form.Corners()
		for i := range corners {
			corners[i].Y += 3 // measured from another place
		}
		corners[2].X += 0.02
		edge, err := cutter.NewEdge(corners)
		require.NoError(t, err)
		ground, err := w.Cut.Ground(edge)
		require.NoError(t, err)
		w.Ground, w.BitBase = &ground, corners[0].Y-ground.Form.Edge.Vertex(0).Y
		found := 0
		for _, h := range CutterHandles(w) {
			for i, c := range corners {
				if h.Quantity != geometry.Quantity("cutter.bit.chain["+string(rune('0'+i))+"].x") {
					continue
				}
				found++
				settings, err := h.Set(h.At)
				require.NoError(t, err)
				require.Len(t, settings, 2)
				require.InDelta(t, c.X, settings[0].Value, 1e-9)
				require.InDelta(t, c.Y, settings[1].Value, 1e-9)
				moved, err := h.Set(h.At.Add(geometry.Point{X: 1, Y: 2}))
				require.NoError(t, err)
				require.InDelta(t, 0.1, (moved[0].Value-c.X)*sign(!w.Mirrored()), 1e-9, "at 10:1")
				require.InDelta(t, 0.2, moved[1].Value-c.Y, 1e-9)
				_, err = h.Set(geometry.Point{X: 1 / zero})
				require.ErrorIs(t, err, ErrNowhere)
			}
		}
		require.Equal(t, len(corners), found)
	}
}

var zero float64

func sign(positive bool) float64 {
	if positive {
		return 1
	}
	return -1
}

func TestBlankHandlesStandWhereTheirDimensionsAre(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	want := map[geometry.Quantity]float64{
		"bore": w.Bore, "blank.oversize": w.Oversize, "teeth.tip_diameter": 50, "thickness": w.Thickness,
	}
	handles := BlankHandles(w)
	require.ElementsMatch(t, keys(want), quantities(handles))
	for _, h := range handles {
		v, err := h.Value(h.At)
		require.NoError(t, err)
		require.InDelta(t, want[h.Quantity], v, 1e-9, "%s", h.Quantity)
		further, err := h.Value(h.At.Times(1.01))
		require.NoError(t, err)
		require.Greater(t, further, v, "%s", h.Quantity)
	}
	require.NotContains(t, quantities(BlankHandles(trainWheel(t, 72, 6))), geometry.Quantity("teeth.tip_diameter"))
	require.Empty(t, BlankHandles(Wheel{}))
}
