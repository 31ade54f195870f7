package window

import "fyne.io/fyne/v2"

// plan is where things stand in the window, in the order in which the keyboard goes
// through them: the parts on the left, the steps along the top, the drawing in the middle,
// the fields on the right and the remarks under the drawing. Large type leaves no room for
// the job's name beside the steps, and then it stands in the frame of the window alone.
type plan struct{}

// around is between things, and round them.
const around = 14

func (plan) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(1000, 600) }

func (plan) Layout(o []fyne.CanvasObject, s fyne.Size) {
	rail, strip, title, drawing, fields, remarks := o[0], o[1], o[2], o[3], o[4], o[5]
	top := around + stripHeight + around
	low := s.Height - around
	parts := max(railWidth, rail.MinSize().Width)
	left := around + parts + around
	right := s.Width - around - sideWidth
	middle := right - around - left
	under := min(max((low-top)*0.2, 96), 170)
	if crowded := strip.MinSize().Width > middle; crowded {
		title.Hide()
		put(strip, around, around, s.Width-2*around, stripHeight)
	} else {
		title.Show()
		put(strip, left, around, middle, stripHeight)
	}
	put(title, right, around, sideWidth, stripHeight)
	put(rail, around, top, parts, low-top)
	put(drawing, left, top, middle, low-top-under-around)
	put(remarks, left, low-under, middle, under)
	put(fields, right, top, sideWidth, low-top)
}

// frameWidth is how far the board stands within the frame that is drawn round it.
const frameWidth = 1.5

// inset keeps its things inside a border.
type inset float32

func (i inset) MinSize(objects []fyne.CanvasObject) fyne.Size {
	return objects[0].MinSize().AddWidthHeight(2*float32(i), 2*float32(i))
}

func (i inset) Layout(objects []fyne.CanvasObject, s fyne.Size) {
	for _, o := range objects {
		put(o, float32(i), float32(i), s.Width-2*float32(i), s.Height-2*float32(i))
	}
}
