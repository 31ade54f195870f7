package solve_test

import (
	"bytes"
	"context"
	"fmt"
	"math"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/geometry/measure"
)

// collets is a job of plain numbers: two wheels in a stack, one on a collet of its
// own, and a lantern pinion.
const collets = `{"tipline": 1, "units": "mm", "wheels": [
	{"id": "large", "thickness": 1.5, "bore": 6, "material": "brass", "blank": {"oversize": 0.3},
	 "teeth": {"form": "measured", "count": 96, "tip_diameter": 70, "root_diameter": 65},
	 "crossing": {"arms": 6, "rim": 2.5, "hub": 18, "arm_at_rim": 2, "arm_at_hub": 2.6, "fillet_at_rim": 0.8, "fillet_at_hub": 1,
	              "allowance": 0.3, "blade": "2/0"}},
	{"id": "small", "thickness": 1.2, "bore": 6,
	 "teeth": {"form": "measured", "count": 60, "tip_diameter": 44, "root_diameter": 40}},
	{"id": "single", "thickness": 1.2, "bore": 6,
	 "teeth": {"form": "measured", "count": 60, "tip_diameter": 40, "root_diameter": 37},
	 "additions": [{"kind": "hole", "radius": 12, "angle": 45, "diameter": 2, "repeat": 3}, {"kind": "note", "text": "this side up"}],
	 "mount": {"screws": 4, "thread": "UNF 0-80", "screw_circle": 14, "collet": {"bore": 3, "register": 6, "flange": 20}}}],
	"pinions": [{"id": "lantern", "form": "lantern", "leaves": 8, "module": 0.7, "thickness": 6}],
	"stacks": [{"id": "two", "wheels": ["large", "small"], "tips": [0, 5],
	            "mount": {"screws": 3, "thread": "BA 10", "screw_circle": 12, "start": 30}}]}`

func read(t testing.TB, text string) *job.Job {
	j, err := job.Read(bytes.NewReader([]byte(text)))
	require.NoError(t, err)
	return j
}

// bare is what an item is, without its part.
type bare struct {
	kind      solve.StockKind
	part, use string
	name      string
	count     int
	diameter  float64
	usual     bool
}

func TestStockByHand(t *testing.T) {
	r := solve.Solve(context.Background(), read(t, collets))
	require.Empty(t, errorsOf(r, "large"))
	require.Empty(t, errorsOf(r, "single"))
	var list []bare
	for _, i := range solve.Stock(r) {
		list = append(list, bare{i.Kind, i.Part.ID(), i.Use, i.Name, i.Count, math.Round(1000*i.Diameter) / 1000, i.Usual})
	}
	require.Equal(t, []bare{
		{solve.Sheet, "single", "stock.use.wheel", "brass", 1, 40, true},
		{solve.Sheet, "small", "stock.use.wheel", "brass", 1, 44, true},
		{solve.Sheet, "large", "stock.use.wheel", "brass", 1, 70.3, false},
		{solve.Rod, "two", "stock.use.collet", "", 1, 0, false},
		{solve.Rod, "lantern", "stock.use.shrouds", "", 2, 7.07, false}, // 8 · 0.7 + 2 · 0.735
		{solve.Rod, "single", "stock.use.collet", "", 1, 20, false},
		{solve.Wire, "lantern", "stock.use.trundles", "", 8, 0.735, false}, // 1.05 · 0.7
		{solve.Drill, "large", "stock.use.start", "#75", 1, 0.533, true},
		{solve.Drill, "lantern", "stock.use.trundle-holes", "#69", 1, 0.742, false},
		{solve.Drill, "single", "stock.use.starter", "", 1, 1, true},
		{solve.Drill, "single", "stock.use.tapping", "3/64", 1, 1.191, false}, // testdata/threads.csv
		{solve.Drill, "two", "stock.use.starter", "", 1, 1.25, true},
		{solve.Drill, "two", "stock.use.tapping", "", 1, 1.4, false}, // likewise
		{solve.Drill, "single", "stock.use.clearance", "#52", 1, 1.613, false},
		{solve.Drill, "two", "stock.use.clearance", "#50", 1, 1.778, true}, // the first drill at 1.04 · 1.7 or above
		{solve.Drill, "single", "stock.use.addition", "", 1, 2, false},
		{solve.Drill, "single", "stock.use.collet-bore", "", 1, 3, false},
		{solve.Drill, "large", "stock.use.bore", "", 1, 6, false},
		{solve.Drill, "small", "stock.use.bore", "", 1, 6, false},
		{solve.Drill, "single", "stock.use.bore", "", 1, 6, false},
		{solve.Tap, "two", "stock.use.collet", "BA 10", 1, 1.7, false},
		{solve.Tap, "single", "stock.use.collet", "UNF 0-80", 1, 1.524, false},
		{solve.Screw, "two", "stock.use.screws", "BA 10", 3, 1.7, false},
		{solve.Screw, "single", "stock.use.screws", "UNF 0-80", 4, 1.524, false},
		{solve.Blade, "large", "stock.use.windows", "2/0", 1, 0, true},
	}, list)
}

