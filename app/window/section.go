package window

import (
	"image/color"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
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
	s.Container = box.New(layout.NewCustomPaddedVBoxLayout(6), written(title, textSize, ink, true), s.body)
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
func buttons(list ...*widget.Button) fyne.CanvasObject {
	lines := box.New(layout.NewCustomPaddedVBoxLayout(6))
	row, used := box.New(layout.NewCustomPaddedHBoxLayout(6)), float32(0)
	lines.Add(row)
	for _, b := range list {
		wide := b.MinSize().Width
		if used > 0 && used+6+wide > columnWidth {
			row, used = box.New(layout.NewCustomPaddedHBoxLayout(6)), 0
			lines.Add(row)
		}
		row.Add(b)
		used += 6 + wide
	}
	return lines
}
