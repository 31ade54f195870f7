package template

import (
	"fmt"
	"math"
	"math/big"
	"strconv"
	"strings"

	"tipline/geometry"
	"tipline/render"
)

// Sizes of a train's picture in millimetres of paper.
const (
	trainWide    = 174.0 // of the circles side by side
	trainHigh    = 78.0
	columnApart  = 6.0 // between what is written of an arbor and of the next
	arborRow     = 4.8
	ratioAbove   = 6.0
	columnsBelow = 9.0
)

// TrainView draws a train: the pitch circles of its wheels and pinions to scale,
// their arbors in line, each mesh with its counts and ratio, each arbor with its
// turns, and what the whole comes to. ErrNothing if it has no pairs.
func TrainView(t Train, s Style) (*render.Drawing, error) {
	if len(t.Arbors) < 2 {
		return nil, fmt.Errorf("view of %s: %w", t.ID, ErrNothing)
	}
	v := drawTrain(t, s)
	v.Drawing.Title = v.Say("template.trainview.title", "name", t.title())
	v.Drawing.Description = v.Say("template.trainview.line")
	y := v.Drawing.Bounds().Min.Y - 10
	for i, line := range t.sums(s) {
		v.Write(Stroke{Layer: render.LayerText, Quantity: "to", Ink: render.Black}, render.Text{
			At: geometry.Point{X: v.middle(), Y: y - 6*float64(i)}, Height: 3.5, Align: render.Middle, Bold: i == 0, String: line,
		})
	}
	return v.Drawing, nil
}

// trainPicture is a train being drawn: at which scale, and where its arbors stand.
type trainPicture struct {
	*Board
	train Train
	scale float64
	at    []geometry.Point // arbors, on the paper
	low   float64          // of all circles
	high  float64
	left  float64
	right float64
}

// drawTrain draws the circles, the meshes and the arbors of a train.
func drawTrain(t Train, s Style) *trainPicture {
	v := &trainPicture{Board: NewBoard(t.ID, s), train: t}
	v.arrange()
	v.Drawing.Scale = v.scale
	for i := range t.Arbors {
		v.circles(i)
	}
	v.Line(Stroke{Layer: render.LayerCentreLines, Quantity: "to", Pen: render.Centre, Ink: render.Blue},
		geometry.Line{From: geometry.Point{X: v.left - 4}, To: geometry.Point{X: v.right + 4}})
	v.meshes()
	v.columns()
	return v
}

// arrange places the arbors in line and finds the scale at which all circles fit.
func (v *trainPicture) arrange() {
	x, left, right, high := 0.0, math.Inf(1), math.Inf(-1), 0.0
	for _, a := range v.train.Arbors {
		r := math.Max(a.Driver.Radius, a.Driven.Radius)
		left, right, high = math.Min(left, x-r), math.Max(right, x+r), math.Max(high, r)
		v.at = append(v.at, geometry.Point{X: x})
		x += a.Centres
	}
	v.scale = math.Min(trainWide/(right-left), trainHigh/(2*high))
	for i := range v.at {
		v.at[i] = v.at[i].Times(v.scale)
	}
	v.left, v.right, v.high, v.low = left*v.scale, right*v.scale, high*v.scale, -high*v.scale
}

func (v *trainPicture) middle() float64 { return (v.left + v.right) / 2 }

// circles draws the circles of an arbor's wheel and pinion, and the arbor.
func (v *trainPicture) circles(i int) {
	a, at := v.train.Arbors[i], v.at[i]
	last := i == len(v.train.Arbors)-1
	for _, of := range []Toothed{a.Driver, a.Driven} {
		if of.Count == 0 {
			continue
		}
		s := Stroke{Layer: render.LayerPitchCircle, Quantity: "to", Pen: render.Visible, Ink: render.Black}
		if of.Leaves {
			s.Layer, s.Fill = render.LayerTeeth, render.Steel
		}
		if last && of == a.Driver {
			s.Pen = render.Hidden // an escape wheel, which meshes with nothing here
		}
		v.Circle(s, at, v.scale*of.Radius)
	}
	v.Circle(Stroke{render.LayerBore, "to", render.Visible, render.Black, render.Solid}, at, 0.8)
}

// meshes names the pairs between the arbors, above the circles, each led to where
// it meshes.
func (v *trainPicture) meshes() {
	s := v.Style
	labels := make([]render.Text, len(v.at)-1)
	places, widths := make([]float64, len(labels)), make([]float64, len(labels))
	for i := range labels {
		from, to := v.train.Arbors[i].Driver, v.train.Arbors[i+1].Driven
		labels[i] = render.Text{Height: 2.5, Align: render.Middle, String: v.Say("template.trainview.mesh",
			"from", from.Count, "to", to.Count, "ratio", trimmed(s, float64(from.Count)/float64(max(to.Count, 1)), 3))}
		places[i], widths[i] = v.at[i].X+v.scale*from.Radius, labels[i].Width()+4
	}
	for i, x := range movedClear(places, widths) {
		at, top := geometry.Point{X: places[i]}, geometry.Point{X: x, Y: v.high + ratioAbove}
		turn := geometry.Point{X: at.X, Y: v.high + ratioAbove/3}
		v.Line(Stroke{Layer: render.LayerDimensions, Quantity: "to", Pen: render.Hair, Ink: render.Blue},
			geometry.Line{From: at, To: turn}, geometry.Line{From: turn, To: top.Sub(geometry.Point{Y: 1})})
		v.Circle(Stroke{Layer: render.LayerDimensions, Quantity: "to", Ink: render.Blue, Fill: render.Solid}, at, 0.6)
		labels[i].At = top
		v.Write(Stroke{Layer: render.LayerText, Quantity: "to", Ink: render.Blue}, labels[i])
	}
}

