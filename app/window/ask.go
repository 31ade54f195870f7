package window

import (
	"errors"
	"path/filepath"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/storage"

	"tipline/app/job"
	"tipline/app/window/desk"
)

// careful does what would lose the job that is on the desk, after asking whether
// to save it where it is not saved. A job that is being written is waited for.
func (w *Window) careful(then func()) {
	w.desk.AfterSaving(func() { w.carefully(then) })
}

func (w *Window) carefully(then func()) {
	if w.desk.Saved() {
		then()
		return
	}
	q := w.ask("ask.unsaved.title", w.sentence("ask.unsaved", "title", w.desk.Title()))
	q.offer("ask.cancel", func() {})
	q.offer("ask.discard", then)
	q.offer("ask.save", func() { w.save(then) })
	q.put()
}

// sentence says something in the width of a question.
func (w *Window) sentence(key string, with ...any) fyne.CanvasObject {
	return message(w.desk.Words().Say(key, with...))
}

// sentences says several things, one below the other, in the width of a question.
func (w *Window) sentences(keys ...string) fyne.CanvasObject {
	all := box.New(layout.NewCustomPaddedVBoxLayout(0))
	for _, key := range keys {
		all.Add(w.sentence(key))
	}
	return all
}

// message gives a text the width of a question.
func message(says string) fyne.CanvasObject {
	text := newFlow(textSize, ink)
	text.set(says, ink)
	return box.New(layout.NewGridWrapLayout(fyne.NewSize(askWidth, text.tall(askWidth)+12)), text.Container)
}

// tell says an error, if there is one.
func (w *Window) tell(err error) {
	if err == nil {
		return
	}
	sentence := w.desk.Words().Reason(err)
	var refusal *job.Refusal
	var said interface {
		Say(say func(string, ...any) string) string
	}
	switch {
	case errors.As(err, &refusal):
		sentence = refusal.Sentence(w.desk.Words())
	case errors.As(err, &said):
		sentence = said.Say(w.desk.Words().Say)
	}
	w.inform("told.trouble", sentence)
}

// inform says something to be read and closed.
func (w *Window) inform(title, sentence string) {
	q := w.ask(title, message(sentence))
	q.offer("ask.ok", func() {})
	q.put()
}

// save saves the job and then goes on; it asks for a name where there is none, and
// before it writes over what another program has written.
func (w *Window) save(then func()) {
	switch {
	case w.desk.File() == "":
		w.askSave(then)
	case w.desk.Look() == desk.Altered:
		w.askOver(then)
	default:
		w.write(then)
	}
}

// write writes the job over its file and then goes on.
func (w *Window) write(then func()) {
	w.desk.Save(w.saved(then))
}

// saved tells what kept a job from being written, or goes on.
func (w *Window) saved(then func()) func(error) {
	return func(err error) {
		if err != nil {
			w.tell(err)
			return
		}
		then()
	}
}

// askOpen asks for a job file and opens it.
func (w *Window) askOpen() {
	w.askFile([]string{desk.Extension}, func(name string) error { w.open(name, func() {}); return nil })
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
		if other := w.all.of(name); other != nil && other != w {
			w.inform("told.trouble", w.desk.Words().Say("told.open-here", "file", filepath.Base(name)))
			return
		}
		w.desk.SaveAs(name, w.saved(then))
	})
}
