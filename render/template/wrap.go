package template

import (
	"strings"

	"tipline/render"
)

// wrap breaks text into lines of that height no wider than width, between words;
// a word wider than the width stands on a line of its own.
func wrap(text string, height, width float64, bold bool) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(text) {
		longer := strings.TrimSpace(line + " " + word)
		if line != "" && (render.Text{String: longer, Height: height, Bold: bold}).Width() > width {
			lines, longer = append(lines, line), word
		}
		line = longer
	}
	return append(lines, line)
}
