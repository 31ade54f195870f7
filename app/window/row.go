package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/window/desk"
	"tipline/geometry"
)

// rowGap is between the rows of the column of fields.
const rowGap = 8

// row is one field: its label, the box it is typed or chosen in, and under it a
// hint, or why what was typed will not do.
type row struct {
	*fyne.Container
	desk   *desk.Desk
	field  desk.Field
	label  *canvas.Text
	entry  *entry  // nil where the field is chosen
	choice *choice // nil where the field is typed
	hint   *flow
	border *canvas.Rectangle // of a choice, which the toolkit draws without
	filled bool              // while the row itself sets its box
}

func newRow(w *Window, f desk.Field) *row {
	d := w.desk
	r := &row{desk: d, field: f, label: written(f.Label, textSize, ink, false), hint: newFlow(smallSize, faint)}
	r.border = choiceBorder()
	r.border.Hidden = len(f.Choices) == 0
	came := func() {
		r.came()
		reveal(r.Container)
	}
	if len(f.Choices) > 0 {
		r.choice = newChoice(r.chosen)
		r.choice.came, r.choice.help = came, w.help
	} else {
		r.entry = newEntry()
		r.entry.OnChanged = r.typed
		r.entry.came = func() { came(); w.marks(r.entry) }
		r.entry.undo, r.entry.redo, r.entry.escape, r.entry.help = d.Undo, d.Redo, w.escape, w.help
		r.entry.nudge = func(by int) { d.Nudge(r.field.Part, r.field.Path, by) }
	}
	r.Container = &fyne.Container{Layout: rowLayout{r}, Objects: []fyne.CanvasObject{r.label, r.box(), r.hint.Container, r.border}}
	r.show(f)
	return r
}

func (r *row) came() { r.desk.Light(r.field.Path) }

func (r *row) typed(text string) {
	if !r.filled {
		r.desk.Type(r.field.Part, r.field.Path, text)
	}
}

func (r *row) chosen(label string) {
	if r.filled {
		return
	}
	for _, c := range r.field.Choices {
		if c.Label == label {
			r.desk.Type(r.field.Part, r.field.Path, c.Value)
		}
	}
}

// fits reports whether the row can show the field as it is, be it another part's.
func (r *row) fits(f desk.Field) bool {
	return r.field.Path == f.Path && (r.choice != nil) == (len(f.Choices) > 0)
}

// show sets what the row shows.
func (r *row) show(f desk.Field) {
	r.field = f
	r.filled = true
	defer func() { r.filled = false }()
	if r.choice != nil {
		r.showChoice(f)
	} else {
		r.showEntry(f)
	}
	if f.Refusal != "" {
		r.hint.against(f.Refusal, f.Grave)
	} else {
		r.hint.set(f.Hint, faint)
	}
}

func (r *row) showChoice(f desk.Field) {
	labels, selected := labelsOf(f)
	empty := f.Empty
	if empty == "" {
		empty = " "
	}
	r.choice.set(labels, selected, empty)
}

// labelsOf returns how a field's choices are shown, and the one that stands there.
func labelsOf(f desk.Field) (labels []string, selected string) {
	for _, c := range f.Choices {
		labels = append(labels, c.Label)
		if c.Value == f.Text {
			selected = c.Label
		}
	}
	return labels, selected
}

// against sets what stands against a value, told by the sign of its badge as well as by
// its colour: an error has a cross, a caution an exclamation mark.
func (f *flow) against(why string, grave bool) {
	colour, mark := orange, "! "
	if grave {
		colour, mark = red, "× "
	}
	if why == "" {
		mark = ""
	}
	f.set(mark+why, colour)
}

func (r *row) showEntry(f desk.Field) {
	text := f.Text
	if f.Worked != "" {
		text = f.Worked
	}
	if r.entry.PlaceHolder != f.Empty {
		r.entry.SetPlaceHolder(f.Empty)
	}
	if r.entry.Text != text {
		r.entry.SetText(text)
	}
	if f.Worked != "" != r.entry.Disabled() {
		if f.Worked != "" {
			r.entry.Disable()
		} else {
			r.entry.Enable()
		}
	}
}

// box returns what the field is typed or chosen in.
func (r *row) box() focusable {
	if r.choice != nil {
		return r.choice
	}
	return r.entry
}

func (r *row) path() geometry.Quantity { return r.field.Path }

// wide reports whether the line under the box needs the row's whole width.
func (r *row) wide() bool { return r.field.Refusal != "" }

// tall returns how tall the row is.
func (r *row) tall() float32 { return rowLayout{r}.MinSize(nil).Height }

// together returns how tall rows are together, without what is between them.
func together(rows []*row) float32 {
	high := float32(0)
	for _, r := range rows {
		high += r.tall()
	}
	return high
}

// above returns how tall the label is where it stands above its box, since the type is
// large or it is too long to stand beside it; 0 where it stands beside it.
func (r *row) above() float32 {
	if needs := r.label.MinSize(); enlarged >= labelsAbove || needs.Width > labelWidth {
		return needs.Height
	}
	return 0
}

type rowLayout struct{ *row }

func (r *row) hintWidth() float32 {
	switch {
	case r.wide():
		return columnWidth
	case r.above() > 0:
		return columnWidth - 18
	}
	return inputWidth - 10
}

func (l rowLayout) MinSize([]fyne.CanvasObject) fyne.Size {
	high := l.above() + inputHeight
	if t := l.hint.tall(l.hintWidth()); t > 0 {
		high += t + 3
	}
	return fyne.NewSize(columnWidth, high)
}

func (l rowLayout) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	name := l.label.MinSize()
	above := l.above()
	left, wide := float32(labelWidth), float32(inputWidth)
	put(l.label, 0, (inputHeight-name.Height)/2, labelWidth, name.Height)
	if above > 0 {
		left, wide = 0, columnWidth
		put(l.label, 0, 0, columnWidth, name.Height)
	}
	put(l.box(), left, above, wide, inputHeight)
	put(l.border, left+0.5, above+0.5, wide-1, inputHeight-1)
	x := left + 9
	if l.wide() {
		x = 0
	}
	put(l.hint.Container, x, above+inputHeight+2, l.hintWidth(), l.hint.tall(l.hintWidth()))
}
