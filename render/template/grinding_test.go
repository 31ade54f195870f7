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

func TestTheFormIsDrawnAtItsScale(t *testing.T) {
	for name, w := range wheels(t) {
		for _, scale := range []float64{1, 2.5, 10, 50} {
			t.Run(name, func(t *testing.T) {
				d, err := Grinding(w, metric, scale)
				require.NoError(t, err)
				require.Equal(t, scale, d.Scale)
				form := itemsOn(d, render.LayerForm, "cutter")
				require.NotEmpty(t, form)
				truth, err := w.Cut.Form.Outline()
				require.NoError(t, err)
				require.Len(t, form[0].Outlines, 1, "the form is one closed outline")
				require.InDelta(t, scale*scale*math.Abs(truth.Area()), math.Abs(form[0].Outlines[0].Area()), 1e-6*scale*scale)
				require.InDelta(t, scale*truth.Bounds().Width(), form[0].Outlines[0].Bounds().Width(), 1e-9*scale)
			})
		}
	}
}

func TestTheOtherHandIsMirrored(t *testing.T) {
	right, err := Grinding(pointedWheel(t, "clockwise"), metric, 10)
	require.NoError(t, err)
	left, err := Grinding(pointedWheel(t, "anticlockwise"), metric, 10)
	require.NoError(t, err)
	a, b := itemsOn(right, render.LayerForm, "cutter")[0].Outlines[0], itemsOn(left, render.LayerForm, "cutter")[0].Outlines[0]
	require.InDelta(t, a.Bounds().Max.X, -b.Bounds().Min.X, 1e-9)
	both := pointedWheel(t, "anticlockwise")
	both.Enters = "back"
	twice, err := Grinding(both, metric, 10)
	require.NoError(t, err)
	require.Equal(t, a, itemsOn(twice, render.LayerForm, "cutter")[0].Outlines[0])
}

func TestSightingLinesAreLongAndLieAlongTheirEdges(t *testing.T) {
	for name, w := range wheels(t) {
		t.Run(name, func(t *testing.T) {
			d, err := Grinding(w, metric, 10)
			require.NoError(t, err)
			box := itemsOn(d, render.LayerForm, "cutter")[0].Outlines[0].Bounds()
			lines := 0
			for _, it := range d.Items {
				if it.Layer != render.LayerRelief {
					continue
				}
				for _, c := range it.Chains {
					lines++
					s := c.Segment(0)
					require.GreaterOrEqual(t, s.Length(), 2*sightPast+min(box.Width(), box.Height())-1e-9)
					require.False(t, box.Contains(s.From), "starts outside the form")
					require.False(t, box.Contains(s.To), "ends outside the form")
				}
			}
			require.GreaterOrEqual(t, lines, 4, "infeed, square to it, and two edges")
		})
	}
}

func TestAnglesAreWritten(t *testing.T) {
	d, err := Grinding(pointedWheel(t, "clockwise"), metric, 10)
	require.NoError(t, err)
	said := said(d)
	for _, text := range []string{"front relief 5°", "floor 12°", "R 8.00", "corner R 0.15", "heel", "tip circle at depth", "root circle", "stock 7.94 mm (0.312 in)", "1 : 1"} {
		require.Contains(t, said, text)
	}
}

func said(d *render.Drawing) []string {
	var texts []string
	for _, t := range textsOf(d) {
		texts = append(texts, t.String)
	}
	return texts
}

func TestAFlankThatStandsOnBothSidesIsNamedOnce(t *testing.T) {
	for count := 30; count <= 120; count += 5 {
		d, err := Grinding(trainWheel(t, count, 5), metric, 10)
		require.NoError(t, err)
		flanks := 0
		for _, text := range said(d) {
			if strings.HasPrefix(text, "flank") {
				flanks++
			}
		}
		require.Equal(t, 1, flanks, "%d teeth", count)
	}
}

func TestTheStraightBackSaysItsAngleFromTheInfeed(t *testing.T) {
	for _, row := range []struct {
		back float64
		text string
	}{{22, "back 22°"}, {50, "back 50°"}, {60.5, "back 60.5°"}} {
		w := pointedWheel(t, "clockwise")
		cut, err := cutter.Pointed{
			Count: 30, TipRadius: 12, Undercut: geometry.Degrees(5), Floor: 0.1, FloorSlope: geometry.Degrees(5), Straight: true,
			BackAngle: geometry.Degrees(row.back), Land: 0.2, StockWidth: 8, Solve: cutter.RootDiameter,
		}.Cut()
		require.NoError(t, err)
		w.Cut, w.Relief = &cut, nil
		d, err := Grinding(w, metric, 10)
		require.NoError(t, err)
		require.Contains(t, said(d), row.text)
		require.Contains(t, said(d), "floor 5°")
	}
}

