package window

import (
	"fyne.io/fyne/v2"

	"tipline/app/window/desk"
)

// table shows figures that a step tells, or what other choices would come to.
type table struct {
	*fyne.Container
	high float32
}

const (
	tableHead = 30
	tableRow  = 21
)

func newTable() *table {
	t := &table{}
	t.Container = &fyne.Container{Layout: tableLayout{t}}
	return t
}

func (t *table) show(tables []desk.Table) {
	t.high, t.Objects, t.Hidden = 0, nil, len(tables) == 0
	for _, of := range tables {
		t.add(of)
	}
	t.Refresh()
}

// add writes one table under what is there.
func (t *table) add(of desk.Table) {
	head := written(of.Title, textSize, ink, true)
	put(head, 0, t.high+6, columnWidth, 22)
	t.Add(head)
	t.high += tableHead
	if len(of.Head) > 0 {
		t.row(of.Head, false, true)
	}
	for i, cells := range of.Rows {
		t.row(cells, i == of.Chosen, len(of.Head) == 0)
	}
	t.high += 4
}

// row writes one row; names are written faint, all but the last cell of a table of
// names and values.
func (t *table) row(cells []string, chosen, names bool) {
	width := float32(columnWidth) / float32(len(cells))
	for j, cell := range cells {
		colour, x := ink, 8+float32(j)*width
		if named := len(cells) == 2; names && (!named || j == 0) {
			colour = faint
		} else if named {
			x = 186
		}
		text := written(cell, readSize, colour, chosen)
		put(text, x, t.high, columnWidth-x, tableRow)
		t.Add(text)
	}
	t.high += tableRow
}

type tableLayout struct{ *table }

func (l tableLayout) Layout([]fyne.CanvasObject, fyne.Size) {}

func (l tableLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnWidth, l.high)
}
