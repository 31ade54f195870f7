package template

import (
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/geometry/cutter"
	"tipline/geometry/tooth"
	"tipline/render"
)

// Square to the clearance face a form is as wide as it is and its depths shrink by
// the published relation; on a raked face they are drawn out.
func TestDepthsAreDrawnByTheirRelation(t *testing.T) {
	for _, row := range []struct {
		name            string
		side            Side
		clearance, rake float64
		share           float64 // from the formulas of Machinery's Handbook, forming tools
	}{
		{"rake face", RakeFace, 10, 0, 1},
		{"raked face", RakeFace, 10, 5, 1 / math.Cos(5*math.Pi/180)},
		{"clearance", ClearanceFace, 10, 0, math.Cos(10 * math.Pi / 180)},
		{"clearance, raked", ClearanceFace, 12, 8, math.Cos(20*math.Pi/180) / math.Cos(8*math.Pi/180)},
	} {
		t.Run(row.name, func(t *testing.T) {
			w := pointedWheel(t, "clockwise")
			w.Relief.Clearance, w.Rake = geometry.Degrees(row.clearance), geometry.Degrees(row.rake)
			d, err := GrindingSide(w, metric, 10, row.side)
			require.NoError(t, err)
			drawn := itemsOn(d, render.LayerForm, "cutter")[0].Outlines[0].Bounds()
			truth, err := w.Cut.Form.Outline()
			require.NoError(t, err)
			const fitted = 10 * 1e-3 // arcs are fitted to 1 µm
			require.InDelta(t, 10*truth.Bounds().Width(), drawn.Width(), fitted)
			require.InDelta(t, 10*row.share*truth.Bounds().Height(), drawn.Height(), fitted)
			if row.share == 1 {
				return
			}
			require.Empty(t, itemsOn(d, render.LayerPitchCircle, "teeth.tip_diameter"), "a circle of the wheel is none there")
			require.Contains(t, said(d), bareOf(metric, metric.Units.Fine(row.share)))
			values := ""
			for _, f := range GrindingSideNotes(w, metric, row.side).Figures {
				values += f.Value + "\n"
			}
			require.Contains(t, values, metric.Units.Number(row.share, 4)+" D")
		})
	}
}

func TestTheTitleNamesTheSide(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	rake, err := Grinding(w, metric, 10)
	require.NoError(t, err)
	require.Contains(t, rake.Description, "rake face")
	square, err := GrindingSide(w, metric, 10, ClearanceFace)
	require.NoError(t, err)
	require.Contains(t, square.Title, "square to the clearance face")
	require.NotEqual(t, rake.Title, square.Title)
}

func TestSidesThatCannotBeDrawn(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	w.Relief = nil
	_, err := GrindingSide(w, metric, 10, ClearanceFace)
	require.ErrorIs(t, err, ErrNothing)
	require.Empty(t, GrindingSideNotes(w, metric, ClearanceFace).Figures)
	_, err = GrindingSide(w, metric, 10, "left")
	require.Error(t, err)
	w = pointedWheel(t, "clockwise")
	w.Rake = geometry.Degrees(80)
	_, err = GrindingSide(w, metric, 10, ClearanceFace)
	var limit *geometry.Limit
	require.ErrorAs(t, err, &limit)
	require.Equal(t, cutter.Rake, limit.Quantity)
}

func TestTheGrindingWheelsEdgeIsNamed(t *testing.T) {
	w := trainWheel(t, 72, 6)
	least := w.Cut.Form.SmallestConcave()
	require.Positive(t, least)
	for _, row := range []struct {
		edge float64
		says string
	}{
		{0, "wheel's edge R ≤ " + metric.Units.Bare(least)},
		{least / 2, "wheel's edge R ≤ " + metric.Units.Bare(least)},
		{least + 0.5, "too hollow for R " + metric.Units.Bare(least+0.5)},
	} {
		w.WheelEdge = row.edge
		d, err := Grinding(w, metric, 20)
		require.NoError(t, err)
		require.Contains(t, said(d), row.says)
	}
	notes := ""
	for _, f := range GrindingNotes(w, metric).Figures {
		notes += f.Value + "\n"
	}
	require.Contains(t, notes, "R "+metric.Units.Length(least)+" at most")
}

// formWheels are pinions and a wheel for a lantern pinion, whose spaces are cut like
// any other.
func formWheels(t testing.TB) map[string]Wheel {
	t.Helper()
	made := map[string]Wheel{}
	for name, p := range map[string]tooth.Pinion{
		"6 leaves": {Leaves: 6, Module: 0.8, Ratio: 8}, "12 leaves": {Leaves: 12, Module: 1, Ratio: 6},
	} {
		leaves, err := p.Wheel()
		require.NoError(t, err, name)
		cut, err := p.SpaceForm(8)
		require.NoError(t, err, name)
		made[name] = spaceWheel(t, leaves, cut)
	}
	driver := tooth.LanternDriver{Count: 64, Module: 0.8, Leaves: 8}
	teeth, err := driver.Wheel()
	require.NoError(t, err)
	cut, err := driver.SpaceForm(8)
	require.NoError(t, err)
	made["for a lantern pinion"] = spaceWheel(t, teeth, cut)
	return made
}

func spaceWheel(t testing.TB, teeth tooth.Wheel, cut cutter.Cut) Wheel {
	t.Helper()
	relief, err := cut.Relieve(geometry.Degrees(8), 3, 20)
	require.NoError(t, err)
	return Wheel{ID: "p", Name: "Part", Hand: "clockwise", Teeth: &teeth, Cut: &cut, Relief: &relief, Thickness: 3}
}

func TestPinionsAndLanternDriversHaveTheirTemplates(t *testing.T) {
	for name, w := range formWheels(t) {
		for _, s := range []Style{metric, inches} {
			for title, draw := range map[string]func() (*render.Drawing, error){
				"rake":      func() (*render.Drawing, error) { return Grinding(w, s, 10) },
				"clearance": func() (*render.Drawing, error) { return GrindingSide(w, s, 10, ClearanceFace) },
				"view":      func() (*render.Drawing, error) { return CutterView(w, s) },
				"depth":     func() (*render.Drawing, error) { return DepthCard(w, s) },
				"setting":   func() (*render.Drawing, error) { return SettingCard(w, s) },
			} {
				d, err := draw()
				require.NoError(t, err, "%s of %s", title, name)
				texts := textsOf(d)
				for i, a := range texts {
					require.NotContains(t, a.String, "‹")
					require.False(t, strings.Contains(a.String, "NaN"))
					for _, b := range texts[i+1:] {
						require.False(t, a.Bounds().Grow(-0.05).Touches(b.Bounds().Grow(-0.05)), "%s of %s: %q stands on %q", title, name, a.String, b.String)
					}
				}
			}
		}
	}
}

// The columns of the widths across the form stand apart in every unit.
func TestWidthsStandApart(t *testing.T) {
	for _, s := range []Style{metric, inches} {
		for name, w := range wheels(t) {
			for _, share := range []float64{1, 0.98} {
				e := newEnlargement(w, s, 10)
				e.share = share
				require.GreaterOrEqual(t, narrowest(e.widthTable(), math.Inf(1)), 2.5, "%s, %g", name, share)
			}
		}
	}
}
