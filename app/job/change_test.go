package job

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/geometry"
)

func TestChanges(t *testing.T) {
	set := func(part string, field geometry.Quantity, text string) func(*Job) (*Job, error) {
		return func(j *Job) (*Job, error) { return j.Set(part, field, text) }
	}
	for _, row := range []struct {
		name string
		edit func(*Job) (*Job, error)
		want []Change
	}{
		{"nothing", set("a", "bore", "6"), nil},
		{"a field", set("a", "bore", "7"), []Change{{Changed, "a", "bore", "6", "7"}}},
		{"the job's own", set("", "title", "Three"), []Change{{Changed, "", "title", "Two", "Three"}}},
		{"a step begun", set("a", "crossing.rim", "2 mm"), []Change{{Changed, "a", "crossing.rim", "", "2 mm"}}},
		{"of an item", set("b", "additions[0].kind", "note"), []Change{{Changed, "b", "additions[0].kind", "hole", "note"}}},
		{"an item begun", set("b", "additions[1].kind", "line"), []Change{{Changed, "b", "additions[1].kind", "", "line"}}},
		{"a list", set("arbor", "parts", "p"), []Change{{Changed, "arbor", "parts", "a, p", "p"}}},
		{"another id", set("a", "id", "great"), []Change{
			{Renamed, "great", "", "a", "great"},
			{Changed, "arbor", "parts", "a, p", "great, p"},
			{Changed, "stack", "wheels", "a, b", "great, b"},
			{Changed, "train", "from", "a", "great"},
			{Changed, "train", "hour", "a", "great"},
		}},
		{"added", func(j *Job) (*Job, error) { next, _, err := j.Add("pinion", "Q"); return next, err }, []Change{{Act: Added, Part: "q"}}},
		{"duplicated", func(j *Job) (*Job, error) { next, _, err := j.Duplicate("a"); return next, err }, []Change{{Act: Added, Part: "a-2"}}},
		{"moved", func(j *Job) (*Job, error) { return j.Move("b", -1) }, []Change{{Act: Moved, Part: "a", Is: "b"}}},
		{"deleted, with its pair", func(j *Job) (*Job, error) { return j.Delete("p") }, []Change{
			{Act: Deleted, Part: "p"}, {Act: Deleted, Part: "pair"}, {Changed, "arbor", "parts", "a, p", "a"},
		}},
	} {
		t.Run(row.name, func(t *testing.T) {
			before := twoWheels(t)
			after, err := row.edit(before)
			require.NoError(t, err)
			require.Equal(t, row.want, Changes(before, after))
			require.Equal(t, before, twoWheels(t), "neither job is touched")
		})
	}
}

func TestOneOfThreeMoves(t *testing.T) {
	j := New("mm")
	for _, name := range []string{"a", "b", "c"} {
		j, _, _ = j.Add("cycloidal", name)
	}
	moved, err := j.Move("a", 2)
	require.NoError(t, err)
	require.Equal(t, []Change{{Act: Moved, Part: "a"}}, Changes(j, moved))
}

func TestStepsOfTheHistory(t *testing.T) {
	h := NewHistory(twoWheels(t))
	typed(t, h, "bore", "7")
	typed(t, h, "teeth.count", "80")
	all, stand := h.Steps()
	require.Equal(t, []int{2, 2}, []int{all, stand})
	require.Equal(t, []Change{{Changed, "a", "bore", "6", "7"}}, h.Step(1))
	require.Equal(t, []Change{{Changed, "a", "teeth.count", "72", "80"}}, h.Step(2))
	require.Same(t, h.After(0), h.Go(0))
	_, stand = h.Steps()
	require.Zero(t, stand)
	require.Same(t, h.After(2), h.Go(9), "no further than there are steps")
}

func TestCalled(t *testing.T) {
	j := twoWheels(t)
	for id, want := range map[string]string{
		"a": "First", "b": "b", "p": "p", "arbor": "arbor", "pair": "b – p", "stack": "First + b",
		"train": "First – b", "": "", "nobody": "nobody",
	} {
		require.Equal(t, want, j.Called(id), id)
	}
	j, err := j.Set("stack", "wheels", "a, lost")
	require.NoError(t, err)
	require.Equal(t, "stack", j.Called("stack"))
	j, err = j.Set("stack", "wheels", "")
	require.NoError(t, err)
	require.Equal(t, "stack", j.Called("stack"))
}

func TestFreeName(t *testing.T) {
	j := New("mm")
	for _, want := range []string{"Wheel", "Wheel 2", "Wheel 3"} {
		require.Equal(t, want, j.FreeName("Wheel"))
		j, _, _ = j.Add("cycloidal", want)
	}
	require.Equal(t, "Wheel 4", j.FreeName("Wheel 2"))
	require.Equal(t, "Wheel 7", j.FreeName("Wheel 7"))
	j, id, err := j.Duplicate("wheel-3")
	require.NoError(t, err)
	require.Equal(t, "Wheel 4", j.Wheel(id).Name)
}
