package desk

import (
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/render"
)

// picking is a photograph on which points are being picked: two of known distance,
// then two of a line up the infeed.
type picking struct {
	drawing *render.Drawing
	lies    render.Similarity
	size    geometry.Point // pixels
	points  []geometry.Point
}

// picks is how many points are picked.
const picks = 4

// pickedWide is how wide in millimetres a photograph is shown to pick on.
const pickedWide = 160.0

// StartPicking shows the photograph of the present part to pick points on; false
// where there is none that can be shown.
func (d *Desk) StartPicking() bool {
	if !d.HasPhotograph() {
		return false
	}
	i, _ := d.photo(d.cutterOf(d.part).Bit.Photograph.File)
	if i == nil {
		return false
	}
	size := geometry.Point{X: float64(i.Bounds().Dx()), Y: float64(i.Bounds().Dy())}
	p := &picking{size: size, lies: render.Similarity{Scale: pickedWide / size.X}}
	p.drawing = &render.Drawing{Scale: 1, Items: []render.Item{
		{Layer: render.LayerPhotograph, Picture: &render.Picture{Image: i, Transform: p.lies}},
		p.frame(),
	}}
	d.lit, d.picking, d.rule = "", p, rule{}
	d.history.EndRun()
	d.Changed()
	return true
}

// frame is the edge of the photograph, which gives the drawing its bounds.
func (p *picking) frame() render.Item {
	var corners []geometry.Vertex
	for _, at := range []geometry.Point{{Y: p.size.Y}, {X: p.size.X, Y: p.size.Y}, {X: p.size.X}, {}} {
		corners = append(corners, geometry.Vertex{Point: p.lies.Place(at)})
	}
	outline, err := geometry.NewOutline(corners)
	if err != nil {
		return render.Item{Layer: render.LayerStock}
	}
	return render.Item{Layer: render.LayerStock, Pen: render.Hair, Ink: render.Grey, Outlines: []geometry.Outline{outline}}
}

// Prompt says which point is to be picked next, empty when none is.
func (d *Desk) Prompt() string {
	if d.picking == nil {
		return ""
	}
	return d.words.Say("pick." + strconv.Itoa(len(d.picking.points)+1))
}

// Picked returns the points picked so far, on the drawing.
func (d *Desk) Picked() []geometry.Point {
	if d.picking == nil {
		return nil
	}
	var at []geometry.Point
	for _, p := range d.picking.points {
		at = append(at, d.picking.lies.Place(p))
	}
	return at
}

// Pick picks a point of the drawing; one beside the photograph, or one picked
// already, is none. After the last the photograph lies as they say.
func (d *Desk) Pick(at geometry.Point) {
	p := d.picking
	if p == nil {
		return
	}
	pixel := p.lies.PixelAt(at)
	pixel = geometry.Point{X: math.Round(10*pixel.X) / 10, Y: math.Round(10*pixel.Y) / 10}
	outside := pixel.X < 0 || pixel.Y < 0 || pixel.X > p.size.X || pixel.Y > p.size.Y
	if n := len(p.points); outside || n%2 == 1 && p.points[n-1] == pixel {
		return
	}
	if p.points = append(p.points, pixel); len(p.points) < picks {
		d.Changed()
		return
	}
	d.picking = nil
	j := d.with(d.Job(), "cutter.bit.photograph.points", pairText(p.points[:2]))
	d.do(d.with(j, "cutter.bit.photograph.edge", pairText(p.points[2:])))
}

// pairText writes points as they are typed.
func pairText(points []geometry.Point) string {
	text := ""
	for i, p := range points {
		if i > 0 {
			text += ", "
		}
		text += number(p.X, 1) + " " + number(p.Y, 1)
	}
	return text
}

// StopPicking ends picking without a change.
func (d *Desk) StopPicking() {
	if d.picking != nil {
		d.picking = nil
		d.Changed()
	}
}
