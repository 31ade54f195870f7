package packet_test

import (
	"bytes"
	"context"
	"fmt"
	"io"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/app/job"
	"tipline/app/packet"
	"tipline/app/solve"
	"tipline/assets/samples"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/render"
	"tipline/render/pdf"
	"tipline/render/sheet"
	"tipline/render/template"
)

func sample(t testing.TB) *job.Job {
	data, err := samples.Read(samples.First)
	require.NoError(t, err)
	j, err := job.Read(bytes.NewReader(data))
	require.NoError(t, err)
	return j
}

func options(t testing.TB, j *job.Job) packet.Options {
	paper, err := sheet.ParsePaper("a4")
	require.NoError(t, err)
	return packet.Options{Paper: paper, Style: template.Style{Words: words.English(), Units: solve.Units(j, words.English())}}
}

func build(t testing.TB, j *job.Job, o packet.Options) render.Document {
	d, err := packet.Build(context.Background(), solve.Solve(context.Background(), j), o)
	require.NoError(t, err)
	return d
}

// titles returns those of all drawings, in their order.
func titles(d render.Document) []string {
	var ts []string
	for _, p := range d.Pages {
		ts = append(ts, strings.Split(p.Drawing.Title, "\n")...)
	}
	return ts
}

// front returns the sheets of the cover put together.
func front(d render.Document) render.Page {
	all := render.Page{Drawing: &render.Drawing{}}
	for _, p := range d.Pages {
		if p.Drawing.Title != d.Title {
			break
		}
		all.Drawing.Add(p.Drawing.Items...)
	}
	return all
}

// says reports whether a page has a text that contains the words, its lines put
// together.
func says(p render.Page, text string) bool {
	var all []string
	for _, i := range p.Drawing.Items {
		if i.Text != nil {
			all = append(all, i.Text.String)
		}
	}
	return strings.Contains(strings.Join(all, " "), text)
}

func TestPacketIsInTheOrderOfTheWork(t *testing.T) {
	j := sample(t)
	got := slices.Compact(titles(build(t, j, options(t, j))))
	want := []string{"Signal-cabin timepiece", "Signal-cabin timepiece: what to get in"}
	cut := func(name string) []string {
		return []string{name + ": the blank", name + ": cutter", name + ": cutter, square to the clearance face", name + ": setting and depth", name + ": depth", name + ": dividing"}
	}
	for _, w := range j.Wheels {
		want = append(append(want, cut(w.Name)...), w.Name)
		if w.Crossing != nil {
			want = append(want, w.Name+": scribing")
		}
		if w.Mount != nil {
			want = append(want, w.Name+": screws", w.Name+": screwing to the collet")
		}
	}
	for _, p := range j.Pinions {
		if p.Form.Text == "lantern" {
			want = append(want, p.Name+": the blank", p.Name+": dividing", p.Name+": shrouds")
		} else {
			want = append(want, cut(p.Name)...)
		}
	}
	r := solve.Solve(context.Background(), j)
	for i, p := range r.Pairs {
		want = append(want, p.Name()+": depthing")
		if i == 0 {
			want = append(want, "Depthing, pair by pair")
		}
	}
	for _, train := range r.Trains {
		of, ok := packet.TrainOf(r, train)
		require.True(t, ok)
		want = append(want, of.Arbors[0].Name+" – "+of.Arbors[len(of.Arbors)-1].Name+": the train")
	}
	require.Len(t, j.Stacks, 1)
	stack := "Hour wheel + Day driver"
	want = append(want, stack+": the stack", stack+": screwing to the collet")
	require.Equal(t, append(want, "Cautions"), got)
	require.Greater(t, len(j.Pinions), 2)
	require.Greater(t, len(j.Pairs), 2)
	require.NotEmpty(t, j.Trains)
}

