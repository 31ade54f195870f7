package desk

import (
	"os"
	"path/filepath"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestPagesAreTurnedAndPrinted(t *testing.T) {
	d, _ := opened(t)
	require.Zero(t, d.Page().Width())
	d.Go(Paper)
	count, page := d.Pages()
	require.Greater(t, count, 10)
	require.Zero(t, page)
	cover, _ := d.Drawing()
	d.TurnTo(1)
	second, _ := d.Drawing()
	require.NotSame(t, cover, second)
	d.TurnTo(count + 5)
	_, page = d.Pages()
	require.Equal(t, count-1, page)
	require.InDelta(t, 210*297, d.Page().Width()*d.Page().Height(), 1e-6)
	name := filepath.Join(t.TempDir(), "packet.pdf")
	printed, err := written(d, name)
	require.NoError(t, err)
	require.Equal(t, count, printed)
	data, err := os.ReadFile(name)
	require.NoError(t, err)
	require.Equal(t, "%PDF", string(data[:4]))
	_, err = written(d, filepath.Join(t.TempDir(), "no", "folder.pdf"))
	var refusal *Refusal
	require.ErrorAs(t, err, &refusal)
	require.Contains(t, refusal.Say(d.Words().Say), "folder.pdf could not be written: no such file or directory")
}

// written exports what is chosen of the packet.
func written(d *Desk, name string) (pages int, err error) {
	d.Export(d.Packet(), name, func(int, int) {}, func(n int, e error) { pages, err = n, e })
	return pages, err
}

func TestPaperAndCopiesAreThePrinters(t *testing.T) {
	d, _ := opened(t)
	d.Go(Paper)
	count, _ := d.Pages()
	before := d.Job()
	d.Type("", "printing.paper", "letter")
	require.InDelta(t, 215.9*279.4, d.Page().Width()*d.Page().Height(), 1e-6)
	d.Type("", "printing.copies", "2")
	more, _ := d.Pages()
	require.Greater(t, more, count)
	require.Less(t, more, 2*count)
	d.Type("", "printing.copies", "many")
	require.NotEmpty(t, fieldOf(t, d, "printing.copies").Refusal)
	require.Same(t, before, d.Job())
	require.False(t, d.CanUndo())
	d.Type("", "printing.paper", "")
	d.Type("", "units", "in")
	require.Equal(t, "letter", d.paper().Name)
}

func TestCompareTellsWhatOtherArmsWouldCome(t *testing.T) {
	d, _ := opened(t)
	require.Len(t, d.Tables(), 1)
	c, l, u := d.Tables()[0], d.wheel().Crossing, d.Style().Units
	require.Equal(t, []string{"arms", "4", "5", "6", "none"}, c.Head)
	require.Equal(t, "6", c.Head[c.Chosen])
	for i, figure := range []string{u.Number(l.Mass, 1), u.Number(l.Inertia, 0), u.Number(l.WindUp, 2), u.Number(100*l.RemovedShare, 0), u.Bare(l.Narrowest.Width)} {
		require.Len(t, c.Rows[i], 5)
		require.Equal(t, figure, c.Rows[i][c.Chosen])
	}
	require.Equal(t, u.Number(l.Uncrossed.Mass, 1), c.Rows[0][4])
	for _, arms := range []string{"3", "12"} {
		d.Type(d.Part(), "crossing.arms", arms)
		c := d.Tables()[0]
		require.Equal(t, arms, c.Head[c.Chosen])
	}
	d.Go(Blank)
	require.Empty(t, d.Tables())
}

func TestAHintSaysALengthInTheJobsUnit(t *testing.T) {
	d, _ := opened(t)
	for _, row := range []struct{ text, hint string }{
		{"1/2 in", "= 12.70 mm"},
		{"#60", "= 1.02 mm"},
		{"13 mm", d.Words().Say("help.crossing.hub")},
		{"13", d.Words().Say("help.crossing.hub")},
		{"13,5 mm", d.Words().Say("help.crossing.hub")},
		{"thick", d.Words().Say("help.crossing.hub")},
	} {
		d.Type(d.Part(), "crossing.hub", row.text)
		require.Equal(t, row.hint, fieldOf(t, d, "crossing.hub").Hint, row.text)
	}
}

func TestRecentKeepsTheLatestTen(t *testing.T) {
	r := Recent{File: filepath.Join(t.TempDir(), "state", "recent")}
	require.Empty(t, r.List())
	for _, name := range []string{"/a", "/b", "/c", "/d", "/e", "/f", "/g", "/h", "/i", "/j", "/k", "/c"} {
		r.Add(name)
	}
	require.Equal(t, []string{"/c", "/k", "/j", "/i", "/h", "/g", "/f", "/e", "/d", "/b"}, r.List())
	Recent{}.Add("/x")
	require.Empty(t, Recent{}.List())
}

// Choosing inches keeps every length, says so, and is one step that undoing takes back.
func TestAnotherUnitKeepsEveryLength(t *testing.T) {
	d, _ := opened(t)
	d.Type("great", "crossing.rim", "4.0")
	d.Type("great", "crossing.hub", "18")
	rim, was := d.wheel().Crossing.RimRadius, fileOf(t, d)
	d.Go(Paper)
	require.Equal(t, "shown so; numbers without a unit are read so", fieldOf(t, d, "units").Hint)
	d.Type("", "units", "in")
	require.Equal(t, "2 lengths typed without a unit now say mm: nothing has changed its size", fieldOf(t, d, "units").Hint)
	list, stand := sentences(d)
	require.Equal(t, "Lengths in: millimetres → inches", list[stand-1])
	d.Go(Crossing)
	require.Equal(t, "= 0.157 in", fieldOf(t, d, "crossing.rim").Hint)
	require.Equal(t, rim, d.wheel().Crossing.RimRadius)
	d.Undo()
	require.Equal(t, was, fileOf(t, d))
	d.Redo()
	d.Type("", "units", "mm")
	require.Equal(t, rim, d.wheel().Crossing.RimRadius)
	text, _ := d.Job().Text("great", "crossing.rim")
	require.Equal(t, "4.0 mm", text)
}

// That another unit has another paper is said where the paper is chosen, until one is.
func TestThePaperThatGoesByTheUnitIsTold(t *testing.T) {
	d, _ := opened(t)
	d.Go(Paper)
	hint := func() string { return fieldOf(t, d, paperField).Hint }
	require.Equal(t, "the usual one for mm, until another is chosen", hint())
	d.Type("", UnitsField, "in")
	require.Equal(t, "letter", d.paper().Name)
	require.Equal(t, "now Letter, the usual one for in: none was chosen", hint())
	d.Type("", paperField, "a4")
	require.Empty(t, hint())
}
