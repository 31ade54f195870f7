package template

import (
	"fmt"
	"math"

	"tipline/geometry"
	"tipline/render"
)

// Sizes of the view of a pair in millimetres of paper: the picture of the mesh,
// and the column beside it with the figures and the plot.
const (
	meshSize    = 100.0
	columnGap   = 10.0
	columnWidth = 66.0
	figureRow   = 5.2
)

// PairView draws a pair in mesh at a share of the driver's pitch, 0 to 1: the teeth
// about the line of centres, the driver below turning anticlockwise, the place
// where they touch and the line along which one pushes the other; beside it the
// figures, and how far the speed strays over a pitch with a cursor at this place.
// ErrNothing if the pair was not turned in mesh.
func PairView(p Pair, turn float64, s Style) (*render.Drawing, error) {
	if len(p.Turn.Steps) == 0 {
		return nil, fmt.Errorf("view of %s: %w", p.ID, ErrNothing)
	}
	b := NewBoard(p.ID, s)
	m := newMeshing(b, p, p.place(turn), meshSize)
	b.Drawing.Title = b.Say("template.pairview.title", "name", p.Name)
	b.Drawing.Description = b.Say("template.pairview.line")
	b.Drawing.Scale = m.scale
	m.draw()
	frame := m.frame()
	at := geometry.Point{X: frame.Max.X + columnGap, Y: frame.Centre().Y + meshSize/2}
	m.figures(at)
	at.Y -= meshSize
	m.errorPlot(geometry.Box{
		Min: at.Add(geometry.Point{X: 9, Y: 10}), Max: at.Add(geometry.Point{X: columnWidth, Y: 54}),
	})
	return b.Drawing, nil
}

// figures writes the pair's figures downwards from at.
func (m *meshing) figures(at geometry.Point) {
	t, u := m.pair.Turn, m.Style.Units
	percent := func(v float64) string { return u.Number(100*v, 2) + " %" }
	for _, f := range []Figure{
		{"centres", u.Fine(t.Centres)},
		{"ratio", u.Ratio(m.pair.ratio())},
		{"contact", u.Number(t.Contact, 2)},
		{"approach", u.Angle(t.Approach)},
		{"backlash", u.Length(t.PitchPlay)},
		{"most", percent(t.WorstError)},
		{"here", signed(u.Number, 100*(m.place.speed/t.Mean-1)) + " %"},
	} {
		at.Y -= figureRow
		m.Write(Stroke{Layer: render.LayerText, Quantity: "centres", Ink: render.Grey}, render.Text{At: at, Height: 2.5, String: m.Say("template.pairview." + f.Label)})
		m.Write(Stroke{Layer: render.LayerText, Quantity: "centres", Ink: render.Black}, render.Text{
			At: at.Add(geometry.Point{X: columnWidth}), Height: 2.5, Align: render.Right, Bold: f.Label == "here", String: f.Value,
		})
	}
	if t.Jams() {
		m.Write(Stroke{Layer: render.LayerText, Quantity: "centres", Ink: render.Red}, render.Text{
			At: at.Sub(geometry.Point{Y: figureRow}), Height: 2.5, Bold: true, String: m.Say("template.pairview.jams"),
		})
	}
}

// signed writes a number of two decimals with its sign.
func signed(write func(float64, int) string, v float64) string {
	if v < 0 {
		return "−" + write(-v, 2)
	}
	return "+" + write(v, 2)
}

// The greatest error of the speed that the plot reaches to: beyond it the curve is
// cut off. The points it is drawn through.
const (
	mostErrorShown = 0.5
	errorPoints    = 240
)

// errorPlot plots how far the speed strays from the mean over a pitch, in a frame.
func (m *meshing) errorPlot(frame geometry.Box) {
	t := m.pair.Turn
	most := 100 * min(max(t.WorstError, 1e-4), mostErrorShown)
	x := newAxis(0, 1, 1, 4, true, m.Say("template.pairview.pitch"))
	y := newAxis(-most, most, 1, 4, true, m.Say("template.pairview.error"))
	p := newPlot(m.Board, frame, x, y, "centres")
	n := len(t.Steps)
	every := max(1, n/errorPoints)
	var values []geometry.Point
	for i := 0; i < n; i += every {
		values = append(values, geometry.Point{X: float64(i) / float64(n), Y: 100 * (t.Steps[i].Speed/t.Mean - 1)})
	}
	values = append(values, geometry.Point{X: 1, Y: 100 * (t.Steps[0].Speed/t.Mean - 1)})
	p.curve(Stroke{Layer: render.LayerText, Quantity: "centres", Pen: render.Visible, Ink: render.Black}, values)
	m.cursor(p)
}

// cursor marks this place on the plot.
func (m *meshing) cursor(p plot) {
	error := 100 * (m.place.speed/m.pair.Turn.Mean - 1)
	at := p.at(m.place.turn, math.Max(math.Min(error, p.y.to), p.y.from))
	p.Line(Stroke{Layer: render.LayerDimensions, Quantity: "centres", Pen: render.Thin, Ink: render.Blue},
		geometry.Line{From: geometry.Point{X: at.X, Y: p.frame.Min.Y}, To: geometry.Point{X: at.X, Y: p.frame.Max.Y}})
	p.Circle(Stroke{Layer: render.LayerDimensions, Quantity: "centres", Pen: render.Visible, Ink: render.Blue, Fill: render.Paper}, at, 1)
}
