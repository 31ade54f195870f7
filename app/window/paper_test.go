package window

import (
	"image"
	"image/color"
	"os"
	"path/filepath"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/test"
	"github.com/adrg/xdg"
	"github.com/stretchr/testify/require"

	"tipline/app/printer"
	"tipline/app/window/desk"
)

// bench does what is done aside when it is told to, one after the other.
type bench struct{ waiting []func() }

func (b *bench) aside(run, done func()) {
	b.waiting = append(b.waiting, func() { run(); done() })
}

// all does everything that waits, and what comes of it.
func (b *bench) all() {
	for len(b.waiting) > 0 {
		first := b.waiting[0]
		b.waiting = b.waiting[1:]
		first()
	}
}

// system gives a test folders of its own, and a system whose programs are the scripts.
func system(t *testing.T, scripts map[string]string) (folder string) {
	folder = t.TempDir()
	for name, script := range scripts {
		require.NoError(t, os.WriteFile(filepath.Join(folder, name), []byte("#!/bin/sh\nHERE='"+folder+"'\n"+script+"\n"), 0o755))
	}
	t.Setenv("PATH", folder)
	t.Setenv("XDG_CACHE_HOME", filepath.Join(folder, "cache"))
	t.Setenv("XDG_CONFIG_HOME", filepath.Join(folder, "config"))
	xdg.Reload()
	t.Cleanup(xdg.Reload)
	return folder
}

func typed(name fyne.KeyName) *fyne.KeyEvent { return &fyne.KeyEvent{Name: name} }

// The pages are turned by keys wherever the keyboard is, and by a tap in the list.
func TestPagesAreTurned(t *testing.T) {
	w := opened(t)
	require.False(t, w.pages.Visible())
	w.desk.Go(desk.Paper)
	require.True(t, w.pages.Visible())
	count, _ := w.desk.Pages()
	for _, step := range []struct {
		key   fyne.KeyName
		press func(*fyne.KeyEvent)
		want  int
	}{
		{fyne.KeyPageDown, w.turn, 1},
		{fyne.KeyEnd, w.turn, count - 1},
		{fyne.KeyPageDown, w.board.TypedKey, count - 1},
		{fyne.KeyPageUp, w.pages.TypedKey, count - 2},
		{fyne.KeyHome, w.board.TypedKey, 0},
		{fyne.KeyDown, w.pages.TypedKey, 1},
		{fyne.KeyUp, w.pages.TypedKey, 0},
		{fyne.KeyUp, w.pages.TypedKey, 0},
		{fyne.KeyEnd, w.pages.TypedKey, count - 1},
	} {
		step.press(typed(step.key))
		_, page := w.desk.Pages()
		require.Equal(t, step.want, page, step.key)
	}
	w.pages.Select(4)
	_, page := w.desk.Pages()
	require.Equal(t, 4, page)
	require.Equal(t, fyne.Focusable(w.pages), w.Canvas().Focused())
	drawing, _ := w.desk.Drawing()
	require.Same(t, drawing, w.board.drawing)
	w.desk.Go(desk.Blank)
	require.False(t, w.pages.Visible())
	require.Equal(t, float32(0), w.sheet.Objects[2].Position().X)
}

// A page is left out by the space bar or its box, and with it in the count.
func TestPagesAreTicked(t *testing.T) {
	w := opened(t)
	w.desk.Go(desk.Paper)
	count, _ := w.desk.Pages()
	w.pages.TypedKey(typed(fyne.KeySpace))
	require.Equal(t, count-1, w.desk.Printing())
	l := newPageLeaf(w.pages)
	l.show(0, w.desk.Leaf(0), true, true)
	require.False(t, l.tick.on)
	require.True(t, l.veil.Visible())
	test.Tap(l.tick)
	require.Equal(t, count, w.desk.Printing())
}

// The small pictures are painted aside, one at a time, each page once; until a picture is
// there its page is blank.
func TestSmallPicturesArePaintedAside(t *testing.T) {
	w := opened(t)
	w.desk.Go(desk.Paper)
	var b bench
	w.desk.Aside = b.aside
	one, other := newPageLeaf(w.pages), newPageLeaf(w.pages)
	one.show(5, w.desk.Leaf(5), false, false)
	other.show(6, w.desk.Leaf(6), false, false)
	w.pages.thumbs.forget()
	require.IsType(t, &image.Uniform{}, one.paint(60, 85))
	require.IsType(t, &image.Uniform{}, other.paint(60, 85))
	require.Len(t, b.waiting, 1)
	b.all()
	painted := one.paint(60, 85)
	require.Equal(t, image.Rect(0, 0, 60, 85), painted.Bounds())
	require.Equal(t, painted, one.paint(60, 85))
	require.Empty(t, b.waiting)
	inks := map[color.Color]bool{}
	for y := range 85 {
		for x := range 60 {
			inks[painted.At(x, y)] = true
		}
	}
	require.Greater(t, len(inks), 20)
	other.paint(60, 85)
	b.all()
	require.NotEqual(t, painted, other.paint(60, 85))
}

// Sheets are chosen by boxes, which have the keyboard and stand only where sheets are
// chosen.
func TestSheetsAreChosen(t *testing.T) {
	w := opened(t)
	w.desk.Go(desk.Paper)
	require.True(t, w.column.sheets.Hidden)
	count, _ := w.desk.Pages()
	w.column.row(desk.WhatField).choice.SetSelectedIndex(2)
	require.False(t, w.column.sheets.Hidden)
	ticks := w.column.sheets.ticks
	require.Len(t, ticks, 3+len(w.desk.Result().Parts()))
	w.Canvas().Focus(ticks[1])
	ticks[1].TypedRune(' ')
	fewer, _ := w.desk.Pages()
	require.Less(t, fewer, count)
	require.Same(t, ticks[1], w.column.sheets.ticks[1], "the boxes stay")
	w.desk.TickParts(false)
	require.False(t, ticks[5].Checked)
	require.Equal(t, 2, w.desk.Printing(), "cover and cautions")
	w.column.row(desk.WhatField).choice.SetSelectedIndex(0)
	require.True(t, w.column.sheets.Hidden)
}

