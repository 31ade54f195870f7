package window

import (
	"strings"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// askName asks where a file is to be written and under which name, and asks again
// before one that is there is written over. The toolkit's own question empties
// the file before it is known whether the new one can be written, so it is used
// for the folder only.
func (w *Window) askName(title, ending string, then func(name string)) {
	w.askNamed(title, w.desk.FileName(ending), ending, then)
}

// askNamed asks with a name offered.
func (w *Window) askNamed(title, offered, ending string, then func(name string)) {
	say := w.desk.Words().Say
	name, folder := newAnswerEntry(), newAnswerEntry()
	name.SetText(offered)
	folder.SetText(w.desk.Folder())
	browse := newPushButton(say("ask.browse"), func() { w.askFolder(folder) })
	form := box.New(layout.NewFormLayout(), widget.NewLabel(say("ask.name")), name,
		widget.NewLabel(say("ask.folder")), box.NewBorder(nil, nil, nil, browse, folder))
	q := w.ask(title, box.New(layout.NewCustomPaddedLayout(6, 10, 0, 0), form))
	name.of, folder.of = q, q
	q.offer("ask.cancel", func() {})
	q.offerOpen("ask.write", func() {
		path := desk.Path(folder.Text, name.Text, ending)
		w.unlessThere(path, func() {
			q.Hide()
			then(path)
		})
	})
	q.Resize(fyne.NewSize(640, 220))
	q.put()
	w.Canvas().Focus(name)
	name.mark(strings.TrimSuffix(name.Text, ending))
}

// unlessThere asks before a file that is there is written over.
func (w *Window) unlessThere(path string, then func()) {
	if !desk.There(path) {
		then()
		return
	}
	q := w.ask("ask.over.title", w.sentence("ask.over", "file", path))
	q.offer("ask.cancel", func() {})
	q.offer("ask.over.yes", then)
	q.put()
}

func (w *Window) askFolder(into *answerEntry) {
	ask := dialog.NewFolderOpen(func(folder fyne.ListableURI, err error) {
		if err != nil {
			w.tell(err)
			return
		}
		if folder != nil {
			into.SetText(folder.Path())
		}
	}, w.Window)
	if at, err := storage.ListerForURI(storage.NewFileURI(into.Text)); err == nil {
		ask.SetLocation(at)
	}
	ask.SetView(dialog.ListView)
	w.large(ask)
}

// large shows a question for a file as large as the window allows.
func (w *Window) large(ask *dialog.FileDialog) {
	s := w.Canvas().Size()
	ask.Resize(fyne.NewSize(min(s.Width-80, 900), min(s.Height-80, 620)))
	ask.SetOnClosed(func() { w.asking = nil })
	w.asking = ask
	ask.Show()
}
