// Package appearance knows how the user wants the window to look: light or dark, and how
// large its type is.
package appearance

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"

	"github.com/adrg/xdg"

	"tipline/app/keep"
)

// Shade is whether the window is light or dark.
type Shade string

// The shades; that of the system is the one its other windows have.
const (
	System Shade = "system"
	Light  Shade = "light"
	Dark   Shade = "dark"
)

// Shades lists the shades in the order in which they are offered.
func Shades() []Shade { return []Shade{System, Light, Dark} }

// Percents lists how large type can be, in parts of a hundred of its usual size.
func Percents() []int { return []int{100, 125, 150, 200} }

// Looks is what was chosen.
type Looks struct {
	Shade   Shade
	Percent int // one of Percents
}

// Usual is what is so until something is chosen: light, as a drawing board is. A system that
// says nothing of light or dark would be taken for a dark one.
var Usual = Looks{Light, 100}

// Choice is where the looks are kept. The zero Choice keeps nothing.
type Choice struct{ File string }

// InConfig returns the choice in the user's config folder.
func InConfig() Choice { return Choice{filepath.Join(xdg.ConfigHome, "tipline", "looks")} }

// Kept returns the looks that were chosen; what cannot be read is as usual.
func (c Choice) Kept() Looks {
	data, err := os.ReadFile(c.File)
	if err != nil {
		return Usual
	}
	l := Usual
	if _, err := fmt.Sscan(string(data), &l.Shade, &l.Percent); err != nil ||
		!slices.Contains(Shades(), l.Shade) || !slices.Contains(Percents(), l.Percent) {
		return Usual
	}
	return l
}

// Keep keeps the looks.
func (c Choice) Keep(l Looks) error {
	if c.File == "" {
		return nil
	}
	return keep.Text(c.File, fmt.Sprintln(l.Shade, l.Percent))
}
