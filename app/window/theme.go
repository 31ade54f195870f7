package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/theme"

	"tipline/assets/fonts"
)

// look is the window's theme: Open Sans in the colours of the present palette, or on the
// drawing, which is paper in either shade, in those of the light one.
type look struct {
	regular, bold fyne.Resource
	onPaper       bool
}

func newLook() look {
	return look{
		regular: fyne.NewStaticResource("OpenSans-Regular.ttf", fonts.Regular()),
		bold:    fyne.NewStaticResource("OpenSans-Semibold.ttf", fonts.Semibold()),
	}
}

// onPaper gives a thing that stands on the drawing colours that can be seen there.
func onPaper(o fyne.CanvasObject) fyne.CanvasObject {
	l := newLook()
	l.onPaper = true
	return box.NewThemeOverride(o, l)
}

// Color returns a colour of the theme. The variant is the system's, and is heeded where the
// palette is chosen.
func (l look) Color(name fyne.ThemeColorName, _ fyne.ThemeVariant) color.Color {
	p := present
	if l.onPaper {
		p = light
	}
	if c, ok := p.toolkit()[name]; ok {
		return c
	}
	return theme.DefaultTheme().Color(name, p.variant())
}

// toolkit returns the palette by the toolkit's names.
func (p palette) toolkit() map[fyne.ThemeColorName]color.Color {
	return map[fyne.ThemeColorName]color.Color{
		theme.ColorNameBackground:          p.backdrop,
		theme.ColorNameForeground:          ofMenus(p.ink),
		theme.ColorNameForegroundOnPrimary: p.well,
		theme.ColorNameForegroundOnError:   p.well,
		theme.ColorNameForegroundOnWarning: p.well,
		theme.ColorNameForegroundOnSuccess: p.well,
		theme.ColorNameButton:              p.button,
		theme.ColorNameDisabledButton:      p.panel,
		theme.ColorNameDisabled:            p.unable,
		theme.ColorNameHeaderBackground:    p.panel,
		theme.ColorNameHyperlink:           p.blue,
		theme.ColorNameInputBackground:     p.well,
		theme.ColorNameInputBorder:         p.mark,
		theme.ColorNameMenuBackground:      p.panel,
		theme.ColorNameOverlayBackground:   p.panel,
		theme.ColorNamePlaceHolder:         p.faint,
		theme.ColorNamePrimary:             p.blue,
		theme.ColorNameFocus:               thin(p.blue, 60),
		theme.ColorNameHover:               thin(p.blue, 26),
		theme.ColorNamePressed:             thin(p.blue, 50),
		theme.ColorNameSelection:           thin(p.blue, 70),
		theme.ColorNameSeparator:           p.edge,
		theme.ColorNameScrollBar:           p.bar,
		theme.ColorNameScrollBarBackground: color.NRGBA{},
		theme.ColorNameShadow:              color.NRGBA{A: 60},
		theme.ColorNameError:               p.red,
		theme.ColorNameWarning:             p.orange,
		theme.ColorNameSuccess:             p.green,
	}
}

func (p palette) variant() fyne.ThemeVariant {
	if p == dark {
		return theme.VariantDark
	}
	return theme.VariantLight
}

// ofMenus is a colour of type such that the toolkit writes the shortcuts in its menus with
// as much of it as can still be read. It lets them show through by the low byte of 0.95 of
// the 16-bit opacity (shortcutColor in widget/menu_item.go, 2.7.1), which leaves 50 of 255
// of a colour that lets nothing through; of one that lets a 400th part through, which is
// not seen, it leaves 170.
type ofMenus color.NRGBA

// menuAlpha is an opacity of which that byte is 170: 0.95 × 0xff70 is 0xf2aa.
const menuAlpha = 0xff70

func (c ofMenus) RGBA() (r, g, b, a uint32) {
	wide := func(v uint8) uint32 { return min(uint32(v)*0x101, menuAlpha) }
	return wide(c.R), wide(c.G), wide(c.B), menuAlpha
}

// thin returns a colour that lets through what it lies on.
func thin(c color.NRGBA, alpha uint8) color.NRGBA {
	c.A = alpha
	return c
}

// Font returns Open Sans; symbols and fixed widths are the toolkit's.
func (l look) Font(s fyne.TextStyle) fyne.Resource {
	switch {
	case s.Monospace || s.Symbol:
		return theme.DefaultTheme().Font(s)
	case s.Bold:
		return l.bold
	}
	return l.regular
}

// Icon returns the toolkit's icons.
func (l look) Icon(name fyne.ThemeIconName) fyne.Resource { return theme.DefaultTheme().Icon(name) }

// Size returns the sizes of the theme.
func (l look) Size(name fyne.ThemeSizeName) float32 {
	switch name {
	case theme.SizeNameText:
		return textSize
	case theme.SizeNameCaptionText:
		return smallSize
	case theme.SizeNameHeadingText:
		return headSize
	case theme.SizeNameInlineIcon:
		return grown(20)
	case theme.SizeNameInnerPadding:
		return 7
	case theme.SizeNameInputRadius, theme.SizeNameSelectionRadius:
		return 5
	case theme.SizeNameScrollBar:
		return 9
	}
	return theme.DefaultTheme().Size(name)
}
