package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"tipline/assets/fonts"
)

// look is the window's theme: Open Sans in the colours of the present palette.
type look struct{ regular, bold fyne.Resource }

func newLook() look {
	return look{
		fyne.NewStaticResource("OpenSans-Regular.ttf", fonts.Regular()),
		fyne.NewStaticResource("OpenSans-Semibold.ttf", fonts.Semibold()),
	}
}

// Color returns a colour of the theme. The variant is the system's, and is heeded where the
// palette is chosen.
func (l look) Color(name fyne.ThemeColorName, _ fyne.ThemeVariant) color.Color {
	if c, ok := present.toolkit()[name]; ok {
		return c
	}
	return theme.DefaultTheme().Color(name, present.variant())
}

// toolkit returns the palette by the toolkit's names.
func (p palette) toolkit() map[fyne.ThemeColorName]color.Color {
	return map[fyne.ThemeColorName]color.Color{
		theme.ColorNameBackground:          p.backdrop,
		theme.ColorNameForeground:          p.ink,
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
	case theme.SizeNameInnerPadding:
		return 7
	case theme.SizeNameInputRadius, theme.SizeNameSelectionRadius:
		return 5
	case theme.SizeNameScrollBar:
		return 9
	}
	return theme.DefaultTheme().Size(name)
}
