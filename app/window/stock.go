package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/solve"
)

// stock is the list of what the job's parts need, in the place of the fields while it is
// asked for.
type stock struct {
	fyne.CanvasObject
	window *Window
	list   *fyne.Container
	of     *solve.Result // that it lists the needs of
}

func newStock(w *Window) *stock {
	say := w.desk.Words().Say
	s := &stock{window: w, list: box.New(layout.NewCustomPaddedVBoxLayout(3))}
	scroll := box.NewVScroll(box.New(layout.NewCustomPaddedLayout(0, 14, 20, 20), s.list))
	s.CanvasObject = leaf(say("menu.stock"), say("stock.leaf"), scroll, s.close)
	return s
}

// show brings the list in line with the desk while it is seen.
func (s *stock) show() {
	d := s.window.desk
	if !s.Visible() || s.of == d.Result() {
		return
	}
	s.of, s.list.Objects = d.Result(), nil
	for _, g := range d.Stock() {
		s.list.Add(box.New(layout.NewCustomPaddedLayout(7, 0, 0, 0), written(g.Title, textSize, ink, true)))
		for _, row := range g.Rows {
			s.add(newFlow(readSize, ink), row.Item)
			s.add(newFlow(smallSize, faint), row.For)
		}
	}
	if len(s.list.Objects) == 0 {
		s.add(newFlow(readSize, faint), d.Words().Say("stock.nothing"))
	}
	s.list.Refresh()
}

func (s *stock) add(f *flow, text string) {
	f.set(text, f.colour)
	f.lay(columnWidth)
	s.list.Add(box.New(layout.NewGridWrapLayout(fyne.NewSize(columnWidth, f.tall(columnWidth))), f.Container))
}

// open shows the list, or puts it away.
func (s *stock) open() {
	if s.Visible() {
		s.close()
		return
	}
	s.window.column.history.close()
	s.window.column.fields.Hide()
	s.Show()
	s.show()
}

func (s *stock) close() {
	if s.Visible() {
		s.Hide()
		s.window.column.fields.Show()
	}
}
