package tables

import (
	"io/fs"
	"math"
	"sort"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestEveryRowHasItsSource(t *testing.T) {
	names, err := fs.Glob(files, "*.csv")
	require.NoError(t, err)
	require.Len(t, names, 7)
	for _, name := range names {
		for _, r := range sheet(name) {
			require.NotEmpty(t, r["source"], "%s: %v", name, r)
			require.NotEmpty(t, r["status"], "%s: %v", name, r)
		}
	}
}

// ASME B94.11M and 1 in = 25.4 mm; the table's own columns must agree.
func TestDrillsAgreeWithThemselves(t *testing.T) {
	require.Len(t, drills(), 97+26+32)
	seen := map[string]bool{}
	for i, d := range drills() {
		require.False(t, seen[d.Name], d.Name)
		seen[d.Name] = true
		require.InDelta(t, sheet("drills.csv")[i].number("diameter_mm"), d.MM, 0.00006, d.Name)
		if i > 0 && drills()[i-1].Series == d.Series {
			grows := d.MM > drills()[i-1].MM
			require.Equal(t, d.Series != "number", grows, d.Name)
		}
	}
}

// A drill chart prints the millimetres of the drills for each thread beside
// their names (docslib.org/doc/4942776, in the rows' source).
func TestDrillsAgreeWithTheThreadChart(t *testing.T) {
	checked := 0
	for _, thread := range Threads() {
		for name, mm := range map[string]float64{thread.TapDrill: thread.Tap, thread.ClearDrill: thread.Clear} {
			if name == "" {
				continue
			}
			got, ok := DrillNamed(name)
			require.True(t, ok, name)
			require.InDelta(t, mm, got.MM, 0.0006, "%s for %s", name, thread.Name())
			checked++
		}
	}
	require.Greater(t, checked, 20)
}

func TestDrillsByName(t *testing.T) {
	for _, row := range []struct {
		name, inches string
		mm           float64
	}{
		// ASME B94.11M, as in drills.csv.
		{"#60", "0.0400", 1.016},
		{"#1", "0.2280", 5.7912},
		{"#97", "0.0059", 0.14986},
		{"#80", "0.0135", 0.3429},
		{"A", "0.2340", 5.9436},
		{"F", "0.2570", 6.5278},
		{"Z", "0.4130", 10.4902},
		{"1/16", "1/16", 1.5875},
		{"1/2", "1/2", 12.7},
		{"1/64", "1/64", 0.396875},
	} {
		t.Run(row.name, func(t *testing.T) {
			d, ok := DrillNamed(row.name)
			require.True(t, ok)
			require.Equal(t, row.inches, d.Inches)
			require.InDelta(t, row.mm, d.MM, 1e-9)
		})
	}
	for _, name := range []string{"", "#", "#0", "#98", "AA", "f", "2/4", "33/64"} {
		_, ok := DrillNamed(name)
		require.False(t, ok, name)
	}
}

func TestNearestDrill(t *testing.T) {
	all := drills()
	for mm := 0.05; mm < 14; mm += 0.013 {
		nearest := NearestDrill(mm)
		for _, d := range all {
			require.LessOrEqual(t, math.Abs(nearest.MM-mm), math.Abs(d.MM-mm))
		}
	}
	require.Equal(t, "#60", NearestDrill(1.016).Name)
	require.Equal(t, "#97", NearestDrill(0).Name)
	require.Equal(t, "#97", NearestDrill(math.NaN()).Name)
	require.Equal(t, "1/2", NearestDrill(math.Inf(1)).Name)
}

func TestMaterials(t *testing.T) {
	require.Equal(t, "brass", Materials()[0].Name)
	brass, ok := MaterialNamed(" Brass ")
	require.True(t, ok)
	require.Equal(t, 8490.0, brass.Density) // C36000, ezlok.com: 0.307 lb/in³
	require.Equal(t, 97.0, brass.Young)     // 14.1e6 psi
	require.InDelta(t, 0.307*0.45359237/(0.0254*0.0254*0.0254), brass.Density, 8)
	require.InDelta(t, 14.1e6*6894.757/1e9, brass.Young, 0.3)
	for _, m := range Materials() {
		require.Greater(t, m.Density, 2000.0, m.Name)
		require.Less(t, m.Density, 9000.0, m.Name)
		require.Greater(t, m.Young, 60.0, m.Name)
		require.Less(t, m.Young, 220.0, m.Name)
	}
	_, ok = MaterialNamed("cheese")
	require.False(t, ok)
}

func TestBlades(t *testing.T) {
	require.Len(t, Blades(), 16)
	last := Blade{}
	for _, b := range Blades() {
		require.Greater(t, b.Thickness, last.Thickness, b.Name)
		require.Greater(t, b.Depth, b.Thickness, b.Name)
		require.Greater(t, b.Turning(), last.Turning(), b.Name)
		drill, ok := DrillNamed(b.StartDrill)
		require.True(t, ok, b.Name)
		require.InDelta(t, drill.MM, b.StartHole, 1e-9, b.Name)
		require.Greater(t, b.StartHole, b.Depth, "%s goes through its hole", b.Name)
		last = b
	}
	zero, ok := BladeNamed("0")
	require.True(t, ok)
	require.Equal(t, "1/0", zero.Name)
	_, ok = BladeNamed("9")
	require.False(t, ok)
}

// A blade turned about its middle sweeps the circle through its corners.
func TestTurningIsHalfTheDiagonal(t *testing.T) {
	require.InDelta(t, 2.5, Blade{Thickness: 3, Depth: 4}.Turning(), 1e-12)
}

func TestPlateSet(t *testing.T) {
	for _, circles := range [][]int{PlateSet(), circlesOf(OnePlate)} {
		require.True(t, sort.IntsAreSorted(circles))
	}
	require.Len(t, PlateSet(), 18)
	require.Len(t, circlesOf(OnePlate), 22)
	PlateSet()[0] = 1
	require.Equal(t, 15, PlateSet()[0], "the caller's copy is its own")
}

func TestThreadsByName(t *testing.T) {
	for _, row := range []struct {
		name  string
		major float64 // mm, threads.csv
	}{
		{"BA 10", 1.70},
		{"ba 16", 0.79},
		{"UNF 0-80", 1.524},
		{"UNC  2-56", 2.1844},
		{"M2", 2},
		{"ISO metric coarse M1.6", 1.6},
		{"UNM 0.30", 0.3},
		{"ISO M2", 2},
		{"UNF 0", 1.524},
		{"10BA", 1.70},
		{"10 ba", 1.70},
		{"UNC 2", 2.1844},
		{"UNS 00-90", 1.1938},
		{"BA10", 1.70},
		{"2-56", 2.1844},
		{"2-56 unc", 2.1844},
		{"0-80", 1.524},
		{"UNM0.30", 0.3},
		{"0.30 UNM", 0.3},
	} {
		thread, ok := ThreadNamed(row.name)
		require.True(t, ok, row.name)
		require.InDelta(t, row.major, thread.Major, 1e-9)
		require.Less(t, thread.Tap, thread.Major)
		require.Positive(t, thread.Tap)
	}
	for _, name := range []string{"", "10", "BA", "BA 17", "2-80", "0.30"} {
		_, ok := ThreadNamed(name)
		require.False(t, ok, name)
	}
	for _, thread := range Threads() {
		require.Less(t, thread.Pitch, thread.Major, thread.Name())
		if thread.Clear > 0 {
			require.Greater(t, thread.Clear, thread.Major, thread.Name())
		}
	}
}
