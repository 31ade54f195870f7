package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
)

// section is a headed piece of the column below its fields.
type section struct {
	*fyne.Container
	body *fyne.Container
}

func newSection(title string) section {
	s := newOpening(title)
	line := canvas.NewRectangle(edge)
	line.SetMinSize(fyne.NewSize(columnWidth, 1))
	s.Objects = append([]fyne.CanvasObject{line}, s.Objects...)
	return s
}

// newOpening returns a section that stands at the head of the column.
func newOpening(title string) section {
	s := section{body: box.New(layout.NewCustomPaddedVBoxLayout(6))}
	head := newFlow(textSize, ink)
	head.bold = true
	head.set(title, ink)
	head.lay(columnWidth)
	s.Container = box.New(layout.NewCustomPaddedVBoxLayout(6), head.Container, s.body)
	return s
}

// bordered draws the border of a choice, which the toolkit draws without.
func bordered(o fyne.CanvasObject) fyne.CanvasObject {
	return box.NewStack(o, choiceBorder())
}

func choiceBorder() *canvas.Rectangle {
	b := canvas.NewRectangle(color.Transparent)
	b.StrokeColor, b.StrokeWidth, b.CornerRadius = present.mark, 1, 5
	return b
}

// buttons sets buttons beside each other, as many to a line as there is room for.
func buttons(list ...*pushButton) fyne.CanvasObject {
	all := box.New(inLine{})
	for _, b := range list {
		all.Add(b)
	}
	return all
}

// inLine sets what is seen side by side, as much to a line as the column has room for.
type inLine struct{}

const inLineGap = 6

func (inLine) MinSize(o []fyne.CanvasObject) fyne.Size { return inLine{}.each(o, nil) }

func (inLine) Layout(o []fyne.CanvasObject, _ fyne.Size) {
	inLine{}.each(o, func(c fyne.CanvasObject, at fyne.Position) {
		c.Move(at)
		c.Resize(c.MinSize())
	})
}

// each tells where each thing stands, if that is asked, and returns the size of all.
func (inLine) each(o []fyne.CanvasObject, stands func(fyne.CanvasObject, fyne.Position)) fyne.Size {
	var at fyne.Position
	var all fyne.Size
	for _, c := range o {
		if !c.Visible() {
			continue
		}
		s := c.MinSize()
		if at.X > 0 && at.X+s.Width > columnWidth {
			at = fyne.NewPos(0, all.Height+inLineGap)
		}
		if stands != nil {
			stands(c, at)
		}
		all = all.Max(fyne.NewSize(at.X+s.Width, at.Y+s.Height))
		at.X += s.Width + inLineGap
	}
	return all
}
