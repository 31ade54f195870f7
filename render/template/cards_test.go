package template

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/dividing"
	"tipline/geometry/tooth"
	"tipline/render"
)

func TestCaliperOverTips(t *testing.T) {
	for _, n := range []int{3, 5, 15, 45, 127} {
		w := tooth.Wheel{Count: n, TipRadius: 20}
		widest := 0.0
		for i := range n {
			widest = math.Max(widest, geometry.Polar(20, w.Tip(0)).Dist(geometry.Polar(20, w.Tip(i))))
		}
		require.InDelta(t, widest, caliper(20, n), 1e-9, "the widest pair of %d tips", n)
	}
}

func TestBlankCardFigures(t *testing.T) {
	w := trainWheel(t, 75, 5)
	d, err := BlankCard(w, metric)
	require.NoError(t, err)
	texts := said(d)
	for _, mm := range []float64{1.6, 5, 2*w.Teeth.TipRadius + 0.2, 2 * w.Teeth.TipRadius} {
		require.Contains(t, texts, metric.Units.Length(mm))
		require.Contains(t, texts, inches.Units.Length(mm), "both units side by side")
	}
	require.Contains(t, strings.Join(texts, " "), metric.Words.Say("cards.blank.caliper"))
	even, err := BlankCard(trainWheel(t, 72, 6), metric)
	require.NoError(t, err)
	require.NotContains(t, strings.Join(said(even), " "), metric.Words.Say("cards.blank.caliper"))
}

func TestSettingCardSides(t *testing.T) {
	for _, row := range []struct{ hand, enters, side string }{
		{"clockwise", "", "right"}, {"anticlockwise", "", "left"}, {"clockwise", "back", "left"}, {"anticlockwise", "back", "right"},
	} {
		t.Run(row.hand+" "+row.enters, func(t *testing.T) {
			w := pointedWheel(t, row.hand)
			w.Enters = row.enters
			d, err := SettingCard(w, metric)
			require.NoError(t, err)
			require.Contains(t, strings.Join(said(d), " "), metric.Words.Say("cards.setting.set-over."+row.side))
			require.Contains(t, said(d), metric.Units.Fine(w.Cut.SetOver))
			require.Contains(t, said(d), inches.Units.Fine(w.Cut.SetOver))
		})
	}
}

func TestSettingCardTellsBothDials(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	d, err := SettingCard(w, metric)
	require.NoError(t, err)
	all := strings.Join(said(d), " ")
	require.Contains(t, all, metric.Units.Fine(w.Cut.Infeed))
	require.Contains(t, all, metric.Units.Fine(w.Cut.Radial(w.Cut.Infeed)))
	require.Contains(t, all, inches.Units.Fine(w.Cut.Radial(w.Cut.Infeed)))
	centred, err := SettingCard(trainWheel(t, 72, 6), metric)
	require.NoError(t, err)
	require.NotContains(t, strings.Join(said(centred), " "), "dial along the radius")
}

// 46 to 137 m/min (the table's row for milling brass with HSS) at 22 mm: v/2πρ is
// 332.8 to 991.1 turns a minute.
func TestSettingCardTellsTheSpindleSpeed(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	relief, err := w.Cut.Relieve(geometry.Degrees(10), 5, 22)
	require.NoError(t, err)
	w.Relief = &relief
	d, err := SettingCard(w, metric)
	require.NoError(t, err)
	require.Contains(t, said(d), "330 to 990 rpm")
	w.Material.Name = "unobtainium"
	d, err = SettingCard(w, metric)
	require.NoError(t, err)
	require.NotContains(t, strings.Join(said(d), "\n"), "rpm")
}

// What the card says would do does, and no less would.
func TestSettingCardTellsWhatTheHeelAllows(t *testing.T) {
	w := pointedWheel(t, "clockwise")
	relief, err := w.Cut.Relieve(geometry.Degrees(6), 6, 20)
	require.NoError(t, err)
	thick := min(relief.Thickness, relief.UsableThickness)
	require.Less(t, relief.HeelLimit, thick, "this heel rubs")
	w.Relief = &relief
	d, err := SettingCard(w, metric)
	require.NoError(t, err)
	all := strings.Join(said(d), " ")
	for _, text := range []string{"the heel rubs", "clears from", "clearance."} {
		require.Contains(t, all, text)
	}
	angle, ok := w.Cut.ClearanceFor(6, 20, false)
	require.True(t, ok)
	require.Contains(t, all, metric.Units.Angle(angle+lastHundredth/2))
	clear, err := w.Cut.Relieve(geometry.Degrees(6), 6, relief.LeastSwing+0.01)
	require.NoError(t, err)
	w.Relief = &clear
	d, err = SettingCard(w, metric)
	require.NoError(t, err)
	require.Contains(t, strings.Join(said(d), " "), "the heel clears")
	formed, err := w.Cut.RelieveFormed(geometry.Degrees(6), 6, 40)
	require.NoError(t, err)
	w.Relief, w.Formed = &formed, true
	d, err = SettingCard(w, metric)
	require.NoError(t, err)
	require.Contains(t, strings.Join(said(d), " "), "the least of it is "+metric.Units.Angle(formed.LeastClearance))
}

