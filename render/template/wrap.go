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
	empty := render.NewLine(bold)
	for _, paragraph := range strings.Split(text, "\n") {
		line, begins := empty, 0
		pieces := words.Pieces(paragraph)
		for i, word := range pieces {
			longer := line.With(" ").With(word)
			if i > 0 && longer.Width(height) > width {
				lines = append(lines, strings.Join(pieces[begins:i], " "))
				begins = i
			}
			if i == begins {
				longer = empty.With(word)
			}
			line = longer
		}
		lines = append(lines, strings.Join(pieces[begins:], " "))
	}
	return lines
}
