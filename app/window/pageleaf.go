package window

import (
	"image"
	"image/color"
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/theme"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// The measures of a page in the list.
const (
	thumbSize = 84 // the long side of the sheet
	leafText  = 82 // where its name begins
	leafTicks = 26 // the box's side
)

// leavesFor returns how wide the list is beside a page of which so much is left, and
// whether it has room for the pages' names.
func leavesFor(width float32) (wide float32, named bool) {
	if wide = widened(212); width-wide >= leastPage {
		return wide, true
	}
	return leafText + leafTicks + grown(28), false
}

// leastPage is how wide a page is at least looked at where the names of all are listed.
const leastPage = 330

// pageLeaf is a page in the list: its small picture, number and name, and the box that is
// ticked where it is printed.
type pageLeaf struct {
	*fyne.Container
	pages   *pages
	page    int
	of      desk.Leaf
	ground  *canvas.Rectangle
	edge    *canvas.Rectangle
	picture *canvas.Raster
	shown   image.Image // last painted, of whatever page
	veil    *canvas.Rectangle
	number  *canvas.Text
	name    *flow
	tick    *leafTick
}

func newPageLeaf(p *pages) *pageLeaf {
	l := &pageLeaf{
		pages: p, page: -1, ground: canvas.NewRectangle(color.Transparent), edge: canvas.NewRectangle(color.Transparent),
		veil: canvas.NewRectangle(thin(panel, 200)), number: written("", readSize, ink, true), name: newFlow(smallSize, ink),
	}
	l.ground.CornerRadius = 5
	l.edge.StrokeColor, l.edge.StrokeWidth = edge, 1
	l.picture = canvas.NewRaster(l.paint)
	l.tick = newLeafTick(func() { p.desk.TickPage(l.page, !l.of.Printed) })
	l.Container = &fyne.Container{Layout: leafLayout{l}, Objects: []fyne.CanvasObject{
		l.ground, l.picture, l.veil, l.edge, l.number, l.name.Container, l.tick,
	}}
	return l
}

// show shows a page, and whether it is looked at and the list has the keyboard.
func (l *pageLeaf) show(page int, of desk.Leaf, chosen, focus bool) {
	if l.page != page {
		l.shown = nil
	}
	other := l.of.Drawing != of.Drawing || l.page != page
	l.page, l.of = page, of
	say(l.number, strconv.Itoa(page+1))
	colour := ink
	if !of.Printed {
		colour = faint
	}
	l.name.lay(l.nameRoom())
	l.name.set(shortenedTo(leafLines, of.Title, smallSize, l.nameRoom()), colour)
	l.name.Hidden = !l.pages.named
	l.veil.Hidden = of.Printed
	l.tick.set(of.Printed)
	l.ground.FillColor, l.ground.StrokeColor, l.ground.StrokeWidth = color.Transparent, blue, 0
	if chosen {
		l.ground.FillColor, l.ground.StrokeWidth = well, 1.4
	}
	if chosen && focus {
		l.ground.StrokeWidth = 2.6
	}
	l.Layout.Layout(nil, l.Size())
	if other {
		l.picture.Refresh()
	}
	l.Refresh()
}

// paint returns the page's picture; until it is painted, that of the page as it was.
func (l *pageLeaf) paint(width, height int) image.Image {
	if l.of.Drawing != nil {
		if now := l.pages.thumbs.of(l.of, width, height); now != nil {
			l.shown = now
			return now
		}
	}
	if l.shown != nil {
		return l.shown
	}
	return image.NewUniform(paper)
}

// leafLines is how many lines of a page's name are shown.
const leafLines = 4

func (l *pageLeaf) nameRoom() float32 { return widened(212) - leafText - 22 }

type leafLayout struct{ *pageLeaf }

func (leafLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(leafText+leafTicks, max(thumbSize+20, grown(22)+leafLines*smallSize*leading+14))
}

func (l leafLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	put(l.ground, 2, 1, s.Width-4, s.Height-2)
	wide, high := float32(thumbSize)/1.4142, float32(thumbSize)
	if w, h := float32(l.of.Sheet.Width()), float32(l.of.Sheet.Height()); w > 0 && h > 0 {
		longer := max(w, h)
		wide, high = thumbSize*w/longer, thumbSize*h/longer
	}
	wide, high = min(wide, leafText-16), high*min(1, (leafText-16)/wide)
	x, y := 10+(leafText-16-wide)/2, (s.Height-high)/2
	for _, o := range []fyne.CanvasObject{l.picture, l.veil, l.edge} {
		put(o, x, y, wide, high)
	}
	number := l.number.MinSize()
	put(l.number, leafText+2, 7, number.Width, number.Height)
	put(l.tick, s.Width-leafTicks-4, 7+(number.Height-leafTicks)/2, leafTicks, leafTicks)
	put(l.name.Container, leafText+2, 9+number.Height, s.Width-leafText-8, s.Height-13-number.Height)
}

// leafTick is the box of a page, which the keyboard reaches through the list.
type leafTick struct {
	widget.BaseWidget
	on     bool
	tapped func()
	mark   *widget.Icon
}

func newLeafTick(tapped func()) *leafTick {
	t := &leafTick{tapped: tapped, mark: widget.NewIcon(tinted(theme.IconNameCheckButton, false))}
	t.ExtendBaseWidget(t)
	return t
}

func (t *leafTick) set(on bool) {
	t.on = on
	name := theme.IconNameCheckButton
	if on {
		name = theme.IconNameCheckButtonChecked
	}
	t.mark.SetResource(tinted(name, on))
}

func (t *leafTick) Tapped(*fyne.PointEvent) { t.tapped() }

func (t *leafTick) MinSize() fyne.Size { return fyne.NewSize(leafTicks, leafTicks) }

func (t *leafTick) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(&fyne.Container{Layout: inset(4), Objects: []fyne.CanvasObject{t.mark}})
}