// Every bit has both its templates, the rake face's and then the clearance face's.
func TestEveryBitHasBothTemplates(t *testing.T) {
	j := sample(t)
	got := titles(build(t, j, options(t, j)))
	for _, name := range []string{"Great wheel", "Escape wheel", "Centre pinion"} {
		i := slices.Index(got, name+": cutter, square to the clearance face")
		require.Positive(t, i, name)
		require.Equal(t, name+": cutter", got[i-1])
	}
}

// A train is handed over as the pairs on its arbors make it, forwards or back.
func TestTrainOf(t *testing.T) {
	r := solve.Solve(context.Background(), sample(t))
	for _, train := range r.Trains {
		of, ok := packet.TrainOf(r, train)
		require.True(t, ok)
		require.Len(t, of.Arbors, len(train.Pairs)+1)
		last := of.Arbors[len(of.Arbors)-1]
		require.Zero(t, last.Turns.Cmp(train.Way.Ratio), "the arbors' turns come to the train's ratio")
		for i, p := range train.Pairs {
			require.InDelta(t, p.Turn.Centres, of.Arbors[i].Centres, 1e-9)
			require.InDelta(t, p.Nominal, of.Arbors[i].Driver.Radius+of.Arbors[i+1].Driven.Radius, 1e-9)
		}
	}
	_, ok := packet.TrainOf(r, &solve.Train{Part: r.Trains[0].Part})
	require.False(t, ok)
}

// A train through a part that cannot be built is drawn at the size of its mate, and left
// out of the packet where neither of a pair has a size.
func TestTrainThroughAPartWithoutSize(t *testing.T) {
	j := sample(t)
	whole := solve.Solve(context.Background(), j)
	want, _ := packet.TrainOf(whole, whole.Trains[0])
	j, err := j.Set("third-pinion", "module", "")
	require.NoError(t, err)
	r := solve.Solve(context.Background(), j)
	got, ok := packet.TrainOf(r, r.Trains[0])
	require.True(t, ok)
	for i, a := range got.Arbors {
		require.InDelta(t, want.Arbors[i].Driven.Radius, a.Driven.Radius, 1e-9)
		require.Equal(t, want.Arbors[i].Driven.Count, a.Driven.Count)
	}
	j, err = j.Set("centre", "teeth.module", "")
	require.NoError(t, err)
	r = solve.Solve(context.Background(), j)
	require.NotNil(t, r.Trains[0].Way)
	require.False(t, packet.Train.Needs(r.Trains[0]))
	require.NotContains(t, titles(build(t, j, options(t, j))), "Great wheel – Escape wheel: the train")
}

func TestBackwardTrain(t *testing.T) {
	j, err := job.Read(strings.NewReader(`{"tipline": 1, "wheels": [{"id": "w", "teeth": {"form": "cycloidal", "count": 80, "module": 0.6, "leaves": 8}}],
		"pinions": [{"id": "p", "form": "cycloidal", "leaves": 8, "module": 0.6}],
		"arbors": [{"id": "first", "parts": ["w"]}],
		"pairs": [{"id": "mesh", "wheel": "w", "pinion": "p"}], "trains": [{"id": "back", "from": "p", "to": "first"}]}`))
	require.NoError(t, err)
	r := solve.Solve(context.Background(), j)
	of, ok := packet.TrainOf(r, r.Trains[0])
	require.True(t, ok)
	require.Equal(t, template.Toothed{Name: "p", Count: 8, Radius: 2.4, Leaves: true}, of.Arbors[0].Driver)
	require.Equal(t, "first", of.Arbors[1].Name)
	require.Equal(t, 80, of.Arbors[1].Driven.Count)
	require.Equal(t, "1/10", of.Arbors[1].Turns.RatString())
}

