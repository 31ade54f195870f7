package window

import (
	"strings"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
)

// copyPart puts the present part on the system's clipboard, as a job file.
func (w *Window) copyPart() {
	text, err := w.desk.Copied()
	if err != nil {
		w.tell(err)
		return
	}
	fyne.CurrentApp().Clipboard().SetContent(text)
}

// pastePart adds the part that is on the system's clipboard.
func (w *Window) pastePart() { w.tell(w.desk.Paste(fyne.CurrentApp().Clipboard().Content())) }

// askRename asks for another name for the present part; one that will not do is told and
// asked for again.
func (w *Window) askRename() {
	d := w.desk
	if d.Part() == "" {
		return
	}
	field := d.NameField(d.Part())
	name := newAnswerEntry()
	text, _ := d.Job().Text(d.Part(), field)
	name.SetText(text)
	form := box.New(layout.NewFormLayout(), widget.NewLabel(d.Words().Say("field."+string(field))), name)
	q := w.ask("ask.rename.title", box.New(layout.NewCustomPaddedLayout(6, 10, 0, 0), form))
	name.of = q
	q.offer("ask.cancel", func() {})
	q.offerOpen("ask.rename.yes", func() {
		if err := d.Rename(name.Text); err != nil {
			w.tell(err)
			return
		}
		q.Hide()
	})
	q.Resize(fyne.NewSize(460, 160))
	q.put()
	w.Canvas().Focus(name)
	name.TypedShortcut(&fyne.ShortcutSelectAll{})
}

// askDelete takes the present part away, after asking and saying what goes with it.
func (w *Window) askDelete() {
	d, say := w.desk, w.desk.Words().Say
	if d.Part() == "" {
		return
	}
	p := d.Parting()
	lines := []string{say("ask.delete", "name", d.Name(d.Part()))}
	if len(p.Go) > 0 {
		lines = append(lines, say("ask.delete.go", "names", strings.Join(p.Go, ", ")))
	}
	if len(p.Stay) > 0 {
		lines = append(lines, say("ask.delete.stay", "names", strings.Join(p.Stay, ", ")))
	}
	all := box.New(layout.NewCustomPaddedVBoxLayout(4))
	for _, line := range lines {
		all.Add(message(line))
	}
	q := w.ask("ask.delete.title", all)
	q.offer("ask.cancel", func() {})
	q.offer("ask.delete.yes", func() { w.tell(d.Delete()) })
	q.put()
}
