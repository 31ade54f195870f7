package sheet

import (
	"fmt"
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
	"tipline/render"
	"tipline/render/template"
)

func TestTilesCoverTheDrawing(t *testing.T) {
	random := rand.New(rand.NewPCG(1, 2))
	for i := range 500 {
		width, height := 60+200*random.Float64(), 60+200*random.Float64()
		low := geometry.Point{X: -500 * random.Float64(), Y: 500 * random.Float64()}
		bounds := geometry.Box{Min: low, Max: low.Add(geometry.Point{X: 1000 * random.Float64(), Y: 1000 * random.Float64()})}
		tiles := cut(bounds, width, height)
		for range 20 {
			p := geometry.Point{X: low.X + random.Float64()*bounds.Width(), Y: low.Y + random.Float64()*bounds.Height()}
			held := 0
			for _, tile := range tiles {
				if tile.region.Grow(1e-9).Contains(p) {
					held++
				}
			}
			require.Positive(t, held, "seed (1, 2), case %d: %v not covered", i, p)
		}
		if bounds.Width() <= width && bounds.Height() <= height {
			require.Len(t, tiles, 1)
		}
		one := tiles[0]
		require.GreaterOrEqual(t, one.shared.X, overlap-1e-9)
		if one.columns > 1 {
			step := width - one.shared.X
			require.Less(t, float64(one.columns-2)*step+width, bounds.Width(), "no column too many")
		}
	}
}

// No seam, nor a sheet's edge, runs near the centre of a wheel where the tiles have room to
// be moved, and never through it.
func TestTilesKeepTheCentreWhole(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	moved := 0
	for i := range 500 {
		width, height, radius := 60+400*random.Float64(), 60+400*random.Float64(), 20+400*random.Float64()
		corner := geometry.Point{X: radius, Y: radius}
		bounds := geometry.Box{Min: corner.Times(-1), Max: corner}
		tiles := cut(bounds, width, height)
		if tiles == nil || tiles[0].columns == 1 {
			continue
		}
		spare := float64(tiles[0].columns)*(width-tiles[0].shared.X) + tiles[0].shared.X - 2*radius
		best := 0.0
		for _, tile := range tiles {
			own := tile.own()
			best = max(best, min(-own.Min.X, own.Max.X))
		}
		require.GreaterOrEqual(t, best, min(originClear, spare/2, (width-tiles[0].shared.X)/2)-1e-9, "seed (3, 4), case %d", i)
		if tiles[0].columns%2 == 0 && spare > 2 {
			moved++
		}
	}
	require.Greater(t, moved, 50)
	tiles := cut(geometry.Box{Min: geometry.Point{X: -215, Y: -215}, Max: geometry.Point{X: 215, Y: 215}}, 470, 400)
	require.Len(t, tiles, 2)
	require.Less(t, tiles[1].region.Min.Y, -originClear)
	require.Greater(t, tiles[0].own().Max.Y, 215.0-1e-9)
	require.InDelta(t, originClear, math.Abs(tiles[0].own().Min.Y), 1e-9, "the seam keeps off the centre")
}

func TestRegisterMarksMeet(t *testing.T) {
	tiles := cut(geometry.Box{Max: geometry.Point{X: 500, Y: 400}}, 180, 150)
	require.Len(t, tiles, 9)
	times := map[string]int{}
	d := plate(500, 400, 1)
	for i := range tiles {
		for _, p := range marks(d, tiles, i) {
			times[fmt.Sprintf("%.6f %.6f", p.X, p.Y)]++
		}
	}
	require.Len(t, times, 2*(6+6), "two on each of the seams")
	for at, n := range times {
		require.Equal(t, 2, n, "the mark at %s lies on two sheets", at)
	}
	require.Equal(t, "A1", tiles[0].name())
	require.Equal(t, "C3", tiles[8].name())
}

func TestTiledPagesHoldTheWholeDrawing(t *testing.T) {
	pages, err := Place(plate(900, 700, 1), Papers()[0], block, style)
	require.NoError(t, err)
	require.Greater(t, len(pages), 9)
	names, marked, named := map[string]bool{}, 0, 0
	for _, page := range pages {
		for _, text := range said(page) {
			if strings.HasPrefix(text, "Tile ") {
				names[text] = true
			}
			if text == "middle" {
				named++
			}
		}
		for _, it := range page.Drawing.Items {
			if it.Quantity == registerMarkQuantity {
				marked++
				break
			}
		}
	}
	require.Len(t, names, len(pages))
	require.Equal(t, len(pages), marked)
	require.Positive(t, named)
}

