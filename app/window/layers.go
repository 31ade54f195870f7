package window

import (
	"reflect"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/window/desk"
	"tipline/geometry"
)

// layers is the list of a stack's wheels from the collet up, each with the tip that
// stands in line.
type layers struct {
	section
	window *Window
	hint   *flow
	rows   []*layer
	list   *fyne.Container
	put    *choice
	free   []desk.Choice
	shown  []desk.Choice // the wheels of the rows

	offered bool // the wheels that are free
}

// layer is one wheel's row.
type layer struct {
	*fyne.Container
	tip  *entry
	path geometry.Quantity
	fill bool
}

func newLayers(w *Window) *layers {
	say := w.desk.Words().Say
	l := &layers{section: newOpening(say("stack.wheels")), window: w, hint: newFlow(smallSize, faint)}
	l.list = box.New(layout.NewCustomPaddedVBoxLayout(4))
	l.put = newChoice(func(string) {
		if i := l.put.SelectedIndex(); i >= 0 {
			to := l.free[i].Value
			l.put.ClearSelected()
			w.desk.PutOnStack(to)
		}
	})
	l.put.came = func() { reveal(l.put) }
	l.body.Objects = []fyne.CanvasObject{l.hint.Container, l.list, bordered(l.put)}
	return l
}

func (l *layers) show() {
	now, free, ok := l.window.desk.Layers()
	if l.Hidden = !ok; !ok {
		return
	}
	l.hint.lay(columnWidth)
	if why, grave := l.window.desk.LayersTrouble(); why != "" {
		l.hint.against(why, grave)
	} else {
		l.hint.set(l.window.desk.Words().Say("stack.line"), faint)
	}
	if wheels := wheelsOf(now); !reflect.DeepEqual(wheels, l.shown) {
		l.shown = wheels
		l.rebuild(now)
	}
	l.offer(free)
	for i, of := range now {
		l.rows[i].show(of)
	}
}

// shape tells when the section has become taller or shorter.
func (l *layers) shape() float32 {
	if l.Hidden {
		return 0
	}
	return 1 + float32(len(l.rows))*inputHeight + l.hint.tall(columnWidth)
}

func wheelsOf(now []desk.Layer) []desk.Choice {
	var wheels []desk.Choice
	for _, of := range now {
		wheels = append(wheels, of.Wheel)
	}
	return wheels
}

// offer shows which wheels can be put on.
func (l *layers) offer(free []desk.Choice) {
	if l.offered && reflect.DeepEqual(free, l.free) {
		return
	}
	l.offered, l.free = true, free
	labels := make([]string, len(free))
	for i, c := range free {
		labels[i] = c.Label
	}
	if len(free) == 0 {
		l.put.set(nil, "", l.window.desk.Words().Say("stack.none-free"))
		l.put.Disable()
		return
	}
	l.put.set(labels, "", l.window.desk.Words().Say("stack.put"))
	l.put.Enable()
}

func (l *layers) rebuild(now []desk.Layer) {
	l.rows, l.list.Objects = nil, nil
	for i, of := range now {
		l.rows = append(l.rows, l.newRow(i, of.Wheel.Label, i+1 < len(now)))
		l.list.Add(l.rows[i].Container)
	}
}

func (l *layers) newRow(i int, name string, below bool) *layer {
	d := l.window.desk
	r := &layer{tip: newEntry()}
	l.window.wire(r.tip, func() geometry.Quantity { return r.path })
	r.tip.OnChanged = func(text string) {
		if !r.fill {
			d.TypeTip(i, text)
		}
	}
	up, off := quiet("↓", func() { d.Raise(i) }), quiet("×", func() { d.TakeOffStack(i) })
	if !below {
		up.Disable()
	}
	tip := written(d.Words().Say("stack.tip"), smallSize, faint, false)
	label := written(shortened(name, textSize, fyne.TextStyle{}, layerName-tip.MinSize().Width), textSize, ink, false)
	r.Container = &fyne.Container{Layout: layerLayout{}, Objects: []fyne.CanvasObject{
		label, tip, r.tip, up, off,
	}}
	return r
}

func (r *layer) show(of desk.Layer) {
	r.fill, r.path = true, of.Tip.Path
	if r.tip.Text != of.Tip.Text {
		r.tip.SetText(of.Tip.Text)
	}
	r.fill = false
}

// box returns the box of a wheel's tip, or what puts a wheel on; nil for any other
// field.
func (l *layers) box(path geometry.Quantity) focusable {
	if l.Hidden {
		return nil
	}
	for _, r := range l.rows {
		if r.path == path || path == "tips" {
			return r.tip
		}
	}
	if path == "wheels" {
		return l.put
	}
	return nil
}

// layerLayout sets a wheel's name, its tip and its buttons beside each other.
type layerLayout struct{}

func (layerLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnWidth, inputHeight)
}

func (layerLayout) Layout(o []fyne.CanvasObject, _ fyne.Size) {
	x := float32(0)
	tip := o[1].MinSize().Width
	for i, wide := range []float32{layerName - tip, tip, layerTip, layerButton, layerButton} {
		high := float32(inputHeight)
		if i < 2 {
			high = o[i].MinSize().Height
		}
		put(o[i], x, (inputHeight-high)/2, wide, high)
		x += wide + 3
	}
}
