package job

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/geometry"
)

func twoWheels(t require.TestingT) *Job {
	return read(t, `{"tipline": 1, "title": "Two", "wheels": [
		{"id": "a", "name": "First", "bore": 6, "teeth": {"form": "cycloidal", "count": 72}},
		{"id": "b", "additions": [{"kind": "hole"}], "crossing": {"arms": 5}, "dividing": {"circles": [15, 16]}}],
		"pinions": [{"id": "p", "leaves": 8}],
		"arbors": [{"id": "arbor", "parts": ["a", "p"]}],
		"pairs": [{"id": "pair", "wheel": "b", "pinion": "p"}],
		"stacks": [{"id": "stack", "wheels": ["a", "b"], "tips": [3, 4]}],
		"trains": [{"id": "train", "from": "a", "to": "b", "hour": "a"}]}`)
}

func TestTextAndSet(t *testing.T) {
	for _, row := range []struct {
		part  string
		field geometry.Quantity
		was   string
		typed string
		file  string // what the new file says
	}{
		{"", "title", "Two", "Three", `"title": "Three"`},
		{"", "units", "", "in", `"units": "in"`},
		{"a", "name", "First", "Première", `"name": "Première"`},
		{"a", "bore", "6", "6.5", `"bore": 6.5`},
		{"a", "bore", "6", "1/4 in", `"bore": "1/4 in"`},
		{"a", "teeth.count", "72", "80", `"count": 80`},
		{"a", "teeth.count", "72", "eighty", `"count": "eighty"`},
		{"a", "teeth.module", "", "0.8", `"module": "0.8"`},
		{"a", "crossing.rim", "", "2 mm", `"crossing": {"rim": "2 mm"}`},
		{"a", "crossing.arms", "", "6", `"crossing": {"arms": 6}`},
		{"a", "mount.collet.bore", "", "5 mm", `"mount": {"collet": {"bore": "5 mm"}}`},
		{"b", "additions[0].diameter", "", "1 mm", `"additions": [{"kind": "hole", "diameter": "1 mm"}]`},
		{"b", "additions[1].kind", "", "note", `{"kind": "note"}`},
		{"b", "additions[0].kind", "hole", "", `"additions": [{}]`},
		{"b", "crossing.arms", "5", "", `"additions": [{"kind": "hole"}]`},
		{"b", "dividing.circles", "15, 16", "15,16, 17x,", `"circles": [15, 16, "17x"]`},
		{"b", "dividing.circles", "15, 16", "", `{"id": "b", "crossing"`},
		{"p", "leaves", "8", "10", `"leaves": 10`},
		{"p", "ratio", "", "7.5", `"ratio": "7.5"`},
		{"arbor", "parts", "a, p", "b", `"parts": ["b"]`},
		{"stack", "wheels", "a, b", "b , a", `"wheels": ["b", "a"]`},
		{"stack", "mount.screws", "", "4", `"mount": {"screws": 4}`},
		{"pair", "centres", "", "30 mm", `"centres": "30 mm"`},
		{"a", "cutter.bit.photograph.file", "", "bit.png", `"photograph": {"file": "bit.png"}`},
		{"b", "cutter.bit.photograph.origin", "", "12.5 -30", `"origin": [[12.5, -30]]`},
	} {
		t.Run(row.part+"."+string(row.field)+" "+row.typed, func(t *testing.T) {
			j := twoWheels(t)
			before := written(t, j)
			text, ok := j.Text(row.part, row.field)
			require.True(t, ok)
			require.Equal(t, row.was, text)
			next, err := j.Set(row.part, row.field, row.typed)
			require.NoError(t, err)
			require.Equal(t, before, written(t, j), "the job that was edited has changed")
			require.Contains(t, written(t, next), row.file)
			if !strings.Contains(row.typed, ",") {
				text, _ = next.Text(row.part, row.field)
				require.Equal(t, row.typed, text)
			}
			back, err := next.Set(row.part, row.field, row.was)
			require.NoError(t, err)
			text, _ = back.Text(row.part, row.field)
			require.Equal(t, row.was, text)
		})
	}
}

func TestEmptyingTheLastFieldOfAStepTakesTheStepAway(t *testing.T) {
	j, err := twoWheels(t).Set("b", "crossing.arms", "")
	require.NoError(t, err)
	require.Nil(t, j.Wheel("b").Crossing)
	j, err = twoWheels(t).Clear("a", "teeth")
	require.NoError(t, err)
	require.Nil(t, j.Wheel("a").Teeth)
	_, err = twoWheels(t).Clear("a", "bore")
	require.EqualError(t, err, "There is no field a.bore.")
}

