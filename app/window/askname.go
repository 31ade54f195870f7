package window

import (
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
	say := w.desk.Words().Say
	name, folder := widget.NewEntry(), widget.NewEntry()
	name.SetText(w.desk.FileName(ending))
	folder.SetText(w.desk.Folder())
	browse := widget.NewButton(say("ask.browse"), func() { w.askFolder(folder) })
	form := box.New(layout.NewFormLayout(), widget.NewLabel(say("ask.name")), name,
		widget.NewLabel(say("ask.folder")), box.NewBorder(nil, nil, nil, browse, folder))
	var question *dialog.CustomDialog
	write := func() {
		path := desk.Path(folder.Text, name.Text, ending)
		w.unlessThere(path, func() {
			question.Hide()
			then(path)
		})
	}
	question = dialog.NewCustomWithoutButtons(say(title), box.New(layout.NewCustomPaddedLayout(6, 10, 0, 0), form), w.Window)
	save := widget.NewButton(say("ask.write"), write)
	save.Importance = widget.HighImportance
	name.OnSubmitted = func(string) { write() }
	question.SetButtons([]fyne.CanvasObject{widget.NewButton(say("ask.cancel"), func() { question.Hide() }), save})
	question.Resize(fyne.NewSize(640, 220))
	question.Show()
	w.Canvas().Focus(name)
}

// unlessThere asks before a file that is there is written over.
func (w *Window) unlessThere(path string, then func()) {
	if !desk.There(path) {
		then()
		return
	}
	say := w.desk.Words().Say
	text := newFlow(textSize, ink)
	text.set(say("ask.over", "file", path), ink)
	dialog.NewCustomConfirm(say("ask.over.title"), say("ask.over.yes"), say("ask.cancel"), message(text), func(yes bool) {
		if yes {
			then()
		}
	}, w.Window).Show()
}

func (w *Window) askFolder(into *widget.Entry) {
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
	ask.Show()
}