// Each letter of a text that lies across tiles is on every tile in which its middle
// is, where the whole text has it, and none is lost.
func TestLettersAreNeverLost(t *testing.T) {
	const said = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789" // each once
	for x := -200.0; x <= 200; x += 17 {
		for _, turn := range []geometry.Angle{0, 0.3, geometry.FullTurn / 2} {
			text := render.Text{At: geometry.Point{X: x}, Height: 3.5, Align: render.Middle, Centred: true, Turn: turn, String: said, Mirror: x > 100}
			whole, _ := text.Letters()
			along, _ := text.Ways()
			d := &render.Drawing{Scale: 1, Items: []render.Item{{Layer: render.LayerText, Text: &text}}}
			shown := map[int]bool{}
			for _, tile := range cut(geometry.Box{Min: geometry.Point{X: -400, Y: -150}, Max: geometry.Point{X: 400, Y: 150}}, 180, 150) {
				for _, it := range clipped(d, tile.region).Items {
					first := strings.Index(said, it.Text.String)
					for i, l := range lettersOf(*it.Text) {
						shown[first+i] = true
						at := text.Origin().Add(along.Times(whole[first+i].X))
						require.InDelta(t, 0, at.Dist(it.Text.Origin().Add(along.Times(l.X))), 1e-6, "at %v", x)
					}
					bounds := it.Text.Bounds()
					require.True(t, tile.region.Grow(3.5).Contains(bounds.Min) && tile.region.Grow(3.5).Contains(bounds.Max))
				}
			}
			require.Len(t, shown, len(whole), "at %v", x)
		}
	}
}

func lettersOf(t render.Text) []render.Letter {
	letters, _ := t.Letters()
	return letters
}

// Cut to the boxes of a grid, lines and arcs keep their length and fillings their
// area.
func TestClippingKeepsLengthAndArea(t *testing.T) {
	random := rand.New(rand.NewPCG(3, 4))
	for i := range 60 {
		b := template.NewBoard("", style)
		at := geometry.Point{X: 40 * random.Float64(), Y: 40 * random.Float64()}
		b.Circle(template.Stroke{Layer: render.LayerTeeth, Pen: render.Visible, Fill: render.Brass}, at, 5+30*random.Float64())
		b.Line(template.Stroke{Layer: render.LayerForm, Pen: render.Thin}, geometry.Line{From: at, To: geometry.Point{X: 100 * random.Float64(), Y: 90 * random.Float64()}})
		length, area := drawn(b.Drawing)
		var cutLength, cutArea float64
		for column := range 5 {
			for row := range 5 {
				low := geometry.Point{X: -60 + 40*float64(column), Y: -60 + 40*float64(row)}
				l, a := drawn(clipped(b.Drawing, geometry.Box{Min: low, Max: low.Add(geometry.Point{X: 40, Y: 40})}))
				cutLength, cutArea = cutLength+l, cutArea+a
			}
		}
		require.InDelta(t, length, cutLength, 1e-6, "seed (3, 4), case %d", i)
		require.InDelta(t, area, cutArea, 1e-6, "seed (3, 4), case %d", i)
	}
}

// drawn returns the length drawn with a pen and the area filled.
func drawn(d *render.Drawing) (length, area float64) {
	for _, it := range d.Items {
		for _, o := range it.Outlines {
			if it.Fill != render.NoFill {
				area += math.Abs(o.Area())
			}
			if it.Pen != render.NoPen {
				length += o.Length()
			}
		}
		for _, c := range it.Chains {
			for i := range c.Len() {
				length += c.Segment(i).Length()
			}
		}
	}
	return length, area
}

func TestNamesOfTiles(t *testing.T) {
	for row, want := range map[int]string{0: "A3", 25: "Z3", 26: "AA3", 27: "AB3", 51: "AZ3", 52: "BA3"} {
		require.Equal(t, want, tile{column: 2, row: 59 - row, columns: 3, rows: 60}.name())
	}
}

// The key plan shows every tile with the one that the sheet is, clear of the title.
func TestTheKeyPlan(t *testing.T) {
	for _, paper := range papers(t)[:6] {
		pages, err := Place(plate(700, 600, 1), paper, block, style)
		require.NoError(t, err)
		shaded := map[string]bool{}
		for _, page := range pages {
			key, filled := geometry.NoBox(), geometry.NoBox()
			cells := 0
			for _, it := range page.Drawing.Items {
				if it.Quantity != keyQuantity {
					continue
				}
				bounds, _ := it.Bounds()
				key = key.Union(bounds)
				if it.Fill == render.Brass {
					filled = bounds
				}
				if it.Pen == render.Hair && len(it.Outlines) == 1 && len(it.Chains) == 0 {
					cells++
				}
			}
			require.GreaterOrEqual(t, cells, len(pages), paper.Name)
			require.Positive(t, filled.Width())
			shaded[fmt.Sprintf("%.3f %.3f", filled.Min.X-key.Min.X, filled.Min.Y-key.Min.Y)] = true
			require.LessOrEqual(t, key.Height(), keyHeight+1e-9)
			for _, it := range page.Drawing.Items {
				if it.Text != nil && it.Quantity != keyQuantity {
					require.False(t, it.Text.Bounds().Touches(key), "%s: %q stands on the key plan", paper.Name, it.Text.String)
				}
			}
		}
		require.Len(t, shaded, len(pages), "each sheet shades another tile")
	}
}

func TestMoreTilesThanAnyoneGlues(t *testing.T) {
	for _, size := range []float64{6000, 1e9} {
		_, err := Place(plate(size, size, 100), Papers()[0], block, style)
		var refusal *Refusal
		require.ErrorAs(t, err, &refusal)
		require.Equal(t, Refusal{"a4", "paper.tiles"}, *refusal)
		require.True(t, style.Words.Has(refusal.Code))
		require.Contains(t, err.Error(), "400")
	}
}
