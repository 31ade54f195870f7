package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
)

// leaf returns a sheet that lies over the fields until it is put away: its title, a line on
// what it is, and what it holds. It is hidden at first.
func leaf(title, line string, holds fyne.CanvasObject, away func()) fyne.CanvasObject {
	head := box.NewBorder(nil, nil, nil, quiet("×", away), inMiddle(written(title, headSize, ink, true)))
	under := newFlow(readSize, faint)
	under.set(line, faint)
	under.lay(columnWidth)
	top := box.New(layout.NewCustomPaddedLayout(8, 8, 20, 12), box.New(layout.NewCustomPaddedVBoxLayout(2), head, under.Container))
	sheet := box.NewStack(sheetOf(panel), box.New(layout.NewCustomPaddedLayout(0, 8, 0, 4), box.NewBorder(top, nil, nil, nil, holds)))
	sheet.Hide()
	return sheet
}