func TestDepthsReachPastTheInfeed(t *testing.T) {
	for _, s := range []Style{metric, inches} {
		for name, w := range wheels(t) {
			e := newEnlargement(w, s, 10)
			depths := e.depths()
			require.GreaterOrEqual(t, len(depths), 4, name)
			require.Greater(t, depths[len(depths)-1], 0.7*w.Cut.Infeed, name)
			require.LessOrEqual(t, len(depths), widthsGiven)
			for _, d := range depths {
				require.Less(t, d, w.Cut.Form.Top)
			}
		}
	}
}

func TestGrindingRefusesAScaleWithoutSense(t *testing.T) {
	for _, scale := range []float64{0, -1, 0.05, 201, math.NaN(), math.Inf(1)} {
		_, err := Grinding(pointedWheel(t, "clockwise"), metric, scale)
		var limit *geometry.Limit
		require.ErrorAs(t, err, &limit)
		require.True(t, metric.Words.Has(limit.Code))
	}
}

func TestTheTeethThatTheFormLeavesTouchIt(t *testing.T) {
	for name, w := range wheels(t) {
		t.Run(name, func(t *testing.T) {
			d, err := CutterView(w, metric)
			require.NoError(t, err)
			form := itemsOn(d, render.LayerForm, "cutter")[0].Outlines[0]
			teeth := itemsOn(d, render.LayerTeeth, "teeth")
			require.Len(t, teeth, 1)
			require.InDelta(t, 0, distance(form, teeth[0].Outlines[0]), 0.01*d.Scale)
			for _, p := range teeth[0].Outlines[0].Flatten(0.01) {
				if form.Contains(p) {
					at, _ := nearest(form, p)
					require.Less(t, at.Dist(p), 0.01*d.Scale, "no metal is left inside the form")
				}
			}
		})
	}
}

func nearest(o geometry.Outline, p geometry.Point) (geometry.Point, float64) {
	best, least := geometry.Point{}, math.Inf(1)
	for i := range o.Len() {
		if at, _ := o.Segment(i).Nearest(p); at.Dist(p) < least {
			best, least = at, at.Dist(p)
		}
	}
	return best, least
}

func TestGrindingNotesHoldTheSettings(t *testing.T) {
	n := GrindingNotes(pointedWheel(t, "clockwise"), metric)
	values := map[string]string{}
	for _, f := range n.Figures {
		values[f.Label] = f.Value
	}
	require.Equal(t, "5.198 mm", values["Set-over"])
	require.Equal(t, "2.299 mm", values["Infeed from touch"])
	require.Equal(t, "0.200 mm", values["Land at depth"])
	require.Equal(t, "10°", values["Table tilt"])
	require.True(t, strings.Contains(n.Caution, "Eye protection"))
}

func TestAFormWithoutStockOrRelief(t *testing.T) {
	teeth, err := tooth.Cycloidal{Count: 48, Module: 1, Leaves: 8}.Wheel()
	require.NoError(t, err)
	cut, err := cutter.Space(teeth.Space, 48, teeth.TipRadius, 0)
	require.NoError(t, err)
	w := Wheel{ID: "bare", Hand: "clockwise", Teeth: &teeth, Cut: &cut}
	for title, draw := range map[string]func() (*render.Drawing, error){
		"grinding": func() (*render.Drawing, error) { return Grinding(w, metric, 10) },
		"cutter":   func() (*render.Drawing, error) { return CutterView(w, metric) },
		"setting":  func() (*render.Drawing, error) { return SettingCard(w, metric) },
	} {
		d, err := draw()
		require.NoError(t, err, title)
		require.Contains(t, d.Title, "bare", "named by its id")
		require.NotEmpty(t, d.Items)
		for _, it := range d.Items {
			require.NotContains(t, []render.Layer{render.LayerStock, render.LayerHeel}, it.Layer, title)
		}
	}
	require.Len(t, GrindingNotes(w, metric).Legend, 1)
}