// What a pinion, a pair or a train lacks is named on the cover like a wheel's.
func TestCoverSpeaksOfEveryPart(t *testing.T) {
	j := sample(t)
	cover := func(part string, field geometry.Quantity, text string) render.Page {
		broken, err := j.Set(part, field, text)
		require.NoError(t, err)
		return front(build(t, broken, options(t, j)))
	}
	page := cover("third-pinion", "leaves", "many")
	require.True(t, says(page, "Third pinion: not in this packet, for it cannot be made yet: Blank card, Dividing card, Shroud drilling template."))
	require.True(t, says(page, "Depthing card"), "its pair cannot be put in mesh")
	page = cover("centre-pinion", "module", "1 kg")
	require.True(t, says(page, "Centre pinion: not in this packet, for it cannot be made yet: Blank card, Grinding template, Setting card, Depth card, Dividing card."))
	sound := front(build(t, j, options(t, j)))
	for _, text := range []string{"Pairs in mesh", "Great wheel – Centre pinion", "48.000 mm", "7 : 1", "Third pinion"} {
		require.True(t, says(sound, text), text)
	}
}

// A lantern pinion of whatever size a clock has takes one sheet for its shrouds.
func TestShroudsTakeOneSheet(t *testing.T) {
	for _, leaves := range []int{6, 8, 11, 16, 30, 60} {
		for _, module := range []float64{0.3, 0.6, 1, 1.5} {
			if float64(leaves)*module > 45 {
				continue
			}
			j, err := job.Read(strings.NewReader(fmt.Sprintf(`{"tipline": 1, "pinions": [{"id": "p", "form": "lantern", "leaves": %d, "module": %g}]}`, leaves, module)))
			require.NoError(t, err)
			r := solve.Solve(context.Background(), j)
			for _, paper := range []string{"a4", "letter"} {
				o := options(t, j)
				o.Paper, err = sheet.ParsePaper(paper)
				require.NoError(t, err)
				doc, err := packet.One(t.Context(), r, r.Pinions[0], packet.Shroud, 1, o)
				require.NoError(t, err)
				require.Len(t, doc.Pages, 1, "%d trundles of module %v on %s", leaves, module, paper)
			}
		}
	}
}

// A dividing card printed by itself goes on until every tooth is listed.
func TestOneDividingCardHasEveryTooth(t *testing.T) {
	for count, sheets := range map[int]int{72: 1, 127: 2, 2000: 13} {
		j, err := sample(t).Set("third", "teeth.count", strconv.Itoa(count))
		require.NoError(t, err)
		r := solve.Solve(context.Background(), j)
		doc, err := packet.One(t.Context(), r, r.Part("third"), packet.Dividing, 1, options(t, j))
		require.NoError(t, err)
		require.Len(t, doc.Pages, sheets, "%d teeth", count)
		last := doc.Pages[sheets-1]
		require.True(t, says(last, fmt.Sprintf("%d of %d", sheets, sheets)))
	}
}

func TestOnePartOfAnyKind(t *testing.T) {
	j := sample(t)
	for part, kinds := range map[string]int{"third-pinion": 3, "great-centre": 2, "going": 1} {
		o := options(t, j)
		o.Parts = []string{part}
		require.Len(t, titles(build(t, j, o)), kinds+2, "%s, with its cover and the cautions", part)
	}
}

// Parts and kinds are chosen, each by itself or both; what is of no part comes only
// where its own kind is asked for, and the list of stock only with every part.
func TestChosenPartsAndKinds(t *testing.T) {
	j := sample(t)
	o := options(t, j)
	o.Parts, o.Kinds = []string{"great", "escape"}, []packet.Kind{packet.Crossing, packet.Scribing}
	require.Equal(t, []string{"Great wheel", "Great wheel: scribing", "Escape wheel", "Escape wheel: scribing"}, titles(build(t, j, o)))
	o.Kinds = []packet.Kind{packet.Cover, packet.Stock, packet.Cautions}
	require.Len(t, build(t, j, o).Pages, 2)
	o.Parts = nil
	require.Len(t, build(t, j, o).Pages, 4)
	o.Kinds = []packet.Kind{packet.Stock}
	require.Len(t, build(t, j, o).Pages, 2)
}

