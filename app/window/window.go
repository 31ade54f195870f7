// Package window is Tipline's window: the steps, the parts, the drawing, the
// fields and the remarks, over a desk that holds the job. Widgets show what the
// desk says and tell it what was done; they work nothing out.
package window

import (
	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"

	"tipline/app/window/desk"
	"tipline/geometry"
	"tipline/render/screen"
)

// Window is one window over one desk.
type Window struct {
	fyne.Window
	all      *windows
	desk     *desk.Desk
	menu     *menu
	plan     *fyne.Container
	strip    *strip
	rail     *rail
	board    *board
	corner   *corner
	pager    *pager
	pages    *pages
	sheet    *fyne.Container // the board with what stands on it, beside the pages
	turner   *turner
	column   *column
	remarks  *remarks
	title    *heading
	entered  *entry // the box that was come to last
	welcome  *welcome
	question *question          // on top, nil for none
	asking   *dialog.FileDialog // the toolkit's own question, nil while none is open
}

// New returns the program's first window, which shows what is on the desk.
func New(app fyne.App, d *desk.Desk) *Window {
	all := &windows{app: app, aside: d.Aside, later: d.Later, ended: func() {}}
	all.dress(d.Looks.Kept())
	all.heed()
	return all.add(d)
}

// opening is how large a window opens: on a screen of 1280 by 720, beside the frame and the
// bar of the desktop. The toolkit does not tell how large the screen is.
var opening = fyne.NewSize(1260, 660)

func newWindow(all *windows, d *desk.Desk) *Window {
	w := &Window{Window: all.app.NewWindow(d.Words().Say("window.program")), all: all, desk: d}
	w.furnish()
	w.SetCloseIntercept(w.leave)
	w.SetOnDropped(func(_ fyne.Position, files []fyne.URI) {
		var names []string
		for _, f := range files {
			names = append(names, f.Path())
		}
		w.dropped(names)
	})
	w.Canvas().SetOnTypedKey(w.turn)
	w.Resize(opening)
	d.Changed = w.show
	w.show()
	return w
}

// furnish puts everything into the window, with the texts of the desk's language.
func (w *Window) furnish() {
	d := w.desk
	w.entered = nil
	w.strip = newStrip(d, w.help)
	w.rail = newRail(w)
	legend := newLegend(d)
	w.board = newBoard(legend, w.pressed, w.turn)
	w.board.picked = w.pick
	w.board.grips, w.board.ruler, w.board.measure = newGrips(d), newRuler(d), w.measure
	w.corner = newCorner(d, w.measure, w.escape)
	w.board.corner, legend.tag.corner = w.corner.wide, w.corner.wide
	w.pager = newPager(d)
	legend.pager = w.pager
	w.pages = newPages(d, w.turn)
	w.turner = newTurner(d, legend, w.showDrawing)
	w.column = newColumn(w)
	w.remarks = newRemarks(d, w.follow)
	w.title = newHeading()
	w.menu = newMenu(w)
	w.welcome = newWelcome(w)
	onBoard := box.NewStack(&fyne.Container{Layout: inset(frameWidth), Objects: []fyne.CanvasObject{w.board}}, w.board.grips.Container, legend.Container, &fyne.Container{Layout: inset(frameWidth), Objects: []fyne.CanvasObject{w.board.ruler.Container}}, w.corner.Container, w.pager.Container, w.turner.Container)
	w.sheet = &fyne.Container{Layout: besidePages{w.pages}, Objects: []fyne.CanvasObject{sheetOf(panel), w.pages, onBoard}}
	drawing := box.NewStack(sheetOf(paper), w.sheet, w.welcome.Container)
	w.plan = &fyne.Container{Layout: plan{}, Objects: []fyne.CanvasObject{
		w.rail.CanvasObject, w.strip.Container, w.title.Container, drawing, w.column.CanvasObject, w.remarks.CanvasObject,
	}}
	w.SetContent(w.plan)
	w.SetMainMenu(w.menu.MainMenu)
	w.Canvas().SetOnTypedRune(w.board.TypedRune)
	w.rail.tip.over(w)
}

// show brings everything in line with the desk.
func (w *Window) show() {
	if w.strip.show() {
		w.plan.Refresh()
	}
	w.title.show(w.desk.Title(), w.desk.Saved())
	w.rail.show()
	w.column.show()
	w.remarks.show()
	w.pager.show()
	if was := w.pages.Visible(); w.pages.show() != was {
		w.sheet.Refresh()
	}
	w.turner.show()
	w.corner.show()
	w.menu.show()
	w.welcome.show()
	w.showDrawing()
	w.SetTitle(w.titleLine())
}

