package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// bars is the question that a printer is measured with: the test sheet, then what its
// bars measured.
type bars struct {
	*question
	name, across, along *answerEntry
	shaped              *widget.Check // nil where no profile shapes the sheets
	whyAcross, whyAlong *flow
	line                *flow
}

// barsWidth is the width of the question.
const barsWidth = 520

// askMeasure asks what the bars of a printer's test sheet measured.
func (w *Window) askMeasure() {
	d, say := w.desk, w.desk.Words().Say
	b := &bars{
		name: newAnswerEntry(), across: newAnswerEntry(), along: newAnswerEntry(),
		whyAcross: newFlow(smallSize, red), whyAlong: newFlow(smallSize, red), line: newFlow(readSize, faint),
	}
	b.name.SetText(d.Queue())
	b.across.SetPlaceHolder(say("measuring.bar"))
	b.along.SetPlaceHolder(say("measuring.bar"))
	content := box.New(layout.NewCustomPaddedVBoxLayout(8))
	b.question = w.ask("measuring.title", content)
	for _, e := range []*answerEntry{b.name, b.across, b.along} {
		e.of = b.question
		e.OnChanged = func(string) { b.show() }
	}
	content.Add(b.paragraph(say("measuring.step-1", "paper", d.PaperName())))
	content.Add(box.New(layout.NewCustomPaddedHBoxLayout(6),
		newPushButton(say("measuring.print"), func() { w.print(d.TestSheet(b.isShaped())) }),
		newPushButton(say("menu.pdf"), func() { w.savePDF(d.TestSheet(b.isShaped())) })))
	if shapes := d.Shapes(); shapes != "" {
		b.shaped = widget.NewCheck(say("measuring.shaped", "name", shapes), func(bool) { b.show() })
		content.Add(b.shaped)
	}
	content.Add(b.paragraph(say("measuring.step-2")))
	content.Add(box.New(layout.NewFormLayout(),
		widget.NewLabel(say("measuring.name")), b.name,
		widget.NewLabel(say("measuring.across")), b.across, box.NewWithoutLayout(), b.whyAcross.Container,
		widget.NewLabel(say("measuring.along")), b.along, box.NewWithoutLayout(), b.whyAlong.Container))
	content.Add(box.New(layout.NewGridWrapLayout(fyne.NewSize(barsWidth, 2*readSize*leading)), b.line.Container))
	b.offer("ask.cancel", func() {})
	b.offerOpen("measuring.keep", b.keep)
	b.show()
	b.put()
	w.Canvas().Focus(b.name)
}

// paragraph returns a text over the question's width.
func (b *bars) paragraph(text string) fyne.CanvasObject {
	f := newFlow(textSize, ink)
	f.set(text, ink)
	return box.New(layout.NewGridWrapLayout(fyne.NewSize(barsWidth, f.tall(barsWidth))), f.Container)
}

func (b *bars) isShaped() bool { return b.shaped != nil && b.shaped.Checked }

func (b *bars) typed() desk.Bars {
	return desk.Bars{Name: b.name.Text, Across: b.across.Text, Along: b.along.Text, Shaped: b.isShaped()}
}

// show says what the lengths come to, and what will not do.
func (b *bars) show() {
	m := b.window.desk.Measure(b.typed())
	for f, why := range map[*flow]string{b.whyAcross: m.Across, b.whyAlong: m.Along} {
		f.lay(barsWidth - 150)
		f.against(why, true)
	}
	b.line.set(m.Line, faint)
	b.Refresh()
}

// keep keeps the profile; what keeps it from being kept is told.
func (b *bars) keep() {
	if err := b.window.desk.KeepMeasured(b.typed()); err != nil {
		b.window.tell(err)
		return
	}
	b.Hide()
}
