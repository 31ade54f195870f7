package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/widget"
)

// roller lies over a column and hands the pointer's wheel to it, which a box to
// type in would keep for itself. All else goes to what lies under it.
type roller struct {
	widget.BaseWidget
	over fyne.Scrollable
}

func newRoller(over fyne.Scrollable) *roller {
	r := &roller{over: over}
	r.ExtendBaseWidget(r)
	return r
}

func (r *roller) Scrolled(e *fyne.ScrollEvent) { r.over.Scrolled(e) }

func (r *roller) CreateRenderer() fyne.WidgetRenderer {
	return widget.NewSimpleRenderer(&fyne.Container{})
}
