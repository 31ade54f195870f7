// Package render holds a Drawing, all in millimetres of paper, on named layers.
// Every output, PDF, SVG, DXF and the screen, is made from the same Drawing, so
// they cannot differ.
package render

import "tipline/geometry"

// Layer names the layer an item stands on. Layers bear the same names in every
// output.
type Layer string

// The layers, in the order they are drawn.
const (
	LayerSheet       Layer = "sheet"
	LayerTeeth       Layer = "teeth"
	LayerStock       Layer = "stock"
	LayerForm        Layer = "form"
	LayerWindows     Layer = "windows"
	LayerBore        Layer = "bore"
	LayerTrundles    Layer = "trundles"
	LayerScrews      Layer = "screws"
	LayerAdditions   Layer = "additions"
	LayerSawLine     Layer = "saw-line"
	LayerStartHoles  Layer = "start-holes"
	LayerHeel        Layer = "heel"
	LayerRelief      Layer = "relief"
	LayerPitchCircle Layer = "pitch-circle"
	LayerCentreLines Layer = "centre-lines"
	LayerDimensions  Layer = "dimensions"
	LayerText        Layer = "text"
)

// LayerPhotograph lies under every other. It is on the screen only, so Layers does
// not list it.
const LayerPhotograph Layer = "photograph"

// Layers lists every layer in the order they are drawn, the lowest first.
func Layers() []Layer {
	return []Layer{
		LayerSheet, LayerStock, LayerTeeth, LayerForm, LayerWindows, LayerBore, LayerTrundles, LayerScrews,
		LayerAdditions, LayerSawLine, LayerStartHoles, LayerHeel, LayerRelief, LayerPitchCircle,
		LayerCentreLines, LayerDimensions, LayerText,
	}
}

// Pen is a line of ISO 128: its width and its dashes.
type Pen int

// The pens. Visible is the thick line, every other is half as wide or less.
const (
	NoPen   Pen = iota
	Visible     // continuous, thick: what is cut
	Thin        // continuous, thin: dimensions, construction
	Hidden      // dashed, thin: saw line, heel
	Centre      // chain, thin: centre lines, pitch circles
	Hair        // continuous, hairline: ticks, fine marks
)

// Width returns the pen's width in millimetres (ISO 128-20 series; wide to
// narrow as 2:1).
func (p Pen) Width() float64 {
	switch p {
	case Visible:
		return 0.35
	case Thin, Hidden, Centre:
		return 0.18
	case Hair:
		return 0.13
	}
	return 0
}

// Dashes returns the lengths of marks and gaps in millimetres, mark first; nil
// for a continuous line.
func (p Pen) Dashes() []float64 {
	switch p {
	case Hidden:
		return []float64{1.5, 0.75}
	case Centre:
		return []float64{6, 1, 0.8, 1}
	}
	return nil
}

// Ink is what a line or a text is drawn in. Each output, and the window's light
// and dark themes, choose its colour.
type Ink int

// The inks.
const (
	Black Ink = iota // what is cut, and text
	Blue             // layout: construction, centre lines, dimensions
	Grey             // secondary text
	Red              // errors, on the screen only
	Green            // what was measured, beside what was wanted
)

// Fill is what the inside of an item's outlines is filled with, by the even-odd
// rule. DXF has none.
type Fill int

// The fills.
const (
	NoFill Fill = iota
	Brass
	Steel
	Waste // hatched on plain white: metal that goes
	Paper // plain white, to clear what lies beneath
	Solid // the item's own ink: arrowheads
)

// Item is one thing on a drawing: outlines and chains drawn with one pen, a text,
// or a photograph. Part and Quantity say which field of which part made it.
type Item struct {
	Layer    Layer
	Part     string
	Quantity geometry.Quantity
	Pen      Pen
	Ink      Ink
	Fill     Fill
	Outlines []geometry.Outline // closed; filled together by the even-odd rule
	Chains   []geometry.Chain   // open
	Text     *Text              // nil unless the item is a text
	Picture  *Picture           // nil unless the item is a photograph
}

// Align says which point of a text stands at its place.
type Align int

// The alignments along the line of writing.
const (
	Left Align = iota
	Middle
	Right
)

// Text is one line of lettering, standing on its baseline at At, or centred on
// At in height if Centred.
type Text struct {
	At      geometry.Point
	Height  float64 // of capitals, in millimetres (ISO 3098: 1.8, 2.5, 3.5, 5, 7, 10)
	Align   Align
	Centred bool           // At is half way up the capitals
	Turn    geometry.Angle // of the baseline, anticlockwise
	Bold    bool
	Mirror  bool // written from right to left in mirrored letters, to be read in a mirror
	String  string
}

// Drawing is a list of items in millimetres of paper. Scale is how many times
// larger than the work the paper shows it: 1 is full scale, 10 is 10:1.
type Drawing struct {
	Title       string
	Description string
	Scale       float64
	Items       []Item
}

// Page is a drawing laid out on paper: the origin is the sheet's lower left
// corner.
type Page struct {
	Width, Height float64 // millimetres
	Drawing       *Drawing
	Stretch       Stretch
}

// Stretch is how many times longer than drawn a file makes everything on a page,
// text too, across and up from the lower left corner, so that a printer that errs
// the other way prints it true. Nought, as in the zero Stretch, counts as 1. The
// sheet itself keeps its size.
type Stretch struct{ X, Y float64 }

// Factors returns the two factors, 1 where there is none.
func (s Stretch) Factors() (x, y float64) {
	x, y = s.X, s.Y
	if x == 0 {
		x = 1
	}
	if y == 0 {
		y = 1
	}
	return x, y
}

// Document is what is printed.
type Document struct {
	Title, Subject, Author, Language string
	Bookmarks                        []Bookmark
	Pages                            []Page
}

// Bookmark is an entry in the list by which a viewer leads to pages. The pages are counted
// from 1; one that the document does not have is left out by what writes it.
type Bookmark struct {
	Title string
	Page  int
	Under []Bookmark
}
