package window

import (
	"strconv"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"

	"tipline/app/solve"
)

// tick returns the mark of a step that is done.
func tick() fyne.CanvasObject {
	short, long := canvas.NewLine(green), canvas.NewLine(green)
	short.StrokeWidth, long.StrokeWidth = 2, 2
	short.Position1, short.Position2 = fyne.NewPos(4, 9), fyne.NewPos(7.5, 12.5)
	long.Position1, long.Position2 = fyne.NewPos(7.5, 12.5), fyne.NewPos(14, 5)
	return container(short, long)
}

// delta returns the mark of a part that has changed since it was printed: the triangle by
// which a drawing office marks a revision (common practice, no source).
func delta() fyne.CanvasObject {
	corners := []fyne.Position{fyne.NewPos(8.5, 3), fyne.NewPos(15, 14), fyne.NewPos(2, 14)}
	var sides []fyne.CanvasObject
	for i, from := range corners {
		side := canvas.NewLine(blue)
		side.StrokeWidth, side.Position1, side.Position2 = 1.7, from, corners[(i+1)%3]
		sides = append(sides, side)
	}
	return container(sides...)
}

// badge returns the mark of a severity, told by shape as well as by colour: an
// error is a square, a caution a disc, a note a ring. A count of 0 shows the
// severity's sign.
func badge(s solve.Severity, count int) fyne.CanvasObject {
	switch s {
	case solve.Error:
		square := canvas.NewRectangle(red)
		square.CornerRadius = 3
		return lettered(square, sign(count, "×"))
	case solve.Caution:
		return lettered(canvas.NewCircle(orange), sign(count, "!"))
	}
	ring := canvas.NewCircle(well)
	ring.StrokeColor, ring.StrokeWidth = faint, 1.4
	put(ring, 2, 2, badgeSize-4, badgeSize-4)
	return container(ring)
}

func sign(count int, zero string) string {
	if count == 0 {
		return zero
	}
	return strconv.Itoa(count)
}

func lettered(ground fyne.CanvasObject, text string) fyne.CanvasObject {
	put(ground, 0, 0, badgeSize, badgeSize)
	t := written(text, badgeType, well, true)
	t.Alignment = fyne.TextAlignCenter
	put(t, 0, 0, badgeSize, badgeSize)
	return container(ground, t)
}

// container holds things at the places they were put.
func container(objects ...fyne.CanvasObject) *fyne.Container {
	c := &fyne.Container{Objects: objects}
	c.Resize(fyne.NewSize(badgeSize, badgeSize))
	return c
}
