package window

import (
	"tipline/app/window/desk"
)

// photograph is the picture of the bit that lies under its form, on the cutter's
// step.
type photograph struct {
	section
	window *Window
	rows   []*row
	choose *pushButton
}

func newPhotograph(w *Window) *photograph {
	p := &photograph{section: newSection(w.desk.Words().Say("photo.title")), window: w}
	p.choose = newPushButton(w.desk.Words().Say("photo.choose"), w.askPhotograph)
	return p
}

func (p *photograph) show() {
	d := p.window.desk
	if p.Hidden = !d.HasBit(); p.Hidden {
		return
	}
	fields := d.PhotographFields()
	if len(fields) != len(p.rows) || len(p.body.Objects) == 0 {
		p.rebuild(fields)
	}
	for i, f := range fields {
		p.rows[i].show(f)
	}
}

// shape tells when the section has become taller or shorter.
func (p *photograph) shape() float32 {
	if p.Hidden {
		return 0
	}
	return 1 + together(p.rows)
}

func (p *photograph) rebuild(fields []desk.Field) {
	d := p.window.desk
	p.rows, p.body.Objects = nil, nil
	if len(fields) == 0 {
		hint := newFlow(smallSize, faint)
		hint.set(d.Words().Say("photo.line"), faint)
		hint.lay(columnWidth)
		p.body.Add(hint.Container)
		p.body.Add(buttons(p.choose))
		return
	}
	for _, f := range fields {
		r := newRow(p.window, f)
		p.rows = append(p.rows, r)
		p.body.Add(r.Container)
	}
	p.body.Add(buttons(
		newPushButton(d.Words().Say("photo.pick"), p.pick), p.choose,
		newPushButton(d.Words().Say("photo.drop"), d.DropPhotograph)))
}

// pick begins picking points, with the keyboard on the drawing so that Escape ends
// it.
func (p *photograph) pick() {
	if p.window.desk.StartPicking() {
		p.window.Canvas().Focus(p.window.board)
	}
}

// askPhotograph asks for a picture of the bit.
func (w *Window) askPhotograph() {
	w.askFile([]string{".png", ".jpg", ".jpeg", ".PNG", ".JPG", ".JPEG"}, w.desk.UsePhotograph)
}
