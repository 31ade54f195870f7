// Package pin keeps go.mod filled while the house is built; it goes when it is.
package pin

import (
	_ "codeberg.org/go-pdf/fpdf"
	_ "fyne.io/fyne/v2/app"
	_ "fyne.io/fyne/v2/test"
	_ "fyne.io/fyne/v2/widget"
	_ "github.com/adrg/xdg"
	_ "github.com/gofrs/flock"
	_ "github.com/ledongthuc/pdf"
	_ "github.com/stretchr/testify/require"
	_ "github.com/tdewolff/canvas"
	_ "github.com/twpayne/go-geos"
	_ "golang.org/x/image/vector"
	_ "pgregory.net/rapid"
)
