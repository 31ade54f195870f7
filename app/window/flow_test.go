package window

import (
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/stretchr/testify/require"

	"tipline/assets/guide"
)

// whole reports whether some lines are of whole words.
func whole(lines, words []string) bool {
	for _, word := range strings.Fields(strings.Join(lines, " ")) {
		if !slices.Contains(words, word) {
			return false
		}
	}
	return true
}

// Every line but the last is as long as it can be, and none is longer than the width
// however long a word is.
func TestTextIsBrokenWhereItNoLongerFits(t *testing.T) {
	app := test.NewApp()
	t.Cleanup(app.Quit)
	text := "At 10° clearance the form runs out 7.34 mm behind the rake face; the extraordinarilylongword is 7.94 mm thick i i i i i i i i WWWW WWWW"
	wide := func(s string) float32 { return fyne.MeasureText(s, readSize, fyne.TextStyle{}).Width }
	words := strings.Fields(text)
	for width := float32(10); width < 900; width += 7 {
		lines := wrapped(text, readSize, fyne.TextStyle{}, width)
		require.Equal(t, strings.Join(words, ""), strings.ReplaceAll(strings.Join(lines, ""), " ", ""), width)
		at := 0
		for i, line := range lines {
			n := len(strings.Fields(line))
			require.True(t, len([]rune(line)) == 1 || wide(line) <= width, "%v %q", width, line)
			if at += n; i+1 < len(lines) && whole(lines[:i+2], words) {
				require.Greater(t, wide(line+" "+words[at]), width, line)
			}
		}
	}
	require.Equal(t, []string{""}, wrapped("", readSize, fyne.TextStyle{}, 100))
}

// A French colon stays with the word before it, in what is remarked and in the guide.
func TestNoLineEndsAtABlankThatIsFirm(t *testing.T) {
	w := opened(t)
	text := "Elle est fausse\u00a0: réimprimez"
	wide := func(s string) float32 { return fyne.MeasureText(s, readSize, fyne.TextStyle{}).Width }
	require.Equal(t, []string{"Elle est", "fausse\u00a0:", "réimprimez"}, wrapped(text, readSize, fyne.TextStyle{}, wide("Elle est fausse")+1))
	var said []string
	for _, piece := range newProse(guideOf(t, w), []guide.Run{{Text: text}}, readSize).pieces {
		said = append(said, piece.Text)
	}
	require.Equal(t, []string{"Elle", "est", "fausse\u00a0:", "réimprimez"}, said)
}
