package template

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/tables"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/crossing"
	"tipline/geometry/measure"
	"tipline/geometry/mount"
	"tipline/render"
	"tipline/render/dxf"
	"tipline/render/svg"
)

// seatOf is what a wheel offers to screws.
func seatOf(w Wheel) mount.Seat {
	s := mount.Seat{Bore: w.Bore, Root: 2 * w.Teeth.RootRadius, Tip: 2 * w.Teeth.TipRadius, Teeth: w.Teeth.Count, Thickness: w.Thickness}
	if w.Crossing != nil {
		s.Hub = 2 * w.Crossing.HubRadius
		for _, a := range w.Crossing.Arms {
			s.Arms = append(s.Arms, a.Angle)
		}
		for _, win := range w.Crossing.Windows {
			s.Windows = append(s.Windows, win.Outline)
		}
	}
	return s
}

func threadNamed(t testing.TB, name string) tables.Thread {
	t.Helper()
	thread, ok := tables.ThreadNamed(name)
	require.True(t, ok, name)
	return thread
}

// screwed is a wheel with arms and a hub of 16 mm, screwed to a collet.
func screwed(t testing.TB, count, screws int, thread string, circle float64) Wheel {
	t.Helper()
	spec := scribedSpec(6, crossing.Straight)
	spec.Hub = 16
	w, ok := laid(t, count, spec)
	require.True(t, ok)
	w.Thread, w.Collet = threadNamed(t, thread), mount.Collet{Bore: 2, Register: 5, Flange: 15}
	m, err := mount.Fit(seatOf(w), w.Collet, mount.Screws{Count: screws, Thread: w.Thread, Circle: circle})
	require.NoError(t, err)
	w.Mounting = &m
	return w
}

// Holes stand where plane trigonometry puts them, the first midway between arms 0 and
// 1, at the clearance drill's size, on their own layer.
func TestDrillingHoles(t *testing.T) {
	for _, n := range []int{1, 2, 3, 4, 6} {
		w := screwed(t, 84, n, "BA 10", 10)
		d, err := Drilling(w, metric)
		require.NoError(t, err)
		require.Equal(t, 1.0, d.Scale)
		centres, radii := circlesOn(t, d, render.LayerScrews)
		require.Len(t, centres, n)
		for i := range centres {
			sin, cos := math.Sincos((30 + 360*float64(i)/float64(n)) * math.Pi / 180)
			require.InDelta(t, 0, centres[i].Dist(geometry.Point{X: 5 * sin, Y: 5 * cos}), 1e-9, "hole %d of %d", i, n)
			require.InDelta(t, w.Mounting.Clear.MM/2, radii[i], 1e-9)
		}
		requireOpen(t, d, centres)
	}
}

// requireOpen checks that no line of centre crosses runs through a punch's place.
func requireOpen(t *testing.T, d *render.Drawing, centres []geometry.Point) {
	t.Helper()
	for _, it := range d.Items {
		for _, c := range it.Chains {
			if it.Quantity != "mount.screws" {
				continue
			}
			for _, at := range centres {
				near, _ := c.Segment(0).Nearest(at)
				require.Greater(t, near.Dist(at), 0.1, "%s at %v", it.Layer, at)
			}
		}
	}
}

// Another program reads the wheel, the bore, the collet's edges and the holes, each a
// closed circle on its layer at full size.
func TestDrillingComesBackFromFiles(t *testing.T) {
	w := screwed(t, 84, 3, "BA 10", 10)
	d, err := Drilling(w, metric)
	require.NoError(t, err)
	var file bytes.Buffer
	require.NoError(t, dxf.Write(&file, d))
	holes := dxfCircles(t, file.String(), "screws", w.Mounting.Clear.MM/2)
	require.Len(t, holes, 3)
	for i, at := range holes {
		require.InDelta(t, 0, at.Dist(w.Mounting.Places[i].At), 1e-3)
	}
	for _, layer := range []string{"teeth", "windows", "bore", "screws", "centre-lines", "pitch-circle"} {
		require.Contains(t, file.String(), layer)
	}
	file.Reset()
	require.NoError(t, svg.Write(&file, d))
	require.Contains(t, file.String(), `id="screws"`)
}

