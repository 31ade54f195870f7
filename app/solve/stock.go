package solve

import (
	"cmp"
	"slices"
	"strings"

	"tipline/geometry/crossing"
	"tipline/geometry/mount"
)

// StockKind says what sort of thing is got in.
type StockKind string

// The kinds of stock, in the order they are listed.
const (
	Sheet   StockKind = "sheet"
	Rod     StockKind = "rod"
	Wire    StockKind = "wire"
	ToolBit StockKind = "bit"
	Drill   StockKind = "drill"
	Tap     StockKind = "tap"
	Screw   StockKind = "screw"
	Blade   StockKind = "blade"
)

// StockKinds lists the kinds in that order.
func StockKinds() []StockKind {
	return []StockKind{Sheet, Rod, Wire, ToolBit, Drill, Tap, Screw, Blade}
}

// Item is one thing that one part of a job needs. Lengths in mm, each 0 where it is
// not known or does not apply.
type Item struct {
	Kind      StockKind
	Part      Part
	Use       string // key of the catalogue: what it is for
	Name      string // of the material, drill, thread or blade; empty for what goes by its size
	Count     int
	Diameter  float64
	Width     float64
	Thickness float64
	Length    float64 // at least; of a screw the metal it goes through, of a blade the cut it makes
	Usual     bool    // nobody typed it and no sourced table gives it: it is what is usual
}

// Stock lists what a job needs, by kind, material and size. A part that could not
// be built needs nothing yet.
func Stock(r *Result) []Item {
	var all []Item
	for _, w := range r.Wheels {
		all = append(all, w.stock()...)
	}
	for _, p := range r.Pinions {
		all = append(all, p.stock()...)
	}
	for _, s := range r.Stacks {
		if s.Stacked != nil {
			all = append(all, mountStock(s, s.Collet, s.Stacked.Mounting)...)
		}
	}
	order := StockKinds()
	slices.SortStableFunc(all, func(a, b Item) int {
		return cmp.Or(
			cmp.Compare(slices.Index(order, a.Kind), slices.Index(order, b.Kind)),
			strings.Compare(a.sortName(), b.sortName()),
			cmp.Compare(a.Thickness, b.Thickness), cmp.Compare(a.Width, b.Width), cmp.Compare(a.Diameter, b.Diameter),
		)
	})
	return all
}

// sortName is the name an item is sorted by; drills go by their size alone.
func (i Item) sortName() string {
	if i.Kind == Drill {
		return ""
	}
	return i.Name
}

// stock is what a wheel needs.
func (w *Wheel) stock() []Item {
	if w.Teeth == nil {
		return nil
	}
	all := []Item{{
		Kind: Sheet, Part: w, Use: "stock.use.wheel", Name: w.Material.Name, Count: 1,
		Diameter: 2*w.Teeth.TipRadius + w.Oversize, Thickness: w.Thickness, Usual: w.Part.Material.Empty(),
	}}
	all = append(all, boreStock(w, w.Bore)...)
	all = append(all, w.Tooling.stock(w, w.Part.Cutter != nil && !w.Part.Cutter.StockWidth.Empty())...)
	all = append(all, w.sawStock()...)
	for _, a := range w.spec.Additions {
		if a.Kind == crossing.HoleKind && a.Diameter > 0 {
			all = append(all, Item{Kind: Drill, Part: w, Use: "stock.use.addition", Count: 1, Diameter: a.Diameter})
		}
	}
	if w.Mounting != nil && w.Stack == "" {
		all = append(all, mountStock(w, w.Collet, *w.Mounting)...)
	}
	return all
}

