package window

import (
	"slices"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/window/desk"
)

// remarks are the findings under the drawing.
type remarks struct {
	fyne.CanvasObject
	desk   *desk.Desk
	shown  []desk.Remark
	list   *fyne.Container
	well   *fyne.Container // said when there is nothing to remark
	scroll *box.Scroll
	follow func(desk.Remark)
}

func newRemarks(d *desk.Desk, follow func(desk.Remark)) *remarks {
	r := &remarks{desk: d, follow: follow}
	r.list = &fyne.Container{Layout: &stackLayout{}}
	r.scroll = box.NewVScroll(r.list)
	r.well = &fyne.Container{}
	mark := tick()
	mark.Move(fyne.NewPos(17, 16))
	well := written(d.Words().Say("window.all-well"), readSize, faint, false)
	put(well, 17+remarkIndent, 14, 500, well.MinSize().Height)
	r.well.Add(mark)
	r.well.Add(well)
	r.CanvasObject = box.NewStack(sheetOf(panel), r.well, box.New(layout.NewCustomPaddedLayout(7, 7, 7, 7), r.scroll))
	return r
}

func (r *remarks) show() {
	now := r.desk.Remarks()
	r.well.Hidden = len(now) > 0 || r.desk.Part() == ""
	if slices.Equal(now, r.shown) && len(now) == len(r.list.Objects) {
		return
	}
	old := r.list.Objects
	r.shown, r.list.Objects = now, nil
	for _, m := range now {
		r.list.Objects = append(r.list.Objects, r.remarkFor(m, old))
	}
	if r.scroll.Offset.Y > 0 {
		r.scroll.ScrollToTop()
	}
	r.CanvasObject.Refresh()
}

// remarkFor keeps the remark that was there.
func (r *remarks) remarkFor(m desk.Remark, old []fyne.CanvasObject) fyne.CanvasObject {
	for _, o := range old {
		if o.(*remark).remark == m {
			return o
		}
	}
	return newRemark(m, func() { r.follow(m) })
}

// stackLayout sets remarks one below the other, each as tall as its sentence.
type stackLayout struct{ width float32 }

func (l *stackLayout) Layout(objects []fyne.CanvasObject, s fyne.Size) {
	l.width = s.Width
	y := float32(0)
	for _, o := range objects {
		high := o.(*remark).tall(s.Width)
		put(o, 0, y, s.Width, high)
		y += high
	}
}

func (l *stackLayout) MinSize(objects []fyne.CanvasObject) fyne.Size {
	high := float32(0)
	for _, o := range objects {
		high += o.(*remark).tall(max(l.width, 300))
	}
	return fyne.NewSize(200, high)
}