func TestDrillingSaysWhatTheBenchNeeds(t *testing.T) {
	w := screwed(t, 84, 3, "BA 10", 10)
	values := map[string]string{}
	for _, f := range DrillingNotes(w, metric).Figures {
		values[f.Label] = f.Value
	}
	require.Equal(t, "3 × BA 10", values["Screws"])
	require.Equal(t, "8.660 mm", values["Dividers, hole to hole"], "10·sin 60°")
	require.Equal(t, "1.25 mm, 1.40 mm, #50", values["Start, tap, clear"], "threads.csv: tap drill 1.4; #50 is 1.778 mm, drills.csv")
	card, err := DrillingCard(w, metric)
	require.NoError(t, err)
	texts := strings.Join(said(card), "\n")
	for _, text := range []string{"Tap the collet: BA 10", "screw circle Ø 10.000 mm", "register Ø 5.000 mm", "flange Ø 15.000 mm", "150°", "8.660 mm", "Tap drill: 1.400 mm"} {
		require.Contains(t, texts, text)
	}
	require.Contains(t, texts, "usual", "the clearance drill is in no table")
	require.NotContains(t, DrillingNotes(w, metric).Caution, "fine drill")
	require.Contains(t, DrillingNotes(screwed(t, 84, 3, "UNM 1.00", 10), metric).Caution, "fine drill")
	w.Mounting.Depth = 20
	require.Contains(t, DrillingNotes(w, metric).Caution, "ten diameters")
	w.Mounting.Edge = 1.4 * w.Thread.Major
	require.Contains(t, DrillingNotes(w, metric).Caution, "one and a half")
}

func TestDrillingSheetsStandClear(t *testing.T) {
	for _, n := range []int{1, 2, 3, 4, 5, 6} {
		for _, thread := range []string{"BA 10", "UNM 1.00", "M1"} {
			w := screwed(t, 84, n, thread, 10.5)
			for unit, s := range map[string]Style{"mm": metric, "in": inches} {
				card, err := DrillingCard(w, s)
				require.NoError(t, err)
				requireClear(t, card, "drilling card of %d × %s in %s", n, thread, unit)
				require.LessOrEqual(t, card.Bounds().Width(), CardWidth+1)
				require.NotContains(t, strings.Join(append(said(card), card.Title, card.Description), " "), "‹")
			}
		}
	}
	_, err := Drilling(trainWheel(t, 60, 5), metric)
	require.ErrorIs(t, err, ErrNothing)
	_, err = DrillingCard(trainWheel(t, 60, 5), metric)
	require.ErrorIs(t, err, ErrNothing)
}

// A screw circle dragged somewhere and drilled anew has its first hole there; so has
// the turn of the screws.
func TestScrewsAreDragged(t *testing.T) {
	w := screwed(t, 84, 3, "BA 10", 10)
	require.Equal(t, []geometry.Quantity{"bore", "mount.collet.register", "mount.collet.flange", "mount.screw_circle"}, quantities(MountHandles(w)))
	start := geometry.Degrees(40)
	m, err := mount.Fit(seatOf(w), w.Collet, mount.Screws{Count: 3, Thread: w.Thread, Circle: 10, Start: &start})
	require.NoError(t, err)
	w.Mounting = &m
	want := map[geometry.Quantity]float64{"bore": 5, "mount.collet.register": 5, "mount.collet.flange": 15, "mount.screw_circle": 10, "mount.start": float64(start)}
	handles := MountHandles(w)
	require.Len(t, handles, len(want))
	for _, h := range handles {
		v, err := h.Value(h.At)
		require.NoError(t, err)
		require.InDelta(t, want[h.Quantity], v, 1e-9, h.Quantity)
		_, err = h.Set(geometry.Point{X: math.NaN()})
		require.ErrorIs(t, err, ErrNowhere)
	}
	v, err := handles[4].Value(geometry.Polar(7, geometry.Clock(geometry.Degrees(170))))
	require.NoError(t, err)
	require.InDelta(t, 50, geometry.Angle(v).Degrees(), 1e-9, "the second of three screws at 170°")
}

// A metric thread is called by its size and pitch, without noughts behind, in the
// language's numbers; others by their system and size.
func TestThreadsOnPaper(t *testing.T) {
	de, err := words.Load("de")
	require.NoError(t, err)
	german := Style{Words: de, Units: measure.Units{Comma: true}}
	for name, want := range map[string]string{"M1": "M1 × 0,25", "M2": "M2 × 0,4", "M3": "M3 × 0,5", "BA 10": "BA 10", "UNF 0-80": "UNF 0-80"} {
		require.Equal(t, want, threadName(threadNamed(t, name), german))
	}
}

// However large a wheel's middle is, it is enlarged or reduced to a scale of ISO 5455.
func TestTheMiddleIsDrawnAtAStandardScale(t *testing.T) {
	for flange, scale := range map[float64]string{12: "2 : 1", 15: "2 : 1", 34: "1 : 1", 50: "1 : 2", 90: "1 : 5"} {
		w := screwed(t, 84, 3, "BA 10", 10)
		w.Collet.Flange = flange
		card, err := DrillingCard(w, metric)
		require.NoError(t, err)
		require.Contains(t, said(card), scale+", to read from", "flange %v", flange)
		require.LessOrEqual(t, card.Bounds().Width(), CardWidth/2, "flange %v", flange)
	}
}
