package desk

import (
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

// fileOf returns the present job as it would be saved.
func fileOf(t *testing.T, d *Desk) string {
	var b strings.Builder
	require.NoError(t, d.Job().Write(&b))
	return b.String()
}

type edit struct {
	name, part string
	step       Step
	do         func(t *testing.T, d *Desk)
}

// edits are every kind of thing that can be done to a job: on which part and step, and how.
var edits = []edit{
	{"a field", "great", Crossing, func(t *testing.T, d *Desk) { letters(d, "great", "crossing.rim", "3", "3.", "3.5 mm") }},
	{"a field emptied", "great", Blank, func(t *testing.T, d *Desk) { d.Type("great", "thickness", "") }},
	{"a step begun", "click", Crossing, func(t *testing.T, d *Desk) { d.Type("click", "crossing.rim", "3 mm") }},
	{"an arrow key", "great", Crossing, func(t *testing.T, d *Desk) { require.True(t, d.Nudge("great", "crossing.rim", 1)) }},
	{"a handle", "great", Crossing, func(t *testing.T, d *Desk) {
		h := d.Handles()[0]
		d.Drag(h, h.At.Times(0.99))
		d.Drag(h, h.At.Times(0.98))
		d.Drop()
	}},
	{"a style", "great", Crossing, func(t *testing.T, d *Desk) { d.Type("great", "crossing.style", "swept") }},
	{"a form of teeth", "great", Blank, func(t *testing.T, d *Desk) { d.Type("great", "teeth.form", "ratchet") }},
	{"a suggestion", "day", Crossing, func(t *testing.T, d *Desk) { require.True(t, d.Suggest()) }},
	{"the unit", "great", Paper, func(t *testing.T, d *Desk) { d.Type("", "units", "in") }},
	{"the title", "great", Paper, func(t *testing.T, d *Desk) { letters(d, "", "title", "A", "An", "Another") }},
	{"a note", "great", Blank, func(t *testing.T, d *Desk) { letters(d, "great", "note", "L", "Lost", "Lost two teeth") }},
	{"the stock", "great", Cutter, func(t *testing.T, d *Desk) { d.Type("great", "cutter.stock_width", "3/8 in") }},
	{"circles", "great", Dividing, func(t *testing.T, d *Desk) { d.Type("great", "dividing.circles", "15, 16, 17") }},
	{"screws", "third", Mounting, func(t *testing.T, d *Desk) { d.Type("third", "mount.screws", "3") }},
	{"a part copied", "great", Blank, func(t *testing.T, d *Desk) { require.NoError(t, d.Duplicate()) }},
	{"a part deleted", "third", Blank, func(t *testing.T, d *Desk) { require.NoError(t, d.Delete()) }},
	{"a part moved", "great", Blank, func(t *testing.T, d *Desk) { require.NoError(t, d.Move(2)) }},
	{"a part named", "great", Blank, func(t *testing.T, d *Desk) { require.NoError(t, d.Rename("Main wheel")) }},
	{"a short name", "great-centre", Depthing, func(t *testing.T, d *Desk) { letters(d, "great-centre", "id", "f", "fi", "first") }},
	{"a part pasted", "great", Blank, func(t *testing.T, d *Desk) {
		text, err := d.Copied()
		require.NoError(t, err)
		require.NoError(t, d.Paste(text))
	}},
	{"a bit", "escape", Cutter, func(t *testing.T, d *Desk) { d.StartBit() }},
	{"a photograph", "escape", Cutter, func(t *testing.T, d *Desk) { require.NoError(t, d.UsePhotograph(scanned(t, "bit.png", 30))) }},
	{"an addition", "great", Crossing, func(t *testing.T, d *Desk) { d.AddAddition("hole") }},
	{"an addition's text", "great", Crossing, func(t *testing.T, d *Desk) { d.Type("great", "additions[0].radius", "7 mm") }},
	{"an addition taken away", "great", Crossing, func(t *testing.T, d *Desk) { d.DropAddition(0) }},
	{"a wheel put on a stack", "hour-pipe", Mounting, func(t *testing.T, d *Desk) { d.PutOnStack("minute") }},
	{"a wheel taken off a stack", "hour-pipe", Mounting, func(t *testing.T, d *Desk) { d.TakeOffStack(1) }},
	{"a stack turned over", "hour-pipe", Mounting, func(t *testing.T, d *Desk) { d.Raise(0) }},
	{"a tip in line", "hour-pipe", Mounting, func(t *testing.T, d *Desk) { d.TypeTip(0, "5") }},
	{"a train's end", "going", Train, func(t *testing.T, d *Desk) { d.Type("going", "to", "third") }},
	{"an arbor", "going", Train, func(t *testing.T, d *Desk) { require.NoError(t, d.AddArbor()) }},
	{"an arbor taken away", "going", Train, func(t *testing.T, d *Desk) { require.NoError(t, d.DropArbor(d.Arbors()[0].ID)) }},
	{"a part put on an arbor", "going", Train, func(t *testing.T, d *Desk) { d.PutOn(d.Arbors()[0].ID, d.Arbors()[0].Free[0].Value) }},
	{"a part taken off an arbor", "going", Train, func(t *testing.T, d *Desk) { d.TakeOff(d.Arbors()[0].ID, d.Arbors()[0].Parts[0].Value) }},
}

// letters types texts in a field, one after the other.
func letters(d *Desk, part string, field geometry.Quantity, texts ...string) {
	for _, text := range texts {
		d.Type(part, field, text)
		if field == "id" {
			part = text
		}
	}
}

// everyEdit lists the edits and, for each kind of part, one that adds it.
func everyEdit() []edit {
	all := slices.Clone(edits)
	for _, kind := range Kinds() {
		all = append(all, edit{"a new " + kind, "great", Blank, func(t *testing.T, d *Desk) { require.NoError(t, d.Add(kind)) }})
	}
	return all
}

// Whatever is done is one step, and undoing it gives the same file to the last byte; so
// does doing it again.
func TestEveryKindOfEditIsUndoneInOneStep(t *testing.T) {
	for _, edit := range everyEdit() {
		t.Run(edit.name, func(t *testing.T) {
			d, _ := opened(t)
			d.Type("great", "bore", "8.0") // a bare length, so that another unit has something to spell
			d.AddAddition("circle")
			d.Choose(edit.part)
			d.Go(edit.step)
			require.Equal(t, edit.step, d.Step())
			before := fileOf(t, d)
			_, stood := d.Stages()
			edit.do(t, d)
			after := fileOf(t, d)
			require.NotEqual(t, before, after)
			_, stands := d.Stages()
			require.Equal(t, stood+1, stands)
			d.Undo()
			require.Equal(t, before, fileOf(t, d))
			d.Redo()
			require.Equal(t, after, fileOf(t, d))
		})
	}
}

// What is done to a bit and its photograph is undone in one step each too.
func TestWhatIsDoneToABitIsUndoneInOneStep(t *testing.T) {
	d := cutting(t)
	d.StartBit()
	require.NoError(t, d.UsePhotograph(scanned(t, "bit.png", 30)))
	for _, do := range []func(){
		d.AddCorner, func() { d.DropCorner(0) }, d.ClearBit, d.DropPhotograph,
		func() { d.Type("escape", "cutter.bit.chain[1].radius", "3 mm") },
		func() {
			require.True(t, d.StartPicking())
			for _, at := range []geometry.Point{{X: 1, Y: 1}, {X: 9, Y: 1}, {X: 4, Y: 2}, {X: 4, Y: 9}} {
				d.Pick(d.picking.lies.Place(at))
			}
		},
	} {
		before := fileOf(t, d)
		_, stood := d.Stages()
		do()
		require.NotEqual(t, before, fileOf(t, d))
		_, stands := d.Stages()
		require.Equal(t, stood+1, stands)
		d.Undo()
		require.Equal(t, before, fileOf(t, d))
	}
}

// What is undone or done again from the paper is gone to, since no page may show it.
func TestUndoingOnPaperLeadsToWhatItChanged(t *testing.T) {
	for name, do := range map[string]func(d *Desk){
		"a field": func(d *Desk) { d.Type("third", "crossing.rim", "3.3 mm") },
		"deleted": func(d *Desk) { d.Choose("third"); require.NoError(t, d.Delete()) },
		"copied":  func(d *Desk) { d.Choose("third"); require.NoError(t, d.Duplicate()) },
		"moved":   func(d *Desk) { d.Choose("third"); require.NoError(t, d.Move(1)) },
	} {
		t.Run(name, func(t *testing.T) {
			d, _ := opened(t)
			do(d)
			d.Choose("escape")
			d.Go(Paper)
			d.Pages()
			d.TickPage(0, false)
			d.Undo()
			require.Equal(t, Crossing, d.Step())
			if name != "copied" {
				require.Equal(t, "third", d.Part())
			}
			d.Go(Paper)
			d.Pages()
			require.False(t, d.Leaf(0).Printed, "what is left out stays so")
			d.Redo()
			require.Equal(t, Crossing, d.Step())
		})
	}
}
