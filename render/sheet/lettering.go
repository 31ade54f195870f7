package sheet

import (
	"strings"

	"tipline/render"
)

// Heights of lettering in millimetres (ISO 3098 series).
const (
	heightLabel = 1.8
	heightSmall = 2.5
	heightText  = 3.5
	heightScale = 5.0
	heightTitle = 5.0
)

// fit returns the text in the largest of the heights at which it is no wider than
// width, or shortened with an ellipsis at the last of them.
func fit(text string, bold bool, width float64, heights ...float64) render.Text {
	t := render.Text{String: text, Bold: bold}
	for _, t.Height = range heights {
		if t.Width() <= width {
			return t
		}
	}
	letters := []rune(text)
	for len(letters) > 1 && t.Width() > width {
		letters = letters[:len(letters)-1]
		t.String = strings.TrimRight(string(letters), " ,;:") + "…"
	}
	return t
}

// Wrap breaks text into lines no wider than width at that height, between words;
// a word wider than the width stands on a line of its own.
func Wrap(text string, height, width float64, bold bool) []string {
	var lines []string
	for _, paragraph := range strings.Split(text, "\n") {
		line := ""
		for _, word := range strings.Fields(paragraph) {
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
