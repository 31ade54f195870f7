package sheet

import (
	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// Margins of the sheet in millimetres (ISO 5457: 20 on the filing side, 10 on the
// others), and the spaces between what stands on it.
const (
	marginFiling = 20.0
	margin       = 10.0
	space        = 5.0
	lineOfNotes  = 4.6
	lineOfFoot   = 1.5 * heightSmall // ISO 3098: base lines 1.5 h apart
	leastLegend  = 45.0              // width below which the legend goes above the bars
	leastFree    = 40.0              // width and height a drawing or a tile must have
	uprightBelow = 14.0              // from the upright bars to the upper margin
	uprightLeft  = 10.7              // from the sheet's left edge to the upright inch bar: its lettering keeps 4 off the margin
)

// layout says where everything on one sheet stands.
type layout struct {
	paper     Paper
	inner     geometry.Box // within the margins
	right     float64      // where title block, header and legend end
	titled    float64      // width of title and line
	foot      []string     // lines of caution, below the title block
	aside     []string     // or beside the bars
	block     geometry.Point
	blockWide float64
	rule      geometry.Point // start of the inch bar
	upright   geometry.Point // start of the upright inch bar
	legend    geometry.Point // top left corner
	free      geometry.Box   // for the drawing
	key       geometry.Box   // for the key plan of tiles
}

// plan lays out a sheet's furniture and finds the area left free. Without a drawing
// the sheet has no heading.
func plan(way lying, d *render.Drawing, block TitleBlock, s template.Style) layout {
	paper, given := way.holds()
	l := layout{paper: paper, inner: geometry.Box{
		Min: geometry.Point{X: marginFiling, Y: margin},
		Max: geometry.Point{X: paper.Width - margin, Y: paper.Height - margin}.Add(given),
	}}
	l.blockWide = min(blockWidth, l.inner.Width())
	l.right = l.inner.Max.X
	if l.inner.Width()-l.blockWide < BarInches {
		l.right = l.inner.Min.X + l.blockWide
	}
	l.block = geometry.Point{X: l.right - l.blockWide, Y: l.inner.Min.Y}
	if d == nil {
		l.aside = l.besideBars(block.Notes)
	}
	if l.aside == nil {
		l.foot = template.Wrap(block.Notes.Caution, heightSmall, l.right-l.inner.Min.X, false)
		l.block.Y += lineOfFoot*float64(len(l.foot)) + 2
	}
	top := l.planFurniture(block, block.height(s.Words.Say))
	l.titled = l.right - l.inner.Min.X
	l.free = geometry.Box{
		Min: geometry.Point{X: l.inner.Min.X, Y: top + space},
		Max: geometry.Point{X: l.inner.Max.X, Y: l.inner.Max.Y},
	}
	if d != nil {
		l.free.Max.Y -= headerHeight(d, l.titled) + space
	} else {
		l.free.Min.Y -= space / 2
	}
	return l
}

// besideBars returns the lines of caution as they stand right of the bars, where there is
// no legend; nil where they do not fit there.
func (l layout) besideBars(n template.Notes) []string {
	width := l.right - l.inner.Min.X - BarInches - 1.5*space
	if len(n.Legend) > 0 || l.block.X-l.inner.Min.X >= BarInches+2*space || width < leastLegend {
		return nil
	}
	lines := template.Wrap(n.Caution, heightSmall, width, false)
	if lineOfFoot*float64(len(lines)) > ruleBelow+ruleAbove+space/2 {
		return nil
	}
	return lines
}

// keyed returns the layout with room for a key plan of at most that height under the
// scale. The name of a tile takes a line more.
func (l layout) keyed(d *render.Drawing, height float64) layout {
	l.key.Max = geometry.Point{X: l.right, Y: l.inner.Max.Y - heightTitle - keyBelow}
	l.key.Min = l.key.Max.Sub(geometry.Point{X: 2 * height, Y: height})
	l.titled -= 2*height + space
	low := min(l.inner.Max.Y-headerHeight(d, l.titled), l.key.Min.Y)
	l.free.Max.Y = low - space - 1.5*heightSmall
	return l
}

// planFurniture places bars and legend beside or above the title block and
// returns the height all of it reaches.
func (l *layout) planFurniture(block TitleBlock, blockHeight float64) float64 {
	legend := lineOfNotes * float64(len(block.Notes.Legend))
	blockTop := l.block.Y + blockHeight
	beside := l.block.X-l.inner.Min.X >= BarInches+2*space
	l.rule = geometry.Point{X: l.inner.Min.X, Y: blockTop + space + ruleBelow}
	if beside {
		l.rule.Y = l.block.Y + ruleBelow
	}
	barsTop := l.rule.Y + ruleAbove
	l.upright = geometry.Point{X: uprightLeft, Y: min(l.rule.Y, l.inner.Max.Y-BarInches-uprightBelow)}
	right := l.inner.Min.X + BarInches + 1.5*space
	if !beside && l.right-right >= leastLegend {
		l.legend = geometry.Point{X: right, Y: max(barsTop, l.rule.Y-ruleBelow+legend)}
		return l.legend.Y
	}
	l.legend = geometry.Point{X: l.inner.Min.X, Y: barsTop}
	if legend > 0 {
		l.legend.Y += space + legend
	}
	return max(blockTop, l.legend.Y)
}

// headerHeight returns how far the title and its line reach down from the top
// margin.
func headerHeight(d *render.Drawing, width float64) float64 {
	h := heightTitle
	if d.Description != "" {
		h += 2.5 + lineHeight*float64(len(template.Wrap(d.Description, heightText, width, false)))
	}
	return h
}

// lineHeight is how far apart the lines below the title stand.
const lineHeight = 1.5 * heightText

// furnish draws all that stands on the sheet beside the drawing.
func (l layout) furnish(b *template.Board, d *render.Drawing, block TitleBlock) {
	if d != nil {
		l.header(b, d)
	}
	rule(b, l.rule, geometry.Point{X: 1}, geometry.Point{Y: 1}, heightSmall)
	rule(b, l.upright, geometry.Point{Y: 1}, geometry.Point{X: -1}, heightLabel)
	l.drawCorners(b)
	l.drawLegend(b, block.Notes.Legend)
	block.draw(b, l.block, l.blockWide)
	l.caution(b)
}

// caution writes the lines of caution.
func (l layout) caution(b *template.Board) {
	at := geometry.Point{X: l.inner.Min.X, Y: l.inner.Min.Y + 0.3}
	lines := l.foot
	if l.aside != nil {
		lines, at = l.aside, l.rule.Add(geometry.Point{X: BarInches + 1.5*space, Y: -ruleBelow + 0.7})
	}
	for i, line := range lines {
		text := render.Text{At: at, Height: heightSmall, String: line}
		text.At.Y += lineOfFoot * float64(len(lines)-1-i)
		b.Write(template.Stroke{Layer: render.LayerSheet, Ink: render.Grey}, text)
	}
}

// header writes the drawing's title, its line, and its scale at the right.
func (l layout) header(b *template.Board, d *render.Drawing) {
	ink := template.Stroke{Layer: render.LayerSheet, Ink: render.Black}
	scale := render.Text{String: scaleText(d.Scale), Height: heightScale, Bold: true, Align: render.Right}
	scale.At = geometry.Point{X: l.right, Y: l.inner.Max.Y - heightTitle}
	b.Write(ink, scale)
	title := fit(d.Title, true, l.right-l.inner.Min.X-scale.Width()-2*space, heightTitle, heightText, heightSmall)
	title.At = geometry.Point{X: l.inner.Min.X, Y: l.inner.Max.Y - heightTitle}
	b.Write(ink, title)
	if d.Description == "" {
		return
	}
	y := title.At.Y - 3.2 - heightText
	for _, line := range template.Wrap(d.Description, heightText, l.titled, false) {
		b.Write(ink, render.Text{At: geometry.Point{X: l.inner.Min.X, Y: y}, Height: heightText, String: line})
		y -= lineHeight
	}
}

// drawLegend draws the samples of lines and patches with their meanings.
func (l layout) drawLegend(b *template.Board, marks []template.Mark) {
	height, width := heightSmall, l.right-l.legend.X-10.5
	for _, m := range marks {
		height = min(height, fit(m.Text, false, width, heightSmall, heightLabel).Height)
	}
	for i, m := range marks {
		y := l.legend.Y - lineOfNotes*(float64(i)+0.5)
		sample := template.Stroke{Layer: render.LayerSheet, Pen: m.Pen, Ink: m.Ink, Fill: m.Fill}
		at := geometry.Point{X: l.legend.X, Y: y}
		switch {
		case m.Round:
			b.Circle(sample, at.Add(geometry.Point{X: 4}), 1.1)
		case m.Fill != render.NoFill:
			b.Rectangle(sample, at.Add(geometry.Point{Y: -1.5}), at.Add(geometry.Point{X: 8, Y: 1.5}))
		default:
			b.Line(sample, geometry.Line{From: at, To: at.Add(geometry.Point{X: 8})})
		}
		text := fit(m.Text, false, width, height)
		text.At, text.Centred = at.Add(geometry.Point{X: 10.5}), true
		b.Write(template.Stroke{Layer: render.LayerSheet, Ink: m.Ink}, text)
	}
}

// stand returns how far a drawing with those bounds is moved to stand on the free
// area: in its middle, or, without a scale, as cards are, at its top left.
func (l layout) stand(scale float64, bounds geometry.Box) geometry.Point {
	if scale > 0 {
		return l.free.Centre().Sub(bounds.Centre())
	}
	down := min(space, (l.free.Height()-bounds.Height())/2)
	return geometry.Point{X: l.free.Min.X - bounds.Min.X, Y: l.free.Max.Y - down - bounds.Max.Y}
}
