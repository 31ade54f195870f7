package window

import (
	"image/color"
	"strings"

	"fyne.io/fyne/v2"

	"tipline/assets/words"
)

// flow is type that is broken into lines to fit its width. Unlike the toolkit's
// own it knows how tall it is at any width before it is laid out.
type flow struct {
	*fyne.Container
	text   string
	size   float32
	colour color.Color
	bold   bool
	align  fyne.TextAlign
	width  float32 // it was last broken for
	asked  float32 // the width last asked about
	lines  int     // at that width
	broken []string
}

// leading is the distance of lines as a share of the type's size.
const leading = 1.36

func newFlow(size float32, c color.Color) *flow {
	f := &flow{size: size, colour: c}
	f.Container = &fyne.Container{Layout: flowLayout{f}}
	return f
}

// set sets the text and its colour.
func (f *flow) set(text string, c color.Color) {
	if f.text == text && f.colour == c {
		return
	}
	f.text, f.colour = text, c
	width := f.width
	f.width, f.asked = 0, 0
	f.lay(width)
	f.Refresh()
}

// tall returns how tall the text is at a width.
func (f *flow) tall(width float32) float32 {
	if f.text == "" {
		return 0
	}
	if width != f.asked {
		f.asked, f.lines = width, len(wrapped(f.text, f.size, f.style(), width))
	}
	return float32(f.lines) * f.size * leading
}

func (f *flow) style() fyne.TextStyle { return fyne.TextStyle{Bold: f.bold} }

// lay breaks the text for a width.
func (f *flow) lay(width float32) {
	if width <= 0 || width == f.width {
		return
	}
	f.width, f.broken, f.Objects = width, nil, nil
	if f.text == "" {
		return
	}
	f.broken = wrapped(f.text, f.size, f.style(), width)
	for i, line := range f.broken {
		t := written(line, f.size, f.colour, f.bold)
		t.Alignment = f.align
		put(t, 0, float32(i)*f.size*leading, width, f.size*leading)
		f.Objects = append(f.Objects, t)
	}
}

type flowLayout struct{ *flow }

func (l flowLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) { l.lay(s.Width) }
func (l flowLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(40, float32(len(l.broken))*l.size*leading)
}

// split breaks the first of some words, such as a file's name, where it reaches a width.
func split(words []string, wide func(string) float32, width float32) []string {
	letters := []rune(words[0])
	n := max(int(float32(len(letters))*width/wide(words[0])), 1)
	for n > 1 && wide(string(letters[:n])) > width {
		n--
	}
	if n == len(letters) {
		return words
	}
	return append([]string{string(letters[:n]), string(letters[n:])}, words[1:]...)
}

// wrapped breaks a text at its blanks into lines that fit a width, and a word that is
// wider within. To measure type is dear, so each line's end is guessed from
// the width of all that is left and then moved word by word.
func wrapped(text string, size float32, style fyne.TextStyle, width float32) []string {
	left := words.Pieces(text)
	lines := []string{}
	for len(left) > 0 {
		wide := func(line string) float32 { return fyne.MeasureText(line, size, style).Width }
		n := fitting(left, wide, width)
		if n == 1 && wide(left[0]) > width {
			left = split(left, wide, width)
		}
		lines, left = append(lines, strings.Join(left[:n], " ")), left[n:]
	}
	if len(lines) == 0 {
		return []string{""}
	}
	return lines
}

// fitting returns how many of the words fit a width on one line, at least one.
func fitting(words []string, wide func(string) float32, width float32) int {
	fits := func(n int) bool { return wide(strings.Join(words[:n], " ")) <= width }
	all := wide(strings.Join(words, " "))
	if all <= width || len(words) == 1 {
		return len(words)
	}
	n := min(max(int(float32(len(words))*width/all), 1), len(words)-1)
	for n > 1 && !fits(n) {
		n--
	}
	for n+1 < len(words) && fits(n+1) {
		n++
	}
	return n
}
