package window

import (
	"errors"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/storage"

	"tipline/app/job"
	"tipline/app/window/desk"
)

// careful does what would lose the job that is on the desk, after asking whether
// to save it where it is not saved.
func (w *Window) careful(then func()) {
	if w.desk.Saved() {
		then()
		return
	}
	text := newFlow(textSize, ink)
	text.set(w.desk.Words().Say("ask.unsaved", "title", w.desk.Title()), ink)
	q := w.ask("ask.unsaved.title", message(text))
	q.offer("ask.cancel", func() {})
	q.offer("ask.discard", then)
	q.offer("ask.save", func() { w.save(then) })
	q.put()
}

// message gives a text the width of a question.
func message(text *flow) fyne.CanvasObject {
	const width = 420
	return box.New(layout.NewGridWrapLayout(fyne.NewSize(width, text.tall(width)+12)), text.Container)
}

// quit closes the window, after asking.
func (w *Window) quit() {
	w.careful(func() {
		w.desk.Close()
		w.Close()
	})
}

// tell says an error, if there is one.
func (w *Window) tell(err error) {
	if err == nil {
		return
	}
	sentence := err.Error()
	var refusal *job.Refusal
	if errors.As(err, &refusal) {
		sentence = refusal.Sentence(w.desk.Words())
	}
	w.inform("told.trouble", sentence)
}

// inform says something to be read and closed.
func (w *Window) inform(title, sentence string) {
	text := newFlow(textSize, ink)
	text.set(sentence, ink)
	q := w.ask(title, message(text))
	q.offer("ask.ok", func() {})
	q.put()
}

// save saves the job, asking for a name where it has none, and then goes on.
func (w *Window) save(then func()) {
	if w.desk.File() == "" {
		w.askSave(then)
		return
	}
	if err := w.desk.Save(); err != nil {
		w.tell(err)
		return
	}
	then()
}

// askDelete takes the present part away, after asking.
func (w *Window) askDelete() {
	if w.desk.Part() == "" {
		return
	}
	text := newFlow(textSize, ink)
	text.set(w.desk.Words().Say("ask.delete", "name", w.desk.Name(w.desk.Part())), ink)
	q := w.ask("ask.delete.title", message(text))
	q.offer("ask.cancel", func() {})
	q.offer("ask.delete.yes", func() { w.tell(w.desk.Delete()) })
	q.put()
}

// askOpen asks for a job file and opens it.
func (w *Window) askOpen() {
	w.askFile([]string{desk.Extension}, w.desk.Open)
}

// askFile asks for a file of one of the endings and does something with its name.
func (w *Window) askFile(endings []string, then func(name string) error) {
	ask := dialog.NewFileOpen(func(r fyne.URIReadCloser, err error) {
		if r == nil || err != nil {
			w.tell(err)
			return
		}
		name := r.URI().Path()
		if err := r.Close(); err != nil {
			w.tell(err)
			return
		}
		w.tell(then(name))
	}, w.Window)
	ask.SetFilter(storage.NewExtensionFileFilter(endings))
	if folder, err := storage.ListerForURI(storage.NewFileURI(w.desk.Folder())); err == nil {
		ask.SetLocation(folder)
	}
	ask.SetView(dialog.ListView)
	w.large(ask)
}

// askSave asks for a name, saves the job under it and then goes on.
func (w *Window) askSave(then func()) {
	w.askName("ask.save.title", desk.Extension, func(name string) {
		if err := w.desk.SaveAs(name); err != nil {
			w.tell(err)
			return
		}
		then()
	})
}

// askPrint asks for a name, writes the packet under it and says so.
func (w *Window) askPrint() {
	w.askName("ask.print.title", ".pdf", func(name string) {
		pages, err := w.desk.Print(name)
		if err != nil {
			w.tell(err)
			return
		}
		w.inform("told.printed.title", w.desk.Words().Say("told.printed", "pages", pages, "file", name))
	})
}
