package template

import (
	"tipline/geometry"
	"tipline/render"
)

// Board is a drawing board: what it draws goes on one drawing, tagged with one
// part. The zero Board cannot be drawn on; NewBoard makes one.
type Board struct {
	Drawing *render.Drawing
	Part    string
	Style   Style
}

// NewBoard returns an empty board at full scale.
func NewBoard(part string, s Style) *Board {
	return &Board{&render.Drawing{Scale: 1}, part, s}
}

// Stroke is how a line is drawn and where it belongs.
type Stroke struct {
	Layer    render.Layer
	Quantity geometry.Quantity
	Pen      render.Pen
	Ink      render.Ink
	Fill     render.Fill
}

// Closed draws outlines, filled together.
func (b *Board) Closed(s Stroke, outlines ...geometry.Outline) {
	if len(outlines) == 0 {
		return
	}
	it := b.item(s)
	it.Outlines = outlines
	b.Drawing.Items = append(b.Drawing.Items, it)
}

// Open draws chains.
func (b *Board) Open(s Stroke, chains ...geometry.Chain) {
	if len(chains) == 0 {
		return
	}
	it := b.item(s)
	it.Chains = chains
	b.Drawing.Items = append(b.Drawing.Items, it)
}

// Line draws straight lines as one item.
func (b *Board) Line(s Stroke, lines ...geometry.Line) {
	chains := make([]geometry.Chain, 0, len(lines))
	for _, l := range lines {
		if l.From != l.To {
			chains = append(chains, geometry.ChainOf(l.Segment()))
		}
	}
	b.Open(s, chains...)
}

// Arc draws an arc.
func (b *Board) Arc(s Stroke, a geometry.Arc) { b.Open(s, geometry.ChainOf(a.Segment())) }

// Circle draws a circle; one without a radius is left out.
func (b *Board) Circle(s Stroke, centre geometry.Point, radius float64) {
	if o, err := geometry.Circle(centre, radius, s.Quantity); err == nil {
		b.Closed(s, o)
	}
}

// Rectangle draws a rectangle between two opposite corners; one without an area
// is left out.
func (b *Board) Rectangle(s Stroke, p, q geometry.Point) {
	if p.X == q.X || p.Y == q.Y {
		return
	}
	o, err := geometry.NewOutline([]geometry.Vertex{
		{Point: p}, {Point: geometry.Point{X: q.X, Y: p.Y}}, {Point: q}, {Point: geometry.Point{X: p.X, Y: q.Y}},
	})
	if err == nil {
		b.Closed(s, o)
	}
}

// Add puts ready-made items on the board and tags them with the part and, where
// they have none, the quantity.
func (b *Board) Add(q geometry.Quantity, items ...render.Item) {
	for _, it := range items {
		it.Part = b.Part
		if it.Quantity == "" {
			it.Quantity = q
		}
		b.Drawing.Items = append(b.Drawing.Items, it)
	}
}

// Write puts a text on the board; the stroke says its layer, quantity and ink.
func (b *Board) Write(s Stroke, t render.Text) {
	if t.String == "" {
		return
	}
	it := b.item(Stroke{Layer: s.Layer, Quantity: s.Quantity, Ink: s.Ink})
	it.Text = &t
	b.Drawing.Items = append(b.Drawing.Items, it)
}

// Say returns the catalogue's text for key.
func (b *Board) Say(key string, args ...any) string { return b.Style.Words.Say(key, args...) }

func (b *Board) item(s Stroke) render.Item {
	return render.Item{Layer: s.Layer, Part: b.Part, Quantity: s.Quantity, Pen: s.Pen, Ink: s.Ink, Fill: s.Fill}
}
