package window

import (
	"slices"

	"fyne.io/fyne/v2"
	box "fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/layout"

	"tipline/app/window/desk"
	"tipline/geometry"
)

// additions is the list of the maker's own holes, circles, lines and notes on the
// step of crossing.
type additions struct {
	section
	window *Window
	cards  []*card
	list   *fyne.Container
	add    *choice
	kinds  []desk.Choice
}

// card is one addition: what it is, and the boxes of its fields.
type card struct {
	*fyne.Container
	kind  *choice
	cells []*cell
	hint  *flow
	of    desk.Added
	fill  bool
}

// cell is one small box with its name over it.
type cell struct {
	*fyne.Container
	box  *entry
	path geometry.Quantity
}

func newAdditions(w *Window) *additions {
	say := w.desk.Words().Say
	a := &additions{section: newSection(say("additions.title")), window: w, kinds: w.desk.AdditionKinds()}
	a.list = box.New(layout.NewCustomPaddedVBoxLayout(6))
	hint := newFlow(smallSize, faint)
	hint.set(say("additions.line"), faint)
	hint.lay(columnWidth)
	var labels []string
	for _, c := range a.kinds {
		labels = append(labels, c.Label)
	}
	a.add = newChoice(func(string) {
		if i := a.add.SelectedIndex(); i >= 0 {
			a.add.ClearSelected()
			w.desk.AddAddition(a.kinds[i].Value)
		}
	})
	a.add.set(labels, "", say("additions.add"))
	a.add.came = func() { reveal(a.add) }
	a.body.Objects = []fyne.CanvasObject{hint.Container, a.list, bordered(a.add)}
	return a
}

func (a *additions) show() {
	list, ok := a.window.desk.Additions()
	if a.Hidden = !ok; !ok {
		return
	}
	if !a.stands(list) {
		a.rebuild(list)
	}
	for i, of := range list {
		a.cards[i].show(of)
		why, grave := a.window.desk.AdditionTrouble(i)
		a.cards[i].hint.against(why, grave)
	}
}

// shape tells when the section has become taller or shorter.
func (a *additions) shape() float32 {
	if a.Hidden {
		return 0
	}
	high := float32(1)
	for _, c := range a.cards {
		high += float32(1+len(c.cells))*cellHigh + c.hint.tall(cardWidth)
	}
	return high
}

// stands reports whether the cards have the boxes of these additions.
func (a *additions) stands(list []desk.Added) bool {
	return slices.EqualFunc(a.cards, list, func(c *card, of desk.Added) bool {
		return slices.EqualFunc(c.cells, of.Fields, func(b *cell, f desk.Field) bool { return b.path == f.Path })
	})
}

func (a *additions) rebuild(list []desk.Added) {
	a.cards, a.list.Objects = nil, nil
	for i, of := range list {
		a.cards = append(a.cards, a.newCard(i, of))
		a.list.Add(a.cards[i].Container)
	}
}

func (a *additions) newCard(i int, of desk.Added) *card {
	d := a.window.desk
	c := &card{hint: newFlow(smallSize, red)}
	c.hint.lay(cardWidth)
	c.kind = newChoice(func(label string) {
		if at := slices.IndexFunc(c.of.Kind.Choices, func(k desk.Choice) bool { return k.Label == label }); at >= 0 && !c.fill {
			d.Type(d.Part(), c.of.Kind.Path, c.of.Kind.Choices[at].Value)
		}
	})
	c.kind.came = func() {
		d.Light(c.of.Kind.Path)
		reveal(c.kind)
	}
	grid := &fyne.Container{Layout: cellLayout{}}
	for _, f := range of.Fields {
		c.cells = append(c.cells, a.newCell(c, f))
		grid.Add(c.cells[len(c.cells)-1].Container)
	}
	head := box.NewBorder(nil, nil, nil, quiet("×", func() { d.DropAddition(i) }), bordered(c.kind))
	lines := box.New(layout.NewCustomPaddedVBoxLayout(5), head, grid, c.hint.Container)
	c.Container = box.NewStack(sheetOf(well), box.New(layout.NewCustomPaddedLayout(7, 9, 9, 9), lines))
	return c
}

func (a *additions) newCell(c *card, f desk.Field) *cell {
	b := &cell{box: newEntry(), path: f.Path}
	a.window.wire(b.box, func() geometry.Quantity { return b.path })
	b.box.SetPlaceHolder(f.Empty)
	b.box.OnChanged = func(text string) {
		if !c.fill {
			a.window.desk.Type(a.window.desk.Part(), b.path, text)
		}
	}
	b.Container = &fyne.Container{Layout: namedLayout{}, Objects: []fyne.CanvasObject{written(f.Label, smallSize, faint, false), b.box}}
	return b
}

func (c *card) show(of desk.Added) {
	c.of, c.fill = of, true
	defer func() { c.fill = false }()
	options, selected := labelsOf(of.Kind)
	c.kind.set(options, selected, " ")
	for i, f := range of.Fields {
		if c.cells[i].box.Text != f.Text {
			c.cells[i].box.SetText(f.Text)
		}
	}
}

// box returns where a field of an addition is typed or chosen, nil for any other.
func (a *additions) box(path geometry.Quantity) focusable {
	if a.Hidden {
		return nil
	}
	for _, c := range a.cards {
		for _, b := range c.cells {
			if b.path == path {
				return b.box
			}
		}
		if c.of.Kind.Path == path || c.of.Kind.Path == path+".kind" {
			return c.kind
		}
	}
	return nil
}
