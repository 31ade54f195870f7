// Package fonts holds the typeface of the window and the pages, Open Sans, with
// its licence beside it.
package fonts

import _ "embed"

//go:embed OpenSans-Regular.ttf
var regular []byte

//go:embed OpenSans-Semibold.ttf
var semibold []byte

// Regular returns the TrueType file of Open Sans Regular. The caller must not
// change it.
func Regular() []byte { return regular }

// Semibold returns the TrueType file of Open Sans Semibold. The caller must not
// change it.
func Semibold() []byte { return semibold }
