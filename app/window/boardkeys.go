package window

import "fyne.io/fyne/v2"

// stride is how far an arrow key moves the drawing.
const stride = 40

func (b *board) FocusGained() { b.focus = true; b.legend.frame(true) }
func (b *board) FocusLost()   { b.focus = false; b.legend.frame(false) }

// keys returns those of the drawing.
func (b *board) keys() keyTable {
	pan := func(dx, dy float64) func() { return func() { b.set(b.view.Pan(dx, dy)) } }
	fit := named("keys.fit", b.fitPart, fyne.KeyHome)
	fit.when = func() bool { return !b.painter.Printed }
	return keyTable{
		named("keys.pan", pan(stride, 0), fyne.KeyLeft),
		named("keys.pan", pan(-stride, 0), fyne.KeyRight),
		named("keys.pan", pan(0, stride), fyne.KeyUp),
		named("keys.pan", pan(0, -stride), fyne.KeyDown),
		signed("keys.closer", func() { b.zoom(closer, b.middle()) }, "+="),
		signed("keys.farther", func() { b.zoom(1/closer, b.middle()) }, "-_"),
		fit, signed("keys.fit", b.fitPart, "0"),
		signed("keys.fit-lit", b.fitLit, "9"),
		signed("keys.rule", func() { b.measure() }, "mM"),
	}
}

// ruleKeys returns those of the drawing while the rule is taken up, which go first.
func (b *board) ruleKeys() keyTable {
	move := func(dx, dy float64) func() { return func() { b.ruler.move(b.view, dx, dy) } }
	return keyTable{
		named("keys.hair", move(-hairStep, 0), fyne.KeyLeft),
		named("keys.hair", move(hairStep, 0), fyne.KeyRight),
		named("keys.hair", move(0, -hairStep), fyne.KeyUp),
		named("keys.hair", move(0, hairStep), fyne.KeyDown),
		named("keys.lay", func() { b.ruler.press(b.view) }, fyne.KeyReturn, fyne.KeyEnter, fyne.KeySpace),
	}
}

func (b *board) TypedRune(r rune) { b.keys().sign(r) }

func (b *board) TypedKey(e *fyne.KeyEvent) {
	if b.measuring() && b.ruleKeys().press(e.Name) {
		return
	}
	if !b.keys().press(e.Name) {
		b.others(e)
	}
}
