package window

import (
	"fmt"
	"image/color"
	"maps"
	"slices"
	"strings"
	"testing"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/canvas"
	box "fyne.io/fyne/v2/container"
	"github.com/stretchr/testify/require"

	"tipline/app/appearance"
	"tipline/app/window/desk"
	"tipline/geometry/trial"
)

// area is a rectangle of the window.
type area struct{ left, top, right, bottom float32 }

func areaOf(at fyne.Position, s fyne.Size) area {
	return area{at.X, at.Y, at.X + s.Width, at.Y + s.Height}
}

func (a area) in(b area, by float32) bool {
	return a.left >= b.left-by && a.right <= b.right+by && a.top >= b.top-by && a.bottom <= b.bottom+by
}

func (a area) meet(b area) area {
	return area{max(a.left, b.left), max(a.top, b.top), min(a.right, b.right), min(a.bottom, b.bottom)}
}

func (a area) grown(by float32) area {
	return area{a.left - by, a.top - by, a.right + by, a.bottom + by}
}

func (a area) empty() bool { return a.right <= a.left || a.bottom <= a.top }

// typeArea returns where the letters of a line of type are drawn: by its alignment, and in
// the middle of a box that is taller (drawText in internal/painter/gl/draw.go).
func typeArea(text *canvas.Text, at fyne.Position) area {
	has, needs := text.Size(), text.MinSize()
	switch text.Alignment {
	case fyne.TextAlignTrailing:
		at.X += has.Width - needs.Width
	case fyne.TextAlignCenter:
		at.X += (has.Width - needs.Width) / 2
	}
	at.Y += max(0, (has.Height-needs.Height)/2)
	return areaOf(at, needs)
}

// clipped is what the lines of type seen in a window suffer: each fault once.
type clipped struct {
	faults map[string]string
	drawn  []drawnType
	ground []drawnGround
}

type drawnType struct {
	text string
	seen area
}

type drawnGround struct {
	seen   area
	colour color.NRGBA
}

// slack is what a line may reach beyond its box, and tight how much of the height of a line
// is only air.
const (
	slack = 1.2
	tight = 0.24
)

func (c *clipped) look(where string, root fyne.CanvasObject, papers color.NRGBA) {
	c.drawn, c.ground = nil, nil
	walk(root, func(o within) {
		switch it := o.CanvasObject.(type) {
		case *canvas.Text:
			if strings.TrimSpace(it.Text) != "" {
				c.line(where, o, it)
			}
		case *canvas.Rectangle:
			c.lies(o, it.FillColor)
		case *canvas.Circle:
			c.lies(o, it.FillColor)
		case *canvas.Raster:
			c.lies(o, papers)
		}
	})
}

func (c *clipped) fault(where, text, what string, v ...any) {
	key := text + ": " + what
	if _, ok := c.faults[key]; !ok {
		c.faults[key] = where + ": " + fmt.Sprintf("%q %s", text, what) + fmt.Sprint(v...)
	}
}

// line judges a line of type: it fits its box, stands in all that it stands in, unless that
// can be scrolled, covers no other, and can be read on what it lies on.
func (c *clipped) line(where string, o within, text *canvas.Text) {
	seen := typeArea(text, o.at)
	if text.MinSize().Width > text.Size().Width+slack {
		c.fault(where, text.Text, "is wider than its box", text.MinSize(), text.Size())
	}
	clip, typed := area{-1e6, -1e6, 1e6, 1e6}, false
	body := area{seen.left, seen.top + tight*(seen.bottom-seen.top), seen.right, seen.bottom - tight*(seen.bottom-seen.top)}
	for _, p := range slices.Backward(o.in) {
		typed = typed || strings.Contains(fmt.Sprintf("%T", p.CanvasObject), "ntry")
		if _, ok := p.CanvasObject.(*box.Scroll); ok || typed {
			clip = clip.meet(areaOf(p.at, p.Size()))
			continue
		}
		if room := areaOf(p.at, p.Size()); clip.left < -1e5 && p.Size().Width > 0 && !body.in(room, slack) {
			c.fault(where, text.Text, fmt.Sprintf("leaves %T", p.CanvasObject), body, room)
		}
	}
	if !typed && clip.left > -1e5 && (seen.left < clip.left-slack || seen.right > clip.right+slack) {
		c.fault(where, text.Text, "is cut off sideways", seen, clip)
	}
	if body = body.meet(clip); body.empty() {
		return
	}
	for _, other := range c.drawn {
		if over := other.seen.meet(body.grown(-0.5)); !over.empty() {
			c.fault(where, text.Text, "covers "+other.text, body, other.seen)
		}
	}
	c.drawn = append(c.drawn, drawnType{text.Text, body})
	on := c.under(body)
	if got := contrast(over(opaqueless(text.Color), on), on); got < 4.5 {
		c.fault(where, text.Text, "cannot be read", text.Color, on, got)
	}
}

