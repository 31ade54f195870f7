package sheet

import (
	"math"
	"strconv"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

// Measures of the test sheet in millimetres.
const (
	testCircle = 80.0 // diameter; less, in tens, where the paper is small
	testColumn = 82.0 // width of the blanks
	testRow    = 9.0  // from one blank to the next
	testBlank  = 25.0 // length of a blank
	testApart  = 10.0 // from the circle to the blanks
	testAbove  = 8.0  // from circle and blanks to the steps
	testLeast  = 30.0 // diameter; a smaller circle shows nothing and is left out
	testSteps  = heightSmall
)

// TestSheet returns the sheet that a printer is measured with, made for the paper: a
// circle that shows whether it is round, and blanks for what bars, corners and
// circle measure. It is laid as every sheet is, which gives it the bars and the
// corner crosses: without a profile to make one, or with one to see that it is
// right. It leaves room for any.
func TestSheet(paper Paper, s template.Style) Sheet {
	say := s.Words.Say
	block := TitleBlock{Job: say("sheet.test"), Kind: say("sheet.test.kind"), Part: say("sheet.test.paper", "paper", paper.Name)}
	b := template.NewBoard("", s)
	b.Drawing.Title, b.Drawing.Description = say("sheet.test"), say("sheet.test.line")
	worst := Profile{Paper: paper.Name, X: 1 - MostError, Y: 1 - MostError}
	l := plan(lying{paper, worst.stretch(false)}, b.Drawing, Options{Profile: worst}.filled(block, 1, s), s)
	t := testSheet{Board: b}
	steps := t.steps(l.free.Width())
	of := steps.Bounds()
	height := l.free.Height() - testAbove - of.Height() - lineOfFoot // of a long name in the profile's line
	t.diameter = 10 * math.Floor(min(testCircle, l.free.Width()-testColumn-testApart, height)/10)
	if t.diameter < testLeast {
		t.diameter = 0
	}
	t.circle()
	t.blanks(height)
	below := b.Drawing.Bounds()
	at := geometry.Point{X: below.Min.X - of.Min.X, Y: below.Max.Y + testAbove - of.Min.Y}
	b.Drawing.Add(steps.Placed(at, 1, 0).Items...)
	return Sheet{Drawing: b.Drawing, Block: block}
}

// testSheet is a test sheet being drawn, the circle's centre at the origin.
type testSheet struct {
	*template.Board
	diameter float64
}

// steps returns what is done with the sheet, a step to a paragraph.
func (t testSheet) steps(width float64) *render.Drawing {
	b := template.NewBoard("", t.Style)
	y := 0.0
	for i, step := range []string{
		t.Say("sheet.test.step-1"), t.Say("sheet.test.step-2"), t.Say("sheet.test.step-3"), t.Say("sheet.test.step-4"), t.Say("sheet.test.step-5"),
	} {
		number := render.Text{At: geometry.Point{Y: y}, Height: testSteps, Bold: true, String: strconv.Itoa(i + 1)}
		b.Write(template.Stroke{Layer: render.LayerSheet}, number)
		for _, line := range template.Wrap(step, testSteps, width-2*space, false) {
			b.Write(template.Stroke{Layer: render.LayerSheet}, render.Text{At: geometry.Point{X: space, Y: y}, Height: testSteps, String: line})
			y -= 1.6 * testSteps
		}
		y -= 0.6 * testSteps
	}
	return b.Drawing
}

// circle draws the circle with its diameters across, up and both ways between, open
// at the middle, where its size is written.
func (t testSheet) circle() {
	r := t.diameter / 2
	if r == 0 {
		return
	}
	t.Circle(template.Stroke{Layer: render.LayerSheet, Quantity: "sheet.test", Pen: render.Thin}, geometry.Point{}, r)
	fine := template.Stroke{Layer: render.LayerSheet, Pen: render.Hair, Ink: render.Grey}
	for i := range 8 {
		way := geometry.Polar(1, geometry.Degrees(float64(45*i)))
		t.Line(fine, geometry.Line{From: way.Times(r / 3), To: way.Times(r - 1)})
	}
	t.Write(template.Stroke{Layer: render.LayerSheet}, render.Text{
		Height: heightText, Align: render.Middle, Centred: true, String: "Ø " + whole(t.diameter) + " mm",
	})
}

// whole writes a length that is a whole number of millimetres.
func whole(mm float64) string { return strconv.Itoa(int(math.Round(mm))) }

// blanks writes what is to be measured, each with a line to write on, within a
// height.
func (t testSheet) blanks(height float64) {
	rows := []string{
		t.Say("sheet.test.bar-across"), t.Say("sheet.test.bar-up"),
		t.Say("sheet.test.inch-across"), t.Say("sheet.test.inch-up"),
		t.Say("sheet.test.corner-rising"), t.Say("sheet.test.corner-falling"),
	}
	if t.diameter > 0 {
		rows = append(rows, t.Say("sheet.test.circle-across", "mm", whole(t.diameter)), t.Say("sheet.test.circle-up", "mm", whole(t.diameter)))
	}
	left := t.diameter/2 + testApart
	step := min(testRow, (height-2*heightText)/float64(len(rows)-1))
	y := step * (float64(len(rows))/2 - 0.5)
	height = heightText
	if step < 2*heightText {
		height = heightSmall
	}
	for _, row := range rows {
		text := fit(row, false, testColumn-testBlank-2, height, heightSmall)
		text.At, text.Centred = geometry.Point{X: left, Y: y}, true
		t.Write(template.Stroke{Layer: render.LayerSheet}, text)
		end := geometry.Point{X: left + testColumn, Y: y - heightText/2}
		t.Line(template.Stroke{Layer: render.LayerSheet, Pen: render.Thin},
			geometry.Line{From: end.Sub(geometry.Point{X: testBlank}), To: end})
		y -= step
	}
}