// The cut a blade makes is the length of the windows' saw lines, and a screw goes
// through every wheel of its stack.
func TestStockLengths(t *testing.T) {
	r := solve.Solve(context.Background(), read(t, collets))
	for _, i := range solve.Stock(r) {
		switch {
		case i.Kind == solve.Blade:
			sawn := 0.0
			for _, window := range r.Wheel("large").Crossing.Windows {
				sawn += window.SawLine[0].Length()
			}
			require.InDelta(t, sawn, i.Length, 1e-9)
			require.Equal(t, fmt.Sprintf("2/0, 0.52 mm wide, 0.26 mm thick, %.2f mm to saw", sawn), i.Describe(english, measure.Units{}))
		case i.Kind == solve.Screw && i.Part.ID() == "two":
			require.InDelta(t, 2.7, i.Length, 1e-12)
			require.Equal(t, "3 × BA 10, Ø 1.70 mm, through 2.70 mm", i.Describe(english, measure.Units{}))
			require.Equal(t, "large + small: into the collet", i.For(english))
		}
	}
}

// Like things stand on one line that names all they are for: one drill serves, bits and
// screws are added up, and a blade's cuts are.
func TestLikeStockIsGathered(t *testing.T) {
	j := read(t, collets)
	a, b := &solve.Wheel{Part: j.Wheel("large")}, &solve.Wheel{Part: j.Wheel("small")}
	bit := solve.Item{Kind: solve.ToolBit, Use: "stock.use.cutter", Count: 1, Width: 6}
	drill := solve.Item{Kind: solve.Drill, Use: "stock.use.bore", Count: 1, Diameter: 6}
	blade := solve.Item{Kind: solve.Blade, Use: "stock.use.windows", Name: "2/0", Count: 1, Length: 100}
	screw := solve.Item{Kind: solve.Screw, Use: "stock.use.screws", Name: "BA 10", Count: 3, Length: 2}
	longer := screw
	longer.Length = 3
	sheet := solve.Item{Kind: solve.Sheet, Use: "stock.use.wheel", Name: "brass", Count: 1, Diameter: 60}
	var items []solve.Item
	for _, i := range []solve.Item{sheet, bit, drill, screw, longer, blade} {
		for _, p := range []solve.Part{a, b} {
			i.Part = p
			items = append(items, i)
		}
	}
	var said []string
	for _, g := range solve.Gather(items) {
		said = append(said, g.Describe(english, measure.Units{})+" | "+g.For(english))
	}
	require.Equal(t, []string{
		"brass, Ø 60.00 mm | large: the blank",
		"brass, Ø 60.00 mm | small: the blank",
		"2 × 6.00 mm wide | large: the cutter; small: the cutter",
		"Ø 6.00 mm | large: the bore, or a drill under it and bored; small: the bore, or a drill under it and bored",
		"6 × BA 10, through 2.00 mm | large: into the collet; small: into the collet",
		"6 × BA 10, through 3.00 mm | large: into the collet; small: into the collet",
		"2/0, 200.00 mm to saw | large: the windows; small: the windows",
	}, said)
}

// A job of which nothing can be built needs nothing.
func TestNoStockForWhatCannotBeBuilt(t *testing.T) {
	j := set(t, set(t, set(t, read(t, collets), "large", "teeth.count", "many"), "small", "teeth.count", "1"), "single", "teeth.count", "")
	j = set(t, j, "lantern", "leaves", "2")
	require.Empty(t, solve.Stock(solve.Solve(context.Background(), j)))
}
