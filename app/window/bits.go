package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/window/desk"
	"tipline/geometry"
)

// bits is the table of the measured bit's corners on the cutter's step.
type bits struct {
	section
	window            *Window
	hint              *flow
	rows              []*cornerRow
	list              *fyne.Container
	start, add, clear *pushButton
	ways              *fyne.Container
}

// cornerRow is one corner: x, y, radius, and the button that takes it out; below them
// why they will not do.
type cornerRow struct {
	*fyne.Container
	why   *flow
	boxes [3]*entry
	paths [3]geometry.Quantity
	fill  bool
}

func newBits(w *Window) *bits {
	say := w.desk.Words().Say
	b := &bits{section: newSection(say("bit.title")), window: w, hint: newFlow(smallSize, faint)}
	b.list = box.New(layout.NewCustomPaddedVBoxLayout(4))
	b.start = newPushButton(say("bit.start"), w.desk.StartBit)
	b.add = newPushButton(say("bit.add"), w.desk.AddCorner)
	b.clear = newPushButton(say("bit.clear"), w.desk.ClearBit)
	b.ways = box.New(inLine{}, b.start, b.add, b.clear)
	b.body.Objects = []fyne.CanvasObject{b.hint.Container, b.list, b.ways}
	return b
}

func (b *bits) show() {
	if b.Hidden = !b.window.desk.HasBit(); b.Hidden {
		return
	}
	corners := b.window.desk.Bit()
	b.start.Hidden, b.add.Hidden, b.clear.Hidden = len(corners) > 0, len(corners) == 0, len(corners) == 0
	b.hint.lay(columnWidth)
	b.hint.set(b.window.desk.Words().Say("bit.line"), faint)
	if len(corners) != len(b.rows) {
		b.rebuild(len(corners))
	}
	for i, c := range corners {
		b.rows[i].show(c)
	}
}

// shape tells when the section has become taller or shorter.
func (b *bits) shape() float32 {
	if b.Hidden {
		return 0
	}
	high := 1 + b.hint.tall(columnWidth)
	for _, r := range b.rows {
		high += inputHeight + r.why.tall(columnWidth)
	}
	return high
}

// rebuild makes as many rows as there are corners; those there are kept.
func (b *bits) rebuild(n int) {
	b.rows = b.rows[:min(n, len(b.rows))]
	for len(b.rows) < n {
		b.rows = append(b.rows, b.newRow(len(b.rows)))
	}
	b.list.Objects = nil
	if n > 0 {
		b.list.Add(b.heads())
	}
	for _, r := range b.rows {
		b.list.Add(r.Container)
	}
}

func (b *bits) heads() fyne.CanvasObject {
	heads := &fyne.Container{Layout: cornerLayout{high: 18}}
	for _, of := range []string{"x", "y", "radius"} {
		heads.Add(written(b.window.desk.Words().Say("field.cutter.bit.chain."+of), smallSize, faint, false))
	}
	return heads
}

func (b *bits) newRow(i int) *cornerRow {
	d := b.window.desk
	r := &cornerRow{why: newFlow(smallSize, red)}
	line := &fyne.Container{Layout: cornerLayout{high: inputHeight}}
	r.Container = box.New(layout.NewCustomPaddedVBoxLayout(0), line, r.why.Container)
	for k := range r.boxes {
		e := newEntry()
		e.SetPlaceHolder(map[bool]string{true: d.Words().Say("empty.cutter.bit.chain.radius")}[k == 2])
		e.OnChanged = func(text string) {
			if !r.fill {
				d.Type(d.Part(), r.paths[k], text)
			}
		}
		b.window.wire(e, func() geometry.Quantity { return r.paths[k] })
		r.boxes[k] = e
		line.Add(e)
	}
	line.Add(quiet("×", func() { d.DropCorner(i) }))
	return r
}

func (r *cornerRow) show(c desk.BitCorner) {
	r.fill = true
	defer func() { r.fill = false }()
	r.why.lay(columnWidth)
	r.why.against(c.Trouble(), true)
	r.why.Hidden = c.Trouble() == ""
	for k, f := range []desk.Field{c.X, c.Y, c.Radius} {
		r.paths[k] = f.Path
		if r.boxes[k].Text != f.Text {
			r.boxes[k].SetText(f.Text)
		}
	}
}

// box returns the box of a corner's field, nil for any other.
func (b *bits) box(path geometry.Quantity) *entry {
	for _, r := range b.rows {
		for k, p := range r.paths {
			if p == path && !b.Hidden {
				return r.boxes[k]
			}
		}
	}
	return nil
}

// cornerLayout sets the boxes of a corner beside each other.
type cornerLayout struct{ high float32 }

func (l cornerLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnWidth, l.high)
}

func (l cornerLayout) Layout(objects []fyne.CanvasObject, _ fyne.Size) {
	for i, o := range objects {
		width := float32(cornerBox)
		if i == 3 {
			width = cornerButton
		}
		put(o, float32(i)*(cornerBox+4), 0, width, l.high)
	}
}