// Sheets go to the printer that is chosen, and what the system answers is said.
func TestPrintingAsksForThePrinter(t *testing.T) {
	w := opened(t)
	folder := system(t, map[string]string{"lp": `echo "$@" > "$HERE/said"; echo request id is Shed-3`, "lpstat": "echo Office; echo Shed"})
	w.menu.item("print", w.askPrint).Action()
	queue := queueOf(t, w)
	require.Equal(t, []string{"the system's usual printer", "Office", "Shed"}, queue.Options)
	queue.SetSelected("Shed")
	test.Tap(button(t, w, "Print"))
	require.Contains(t, lineOf(w), "Shed-3")
	said, err := os.ReadFile(filepath.Join(folder, "said"))
	require.NoError(t, err)
	require.Contains(t, string(said), "-d Shed")
	test.Tap(button(t, w, "Close"))
	w.askPrint()
	queueOf(t, w).TypedKey(typed(fyne.KeyEscape))
	require.Nil(t, w.Canvas().Overlays().Top())
	require.Nil(t, w.question)
}

// queueOf returns the box of printers in the question on top.
func queueOf(t *testing.T, w *Window) *answerChoice {
	for _, o := range test.LaidOutObjects(w.Canvas().Overlays().Top()) {
		if c, ok := o.(*answerChoice); ok {
			return c
		}
	}
	require.Fail(t, "no printer is asked for")
	return nil
}

// lineOf returns all that is said in the question on top.
func lineOf(w *Window) string {
	said := ""
	for _, o := range test.LaidOutObjects(w.Canvas().Overlays().Top()) {
		if t, ok := o.(interface{ MinSize() fyne.Size }); ok {
			said += textOf(t) + " "
		}
	}
	return said
}

func TestWhereNothingPrintsTheTroubleIsSaid(t *testing.T) {
	w := opened(t)
	system(t, nil)
	w.askPrint()
	require.Contains(t, lineOf(w), "100 %")
	test.Tap(button(t, w, "Close"))
	require.Nil(t, w.Canvas().Overlays().Top())
}

// A long job shows how far it is, and Escape stops it: the old file stays, and nothing is
// said but by the window going.
func TestAnExportIsStopped(t *testing.T) {
	w := opened(t)
	folder := t.TempDir()
	name := filepath.Join(folder, "packet.pdf")
	require.NoError(t, os.WriteFile(name, []byte("the old one"), 0o600))
	var b bench
	w.desk.Aside = b.aside
	w.askPDF()
	saveAs(t, w, folder, "packet")
	test.Tap(button(t, w, "Write over it"))
	stop := button(t, w, "Stop")
	for _, stray := range []fyne.KeyName{fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace} {
		stop.TypedKey(typed(stray))
		w.turn(typed(stray))
		require.False(t, stop.Disabled(), "%s stops nothing", stray)
	}
	stop.TypedKey(typed(fyne.KeyEscape))
	require.True(t, stop.Disabled())
	b.all()
	require.Nil(t, w.Canvas().Overlays().Top())
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, "the old one", string(data))
}

func TestProgressIsShown(t *testing.T) {
	w := opened(t)
	w.work("ask.pdf.title", func(v *working) (stop func()) {
		v.told(14, 56)
		require.InDelta(t, 0.25, v.bar.Value, 1e-9)
		require.Equal(t, "Sheet 14 of 56", v.line.text)
		v.told(0, 0)
		require.Contains(t, v.line.text, "system")
		require.True(t, v.over(nil))
		return func() {}
	})
	require.Nil(t, w.question)
}

// A printer is measured: its test sheet first, then its bars. What will not do is said at
// its box, and kept is only what will.
func TestAPrinterIsMeasuredFromTheWindow(t *testing.T) {
	w := opened(t)
	folder := system(t, nil)
	w.desk.Go(desk.Paper)
	w.askMeasure()
	asked := boxes(w)
	require.Len(t, asked, 3)
	for _, o := range test.LaidOutObjects(w.Canvas().Overlays().Top()) {
		if b, ok := o.(interface {
			fyne.Tappable
			fyne.CanvasObject
		}); ok && textOf(b) == "Save as PDF…" {
			test.Tap(b)
			break
		}
	}
	saveAs(t, w, folder, "test")
	require.FileExists(t, filepath.Join(folder, "test.pdf"))
	test.Tap(button(t, w, "Close"))
	test.Type(asked[0], "Shed")
	test.Type(asked[1], "94 mm")
	test.Type(asked[2], "99.6")
	require.Contains(t, lineOf(w), "97.000 mm to 103.000 mm")
	test.Tap(button(t, w, "Keep"))
	test.Tap(button(t, w, "Close"))
	asked[1].SetText("100.3")
	require.Contains(t, lineOf(w), "+0.30 % across and −0.40 % along")
	asked[2].TypedKey(typed(fyne.KeyReturn))
	require.Nil(t, w.Canvas().Overlays().Top())
	list, err := printer.Usual().List()
	require.NoError(t, err)
	require.Len(t, list, 1)
	require.Equal(t, "Shed", w.column.row(desk.PrinterField).choice.Selected)
	w.askMeasure()
	require.Contains(t, lineOf(w), "shaped by the profile of Shed")
}