func (w *Window) showDrawing() {
	whole, _ := w.desk.Drawing()
	seen, _ := w.desk.Seen()
	key, page := string(w.desk.Step()), w.desk.Page()
	if w.desk.Step() != desk.Paper {
		key += " " + w.desk.Part()
	}
	if w.desk.Prompt() != "" {
		key += " picking"
	}
	_, turning := w.desk.Mesh()
	w.board.grips.show(w.desk.Handles(), w.desk.Picked())
	if w.desk.Awaits() && w.desk.Step() != desk.Paper {
		return // what was shown last stands until the part is worked out
	}
	w.board.show(scene{key, seen, whole, w.desk.Lit(), page, turning || w.desk.Dragging()})
}

func (w *Window) titleLine() string {
	dot := ""
	if !w.desk.Saved() {
		dot = "• "
	}
	return dot + w.desk.Title() + " – " + w.desk.Words().Say("window.program")
}

// pick takes a pressed place of the drawing where points are picked.
func (w *Window) pick(at geometry.Point) bool {
	if w.desk.Prompt() == "" {
		return false
	}
	w.desk.Pick(at)
	if w.desk.Prompt() == "" {
		if to := w.column.place("cutter.bit.photograph.distance"); to != nil {
			w.Canvas().Focus(to)
		}
	}
	return true
}

// measure takes the rule up and gives the drawing the keyboard, or lays it down.
func (w *Window) measure() {
	if w.desk.TakeRule(!w.desk.Measuring()); w.desk.Measuring() {
		w.Canvas().Focus(w.board)
	}
}

// chooseLayers opens the list of layers and gives it the keyboard.
func (w *Window) chooseLayers() {
	if w.corner.unfold(true); w.corner.open {
		w.Canvas().Focus(w.corner.veils[0])
	}
}

// escape ends what is going on: a question for a file, choosing layers, a list over the
// fields, a job being opened, a drag, picking points, or measuring.
func (w *Window) escape() {
	switch {
	case w.asking != nil:
		w.asking.Dismiss()
		return
	case w.corner.open && !w.desk.Dragging():
		w.corner.unfold(false)
		w.Canvas().Focus(w.board)
		return
	case w.column.stock.Visible() || w.column.history.Visible():
		w.column.stock.close()
		w.column.history.close()
		return
	case w.desk.GiveUp():
		return
	}
	w.desk.TakeRule(false)
	w.board.grips.letGo()
	w.desk.PutBack()
	w.desk.StopPicking()
}

// keys returns those that work wherever the keyboard is on nothing that has its own.
func (w *Window) keys() keyTable {
	onPaper := func(yes bool) func() bool { return func() bool { return (w.desk.Step() == desk.Paper) == yes } }
	turn := func(by int) func() { return func() { w.desk.Turn(by) } }
	last := func() { count, _ := w.desk.Pages(); w.desk.TurnTo(count - 1) }
	return keyTable{
		named("keys.escape", w.escape, fyne.KeyEscape),
		named("keys.guide", w.help, fyne.KeyF1),
		{says: "keys.part", names: []fyne.KeyName{fyne.KeyPageUp}, when: onPaper(false), do: turn(-1)},
		{says: "keys.part", names: []fyne.KeyName{fyne.KeyPageDown}, when: onPaper(false), do: turn(1)},
		{says: "keys.page", names: []fyne.KeyName{fyne.KeyPageUp}, when: onPaper(true), do: func() { w.pager.turn(-1) }},
		{says: "keys.page", names: []fyne.KeyName{fyne.KeyPageDown}, when: onPaper(true), do: func() { w.pager.turn(1) }},
		{says: "keys.first-page", names: []fyne.KeyName{fyne.KeyHome}, when: onPaper(true), do: func() { w.desk.TurnTo(0) }},
		{says: "keys.last-page", names: []fyne.KeyName{fyne.KeyEnd}, when: onPaper(true), do: last},
	}
}

// turn does what a key does that nothing else has taken: it answers a question, or looks
// at the next page or part.
func (w *Window) turn(e *fyne.KeyEvent) {
	if w.question != nil && w.asking == nil {
		w.question.typed(e)
		return
	}
	w.keys().press(e.Name)
}

// pressed goes to the field that made a line.
func (w *Window) pressed(f screen.Found) {
	w.follow(desk.Remark{Part: f.Part, Field: f.Quantity})
}

// goTo goes to a step and puts the keyboard into its first field.
func (w *Window) goTo(step desk.Step) {
	w.desk.Go(step)
	w.enter()
}

// add adds a part of a kind and puts the keyboard into its first field.
func (w *Window) add(kind string) {
	if err := w.desk.Add(kind); err != nil {
		w.tell(err)
		return
	}
	w.enter()
}

// enter puts the keyboard into the first field of the step, if it has any.
func (w *Window) enter() {
	if fields := w.desk.Fields(); len(fields) > 0 {
		if to := w.column.place(fields[0].Path); to != nil {
			w.Canvas().Focus(to)
		}
	}
}

// follow goes to a remark's field, lights what it made and puts the keyboard into
// it.
func (w *Window) follow(r desk.Remark) {
	r = w.desk.Follow(r)
	if to := w.column.placeOf(r); to != nil {
		w.Canvas().Focus(to)
	}
}
