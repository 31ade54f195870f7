package window

import (
	"image/color"
	"math"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/test"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"
	"github.com/stretchr/testify/require"
)

// contrast returns the contrast of two colours (WCAG 2.1, "relative luminance" and
// "contrast ratio").
func contrast(a, b color.NRGBA) float64 {
	la, lb := luminance(a), luminance(b)
	return (max(la, lb) + 0.05) / (min(la, lb) + 0.05)
}

func luminance(c color.NRGBA) float64 {
	linear := func(v uint8) float64 {
		if s := float64(v) / 255; s > 0.03928 {
			return math.Pow((s+0.055)/1.055, 2.4)
		}
		return float64(v) / 255 / 12.92
	}
	return 0.2126*linear(c.R) + 0.7152*linear(c.G) + 0.0722*linear(c.B)
}

func TestTextCanBeReadInEitherShade(t *testing.T) {
	require.InDelta(t, 21, contrast(color.NRGBA{A: 255}, paper), 1e-9)
	for name, p := range map[string]palette{"light": light, "dark": dark} {
		grounds := map[string]color.NRGBA{"backdrop": p.backdrop, "panel": p.panel, "well": p.well}
		for on, ground := range grounds {
			for of, text := range map[string]color.NRGBA{"ink": p.ink, "faint": p.faint, "blue": p.blue, "orange": p.orange, "red": p.red, "green": p.green, "unable": p.unable} {
				require.GreaterOrEqual(t, contrast(text, ground), 4.5, "%s: %s on %s", name, of, on)
			}
		}
		require.GreaterOrEqual(t, contrast(p.ink, p.button), 4.5, "%s: a button", name)
		for of, ground := range map[string]color.NRGBA{"blue": p.blue, "orange": p.orange, "red": p.red} {
			require.GreaterOrEqual(t, contrast(p.well, ground), 4.5, "%s: on %s", name, of)
		}
		require.GreaterOrEqual(t, contrast(p.mark, p.well), 3.0, "%s: a box's border (WCAG 2.1, 1.4.11)", name)
		require.GreaterOrEqual(t, contrast(p.blue, p.button), 3.0, "%s: what shows the keyboard's place", name)
		require.GreaterOrEqual(t, contrast(light.ink, p.table), 4.5, "%s: what stands beside the pages", name)
	}
	for _, text := range []color.NRGBA{light.ink, light.faint, light.blue} {
		require.GreaterOrEqual(t, contrast(text, paper), 4.5, "on the drawing")
	}
}

func TestTheToolkitHasTheColoursOfThePalette(t *testing.T) {
	defer paintIn(light)
	for _, p := range []palette{light, dark} {
		paintIn(p)
		require.Equal(t, p.ink, opaque(newLook().Color(theme.ColorNameForeground, theme.VariantLight)))
		require.Equal(t, p.panel, newLook().Color(theme.ColorNameMenuBackground, theme.VariantLight))
	}
}

// over returns the colour that is seen where one lies on another.
func over(c, ground color.NRGBA) color.NRGBA {
	mixed := func(a, b uint8) uint8 { return uint8((uint32(a)*uint32(c.A) + uint32(b)*(255-uint32(c.A))) / 255) }
	return color.NRGBA{mixed(c.R, ground.R), mixed(c.G, ground.G), mixed(c.B, ground.B), 255}
}

// opaque returns a colour in the eight bits that the screen has.
func opaque(c color.Color) color.NRGBA {
	r, g, b, a := c.RGBA()
	return color.NRGBA{uint8(r >> 8), uint8(g >> 8), uint8(b >> 8), uint8(a >> 8)}
}

// The toolkit writes all that stands in an open menu, the shortcuts too, so that it can be
// read.
func TestMenusCanBeReadInEitherShade(t *testing.T) {
	defer paintIn(light)
	app := test.NewTempApp(t)
	for _, p := range []palette{light, dark} {
		paintIn(p)
		app.Settings().SetTheme(newLook())
		able, not := fyne.NewMenuItem("Save", func() {}), fyne.NewMenuItem("Undo", func() {})
		not.Disabled = true
		able.Shortcut, not.Shortcut = &fyne.ShortcutCopy{}, &fyne.ShortcutCut{}
		menu, texts := widget.NewMenu(fyne.NewMenu("", able, not)), 0
		w := test.NewTempWindow(t, menu)
		walk(w.Content(), func(o within) {
			if text, ok := o.CanvasObject.(*canvas.Text); ok {
				texts++
				seen := over(color.NRGBAModel.Convert(text.Color).(color.NRGBA), p.panel)
				require.GreaterOrEqual(t, contrast(seen, p.panel), 4.5, text.Text)
			}
		})
		require.GreaterOrEqual(t, texts, 4)
	}
}

// On the drawing, which is paper, things have the light palette's colours.
func TestWhatStandsOnTheDrawingHasTheLightColours(t *testing.T) {
	defer paintIn(light)
	paintIn(dark)
	onThe := onPaper(widget.NewLabel("")).(*box.ThemeOverride)
	require.Equal(t, light.ink, opaque(onThe.Theme.Color(theme.ColorNameForeground, theme.VariantDark)))
}
