package window

import "fyne.io/fyne/v2"

// cellGap is between the cells of a card, two beside each other.
const cellGap = 8

// cellLayout sets cells two to a line.
type cellLayout struct{}

func (cellLayout) MinSize(o []fyne.CanvasObject) fyne.Size {
	lines := float32((len(o) + 1) / 2)
	return fyne.NewSize(cardWidth, lines*(cellHigh+4))
}

func (cellLayout) Layout(o []fyne.CanvasObject, _ fyne.Size) {
	for i, c := range o {
		put(c, float32(i%2)*(cellWidth+cellGap), float32(i/2)*(cellHigh+4), cellWidth, cellHigh)
	}
}

// namedLayout sets a name over its box.
type namedLayout struct{}

func (namedLayout) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(cellWidth, cellHigh) }

func (namedLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	put(o[0], 1, 0, s.Width, cellName)
	put(o[1], 0, cellName, s.Width, inputHeight)
}
