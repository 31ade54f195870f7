package template

import (
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/tables"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/cutter"
	"tipline/geometry/dividing"
	"tipline/geometry/measure"
	"tipline/geometry/tooth"
	"tipline/render"
)

var (
	metric = Style{Words: words.English(), Units: measure.Units{Unit: measure.MM}}
	inches = Style{Words: words.English(), Units: measure.Units{Unit: measure.Inch}}
)

// pointedWheel is a pointed wheel of 30 teeth with five arms, of the hand.
func pointedWheel(t testing.TB, hand string) Wheel {
	t.Helper()
	cut, err := cutter.Pointed{
		Count: 30, TipRadius: 25, Undercut: geometry.Degrees(12), Floor: 0.5, FloorSlope: geometry.Degrees(12),
		FrontRelief: geometry.Degrees(5), CornerRadius: 0.15, BackRadius: 8, Land: 0.2, StockWidth: 7.9375,
		Solve: cutter.RootDiameter,
	}.Cut()
	require.NoError(t, err)
	teeth, err := tooth.Pointed(cut, hand)
	require.NoError(t, err)
	relief := relieved(t, cut)
	relief.Swing, relief.HeelLimit = 22, 7.5
	w := Wheel{ID: "escape", Name: "Escape wheel", Hand: hand, Teeth: &teeth, Cut: &cut, Relief: &relief}
	return finished(t, w, 5, 30)
}

// trainWheel is a cycloidal wheel with arms.
func trainWheel(t testing.TB, count, arms int) Wheel {
	t.Helper()
	teeth, err := tooth.Cycloidal{Count: count, Module: 0.8, Leaves: 8}.Wheel()
	require.NoError(t, err)
	cut, err := cutter.Space(teeth.Space, count, teeth.TipRadius, 6)
	require.NoError(t, err)
	relief := relieved(t, cut)
	w := Wheel{ID: "train", Name: "Train wheel", Hand: "clockwise", Teeth: &teeth, Cut: &cut, Relief: &relief}
	return finished(t, w, arms, count)
}

// relieved is the relief of a bit 2 mm thick with a made-up heel inside the form.
func relieved(t testing.TB, cut cutter.Cut) cutter.Relief {
	t.Helper()
	form, err := cut.Form.Outline()
	require.NoError(t, err)
	middle := form.Bounds().Centre()
	heel := form.Move(middle.Times(-1)).Scale(0.9).Move(middle)
	return cutter.Relief{Clearance: geometry.Degrees(10), Thickness: 2, UsableThickness: 2, Heel: []geometry.Outline{heel}}
}

// finished gives a wheel bore, blank, dividing and crossing.
func finished(t testing.TB, w Wheel, arms, divisions int) Wheel {
	t.Helper()
	w.Bore, w.Thickness, w.Oversize = 5, 1.6, 0.2
	w.Material = tables.Material{Name: "brass", Density: 8490, Young: 97}
	answer, err := dividing.Head{Ratio: 60}.Divide(divisions, w.Teeth.TipRadius)
	require.NoError(t, err)
	w.Dividing = &answer
	w.Crossing = crossed(t, w, arms, crossing.OnTips)
	return w
}

// crossed lays arms out on a wheel.
func crossed(t testing.TB, w Wheel, arms int, placing crossing.Placing) *crossing.Layout {
	t.Helper()
	layout, err := crossing.Lay(crossing.Blank{
		Count: w.Teeth.Count, TipRadius: w.Teeth.TipRadius, RootRadius: w.Teeth.RootRadius, Bore: w.Bore,
		Outline: w.Teeth.Outline, Thickness: w.Thickness, Density: w.Material.Density, Young: w.Material.Young,
	}, crossing.Spec{
		Arms: arms, Placing: placing, Rim: 2.4, Hub: 11, ArmAtRim: 2, ArmAtHub: 2.4,
		FilletAtRim: 0.6, FilletAtHub: 0.6, Allowance: 0.3, StartHole: 0.8,
	})
	require.NoError(t, err)
	return &layout
}

// everyDrawing draws all there is of a wheel, by name.
func everyDrawing(t testing.TB, w Wheel, s Style) map[string]*render.Drawing {
	t.Helper()
	drawings := map[string]*render.Drawing{"cautions": Cautions(s)}
	for name, draw := range map[string]func() (*render.Drawing, error){
		"crossing":       func() (*render.Drawing, error) { return Crossing(w, s) },
		"grinding":       func() (*render.Drawing, error) { return Grinding(w, s, 10) },
		"grinding 1:1":   func() (*render.Drawing, error) { return Grinding(w, s, 1) },
		"clearance face": func() (*render.Drawing, error) { return GrindingSide(w, s, 10, ClearanceFace) },
		"grinding 20:1":  func() (*render.Drawing, error) { return Grinding(w, s, 20) },
		"blank":          func() (*render.Drawing, error) { return Blank(w, s) },
		"cutter":         func() (*render.Drawing, error) { return CutterView(w, s) },
		"dividing":       func() (*render.Drawing, error) { return DividingView(w, s) },
		"blank card":     func() (*render.Drawing, error) { return BlankCard(w, s) },
		"setting card":   func() (*render.Drawing, error) { return SettingCard(w, s) },
		"depth card":     func() (*render.Drawing, error) { return DepthCard(w, s) },
		"dividing card":  func() (*render.Drawing, error) { return DividingCard(w, s) },
		"dividing table": func() (*render.Drawing, error) { return firstOr(DividingTable(w, s), Cautions(s)), nil },
	} {
		d, err := draw()
		require.NoError(t, err, name)
		drawings[name] = d
	}
	return drawings
}