func TestCopiesRepeatTemplatesOnly(t *testing.T) {
	j := sample(t)
	o := options(t, j)
	o.Parts = []string{"escape"}
	one := titles(build(t, j, o))
	o.Copies = 3
	three := titles(build(t, j, o))
	count := func(ts []string, name string) int {
		n := 0
		for _, title := range ts {
			if title == name {
				n++
			}
		}
		return n
	}
	for name, times := range map[string]int{
		"Escape wheel": 3, "Escape wheel: cutter": 3, "Escape wheel: the blank": 1, "Escape wheel: setting and depth": 1,
	} {
		require.Equal(t, count(one, name)*times, count(three, name), name)
	}
}

func TestCoverSaysWhatIsMissing(t *testing.T) {
	j := sample(t)
	broken, err := j.Set("third", "teeth.module", "many")
	require.NoError(t, err)
	d := build(t, broken, options(t, j))
	require.True(t, says(front(d), "Third wheel: not in this packet"))
	require.NotContains(t, titles(d), "Third wheel")
	require.Contains(t, titles(d), "Hour wheel")
}

// A crossing that was asked for and cannot be built leaves no template without windows in
// the packet; a wheel that is not to be crossed has one of its tips.
func TestCrossingThatCannotBeBuiltIsLeftOut(t *testing.T) {
	j := sample(t)
	broken, err := j.Set("third", "crossing.hub", "70 mm")
	require.NoError(t, err)
	d := build(t, broken, options(t, j))
	require.True(t, says(front(d), "Third wheel: not in this packet, for it cannot be made yet: Crossing template, Scribing card"))
	require.NotContains(t, titles(d), "Third wheel")
	require.Contains(t, titles(d), "Third wheel: dividing")
	plain, err := job.Read(strings.NewReader(`{"tipline": 1, "wheels": [{"id": "plain", "name": "Plain wheel",
		"teeth": {"form": "measured", "count": 72, "tip_diameter": 60, "root_diameter": 55}}]}`))
	require.NoError(t, err)
	require.Contains(t, titles(build(t, plain, options(t, plain))), "Plain wheel")
}

// Every sheet keeps within its paper, says its number, and has the bars.
func TestEverySheet(t *testing.T) {
	j := sample(t)
	for _, name := range []string{"a4", "a3", "letter", "legal", "tabloid", "150x210mm"} {
		o := options(t, j)
		var err error
		o.Paper, err = sheet.ParsePaper(name)
		require.NoError(t, err)
		d := build(t, j, o)
		for i, p := range d.Pages {
			paper := geometry.Box{Max: geometry.Point{X: p.Width, Y: p.Height}}
			b := p.Drawing.Bounds()
			require.True(t, paper.Contains(b.Min) && paper.Contains(b.Max), "%s, sheet %d, %s: %v", name, i+1, p.Drawing.Title, b)
			require.True(t, says(p, "100 mm: measured"), p.Drawing.Title)
		}
	}
}

func TestSameBytes(t *testing.T) {
	j := sample(t)
	var first, second bytes.Buffer
	require.NoError(t, pdf.Write(&first, build(t, j, options(t, j))))
	require.NoError(t, pdf.Write(&second, build(t, sample(t), options(t, j))))
	require.True(t, bytes.Equal(first.Bytes(), second.Bytes()))
}

func TestBuildGivesWay(t *testing.T) {
	j := sample(t)
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	_, err := packet.Build(ctx, solve.Solve(context.Background(), j), options(t, j))
	require.ErrorIs(t, err, context.Canceled)
}

func BenchmarkPacketOfSample(b *testing.B) {
	j := sample(b)
	o := options(b, j)
	b.ReportAllocs()
	for b.Loop() {
		require.NoError(b, pdf.Write(io.Discard, build(b, j, o)))
	}
}
