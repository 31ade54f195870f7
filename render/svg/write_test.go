package svg

import (
	"bytes"
	"encoding/xml"
	"errors"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
)

func point(x, y float64) geometry.Point { return geometry.Point{X: x, Y: y} }

func circle(t require.TestingT, at geometry.Point, r float64) geometry.Outline {
	o, err := geometry.Circle(at, r, "")
	require.NoError(t, err)
	return o
}

func drawing(items ...render.Item) *render.Drawing {
	d := &render.Drawing{Title: `Third wheel, 84 teeth: "R < 40 & up"`, Description: "Full scale", Scale: 1}
	d.Add(items...)
	return d
}

func written(t require.TestingT, d *render.Drawing) string {
	var b bytes.Buffer
	require.NoError(t, Write(&b, d))
	return b.String()
}

// element is any element of the file, as encoding/xml reads it.
type element struct {
	XMLName  xml.Name
	Attrs    []xml.Attr `xml:",any,attr"`
	Text     string     `xml:",chardata"`
	Children []element  `xml:",any"`
}

func (e element) attr(name string) string {
	for _, a := range e.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

// all returns the elements of that name, in order, however deep.
func (e element) all(name string) (found []element) {
	for _, child := range e.Children {
		if child.XMLName.Local == name {
			found = append(found, child)
		}
		found = append(found, child.all(name)...)
	}
	return found
}

func read(t require.TestingT, file string) (root element) {
	require.NoError(t, xml.Unmarshal([]byte(file), &root))
	return root
}

func TestSheet(t *testing.T) {
	root := read(t, written(t, drawing(render.Item{
		Layer: render.LayerTeeth, Pen: render.Visible,
		Outlines: []geometry.Outline{circle(t, point(0, 5), 40)},
	})))
	require.Equal(t, "svg", root.XMLName.Local)
	require.Equal(t, "82mm", root.attr("width"))
	require.Equal(t, "82mm", root.attr("height"))
	require.Equal(t, "-41 -46 82 82", root.attr("viewBox")) // y down: from −45−1 on
	require.Equal(t, `Third wheel, 84 teeth: "R < 40 & up"`, root.all("title")[0].Text)
	require.Equal(t, "Full scale", root.all("desc")[0].Text)
	require.Empty(t, root.all("pattern"))
}

// Each layer is one group by its name, in the order it is drawn.
func TestLayers(t *testing.T) {
	var items []render.Item
	layers := render.Layers()
	for i := range layers {
		items = append(items, render.Item{Layer: layers[len(layers)-1-i], Pen: render.Thin, Outlines: []geometry.Outline{circle(t, point(0, 0), 1)}})
	}
	groups := read(t, written(t, drawing(items...))).all("g")
	require.Len(t, groups, len(layers))
	for i, g := range groups {
		require.Equal(t, string(layers[i]), g.attr("id"))
	}
}

func TestWhereAnItemCameFrom(t *testing.T) {
	item := render.Item{
		Layer: render.LayerWindows, Part: "third", Quantity: "crossing.rim", Pen: render.Hidden, Ink: render.Blue,
		Fill: render.Waste, Outlines: []geometry.Outline{circle(t, point(0, 0), 30), circle(t, point(0, 0), 10)},
	}
	root := read(t, written(t, drawing(item)))
	group := root.all("g")[0]
	require.Len(t, group.Children, 1)
	path := group.Children[0]
	require.Equal(t, "third", path.attr("data-part"))
	require.Equal(t, "crossing.rim", path.attr("data-quantity"))
	require.Equal(t, "url(#waste)", path.attr("fill"))
	require.Equal(t, "evenodd", path.attr("fill-rule"))
	require.Equal(t, "1.5 0.75", path.attr("stroke-dasharray"))
	require.Equal(t, "0.18", path.attr("stroke-width"))
	require.Equal(t, 2, strings.Count(path.attr("d"), "Z"))
	require.Len(t, root.all("pattern"), 1)
}

// A text is outlines, and says what it says.
func TestText(t *testing.T) {
	item := render.Item{Layer: render.LayerText, Ink: render.Blue, Text: &render.Text{Height: 5, String: "R 8 & <5°>"}}
	file := written(t, drawing(item))
	require.NotContains(t, file, "<text")
	group := read(t, file).all("g")[1]
	require.Equal(t, "R 8 & <5°>", group.attr("aria-label"))
	require.Equal(t, "R 8 & <5°>", group.all("title")[0].Text)
	require.NotEmpty(t, group.all("path")[0].attr("d"))
}

func TestUnsoundDrawings(t *testing.T) {
	require.ErrorContains(t, Write(&bytes.Buffer{}, &render.Drawing{}), "empty")
	require.ErrorContains(t, Write(&bytes.Buffer{}, nil), "empty")
	stray := drawing(render.Item{Layer: render.LayerText, Text: &render.Text{At: point(math.NaN(), 0), Height: 5, String: "x"}})
	require.ErrorContains(t, Write(&bytes.Buffer{}, stray), "no number")
}

// Letters that XML cannot hold do not spoil the file.
func TestOddLetters(t *testing.T) {
	d := drawing(render.Item{Layer: render.LayerText, Text: &render.Text{Height: 5, String: "a\x00\x1b\uFFFEb"}})
	d.Title = "tab\tbell\x07"
	require.Equal(t, "tab\tbell\uFFFD", read(t, written(t, d)).all("title")[0].Text)
}

// full is a writer without room.
type full struct{}

func (full) Write([]byte) (int, error) { return 0, errors.New("disk full") }

func TestDiskFull(t *testing.T) {
	d := drawing(render.CentreLine(point(0, 0), point(1, 0)))
	require.ErrorContains(t, Write(full{}, d), "disk full")
	for range 3000 {
		d.Add(render.CentreLine(point(0, 0), point(1, 0)))
	}
	require.ErrorContains(t, Write(full{}, d), "disk full")
}

func TestSameDrawingSameBytes(t *testing.T) {
	d := drawing(render.Linear(point(0, 0), point(40, 0), 8, "40.00 mm")...)
	require.Equal(t, written(t, d), written(t, d))
}
