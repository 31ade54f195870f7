package window

import (
	"image/color"
	"reflect"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
)

// table shows figures that a step tells, or what other choices would come to.
type table struct {
	*fyne.Container
	shown []desk.Table
	high  float32
	size  float32 // of the type of the table that is being written
}

func newTable() *table {
	t := &table{}
	t.Container = &fyne.Container{Layout: tableLayout{t}}
	return t
}

// show writes the tables. What is written already is kept.
func (t *table) show(tables []desk.Table) {
	if reflect.DeepEqual(tables, t.shown) {
		return
	}
	old := t.Objects
	t.shown, t.high, t.Objects, t.Hidden = tables, 0, nil, len(tables) == 0
	for _, of := range tables {
		t.add(of)
	}
	for i, o := range t.Objects {
		if i < len(old) && same(o.(*canvas.Text), old[i].(*canvas.Text)) {
			t.Objects[i] = old[i]
		}
	}
	t.Refresh()
}

// same reports whether two lines of type look alike and stand at the same place.
func same(a, b *canvas.Text) bool {
	return a.Text == b.Text && a.Color == b.Color && a.TextStyle == b.TextStyle && a.TextSize == b.TextSize &&
		a.Position() == b.Position() && a.Size() == b.Size()
}

// add writes one table under what is there.
func (t *table) add(of desk.Table) {
	head := written(shortened(of.Title, textSize, fyne.TextStyle{Bold: true}, columnWidth), textSize, ink, true)
	put(head, 0, t.high+6, columnWidth, head.MinSize().Height)
	t.Add(head)
	t.high += tableHead
	for t.size = readSize; t.size > readSize/2 && widestShare(of, t.size) > 1; {
		t.size *= 0.98
	}
	if len(of.Head) > 0 {
		t.row(of, of.Head, -1)
	}
	for i, cells := range of.Rows {
		t.row(of, cells, i)
	}
	t.high += 4
}

// row writes the i-th row, −1 for the head.
func (t *table) row(of desk.Table, cells []string, i int) {
	for j, cell := range cells {
		x, colour, bold := cellOf(of, len(cells), i, j)
		text := written(cell, t.size, colour, bold)
		put(text, x, t.high, columnWidth-x, tableRow)
		t.Add(text)
	}
	t.high += tableRow
}

// widestShare returns how much of the room it has a table's widest cell takes at a size.
func widestShare(of desk.Table, size float32) float32 {
	share := float32(0)
	for i, cells := range append([][]string{of.Head}, of.Rows...) {
		for j, cell := range cells {
			x, _, bold := cellOf(of, len(cells), i-1, j)
			end := float32(columnWidth)
			if j+1 < len(cells) {
				end, _, _ = cellOf(of, len(cells), i-1, j+1)
				end -= cellAir
			}
			share = max(share, fyne.MeasureText(cell, size, fyne.TextStyle{Bold: bold}).Width/(end-x))
		}
	}
	return share
}

// cellAir is between a cell and the next.
const cellAir = 5

// cellOf returns how a cell of a row of so many is written: names are faint, what
// is chosen stands out.
func cellOf(of desk.Table, cells, i, j int) (x float32, colour color.Color, bold bool) {
	x, colour, bold = 8+float32(j)*columnWidth/float32(cells), ink, i == of.Chosen && i >= 0
	switch {
	case of.Across && j == 0:
		return 0, faint, false
	case of.Across:
		x, bold = namesWide+float32(j-1)*(columnWidth-namesWide)/float32(cells-1), j == of.Chosen
	case len(of.Head) == 0 && cells == 2 && j == 1:
		return valueStand, ink, bold
	case len(of.Head) == 0:
		colour = faint
	}
	if i < 0 && !(of.Across && bold) {
		colour = faint
	}
	return x, colour, bold
}

type tableLayout struct{ *table }

func (l tableLayout) Layout([]fyne.CanvasObject, fyne.Size) {}

func (l tableLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnWidth, l.high)
}
