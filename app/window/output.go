package window

import (
	"context"
	"errors"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
)

// printButtons are what prints, writes and measures, at the foot of the column.
func printButtons(w *Window) *fyne.Container {
	say := w.desk.Words().Say
	print, save := newPushButton(say("menu.print"), w.askPrint), newPushButton(say("menu.pdf"), w.askPDF)
	print.Importance = widget.HighImportance
	return box.New(layout.NewCustomPaddedLayout(6, 12, 20, 20), box.New(layout.NewCustomPaddedVBoxLayout(6),
		pair(print, save), newPushButton(say("menu.measure-printer"), w.askMeasure)))
}

// pair sets two buttons beside each other, or where one is too long for that, one below
// the other.
func pair(a, b *pushButton) fyne.CanvasObject {
	if max(a.MinSize().Width, b.MinSize().Width) > (columnWidth-6)/2 {
		return box.New(layout.NewCustomPaddedVBoxLayout(6), a, b)
	}
	return box.New(layout.NewGridLayout(2), a, b)
}

// askPDF asks for a name and writes what is chosen of the packet under it.
func (w *Window) askPDF() { w.savePDF(w.desk.Packet()) }

// savePDF asks for a name, writes sheets under it and says so.
func (w *Window) savePDF(o desk.Output) {
	w.askNamed("ask.pdf.title", o.FileName(), ".pdf", func(name string) {
		w.work("ask.pdf.title", func(v *working) (stop func()) {
			return w.desk.Export(o, name, v.told, func(pages int, err error) {
				if v.over(err) {
					w.inform("told.printed.title", w.desk.Words().Say("told.printed", "pages", pages, "file", name))
				}
			})
		})
	})
}

// askPrint has what is chosen of the packet printed.
func (w *Window) askPrint() { w.print(w.desk.Packet()) }

// print asks which of the system's printers is to print sheets; where the system has no
// print command they are opened in its viewer.
func (w *Window) print(o desk.Output) {
	if !desk.CanPrint() {
		w.send(o, "")
		return
	}
	say := w.desk.Words().Say
	queue := newAnswerChoice()
	queue.PlaceHolder = say("ask.print.looking")
	q := w.ask("ask.print.title", box.New(layout.NewCustomPaddedVBoxLayout(8), message(say("ask.print", "paper", w.desk.PaperName())),
		box.New(layout.NewFormLayout(), widget.NewLabel(say("ask.print.printer")), bordered(queue))))
	queue.of = q
	stop := func() {}
	q.offer("ask.cancel", func() { stop() })
	q.offer("ask.print.yes", func() {
		stop()
		w.send(o, queue.value())
	})
	q.put()
	stop = w.desk.Queues(func(list []string) { queue.offer(say("ask.print.usual"), list, w.desk.Queue()) })
}

// send has sheets printed and says what became of them.
func (w *Window) send(o desk.Output, queue string) {
	say := w.desk.Words().Say
	w.work("ask.print.title", func(v *working) (stop func()) {
		sending := false
		told := func(done, total int) {
			sending = total == 0
			v.told(done, total)
		}
		return w.desk.Print(o, queue, told, func(s desk.Sent, err error) {
			switch ok := v.over(err); {
			case ok && s.File != "":
				w.inform("told.viewed.title", say("told.viewed", "pages", s.Pages, "file", s.File))
			case ok:
				w.inform("told.sent.title", say("told.sent", "pages", s.Pages, "answer", s.Answer))
			case sending && errors.Is(err, context.Canceled):
				w.inform("told.trouble", say("told.print-stopped"))
			}
		})
	})
}

// answerChoice is a box to choose in that answers its question.
type answerChoice struct {
	widget.Select
	ring  ring
	of    *question
	usual string
}

func newAnswerChoice() *answerChoice {
	c := &answerChoice{}
	c.ExtendBaseWidget(c)
	return c
}

// offer sets what may be chosen: the usual, and the names. The one that is wanted is
// chosen if it is among them.
func (c *answerChoice) offer(usual string, names []string, wanted string) {
	c.usual = usual
	c.SetOptions(append([]string{usual}, names...))
	c.SetSelected(usual)
	c.SetSelected(wanted)
}

// value returns the name that is chosen, empty for the usual.
func (c *answerChoice) value() string {
	if c.Selected == c.usual {
		return ""
	}
	return c.Selected
}

func (c *answerChoice) TypedKey(e *fyne.KeyEvent) {
	if !c.of.typed(e) {
		c.Select.TypedKey(e)
	}
}

func (c *answerChoice) CreateRenderer() fyne.WidgetRenderer {
	return c.ring.round(c.Select.CreateRenderer())
}

func (c *answerChoice) FocusGained() {
	c.Select.FocusGained()
	c.ring.show(true)
	reveal(c)
}

func (c *answerChoice) FocusLost() {
	c.Select.FocusLost()
	c.ring.show(false)
}
