package job

import (
	"strconv"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func excerpt(t *testing.T, j *Job, id string) *Job {
	cut, err := j.Excerpt(id)
	require.NoError(t, err)
	return read(t, written(t, cut)) // as it comes from a clipboard
}

func TestExcerptHoldsWhatThePartNeeds(t *testing.T) {
	for id, want := range map[string][]string{
		"a": {"a"}, "p": {"p"}, "arbor": {"a", "p", "arbor"}, "pair": {"b", "p", "pair"}, "stack": {"a", "b", "stack"},
		"train": {"a", "b", "p", "arbor", "pair", "train"},
	} {
		require.Equal(t, want, excerpt(t, twoWheels(t), id).ids(), id)
	}
	_, err := twoWheels(t).Excerpt("nobody")
	require.Error(t, err)
	_, err = twoWheels(t).Excerpt("")
	require.Error(t, err)
}

func TestPasteIntoAnotherJob(t *testing.T) {
	for id := range map[string]bool{"a": true, "pair": true, "stack": true, "train": true} {
		cut := excerpt(t, twoWheels(t), id)
		j, root, err := New("").Paste(cut)
		require.NoError(t, err)
		require.Equal(t, id, root)
		require.Equal(t, written(t, cut), written(t, j), id)
	}
}

// In the job it came from a part becomes two; what it needs is there already.
func TestPasteIntoTheSameJob(t *testing.T) {
	j, root, err := twoWheels(t).Paste(excerpt(t, twoWheels(t), "pair"))
	require.NoError(t, err)
	require.Equal(t, "pair-2", root)
	require.Len(t, j.Wheels, 2)
	require.Equal(t, &Pair{ID: "pair-2", Wheel: "b", Pinion: "p"}, j.Pairs[1])
	j, root, err = twoWheels(t).Paste(excerpt(t, twoWheels(t), "a"))
	require.NoError(t, err)
	require.Equal(t, "a-2", root)
	require.Equal(t, "First 2", j.Wheel("a-2").Name)
	require.Equal(t, twoWheels(t), mustDelete(t, j, "a-2"))
}

func mustDelete(t *testing.T, j *Job, id string) *Job {
	next, err := j.Delete(id)
	require.NoError(t, err)
	return next
}

// Where the ids are taken by other parts, the pasted ones get free ids in every mention.
func TestPasteGivesFreeIDs(t *testing.T) {
	into := read(t, `{"tipline": 1, "wheels": [{"id": "b", "name": "Other"}, {"id": "b-2"}], "pinions": [{"id": "pair"}]}`)
	j, root, err := into.Paste(excerpt(t, twoWheels(t), "pair"))
	require.NoError(t, err)
	require.Equal(t, "pair-2", root)
	require.Equal(t, []*Pair{{ID: "pair-2", Wheel: "b-3", Pinion: "p"}}, j.Pairs)
	require.Equal(t, "Other", j.Wheel("b").Name)
	require.NotNil(t, j.Wheel("b-3").Crossing)
	_, err = Read(strings.NewReader(written(t, j)))
	require.NoError(t, err)
}

func TestPasteKeepsUnitsAndUnknownFields(t *testing.T) {
	from := read(t, `{"tipline": 1, "units": "in", "wheels": [{"id": "a", "bore": 0.25, "thickness": "3/32", "colour": "red",
		"teeth": {"count": 30, "tip_diameter": "2 in", "undercut": 10, "odd": 1}, "crossing": {"arms": 5, "rim": "1 3/8"},
		"additions": [{"kind": "hole", "diameter": 0.1}]}]}`)
	j, _, err := New("mm").Paste(excerpt(t, from, "a"))
	require.NoError(t, err)
	w := j.Wheel("a")
	require.Equal(t, "0.25 in", w.Bore.Text)
	require.Equal(t, "3/32 in", w.Thickness.Text)
	require.Equal(t, "2 in", w.Teeth.TipDiameter.Text)
	require.Equal(t, "30", w.Teeth.Count.Text)
	require.Equal(t, "10", w.Teeth.Undercut.Text, "an angle has no unit of the job")
	require.Equal(t, "1 3/8 in", w.Crossing.Rim.Text)
	require.Equal(t, "0.1 in", w.Additions[0].Diameter.Text)
	require.Contains(t, written(t, j), `"colour": "red"`)
	require.Contains(t, written(t, j), `"odd": 1`)
	same, _, err := New("in").Paste(excerpt(t, from, "a"))
	require.NoError(t, err)
	require.Equal(t, "0.25", same.Wheel("a").Bore.Text, "in the same unit all stands as typed")
}

func TestPasteRefuses(t *testing.T) {
	_, _, err := New("mm").Paste(New("mm"))
	require.EqualError(t, err, "There is no part of a job on the clipboard.")
	full := New("mm")
	for len(full.Wheels) < maxParts {
		full.Wheels = append(full.Wheels, &Wheel{ID: strconv.Itoa(len(full.Wheels))})
	}
	_, _, err = full.Paste(excerpt(t, twoWheels(t), "a"))
	require.ErrorContains(t, err, "2000")
}

func TestDigestFollowsWhatIsPrinted(t *testing.T) {
	j := twoWheels(t)
	for _, row := range []struct {
		part, edited string
		field        geometry.Quantity
		text         string
		other        bool
	}{
		{"a", "a", "bore", "7", true},
		{"a", "b", "bore", "7", false},
		{"p", "b", "bore", "7", false},
		{"pair", "b", "bore", "7", true},
		{"pair", "a", "bore", "7", false},
		{"train", "p", "leaves", "9", true},
		{"a", "stack", "mount.screws", "4", true},
		{"a", "a", "note", "seen", false},
		{"pair", "p", "note", "seen", false},
		{"a", "", "title", "Another", false},
		{"a", "", "units", "in", true},
	} {
		next, err := j.Set(row.edited, row.field, row.text)
		require.NoError(t, err)
		require.Equal(t, row.other, j.Digest(row.part) != next.Digest(row.part), row)
	}
	require.Empty(t, j.Digest("nobody"))
	require.Equal(t, j.Digest("a"), read(t, written(t, j)).Digest("a"), "the same after saving and opening")
}