// sawStock is what the windows are sawn with.
func (w *Wheel) sawStock() []Item {
	l := w.Crossing
	if l == nil {
		return nil
	}
	var all []Item
	cut := 0.0
	for _, window := range l.Windows {
		cut += window.Cut
	}
	if w.Blade.Name != "" {
		all = append(all, Item{
			Kind: Blade, Part: w, Use: "stock.use.windows", Name: w.Blade.Name, Count: 1,
			Thickness: w.Blade.Thickness, Width: w.Blade.Depth, Length: cut, Usual: true,
		})
	}
	if hole := l.Spec.StartHole; hole > 0 {
		start := Item{Kind: Drill, Part: w, Use: "stock.use.start", Count: 1, Diameter: hole}
		if w.Part.Crossing.StartHole.Empty() {
			start.Name, start.Usual = w.Blade.StartDrill, true
		}
		all = append(all, start)
	}
	return all
}

// stock is the tool bit; said tells whether its width was typed.
func (t *Tooling) stock(p Part, said bool) []Item {
	if t.Cut == nil {
		return nil
	}
	bit := Item{Kind: ToolBit, Part: p, Use: "stock.use.cutter", Count: 1, Width: t.Cut.Form.StockWidth, Usual: !said}
	if t.Relief != nil {
		bit.Thickness = t.Relief.Thickness
	}
	return []Item{bit}
}

// boreStock is the drill for a bore.
func boreStock(p Part, bore float64) []Item {
	if bore == 0 {
		return nil
	}
	return []Item{{Kind: Drill, Part: p, Use: "stock.use.bore", Count: 1, Diameter: bore}}
}

// stock is what a pinion needs.
func (p *Pinion) stock() []Item {
	var all []Item
	switch l := p.Lantern; {
	case l != nil:
		all = []Item{
			{Kind: Rod, Part: p, Use: "stock.use.shrouds", Count: 2, Diameter: l.Shroud},
			{Kind: Wire, Part: p, Use: "stock.use.trundles", Count: len(l.Holes), Diameter: l.TrundleDiameter, Length: p.Thickness},
			{Kind: Drill, Part: p, Use: "stock.use.trundle-holes", Name: l.Drill.Name, Count: 1, Diameter: l.Drill.MM},
		}
	case p.Leaves != nil:
		all = []Item{{
			Kind: Rod, Part: p, Use: "stock.use.leaves", Name: pinionMaterial, Count: 1,
			Diameter: 2 * p.Leaves.TipRadius, Length: p.Thickness, Usual: true,
		}}
		all = append(all, p.Tooling.stock(p, p.Part.Cutter != nil && !p.Part.Cutter.StockWidth.Empty())...)
	default:
		return nil
	}
	return append(all, boreStock(p, p.Bore)...)
}

// mountStock is the collet of a wheel or stack, its screws and what they are let in
// with. What is not known of the collet is left open.
func mountStock(p Part, c mount.Collet, m mount.Mounting) []Item {
	all := []Item{{Kind: Rod, Part: p, Use: "stock.use.collet", Count: 1, Diameter: max(c.Flange, c.Register)}}
	all = append(all, boreOf(p, c)...)
	if len(m.Places) == 0 {
		return all
	}
	t := m.Screws.Thread
	for _, d := range []struct {
		drill mount.Drill
		use   string
	}{{m.Clear, "stock.use.clearance"}, {m.Tap, "stock.use.tapping"}, {m.Starter, "stock.use.starter"}} {
		if d.drill.MM > 0 {
			all = append(all, Item{Kind: Drill, Part: p, Use: d.use, Name: d.drill.Name, Count: 1, Diameter: d.drill.MM, Usual: d.drill.Assumed})
		}
	}
	return append(all,
		Item{Kind: Tap, Part: p, Use: "stock.use.collet", Name: t.Short(), Count: 1, Diameter: t.Major},
		Item{Kind: Screw, Part: p, Use: "stock.use.screws", Name: t.Short(), Count: m.Screws.Count, Diameter: t.Major, Length: m.Depth})
}

// boreOf is the drill for a collet's own bore.
func boreOf(p Part, c mount.Collet) []Item {
	if c.Bore == 0 {
		return nil
	}
	return []Item{{Kind: Drill, Part: p, Use: "stock.use.collet-bore", Count: 1, Diameter: c.Bore}}
}
