package guide

import (
	"bytes"
	"fmt"

	"tipline/assets/words"
	"tipline/render/svg"
)

// SVG writes the picture of a name as a file to stand beside the pages.
func SVG(name string, w words.Words) ([]byte, error) {
	p, err := Draw(name, w)
	if err != nil {
		return nil, err
	}
	var file bytes.Buffer
	if err := svg.Sketch(&file, p.Drawing, p.Seen); err != nil {
		return nil, fmt.Errorf("guide: %s: %w", name, err)
	}
	return file.Bytes(), nil
}
