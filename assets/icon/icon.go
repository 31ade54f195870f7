// Package icon holds the program's icon: a crossed wheel of five arms.
package icon

import _ "embed"

//go:embed tipline.png
var png []byte

// PNG returns the icon as a PNG file, 256 pixels square. The caller must not
// change it.
func PNG() []byte { return png }
