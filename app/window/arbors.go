package window

import (
	"reflect"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// arbors is the list of arbors on a train's step, each with the parts that turn on
// it.
type arbors struct {
	section
	window *Window
	shown  []desk.Arbor
	made   int // how often the cards were
	add    *pushButton
	puts   map[string]*choice // what puts a part on, by arbor
}

func newArbors(w *Window) *arbors {
	a := &arbors{section: newSection(w.desk.Words().Say("arbors.title")), window: w}
	a.add = newPushButton(w.desk.Words().Say("arbors.add"), func() { w.tell(w.desk.AddArbor()) })
	return a
}

func (a *arbors) show() {
	a.Hidden = a.window.desk.Step() != desk.Train
	now := a.window.desk.Arbors()
	if a.Hidden || reflect.DeepEqual(now, a.shown) && len(a.body.Objects) > 0 {
		return
	}
	a.shown, a.body.Objects, a.puts = now, nil, map[string]*choice{}
	a.made++
	hint := newFlow(smallSize, faint)
	hint.set(a.window.desk.Words().Say("arbors.line"), faint)
	hint.lay(columnWidth)
	a.body.Add(hint.Container)
	for _, arbor := range now {
		a.body.Add(a.card(arbor))
	}
	a.body.Add(buttons(a.add))
	a.body.Refresh()
}

// shape tells when the cards have been made anew.
func (a *arbors) shape() float32 {
	if a.Hidden {
		return 0
	}
	return float32(a.made)
}

// card is one arbor: its name, its parts, and the way to put on one more.
func (a *arbors) card(of desk.Arbor) fyne.CanvasObject {
	d := a.window.desk
	say := d.Words().Say
	lines := box.New(layout.NewCustomPaddedVBoxLayout(2))
	drop := quiet(say("arbors.drop"), func() { a.window.tell(d.DropArbor(of.ID)) })
	lines.Add(box.NewBorder(nil, nil, nil, drop, inMiddle(written(of.ID, readSize, ink, true))))
	for _, part := range of.Parts {
		off := quiet("×", func() { d.TakeOff(of.ID, part.Value) })
		lines.Add(box.NewBorder(nil, nil, nil, off, inMiddle(written(part.Label, textSize, ink, false))))
	}
	lines.Add(a.putOn(of))
	return box.NewStack(sheetOf(well), box.New(layout.NewCustomPaddedLayout(6, 8, 10, 8), lines))
}

// putOn offers the parts that can be put on an arbor.
func (a *arbors) putOn(of desk.Arbor) fyne.CanvasObject {
	var labels []string
	for _, c := range of.Free {
		labels = append(labels, c.Label)
	}
	var put *choice
	put = newChoice(func(string) {
		if i := put.SelectedIndex(); i >= 0 {
			a.window.desk.PutOn(of.ID, of.Free[i].Value)
		}
	})
	a.puts[of.ID] = put
	put.came = func() { reveal(put) }
	put.set(labels, "", a.window.desk.Words().Say("arbors.put"))
	return bordered(put)
}

// box returns what puts a part on an arbor, nil where the arbor is not shown.
func (a *arbors) box(arbor string) focusable {
	if put := a.puts[arbor]; put != nil && !a.Hidden {
		return put
	}
	return nil
}

// quiet returns a button that does not stand out.
func quiet(text string, do func()) *pushButton {
	b := newPushButton(text, do)
	b.Importance = widget.LowImportance
	return b
}

// inMiddle sets a line of type in the middle of its height.
func inMiddle(o fyne.CanvasObject) fyne.CanvasObject {
	return box.NewVBox(layout.NewSpacer(), o, layout.NewSpacer())
}
