package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/theme"

	"tipline/assets/fonts"
)

// The window's colours: warm and quiet, so that the drawing is what is looked at.
var (
	backdrop = color.NRGBA{236, 233, 226, 255}
	panel    = color.NRGBA{247, 246, 241, 255}
	paper    = color.NRGBA{255, 255, 255, 255}
	edge     = color.NRGBA{217, 213, 203, 255}
	ink      = color.NRGBA{28, 27, 25, 255}
	faint    = color.NRGBA{107, 104, 97, 255}
	blue     = color.NRGBA{46, 95, 158, 255}
	orange   = color.NRGBA{176, 84, 24, 255}
	red      = color.NRGBA{172, 40, 36, 255}
	green    = color.NRGBA{60, 122, 77, 255}
	hover    = color.NRGBA{255, 255, 255, 150}
)

// The sizes of type. At these the toolkit, which rounds the height of a line and
// the place of its baseline each by itself, leaves Open Sans' descenders whole.
const (
	headSize  = 21
	tabSize   = 15.4
	textSize  = 15.4
	readSize  = 13
	smallSize = 12
	badgeType = 11.75
)

// look is the window's theme. It is light whatever the desktop's is: the drawing
// is ink on paper.
type look struct{ regular, bold fyne.Resource }

func newLook() look {
	return look{
		fyne.NewStaticResource("OpenSans-Regular.ttf", fonts.Regular()),
		fyne.NewStaticResource("OpenSans-Semibold.ttf", fonts.Semibold()),
	}
}

var colours = map[fyne.ThemeColorName]color.Color{
	theme.ColorNameBackground:          backdrop,
	theme.ColorNameForeground:          ink,
	theme.ColorNameButton:              color.NRGBA{238, 236, 228, 255},
	theme.ColorNameDisabledButton:      color.NRGBA{240, 238, 232, 255},
	theme.ColorNameDisabled:            color.NRGBA{158, 154, 146, 255},
	theme.ColorNameInputBackground:     paper,
	theme.ColorNameInputBorder:         edge,
	theme.ColorNameMenuBackground:      panel,
	theme.ColorNameOverlayBackground:   panel,
	theme.ColorNamePlaceHolder:         color.NRGBA{150, 146, 138, 255},
	theme.ColorNamePrimary:             blue,
	theme.ColorNameFocus:               color.NRGBA{46, 95, 158, 40},
	theme.ColorNameHover:               color.NRGBA{46, 95, 158, 22},
	theme.ColorNamePressed:             color.NRGBA{46, 95, 158, 44},
	theme.ColorNameSelection:           color.NRGBA{46, 95, 158, 60},
	theme.ColorNameSeparator:           edge,
	theme.ColorNameScrollBar:           color.NRGBA{120, 116, 106, 150},
	theme.ColorNameScrollBarBackground: color.NRGBA{0, 0, 0, 0},
	theme.ColorNameShadow:              color.NRGBA{60, 50, 30, 40},
	theme.ColorNameError:               red,
	theme.ColorNameWarning:             orange,
	theme.ColorNameSuccess:             green,
}

// Color returns a colour of the theme.
func (l look) Color(name fyne.ThemeColorName, _ fyne.ThemeVariant) color.Color {
	if c, ok := colours[name]; ok {
		return c
	}
	return theme.DefaultTheme().Color(name, theme.VariantLight)
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