// every tooth is on the dividing card, or on the cards that follow it, once.
func TestEveryToothIsListed(t *testing.T) {
	for _, n := range []int{7, 30, 60, 72, 84, 96, 127, 360, 999} {
		t.Run(strconv.Itoa(n), func(t *testing.T) {
			answer, err := dividing.Head{Ratio: 60}.Divide(n, 30)
			require.NoError(t, err)
			w := Wheel{ID: "w", Name: "W", Dividing: &answer}
			card, err := DividingCard(w, metric)
			require.NoError(t, err)
			listed := map[string]int{}
			for _, c := range append(DividingTable(w, metric), card) {
				for _, text := range said(c) {
					if strings.Contains(text, "′") || strings.Contains(text, `' `) {
						listed[text]++
					}
				}
				require.LessOrEqual(t, c.Bounds().Height(), cardDown)
				require.LessOrEqual(t, c.Bounds().Width(), CardWidth+3)
			}
			require.Len(t, listed, n)
			for i := range n {
				require.Equal(t, 1, listed[answer.Reading(i).String()], "tooth %d", i)
			}
		})
	}
}

func TestCardsFitUprightA4AndLetter(t *testing.T) {
	for name, w := range wheels(t) {
		for title, d := range everyDrawing(t, w, metric) {
			if !strings.Contains(title, "card") && title != "cautions" {
				continue
			}
			require.LessOrEqual(t, d.Bounds().Width(), 180.0, "%s of %s", title, name)
			require.LessOrEqual(t, d.Bounds().Height(), 178.0, "%s of %s", title, name)
			require.Zero(t, d.Scale, "a card has no scale")
		}
	}
}

func TestCoverTakesAsManySheetsAsItNeeds(t *testing.T) {
	sentences, rows := make([]string, 60), make([]Row, 50)
	for i := range sentences {
		sentences[i] = "Finding " + strconv.Itoa(i)
	}
	for i := range rows {
		rows[i] = Row{"Wheel " + strconv.Itoa(i), "72"}
	}
	sheets := Cover("A job", []Table{{Title: "Parts", Columns: Row{"part", "teeth"}, Rows: rows}, {Title: "Pairs"}}, sentences, 190, 176, metric)
	require.Len(t, sheets, 4)
	var all []string
	for i, d := range sheets {
		require.Equal(t, "A job", d.Title)
		room := 182.0
		if i == 0 {
			room = 196
		}
		require.LessOrEqual(t, d.Bounds().Height(), room)
		require.LessOrEqual(t, d.Bounds().Width(), 180.0)
		requireClear(t, d, "cover")
		all = append(all, said(d)...)
	}
	for _, sentence := range sentences {
		require.Contains(t, all, sentence)
	}
	for _, r := range rows {
		require.Contains(t, all, r[0])
	}
	require.NotContains(t, all, "Pairs", "a table without rows is left out")
	none := Cover("A job", nil, nil, 176, 176, metric)
	require.Len(t, none, 1)
	require.Contains(t, said(none[0]), metric.Words.Say("cards.cover.none"))
}

// The safety texts that may not be missing from a packet.
func TestCautionsNameEveryHazard(t *testing.T) {
	all := strings.ToLower(strings.Join(said(Cautions(metric)), " "))
	for _, hazard := range []string{
		"grinding dust", "high-speed steel", "guards", "ring-test", "eye protection", "fly cutter", "clamp",
		"adhesive alone", "washer", "brass", "lead", "cyanoacrylate", "vapour", "drills", "licence",
	} {
		require.Contains(t, all, hazard)
	}
	require.Contains(t, strings.ToLower(Cautions(metric).Description), "makers' instructions, local rules and licensed practice come first")
}

func TestWrapKeepsEveryWord(t *testing.T) {
	text := "one two three four five supercalifragilistic six"
	for _, width := range []float64{1, 10, 20, 40, 200} {
		lines := Wrap(text, 2.5, width, false)
		require.Equal(t, text, strings.Join(lines, " "))
	}
	require.Len(t, Wrap(text, 2.5, 1000, true), 1)
	require.Equal(t, []string{"one", "two"}, Wrap("one\ntwo", 2.5, 1000, false))
	require.Equal(t, []string{"une", "deux\u00a0:", "trois"}, Wrap("une deux\u00a0: trois", 2.5, 5, false))
}

// A heading of the cautions stands clear of its text in every language.
func TestTheCautionsStandClear(t *testing.T) {
	for _, code := range words.Languages() {
		spoken, err := words.Load(code)
		require.NoError(t, err)
		d := Cautions(Style{Words: spoken})
		requireClear(t, d, "cautions in %s", code)
		for _, head := range textsOf(d) {
			if head.Bold && head.At.X == 0 && head.Height == labelHeight {
				for _, text := range textsOf(d) {
					require.False(t, text.At.X > 0 && head.Bounds().Grow(2).Touches(text.Bounds()), "%s: %q touches %q", code, head.String, text.String)
				}
			}
		}
	}
}

// The picture that shows which way to set over is as large as its room allows, at a scale
// of ISO 5455 that is said under it.
func TestTheSettingPictureIsLargeAndSaysItsScale(t *testing.T) {
	for name, w := range wheels(t) {
		d := settingPicture(w, metric)
		require.LessOrEqual(t, d.Bounds().Width(), settingField.X, name)
		require.LessOrEqual(t, d.Bounds().Height(), settingField.Y+settingMore, name)
		require.Contains(t, viewScales, d.Scale, name)
		require.Contains(t, said(d), metric.Words.Say("template.drilling.enlarged", "scale", scaleText(d.Scale, metric)), name)
		form := itemsOn(d, render.LayerForm, "cutter")[0].Outlines[0].Bounds()
		require.InDelta(t, d.Scale*w.Cut.Form.Edge.Bounds().Width(), form.Width(), 0.35*form.Width(), "%s is drawn at its scale", name)
		require.GreaterOrEqual(t, form.Width(), 15.0, name)
		require.GreaterOrEqual(t, form.Height(), 1.2*d.Scale*w.Cut.Infeed, "%s is shown to above its tips", name)
	}
}
