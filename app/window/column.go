package window

import (
	"slices"
	"strings"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/window/desk"
	"tipline/geometry"
)

// column is the present step's fields, with what the step comes to over them and
// what other choices would come to below.
type column struct {
	fyne.CanvasObject
	desk    *desk.Desk
	window  *Window
	head    *canvas.Text
	summary *flow
	rows    []*row
	body    *fyne.Container
	table   *table
	bits    *bits
	photo   *photograph
	arbors  *arbors
	layers  *layers
	own     *additions
	suggest *pushButton
	history *history
	stock   *stock
	fields  *fyne.Container // all but the history and the stock
	scroll  *box.Scroll
	sheets  *sheets
	print   *fyne.Container // on paper only
	step    desk.Step
	part    string
	shaped  []float32 // as it was last set
}

func newColumn(w *Window) *column {
	d := w.desk
	c := &column{desk: d, window: w, head: written("", headSize, ink, true), summary: newFlow(readSize, faint), table: newTable()}
	c.bits, c.photo, c.arbors = newBits(w), newPhotograph(w), newArbors(w)
	c.layers, c.own = newLayers(w), newAdditions(w)
	c.suggest = newPushButton(d.Words().Say("window.suggest"), func() { d.Suggest() })
	c.body = box.New(layout.NewCustomPaddedVBoxLayout(rowGap))
	c.scroll = box.NewVScroll(box.New(layout.NewCustomPaddedLayout(0, 14, 20, 20), c.body))
	top := box.New(layout.NewCustomPaddedLayout(12, 8, 20, 20),
		box.New(layout.NewCustomPaddedVBoxLayout(2), &fyne.Container{Layout: headLayout{}, Objects: []fyne.CanvasObject{c.head, c.suggest}}, c.summary.Container))
	c.sheets = newSheets(w)
	c.print = printButtons(w)
	c.fields = box.NewStack(sheetOf(panel), box.NewBorder(top, c.print, nil, nil, c.scroll), newRoller(c.scroll))
	c.history, c.stock = newHistory(w), newStock(w)
	c.CanvasObject = box.NewStack(c.fields, c.history.CanvasObject, c.stock.CanvasObject)
	return c
}

func (c *column) show() {
	c.history.show()
	c.stock.show()
	say(c.head, c.desk.Words().Say("step."+string(c.desk.Step())))
	c.summary.lay(columnWidth)
	c.summary.set(c.desk.Summary(), faint)
	fields := c.desk.Fields()
	if !c.stands(fields) {
		c.rebuild(fields)
	}
	for i, f := range fields {
		c.rows[i].show(f)
	}
	c.table.show(c.desk.Tables())
	c.bits.show()
	c.photo.show()
	c.arbors.show()
	c.layers.show()
	c.own.show()
	c.sheets.show()
	c.suggest.Hidden = !c.desk.CanSuggest()
	c.print.Hidden = c.desk.Step() != desk.Paper
	elsewhere := c.step != c.desk.Step() || c.part != c.desk.Part()
	if c.step != c.desk.Step() || c.part != c.desk.Part() {
		c.step, c.part = c.desk.Step(), c.desk.Part()
		c.scroll.ScrollToTop()
	}
	if shape := c.shape(); elsewhere || !slices.Equal(shape, c.shaped) {
		c.shaped = shape
		c.CanvasObject.Refresh()
	}
}

// shape tells when something in the column has become taller or shorter, so that
// what stands below must move. To set the whole column anew is by far the dearest
// part of showing it.
func (c *column) shape() []float32 {
	shape := []float32{
		c.summary.tall(columnWidth), c.table.high, float32(len(c.body.Objects)),
		c.layers.shape(), c.own.shape(), c.bits.shape(), c.photo.shape(), c.arbors.shape(), c.sheets.shape(),
	}
	for _, r := range c.rows {
		shape = append(shape, r.tall(), r.hintWidth())
	}
	return shape
}

func (c *column) stands(fields []desk.Field) bool {
	if len(fields) != len(c.rows) || len(c.body.Objects) == 0 {
		return false
	}
	for i, f := range fields {
		if !c.rows[i].fits(f) {
			return false
		}
	}
	return true
}

// rebuild makes the rows anew, but keeps those that still fit, so that the box
// that is being typed in stays the same.
func (c *column) rebuild(fields []desk.Field) {
	old := c.rows
	c.rows, c.body.Objects = nil, []fyne.CanvasObject{c.layers.Container}
	for _, f := range fields {
		c.rows = append(c.rows, c.rowFor(f, old))
		c.body.Add(c.rows[len(c.rows)-1].Container)
		if f.Path == desk.WhatField {
			c.body.Add(c.sheets.Container)
		}
	}
	for _, o := range []fyne.CanvasObject{c.table.Container, c.own.Container, c.bits.Container, c.photo.Container, c.arbors.Container} {
		c.body.Add(o)
	}
}

func (c *column) rowFor(f desk.Field, old []*row) *row {
	for _, r := range old {
		if r.fits(f) {
			return r
		}
	}
	return newRow(c.window, f)
}

// row returns the row of a field, or the first of a whole such as the teeth; nil
// when the step has none.
func (c *column) row(field geometry.Quantity) *row {
	all := slices.Concat(c.rows, c.photo.rows)
	for _, r := range all {
		if r.path() == field {
			return r
		}
	}
	for _, r := range all {
		if strings.HasPrefix(string(r.path()), string(field)+".") {
			return r
		}
	}
	return nil
}

// place returns where a field is typed or chosen, nil when the step has no such
// field. The lists of steps and of stock give way to it.
func (c *column) place(field geometry.Quantity) fyne.Focusable {
	c.history.close()
	c.stock.close()
	if e := c.bits.box(field); e != nil {
		reveal(e)
		return e
	}
	for _, e := range []focusable{c.own.box(field), c.layers.box(field)} {
		if e != nil {
			reveal(e)
			return e
		}
	}
	if r := c.row(field); r != nil {
		reveal(r.Container)
		return r.box()
	}
	return nil
}

// placeOf returns the box of a remark's field, that of an arbor's parts among them.
func (c *column) placeOf(r desk.Remark) fyne.Focusable {
	if b := c.arbors.box(r.Part); b != nil {
		reveal(b)
		return b
	}
	return c.place(r.Field)
}

// headLayout sets the step's name on the left and what can be done with it on the
// right.
type headLayout struct{}

func (headLayout) MinSize(o []fyne.CanvasObject) fyne.Size {
	return fyne.NewSize(columnWidth, o[0].MinSize().Height)
}

func (headLayout) Layout(o []fyne.CanvasObject, s fyne.Size) {
	name, do := o[0].MinSize(), o[1].MinSize()
	put(o[0], 0, 0, name.Width, name.Height)
	put(o[1], s.Width-do.Width, -4, do.Width, min(do.Height, name.Height+4))
}
