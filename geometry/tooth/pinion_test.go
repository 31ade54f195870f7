package tooth

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
)

// pinions returns the usual pinions, the extreme ones, and seeded ones.
func pinions() []Pinion {
	list := []Pinion{{3, 1, 0.1}, {3, 1, 100}, {2000, 0.3, 100}, {2000, 0.05, 0.1}}
	for leaves := 6; leaves <= 16; leaves++ {
		list = append(list, Pinion{leaves, 0.6, 7.5})
	}
	random := rand.New(rand.NewPCG(9, 1))
	for range 100 {
		list = append(list, Pinion{3 + random.IntN(60), 0.05 + 2*random.Float64(), 0.1 + 20*random.Float64()})
	}
	return list
}

// The figures are those of testdata/pinions.csv; which top a count of leaves takes
// is from memory of the same standard.
func TestPinionProportions(t *testing.T) {
	value := map[string]float64{}
	for _, row := range publishedIn(t, "pinions.csv", "BS 978-2 proportions") {
		value[row["quantity_and_unit"]] = decimals(t, row["value"])
	}
	for _, row := range []struct {
		leaves         int
		leaf, addendum string
		arc            float64
	}{
		{6, "up to 10", "high ogive, <=10", 1.05},
		{7, "up to 10", "high ogive, <=10", 1.05},
		{8, "up to 10", "medium ogive, <=10", 0.70},
		{9, "up to 10", "medium ogive, <=10", 0.70},
		{10, "up to 10", "round top, <=10", 0.525},
		{11, "11 and more", "round top, >=11", 0.625},
		{16, "11 and more", "round top, >=11", 0.625},
	} {
		t.Run(fmt.Sprint(row.leaves), func(t *testing.T) {
			p := Pinion{row.leaves, 1, 6}
			require.Equal(t, value["pinion leaf thickness, "+row.leaf+" leaves (module = 1)"], p.Thickness())
			require.Equal(t, value["pinion addendum, "+row.addendum+" leaves (module = 1)"], p.Addendum())
			require.InDelta(t, row.arc, p.ArcRadius(), 0.001)
			wheel := Cycloidal{6 * row.leaves, 1, row.leaves}
			require.InDelta(t, wheel.AddendumFactor()+0.4, p.Dedendum(), 1e-12, "the wheel's tip clears the root by 0.4 modules")
		})
	}
	require.Equal(t, 1.05, value["lantern pin diameter (module = 1)"])
	require.Equal(t, 1.05, UsualTrundle(8, 1))
}

// Goodrich's cut pinions: a leaf is a third of the pitch up to 9 leaves and two
// fifths for 12; the depth of the space is told as a share of the whole radius.
// Ours agree within what "about" may mean, 2 % of thickness and 0.06 of the
// radius. Not reproduced: the space of 6 leaves ("a little more than 1/2": ours,
// for a high point, is 0.66), of 12 ("about 1/2": 0.41), and the leaves of 10
// (11 of 36 degrees: ours 12.0) and of 20 (8:7), which are another rule's.
func TestPinionsAgainstGoodrich(t *testing.T) {
	share := map[string]float64{"space = 2 x leaf": 1.0 / 3, "leaf:space = 2:3": 2.0 / 5}
	depth := map[string]float64{"about 1/2 total radius": 0.5, "1/2 total radius": 0.5, "about 3/5 total radius": 0.6}
	leaves, spaces := 0, 0
	for _, row := range publishedIn(t, "pinions.csv", "Goodrich") {
		if row["pinion_leaves"] == "" || row["pinion_leaves"] == ">6" {
			continue
		}
		p := Pinion{int(decimals(t, row["pinion_leaves"])), 1, 8}
		if s, ok := share[row["value"]]; ok {
			require.InEpsilon(t, s*math.Pi, p.Thickness(), 0.02, "%v", row)
			leaves++
		}
		if d, ok := depth[row["value"]]; ok && p.Leaves != 12 {
			require.InDelta(t, d, (p.Addendum()+p.Dedendum())/p.TipRadius(), 0.06, "%v", row)
			spaces++
		}
	}
	require.Equal(t, 5, leaves)
	require.Equal(t, 4, spaces)
}

func TestLeavesAreWhatTheProportionsSay(t *testing.T) {
	for _, p := range pinions() {
		w, err := p.Wheel()
		require.NoError(t, err, "%+v", p)
		require.Equal(t, p.Leaves, w.Count)
		require.Equal(t, 5*p.Leaves, w.Outline.Len())
		for _, i := range []int{0, p.Leaves / 2} {
			tip, left, root := w.Outline.Vertex(5*i), w.Outline.Vertex(5*i+1), w.Outline.Vertex(5*i+2)
			right := w.Outline.Vertex(5*i - 1)
			size := math.Max(1, w.TipRadius)
			require.InDelta(t, p.Module*(float64(p.Leaves)/2+p.Addendum()), tip.Norm(), near*size)
			require.InDelta(t, p.Module*float64(p.Leaves)/2, left.Norm(), near*size)
			require.InDelta(t, p.Module*(float64(p.Leaves)/2-p.Dedendum()), root.Norm(), near*size)
			turn := float64((left.Direction() - right.Direction()).Turn())
			require.InDelta(t, p.Thickness()*p.Module, turn*w.PitchRadius, near*size, "%+v", p)
			require.InDelta(t, 0, left.Cross(root.Point), near*size*size, "the flank is radial")
			for _, at := range []int{5*i - 1, 5 * i} {
				arc, ok := w.Outline.Segment(at).Arc()
				require.True(t, ok)
				require.InEpsilon(t, p.ArcRadius(), arc.Radius, 1e-6, "%+v", p)
				require.Positive(t, float64(arc.Sweep), "the leaf bulges outwards")
			}
		}
	}
}