// A measured bit's corners are added one after the last and taken out again.
func TestCornersOfTheBit(t *testing.T) {
	j := twoWheels(t)
	var err error
	for i, x := range []string{"0", "1", "2"} {
		at := geometry.Quantity("cutter.bit.chain[" + strconv.Itoa(i) + "].x")
		j, err = j.Set("a", at, x)
		require.NoError(t, err)
	}
	require.Contains(t, written(t, j), `"chain": [{"x": "0"}, {"x": "1"}, {"x": "2"}]`)
	before := written(t, j)
	less, err := j.Remove("a", "cutter.bit.chain[1]")
	require.NoError(t, err)
	require.Equal(t, before, written(t, j), "the job that was edited has changed")
	require.Contains(t, written(t, less), `"chain": [{"x": "0"}, {"x": "2"}]`)
	h := NewHistory(j)
	h.Do(less)
	require.Same(t, j, h.Undo())
	for range 2 {
		less, err = less.Remove("a", "cutter.bit.chain[0]")
		require.NoError(t, err)
	}
	require.Nil(t, less.Wheel("a").Cutter, "a step left empty goes")
	for _, item := range []geometry.Quantity{
		"cutter.bit.chain[3]", "cutter.bit.chain", "cutter.bit.chain[0].x", "cutter.bit", "cutter.bit.photograph[0]", "colour[0]",
	} {
		_, err = j.Remove("a", item)
		require.ErrorContains(t, err, "There is no field", item)
	}
	_, err = j.Remove("b", "cutter.bit.chain[0]")
	require.ErrorContains(t, err, "There is no field")
}

func TestNoSuchField(t *testing.T) {
	j := twoWheels(t)
	for _, row := range []struct {
		part  string
		field geometry.Quantity
	}{
		{"a", ""},
		{"a", "teeth"},
		{"a", "teeth."},
		{"a", "teeth.colour"},
		{"a", "colour"},
		{"a", "bore.x"},
		{"a", "teeth[0].count"},
		{"b", "additions"},
		{"b", "additions[2].kind"},
		{"b", "additions[-1].kind"},
		{"b", "additions[x].kind"},
		{"b", "additions[0"},
		{"nobody", "bore"},
		{"", "wheels"},
		{"", "tipline"},
	} {
		text, ok := j.Text(row.part, row.field)
		require.False(t, ok, "%s.%s", row.part, row.field)
		require.Empty(t, text)
		_, err := j.Set(row.part, row.field, "1")
		require.ErrorContains(t, err, "There is no field")
	}
}

func TestSettingTheSameIsNoEdit(t *testing.T) {
	j := twoWheels(t)
	same, err := j.Set("a", "teeth.count", "72")
	require.NoError(t, err)
	require.Same(t, j, same)
}

func TestSetSharesWhatItDoesNotTouch(t *testing.T) {
	j := twoWheels(t)
	next, err := j.Set("a", "teeth.count", "80")
	require.NoError(t, err)
	require.NotSame(t, j.Wheels[0], next.Wheels[0])
	require.Same(t, j.Wheels[1], next.Wheels[1])
	require.Same(t, j.Pinions[0], next.Pinions[0])
	next, err = j.Set("b", "crossing.rim", "1 mm")
	require.NoError(t, err)
	require.Same(t, j.Wheels[1].Additions[0], next.Wheels[1].Additions[0])
	require.Same(t, j.Wheels[1].Dividing, next.Wheels[1].Dividing)
	require.NotSame(t, j.Wheels[1].Crossing, next.Wheels[1].Crossing)
}

// Every edit of a random job leaves that job as it was, and can be read back.
func TestNoEditChangesTheJobItIsMadeOf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		j := anyJob(t)
		before, snapshot := written(t, j), read(t, written(t, j))
		id := anyPart(t, j)
		field := rapid.SampledFrom(Fields()).Draw(t, "field").Path
		text := rapid.SampledFrom([]string{"", "1", "3/8 in", "x"}).Draw(t, "typed")
		by := rapid.IntRange(-3, 3).Draw(t, "by")
		for _, edit := range []struct {
			name string
			make func() (*Job, error)
		}{
			{"set", func() (*Job, error) { return j.Set(id, firstItem(field), text) }},
			{"remove", func() (*Job, error) { return j.Remove(id, listOf(field)) }},
			{"delete", func() (*Job, error) { return j.Delete(id) }},
			{"rename", func() (*Job, error) { return j.Rename(id, "fresh") }},
			{"move", func() (*Job, error) { return j.Move(id, by) }},
			{"duplicate", func() (*Job, error) { next, _, err := j.Duplicate(id); return next, err }},
			{"add", func() (*Job, error) { next, _, err := j.Add("pointed", "Escape"); return next, err }},
		} {
			next, err := edit.make()
			if err == nil {
				require.Equal(t, written(t, next), written(t, read(t, written(t, next))), edit.name)
			}
			require.Equal(t, before, written(t, j), edit.name)
			require.Equal(t, snapshot, j, edit.name)
		}
	})
}

// firstItem names the first item where a field stands in a list of groups.
func firstItem(field geometry.Quantity) geometry.Quantity {
	s := strings.Replace(string(field), "additions", "additions[0]", 1)
	return geometry.Quantity(strings.Replace(s, "chain", "chain[0]", 1))
}

// listOf names the first item of the list of groups that a field stands in.
func listOf(field geometry.Quantity) geometry.Quantity {
	item, _, _ := strings.Cut(string(firstItem(field)), "].")
	return geometry.Quantity(strings.TrimSuffix(item, "]") + "]")
}

func anyPart(t *rapid.T, j *Job) string {
	ids := []string{""}
	for _, w := range j.Wheels {
		ids = append(ids, w.ID)
	}
	for _, p := range j.Pinions {
		ids = append(ids, p.ID)
	}
	for _, s := range j.Stacks {
		ids = append(ids, s.ID)
	}
	return rapid.SampledFrom(ids).Draw(t, "part")
}