// movedClear moves places, which run from left to right, as little as leaves what stands
// in the middle of each clear of its neighbour, given how wide each is.
func movedClear(places, widths []float64) []float64 {
	xs := make([]float64, len(places))
	var low, high float64
	for i, at := range places {
		xs[i] = at
		if i > 0 {
			xs[i] = max(xs[i], xs[i-1]+(widths[i-1]+widths[i])/2)
		}
		low, high = min(low, xs[i]-at), max(high, xs[i]-at)
	}
	for i := range xs {
		xs[i] -= (low + high) / 2
	}
	return xs
}

// trimmed writes a number with as many decimals, of that many, as it needs.
func trimmed(s Style, v float64, decimals int) string {
	text := s.Units.Number(v, decimals)
	if !strings.ContainsAny(text, ".,") {
		return text
	}
	return strings.TrimRight(strings.TrimRight(text, "0"), ".,")
}

// columns writes below the circles what each arbor carries and how fast it turns,
// each in its own column, led to from the arbor.
func (v *trainPicture) columns() {
	top := v.low - columnsBelow
	arbors, widths := make([]float64, len(v.at)), make([]float64, len(v.at))
	lines := make([][]string, len(v.at))
	for i, at := range v.at {
		lines[i] = v.arborLines(v.train.Arbors[i])
		arbors[i], widths[i] = at.X, widest(lines[i])+columnApart
	}
	places := movedClear(arbors, widths)
	for i := range v.at {
		at := geometry.Point{X: places[i], Y: top}
		down := geometry.Point{X: v.at[i].X, Y: v.low - 2}
		v.Line(Stroke{Layer: render.LayerDimensions, Quantity: "to", Pen: render.Hair, Ink: render.Grey},
			geometry.Line{From: v.at[i], To: down}, geometry.Line{From: down, To: at.Add(geometry.Point{Y: 4})})
		for row, line := range lines[i] {
			v.Write(Stroke{Layer: render.LayerText, Quantity: "to", Ink: []render.Ink{render.Black, render.Grey}[min(row, 1)]}, render.Text{
				At: at.Add(geometry.Point{Y: -arborRow * float64(row)}), Height: 2.5, Align: render.Middle, Bold: row == 0, String: line,
			})
		}
	}
}

// widest returns the width of the widest line of an arbor.
func widest(lines []string) float64 {
	most := 0.0
	for row, line := range lines {
		most = max(most, render.Text{Height: 2.5, Bold: row == 0, String: line}.Width())
	}
	return most
}

// arborLines are what is written of an arbor.
func (v *trainPicture) arborLines(a Arbor) []string {
	lines := []string{a.Name}
	for _, of := range []Toothed{a.Driven, a.Driver} {
		switch {
		case of.Count == 0:
		case of.Name == a.Name:
			lines = append(lines, v.Say("template.trainview.teeth", "n", of.Count))
		default:
			lines = append(lines, v.Say("template.trainview.toothed", "name", of.Name, "n", of.Count))
		}
	}
	if hour := v.train.perHour(a); hour != nil {
		return append(lines, v.Say("template.trainview.hour", "turns", v.Style.Units.Exact(hour)))
	}
	return append(lines, v.Say("template.trainview.turns", "turns", v.Style.Units.Exact(a.Turns)))
}

// perHour returns the turns of an arbor an hour; nil where not known.
func (t Train) perHour(a Arbor) *big.Rat {
	if t.PerHour == nil || t.Ratio.Sign() == 0 {
		return nil
	}
	hour := new(big.Rat).Quo(a.Turns, t.Ratio)
	return hour.Mul(hour, t.PerHour)
}

// sums says what the whole train comes to, a line each.
func (t Train) sums(s Style) []string {
	product := ""
	for i := range t.Arbors[:len(t.Arbors)-1] {
		if i > 0 {
			product += " × "
		}
		product += strconv.Itoa(t.Arbors[i].Driver.Count) + "/" + strconv.Itoa(t.Arbors[i+1].Driven.Count)
	}
	way := "template.trainview.same"
	if t.Reverse {
		way = "template.trainview.against"
	}
	lines := []string{s.Words.Say(way, "product", product, "ratio", s.Units.Ratio(t.Ratio))}
	if b := t.Beat; b != nil {
		lines = append(lines, s.Words.Say("template.trainview.beat", "beats", s.Units.Exact(b.PerHour),
			"seconds", trimmed(s, b.Seconds, 4), "pendulum", s.Units.Both(b.Length)))
	}
	return lines
}