// opaqueless returns a colour with how much it lets through.
func opaqueless(c color.Color) color.NRGBA { return color.NRGBAModel.Convert(c).(color.NRGBA) }

func (c *clipped) lies(o within, fill color.Color) {
	at := areaOf(o.at, o.Size())
	for _, p := range o.in {
		if _, ok := p.CanvasObject.(*box.Scroll); ok {
			at = at.meet(areaOf(p.at, p.Size()))
		}
	}
	if fill != nil && !at.empty() {
		if f := opaqueless(fill); f.A > 0 {
			c.ground = append(c.ground, drawnGround{at, f})
		}
	}
}

// under returns the colour that a place lies on.
func (c *clipped) under(at area) color.NRGBA {
	on := backdrop
	middle := area{(at.left + at.right) / 2, (at.top + at.bottom) / 2, (at.left + at.right) / 2, (at.top + at.bottom) / 2}
	for _, g := range c.ground {
		if middle.in(g.seen, 0) {
			on = over(g.colour, on)
		}
	}
	return on
}

// oneOfEach returns a part of each kind that the sample job has.
func oneOfEach(w *Window) []string {
	var ids []string
	had := map[string]bool{}
	for _, g := range w.desk.Groups() {
		for _, e := range g.Parts {
			w.desk.Choose(e.ID)
			if steps := fmt.Sprint(w.desk.Steps()); !had[steps] {
				had[steps] = true
				ids = append(ids, e.ID)
			}
		}
	}
	return ids
}

// In a window on a small screen no line of type is cut off, covered or faint, whatever its
// size, its language and its shade.
func TestNothingIsClipped(t *testing.T) {
	w := opened(t)
	t.Cleanup(func() { w.all.dress(appearance.Usual) })
	c := &clipped{faults: map[string]string{}}
	for _, l := range trial.Some(t, 37, 4, dresses()) {
		require.NoError(t, w.desk.Speak(l.spoken))
		w.all.redress(l.Looks)
		w.Resize(fyne.NewSize(1280, 680))
		where := fmt.Sprint(l.spoken, " ", l.Shade, " ", l.Percent, " ")
		c.steps(w, where)
		c.questions(w, where)
	}
	c.require(t)
}

// A job without parts has the welcome in the place of the drawing.
func TestNothingOfAnEmptyJobIsClipped(t *testing.T) {
	w := opened(t)
	t.Cleanup(func() { w.all.dress(appearance.Usual) })
	w.desk.Begin()
	c := &clipped{faults: map[string]string{}}
	for _, l := range dresses() {
		require.NoError(t, w.desk.Speak(l.spoken))
		w.all.redress(l.Looks)
		w.Resize(fyne.NewSize(1280, 680))
		require.True(t, w.welcome.Visible())
		c.look(fmt.Sprint(l.spoken, " ", l.Shade, " ", l.Percent), w.Content(), paper)
	}
	c.require(t)
}

func (c *clipped) require(t *testing.T) {
	all := slices.Sorted(maps.Values(c.faults))
	require.Empty(t, all, strings.Join(all, "\n"))
}

// dressed is how the window may look and speak.
type dressed struct {
	spoken string
	appearance.Looks
}

func dresses() (all []dressed) {
	for _, spoken := range []string{"en", "de", "fr"} {
		for _, shade := range []appearance.Shade{appearance.Light, appearance.Dark} {
			for _, percent := range []int{100, 150, 200} {
				all = append(all, dressed{spoken, appearance.Looks{Shade: shade, Percent: percent}})
			}
		}
	}
	return all
}

// steps looks at each step of a part of each kind.
func (c *clipped) steps(w *Window, where string) {
	for _, id := range oneOfEach(w) {
		w.desk.Choose(id)
		for _, step := range w.desk.Steps() {
			w.desk.Go(step)
			papers := paper
			if step == desk.Paper {
				papers = present.table
			}
			c.look(where+id+" "+string(step), w.Content(), papers)
		}
	}
}

// questions looks at what is asked over the window.
func (c *clipped) questions(w *Window, where string) {
	for name, ask := range map[string]func(){
		"starts": w.offerStarts, "keys": w.showKeys, "measure": w.askMeasure, "rename": w.askRename,
		"delete": w.askDelete, "save": func() { w.askSave(func() {}) }, "pdf": w.askPDF,
		"told": func() {
			w.inform("told.trouble", strings.Repeat("no place/to/write/something/as/long/as/this/to ", 12))
		},
	} {
		ask()
		for _, o := range w.Canvas().Overlays().List() {
			c.look(where+name, o, paper)
		}
		for w.question != nil {
			w.unask()
		}
	}
}
