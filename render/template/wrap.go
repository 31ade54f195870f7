package template

import (
	"strings"

	"tipline/assets/words"
	"tipline/render"
)

// Wrap breaks text into lines of that height no wider than width, at its blanks
// and where it has line ends; a word wider than the width stands on a line of its
// own.
func Wrap(text string, height, width float64, bold bool) []string {
	var lines []string
	for _, paragraph := range strings.Split(text, "\n") {
		line := ""
		for _, word := range words.Pieces(paragraph) {
			longer := strings.TrimSpace(line + " " + word)
			if line != "" && (render.Text{String: longer, Height: height, Bold: bold}).Width() > width {
				lines, longer = append(lines, line), word
			}
			line = longer
		}
		lines = append(lines, line)
	}
	return lines
}
