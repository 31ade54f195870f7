package window

import (
	"slices"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"

	"tipline/assets/samples"
)

// welcome is what stands in the place of the drawing in a job without parts: the
// three ways to begin.
type welcome struct {
	*fyne.Container
	window     *Window
	head, line *flow
	add        *pushButton
	ways       []fyne.CanvasObject
}

func newWelcome(w *Window) *welcome {
	say := w.desk.Words().Say
	v := &welcome{window: w}
	v.add = newPushButton(say("window.add"), nil)
	v.add.OnTapped = w.offerStarts
	v.add.Importance = widget.HighImportance
	open := newPushButton(say("menu.open"), w.askOpen)
	sample := newPushButton(say("window.sample"), func() { w.openSample(samples.First) })
	v.head, v.line = newFlow(headSize, light.ink), newFlow(textSize, light.faint)
	v.head.bold, v.head.align, v.line.align = true, fyne.TextAlignCenter, fyne.TextAlignCenter
	v.head.set(say("window.welcome"), light.ink)
	v.line.set(say("window.no-parts"), light.faint)
	v.ways = []fyne.CanvasObject{v.add, open, sample}
	v.Container = &fyne.Container{Layout: welcoming{v}, Objects: append([]fyne.CanvasObject{v.head.Container, v.line.Container}, v.ways...)}
	return v
}

// welcoming sets head, line and ways one below the other in the middle, as many of the
// ways beside each other as there is room for. The line gives way where it is too tall.
type welcoming struct{ *welcome }

func (l welcoming) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(40, 40) }

func (l welcoming) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	const margin, apart = 20, 14
	width := s.Width - 2*margin
	rows := l.rows(width, apart)
	head, line, ways := l.head.tall(width), l.line.tall(width)+apart, float32(len(rows))*(l.add.MinSize().Height+apart)
	l.line.Hidden = head+line+ways > s.Height
	if l.line.Hidden {
		line = 0
	}
	y := (s.Height - head - line - ways) / 2
	put(l.head.Container, margin, y, width, head)
	put(l.line.Container, margin, y+head+apart, width, max(line-apart, 0))
	y += head + line + apart
	for _, row := range rows {
		x := (s.Width - spread(row, apart)) / 2
		for _, way := range row {
			least := way.MinSize()
			put(way, x, y, least.Width, least.Height)
			x += least.Width + apart
		}
		y += row[0].MinSize().Height + apart
	}
}

// rows breaks the ways into rows that are no wider than the width.
func (l welcoming) rows(width, apart float32) [][]fyne.CanvasObject {
	rows := [][]fyne.CanvasObject{nil}
	for _, way := range l.ways {
		last := &rows[len(rows)-1]
		if longer := append(slices.Clone(*last), way); len(*last) == 0 || spread(longer, apart) <= width {
			*last = longer
		} else {
			rows = append(rows, []fyne.CanvasObject{way})
		}
	}
	return rows
}

// spread is how wide objects are that stand side by side.
func spread(row []fyne.CanvasObject, apart float32) float32 {
	wide := -apart
	for _, o := range row {
		wide += o.MinSize().Width + apart
	}
	return wide
}

func (v *welcome) show() {
	if hidden := v.window.desk.Part() != ""; hidden != v.Hidden {
		v.Hidden = hidden
		v.Refresh()
	}
}
