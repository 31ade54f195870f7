package window

import (
	"fyne.io/fyne/v2"

	"tipline/app/window/desk"
)

// table shows what other choices would come to.
type table struct {
	*fyne.Container
	shown desk.Comparison
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

func (t *table) show(c desk.Comparison, ok bool) {
	if !ok {
		c = desk.Comparison{}
	}
	t.shown, t.Objects = c, nil
	if !ok {
		t.Refresh()
		return
	}
	head := written(c.Title, textSize, ink, true)
	put(head, 0, 6, columnWidth, 22)
	t.Add(head)
	for i, cells := range c.Rows {
		for j, cell := range cells {
			colour := ink
			if i == 0 {
				colour = faint
			}
			text := written(cell, readSize, colour, i == c.Chosen && i > 0)
			put(text, 8+float32(j)*96, tableHead+float32(i)*tableRow, 100, tableRow)
			t.Add(text)
		}
	}
	t.Refresh()
}

type tableLayout struct{ *table }

func (l tableLayout) Layout([]fyne.CanvasObject, fyne.Size) {}

func (l tableLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	if len(l.shown.Rows) == 0 {
		return fyne.NewSize(columnWidth, 0)
	}
	return fyne.NewSize(columnWidth, tableHead+float32(len(l.shown.Rows))*tableRow+4)
}
