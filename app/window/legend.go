package window

import (
	"image"
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/render"
	"tipline/render/screen"
)

// legend is what stands on the drawing without belonging to it: a scale bar, how
// far it is zoomed, and what is said when there is nothing to draw.
type legend struct {
	*fyne.Container
	desk    *desk.Desk
	border  *canvas.Rectangle
	length  *canvas.Text
	zoom    *canvas.Text
	ground  *canvas.Rectangle // that the zoom stands on where the drawing runs under it
	message *flow
	bar     screen.Bar
	tag     *tag
	prompt  *prompt
	pager   *pager // that stands between, on paper
	within  func() // places again what stands between the bar and the zoom
}

// slip is the colour under what stands on the drawing: nearly paper.
var slip = color.NRGBA{255, 255, 255, 225}

// longest is how long the scale bar may be.
const longest = 170

// shortest is how short it may become to leave room for what stands beside it.
const shortest = 30

func newLegend(d *desk.Desk) *legend {
	l := &legend{
		desk: d, border: canvas.NewRectangle(color.Transparent), length: written("", smallSize, light.ink, false),
		zoom: written("", smallSize, light.faint, false), message: newFlow(textSize, light.faint), tag: newTag(d), prompt: newPrompt(), ground: canvas.NewRectangle(slip),
		within: func() {},
	}
	l.ground.CornerRadius = 4
	l.border.CornerRadius, l.border.StrokeWidth, l.border.StrokeColor = 7, 1, edge
	l.zoom.Alignment = fyne.TextAlignTrailing
	l.Container = &fyne.Container{Layout: legendLayout{l}, Objects: []fyne.CanvasObject{l.border, l.ground, l.length, l.zoom, l.message.Container, l.tag.Container, l.prompt.Container}}
	return l
}

// frame shows that the drawing has the keyboard.
func (l *legend) frame(focus bool) {
	l.border.StrokeColor, l.border.StrokeWidth = edge, 1
	if focus {
		l.border.StrokeColor, l.border.StrokeWidth = light.blue, 2
	}
	l.border.Refresh()
}

func (l *legend) show(d *render.Drawing, v screen.View, fitted bool) {
	l.bar = screen.Bar{}
	message, zoom, length := "", "", ""
	switch {
	case l.desk.Prompt() != "":
	case d == nil:
		message = l.desk.Missing()
	case !v.Blank() && !l.desk.ToScale():
		zoom = l.desk.Words().Say("board.no-scale")
	case !v.Blank():
		perUnit, _ := l.desk.Unit()
		l.bar = screen.BarOf(d, v, perUnit, l.room())
		length = l.desk.BarLine(l.bar.Length)
		zoom = l.desk.ZoomLine(v.Magnification(d), fitted)
	}
	l.message.set(message, light.faint)
	line := l.desk.Prompt()
	if opening, ok := l.desk.Bringing(); ok {
		line = opening
	}
	l.prompt.show(line)
	say(l.length, length)
	say(l.zoom, zoom)
	l.zoom.Color = light.faint
	if l.desk.Step() == desk.Paper {
		l.zoom.Color = light.ink
	}
	l.Layout.Layout(nil, l.Size())
	l.within()
}

// inFrom is how far in the scale bar begins, and besideBar how far after it its length.
const inFrom, besideBar = 22, 8

// room returns how long the scale bar may be: on paper it ends before what turns the pages.
func (l *legend) room() float64 {
	if l.desk.Step() != desk.Paper {
		return longest
	}
	long := l.Size().Width/2 - l.pagerWide()/2 - inFrom - besideBar - grown(60)
	return float64(min(longest, max(long, shortest)))
}

func (l *legend) pagerWide() float32 {
	wide, _ := l.pager.wide()
	return wide
}

// sides returns how far what stands on the left and on the right reaches in.
func (l *legend) sides() (left, right float32) {
	left, right = inFrom, inFrom
	if l.length.Text != "" && !l.length.Hidden {
		left = inFrom + float32(l.bar.Pixels) + besideBar + l.length.MinSize().Width + inFrom
	}
	if l.zoom.Text != "" && !l.zoom.Hidden {
		right = l.zoom.MinSize().Width + 2*inFrom
	}
	return left, right
}

// thin takes away what there is no room for: first how far the drawing is zoomed, then, on
// paper, the scale bar.
func (l *legend) thin(width float32) {
	l.zoom.Hidden, l.length.Hidden = false, false
	between := float32(0)
	if l.desk.Step() == desk.Paper {
		between = l.pagerWide()
	}
	left, right := l.sides()
	half := (width - between) / 2
	l.zoom.Hidden = between > 0 && right > half || left+right > width
	if l.length.Hidden = between > 0 && left > half; l.length.Hidden {
		l.bar = screen.Bar{}
	}
	l.ground.Hidden = l.zoom.Hidden || l.zoom.Text == "" || between > 0
}

// rule draws the scale bar into the picture of the drawing.
func (l *legend) rule(p *screen.Painter, dst *image.RGBA, density float64) {
	bar := l.bar
	bar.Pixels *= density
	p.Rule(dst, bar, screen.Pixel{X: inFrom * density, Y: float64(dst.Rect.Dy()) - 19*density}, float64(l.length.MinSize().Width+14)*density)
}

type legendLayout struct{ *legend }

func (legendLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(10, 10) }

func (l legendLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	put(l.border, 0, 0, s.Width, s.Height)
	l.thin(s.Width)
	length, zoom := l.length.MinSize(), l.zoom.MinSize()
	put(l.length, inFrom+float32(l.bar.Pixels)+besideBar, s.Height-20-length.Height/2, length.Width, length.Height)
	put(l.tag.Container, 0, 0, s.Width, s.Height)
	put(l.zoom, s.Width-20-zoom.Width, s.Height-20-zoom.Height/2, zoom.Width, zoom.Height)
	put(l.ground, s.Width-26-zoom.Width, s.Height-21-zoom.Height/2, zoom.Width+12, zoom.Height+2)
	put(l.prompt.Container, 0, s.Height-legendHeight, s.Width, legendHeight-6)
	width := min(s.Width-60, 460)
	high := l.message.tall(width)
	put(l.message.Container, (s.Width-width)/2, (s.Height-high)/2, width, high)
}
