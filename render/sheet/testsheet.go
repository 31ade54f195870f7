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
	testBlank  = 30.0 // length of a blank
	testApart  = 12.0 // from the circle to the blanks
)

// TestSheet returns the sheet that a printer is measured with, made for the paper: a
// circle that shows whether it is round, and blanks for what bars, corners and
// circle measure. It is laid as every sheet is, which gives it the bars and the
// corner crosses: without a profile to make one, or with one to see that it is
// right.
func TestSheet(paper Paper, s template.Style) Sheet {
	say := s.Words.Say
	block := TitleBlock{Job: say("sheet.test"), Kind: say("sheet.test.kind"), Part: say("sheet.test.paper", "paper", paper.Name)}
	b := template.NewBoard("", s)
	b.Drawing.Title, b.Drawing.Description = say("sheet.test"), say("sheet.test.line")
	l := plan(paper, b.Drawing, block, s)
	room := min(testCircle, l.free.Width()-testColumn-testApart, l.free.Height())
	t := testSheet{b, 10 * math.Floor(room/10)}
	t.circle()
	_, diagonal := l.corners()
	t.blanks(diagonal)
	return Sheet{b.Drawing, block}
}

// testSheet is a test sheet being drawn, the circle's centre at the origin.
type testSheet struct {
	*template.Board
	diameter float64
}

// circle draws the circle with its diameters across, up and both ways between, open
// at the middle, where its size is written.
func (t testSheet) circle() {
	if t.diameter <= 0 {
		return
	}
	r := t.diameter / 2
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

// blanks writes what is to be measured, each with a line to write on.
func (t testSheet) blanks(diagonal float64) {
	rows := []string{
		t.Say("sheet.test.bar-across"), t.Say("sheet.test.bar-up"),
		t.Say("sheet.test.inch-across"), t.Say("sheet.test.inch-up"),
		t.Say("sheet.test.corner-rising", "mm", whole(diagonal)), t.Say("sheet.test.corner-falling", "mm", whole(diagonal)),
	}
	if t.diameter > 0 {
		rows = append(rows, t.Say("sheet.test.circle-across", "mm", whole(t.diameter)), t.Say("sheet.test.circle-up", "mm", whole(t.diameter)))
	}
	left := t.diameter/2 + testApart
	y := testRow * (float64(len(rows))/2 - 0.5)
	for _, row := range rows {
		text := fit(row, false, testColumn-testBlank-2, heightText, heightSmall)
		text.At, text.Centred = geometry.Point{X: left, Y: y}, true
		t.Write(template.Stroke{Layer: render.LayerSheet}, text)
		end := geometry.Point{X: left + testColumn, Y: y - heightText/2}
		t.Line(template.Stroke{Layer: render.LayerSheet, Pen: render.Thin},
			geometry.Line{From: end.Sub(geometry.Point{X: testBlank}), To: end})
		y -= testRow
	}
}
