package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	"fyne.io/fyne/v2/widget"

	"tipline/app/window/desk"
	"tipline/render"
)

// corner is the drawing's upper right corner: what takes up the rule, and the list of
// layers.
type corner struct {
	*fyne.Container
	desk         *desk.Desk
	rule, layers *pushButton
	ground       *canvas.Rectangle
	veils        []*veil
	open         bool // the list is
	escape       func()
}

// veil is a layer's row: it is ticked while the layer is shown.
type veil struct {
	widget.Check
	ring   ring
	layer  render.Layer
	filled bool // while the row itself sets its tick
	escape func()
}

// buttonGap is between the buttons.
const buttonGap = 6

// cornerGap is round the buttons and under them.
const cornerGap = 10

// newCorner returns the corner; measure takes up the rule or lays it down, and escape
// is told of the key.
func newCorner(d *desk.Desk, measure, escape func()) *corner {
	c := &corner{desk: d, ground: sheetOf(panel), escape: escape}
	c.rule = newPushButton(d.Words().Say("board.rule"), measure)
	c.layers = newPushButton(d.Words().Say("board.layers"), func() { c.unfold(!c.open) })
	c.Container = &fyne.Container{Layout: cornerPlan{c}}
	return c
}

// wide returns how far the buttons reach into the drawing, from its right side.
func (c *corner) wide() float32 {
	wide := float32(cornerGap)
	for _, b := range []*pushButton{c.rule, c.layers} {
		wide += b.MinSize().Width + buttonGap
	}
	return wide
}

// unfold opens the list of layers or closes it.
func (c *corner) unfold(open bool) {
	c.open = open
	c.show()
}

// show brings the corner in line with the desk.
func (c *corner) show() {
	importance := widget.MediumImportance
	if c.desk.Measuring() {
		importance = widget.HighImportance
	}
	if c.rule.Importance != importance {
		c.rule.Importance = importance
		c.rule.Refresh()
	}
	veils := c.desk.Veils()
	c.open = c.open && len(veils) > 0
	c.Objects = nil
	if c.desk.Prompt() == "" && c.desk.Part() != "" {
		c.Objects = append(c.Objects, c.rule)
	}
	if len(veils) > 0 {
		c.Objects = append(c.Objects, c.layers)
	}
	if c.open {
		c.list(veils)
	}
	c.Layout.Layout(nil, c.Size())
	c.Refresh()
}

// list puts the layers' rows under the buttons.
func (c *corner) list(veils []desk.Veil) {
	c.Objects = append(c.Objects, c.ground)
	for i, of := range veils {
		if i == len(c.veils) {
			c.veils = append(c.veils, c.newVeil())
		}
		c.veils[i].show(of)
		c.Objects = append(c.Objects, c.veils[i])
	}
	c.veils = c.veils[:len(veils)]
}

func (c *corner) newVeil() *veil {
	v := &veil{escape: c.escape}
	v.OnChanged = func(on bool) {
		if !v.filled {
			c.desk.HideLayer(v.layer, !on)
		}
	}
	v.ExtendBaseWidget(v)
	return v
}

func (v *veil) show(of desk.Veil) {
	v.filled, v.layer = true, of.Layer
	if v.Text != of.Name {
		v.SetText(of.Name)
	}
	v.SetChecked(!of.Hidden)
	v.filled = false
}

// keys returns those of a layer's row.
func (v *veil) keys() keyTable {
	return keyTable{
		signed("keys.veil", func() { v.SetChecked(!v.Checked) }, " "),
		named("keys.put-away", func() { v.escape() }, fyne.KeyEscape),
	}
}

func (v *veil) TypedRune(r rune) { v.keys().sign(r) }

func (v *veil) TypedKey(e *fyne.KeyEvent) {
	if !v.keys().press(e.Name) {
		pass(v, e)
	}
}

type cornerPlan struct{ *corner }

func (cornerPlan) MinSize([]fyne.CanvasObject) fyne.Size { return fyne.NewSize(10, 10) }

func (l cornerPlan) Layout(_ []fyne.CanvasObject, s fyne.Size) {
	x := s.Width - cornerGap
	for _, b := range []*pushButton{l.rule, l.layers} {
		wide := b.MinSize().Width
		put(b, x-wide, cornerGap, wide, cornerHigh)
		x -= wide + buttonGap
	}
	if !l.open {
		return
	}
	wide := float32(veilWide)
	for _, v := range l.veils {
		wide = max(wide, v.MinSize().Width+8)
	}
	x, y := s.Width-cornerGap-wide, float32(cornerGap+cornerHigh+6)
	put(l.ground, x, y, wide, float32(len(l.veils))*veilHigh+8)
	for i, v := range l.veils {
		put(v, x+4, y+4+float32(i)*veilHigh, wide-8, veilHigh)
	}
}

func (v *veil) CreateRenderer() fyne.WidgetRenderer { return v.ring.round(v.Check.CreateRenderer()) }

func (v *veil) FocusGained() {
	v.Check.FocusGained()
	v.ring.show(true)
	reveal(v)
}

func (v *veil) FocusLost() {
	v.Check.FocusLost()
	v.ring.show(false)
}