func firstOr(ds []*render.Drawing, d *render.Drawing) *render.Drawing {
	if len(ds) > 0 {
		return ds[0]
	}
	return d
}

func wheels(t testing.TB) map[string]Wheel {
	equal := trainWheel(t, 45, 4)
	equal.Crossing = crossed(t, equal, 4, crossing.Equal)
	return map[string]Wheel{
		"arms off the tips": equal, "360 teeth": trainWheel(t, 360, 5),
		"pointed": pointedWheel(t, "clockwise"), "pointed anticlockwise": pointedWheel(t, "anticlockwise"),
		"72 teeth": trainWheel(t, 72, 6), "75 teeth": trainWheel(t, 75, 6), "127 teeth": trainWheel(t, 127, 6),
	}
}

func TestTextsStandClearOfEachOther(t *testing.T) {
	for name, w := range wheels(t) {
		for unit, s := range map[string]Style{"mm": metric, "in": inches} {
			for title, d := range everyDrawing(t, w, s) {
				texts := textsOf(d)
				for i, a := range texts {
					for _, b := range texts[i+1:] {
						require.False(t, a.Bounds().Grow(-0.05).Touches(b.Bounds().Grow(-0.05)),
							"%s of %s in %s: %q stands on %q", title, name, unit, a.String, b.String)
					}
				}
			}
		}
	}
}

func TestEveryTextIsInTheCatalogue(t *testing.T) {
	for name, w := range wheels(t) {
		for title, d := range everyDrawing(t, w, metric) {
			said := d.Title + d.Description
			for _, text := range textsOf(d) {
				said += text.String
			}
			require.NotContains(t, said, "‹", "%s of %s", title, name)
			require.NotContains(t, said, "{", "%s of %s", title, name)
			require.NotContains(t, said, "NaN", "%s of %s", title, name)
		}
	}
}

func TestEveryItemNamesItsPart(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	known := map[render.Layer]bool{}
	for _, l := range render.Layers() {
		known[l] = true
	}
	for title, d := range everyDrawing(t, w, metric) {
		if title == "cautions" {
			continue
		}
		for _, it := range d.Items {
			require.True(t, known[it.Layer], "%s: layer %q", title, it.Layer)
			if !strings.Contains(title, "table") {
				require.Equal(t, w.ID, it.Part, title)
			}
		}
	}
}

func TestNothingToDraw(t *testing.T) {
	bare := Wheel{ID: "bare", Name: "Bare"}
	for name, draw := range map[string]func() (*render.Drawing, error){
		"crossing":      func() (*render.Drawing, error) { return Crossing(bare, metric) },
		"grinding":      func() (*render.Drawing, error) { return Grinding(bare, metric, 10) },
		"blank":         func() (*render.Drawing, error) { return Blank(bare, metric) },
		"cutter":        func() (*render.Drawing, error) { return CutterView(bare, metric) },
		"dividing":      func() (*render.Drawing, error) { return DividingView(bare, metric) },
		"blank card":    func() (*render.Drawing, error) { return BlankCard(bare, metric) },
		"setting card":  func() (*render.Drawing, error) { return SettingCard(bare, metric) },
		"depth card":    func() (*render.Drawing, error) { return DepthCard(bare, metric) },
		"dividing card": func() (*render.Drawing, error) { return DividingCard(bare, metric) },
	} {
		t.Run(name, func(t *testing.T) {
			d, err := draw()
			require.ErrorIs(t, err, ErrNothing)
			require.Nil(t, d)
		})
	}
	require.Empty(t, DividingTable(bare, metric))
}

func textsOf(d *render.Drawing) []render.Text {
	var texts []render.Text
	for _, it := range d.Items {
		if it.Text != nil {
			texts = append(texts, *it.Text)
		}
	}
	return texts
}

func itemsOn(d *render.Drawing, layer render.Layer, q geometry.Quantity) []render.Item {
	var items []render.Item
	for _, it := range d.Items {
		if it.Layer == layer && it.Quantity == q {
			items = append(items, it)
		}
	}
	return items
}
