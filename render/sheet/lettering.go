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
