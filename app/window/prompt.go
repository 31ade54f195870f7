package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
)

// prompt is a line at the foot of the drawing that says what to click.
type prompt struct {
	*fyne.Container
	ground *canvas.Rectangle
	text   *canvas.Text
}

func newPrompt() *prompt {
	p := &prompt{ground: canvas.NewRectangle(light.blue), text: written("", readSize, paper, true)}
	p.ground.CornerRadius = 5
	p.text.Alignment = fyne.TextAlignCenter
	p.Container = &fyne.Container{Layout: promptLayout{p}, Objects: []fyne.CanvasObject{p.ground, p.text}}
	p.Hide()
	return p
}

func (p *prompt) show(text string) {
	if p.Hidden == (text == "") && p.text.Text == text {
		return
	}
	p.text.Text, p.Hidden = text, text == ""
	p.Layout.Layout(nil, p.Size())
	p.Refresh()
}

type promptLayout struct{ *prompt }

func (promptLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(10, 10) }

func (l promptLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	width := min(l.text.MinSize().Width+30, s.Width-20)
	put(l.ground, (s.Width-width)/2, 0, width, s.Height)
	put(l.text, (s.Width-width)/2, 0, width, s.Height)
}