func TestPinionsAreSimpleAndSymmetrical(t *testing.T) {
	for _, p := range pinions() {
		w, err := p.Wheel()
		require.NoError(t, err)
		require.True(t, w.Outline.Simple(), "%+v", p)
		require.Positive(t, w.Outline.Area())
		back := w.Outline.Mirror().Reverse()
		for i := range min(w.Outline.Len(), 500) {
			require.Less(t, back.Vertex(i-1).Dist(w.Outline.Vertex(i).Point), near*math.Max(1, w.TipRadius))
		}
		require.InDelta(t, w.TipRadius, w.Outline.Bounds().Max.Y, near*math.Max(1, w.TipRadius), "nothing stands above the tips: %+v", p)
	}
}

// A round top has no corner: its arcs run level through the tip. A point has one.
func TestTopsAreRoundOrPointed(t *testing.T) {
	for leaves := 3; leaves <= 30; leaves++ {
		w, err := Pinion{leaves, 1, 6}.Wheel()
		require.NoError(t, err)
		arc, _ := w.Outline.Segment(0).Arc()
		off := math.Abs(arc.Centre.X)
		if leaves >= 10 {
			require.Less(t, off, near, leaves)
		} else {
			require.Greater(t, off, 0.02, leaves)
		}
	}
}

func TestPinionSpaceFormLeavesTheSpace(t *testing.T) {
	for _, p := range pinions() {
		w, err := p.Wheel()
		require.NoError(t, err)
		cut, err := p.SpaceForm(0)
		require.NoError(t, err, "%+v", p)
		require.Zero(t, cut.SetOver)
		require.Zero(t, cut.Land, "%+v", p)
		require.InDelta(t, p.RootRadius(), cut.RootRadius, 1e-6, "%+v", p)
		left, err := cut.Space()
		require.NoError(t, err)
		require.Equal(t, w.Space.Len(), left.Len(), "%+v", p)
		for i := range left.Len() {
			require.Less(t, w.Space.Segment(i).From.Dist(left.Segment(i).From), 1e-6, "%+v %d", p, i)
			require.Less(t, w.Space.Segment(i).To.Dist(left.Segment(i).To), 1e-6, "%+v %d", p, i)
		}
	}
	_, err := Pinion{8, 1, 6}.SpaceForm(0.5)
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit)
	require.Equal(t, geometry.Quantity("cutter.stock_width"), limit.Quantity)
	_, err = Pinion{8, 1, 6}.SpaceForm(limit.Min + near)
	require.NoError(t, err)
	_, err = Pinion{}.SpaceForm(5)
	require.Error(t, err)
}

func TestPinionThatCannotBeIsRefused(t *testing.T) {
	for _, row := range []struct {
		name     string
		p        Pinion
		quantity geometry.Quantity
		code     string
		min, max float64
	}{
		{"two leaves", Pinion{2, 1, 6}, "leaves", "tooth.pinion-leaves", 3, 2000},
		{"too many", Pinion{2001, 1, 6}, "leaves", "tooth.pinion-leaves", 3, 2000},
		{"no ratio", Pinion{8, 1, 0}, "ratio", "tooth.pinion-ratio", 0.1, 100},
		{"ratio is no number", Pinion{8, 1, math.NaN()}, "ratio", "tooth.pinion-ratio", 0.1, 100},
		{"no module", Pinion{8, 0, 6}, "module", "tooth.pinion-module", 0.01, 2000 / 9.34},
		{"module is no number", Pinion{8, math.NaN(), 6}, "module", "tooth.pinion-module", 0.01, 2000 / 9.34},
		{"larger than anything", Pinion{10, 200, 6}, "module", "tooth.pinion-module", 0.01, 2000 / 11.05},
	} {
		t.Run(row.name, func(t *testing.T) {
			_, err := row.p.Wheel()
			var limit *geometry.Limit
			require.ErrorAs(t, err, &limit)
			require.Equal(t, row.quantity, limit.Quantity)
			require.Equal(t, row.code, limit.Code)
			require.InDelta(t, row.min, limit.Min, near)
			require.InDelta(t, row.max, limit.Max, near)
			require.False(t, math.IsNaN(limit.Value))
			require.True(t, words.English().Has(limit.Code))
		})
	}
	require.Equal(t, 0.4, Pinion{}.Dedendum())
}

// What a limit says would do does.
func TestLargestPinionIsBuilt(t *testing.T) {
	for _, p := range pinions() {
		p.Module = 5000
		_, err := p.Wheel()
		var limit *geometry.Limit
		require.ErrorAs(t, err, &limit)
		p.Module = limit.Max
		w, err := p.Wheel()
		require.NoError(t, err)
		require.InDelta(t, 1000, w.TipRadius, near)
	}
}
