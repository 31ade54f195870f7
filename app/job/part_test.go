package job

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
)

func TestFreeID(t *testing.T) {
	j := twoWheels(t)
	for _, row := range []struct{ name, want string }{
		{"Escape wheel", "escape-wheel"},
		{"  Great -- wheel! ", "great-wheel"},
		{"Grande roue nº 2", "grande-roue-nº-2"},
		{"Räderwerk", "räderwerk"},
		{"…", "part"},
		{"", "part"},
		{"A", "a-2"},
		{"Stack", "stack-2"},
	} {
		require.Equal(t, row.want, j.FreeID(row.name), row.name)
	}
}

func TestAdd(t *testing.T) {
	j := New("mm")
	for _, kind := range []string{"cycloidal", "pointed", "ratchet", "lantern driver", "measured"} {
		next, id, err := j.Add(kind, "New wheel")
		require.NoError(t, err)
		require.Equal(t, kind, next.Wheel(id).Teeth.Form.Text)
		require.Len(t, next.Wheels, len(j.Wheels)+1)
		require.Equal(t, next, read(t, written(t, next)))
		j = next
	}
	require.Equal(t, "new-wheel-5", j.Wheels[4].ID)
	_, _, err := j.Add("hexagonal", "Odd")
	require.EqualError(t, err, `There is no kind of part called "hexagonal".`)
}

// What goes with the wheels takes those that nothing has taken.
func TestAddWhatGoesWithWheels(t *testing.T) {
	j := New("mm")
	for _, add := range []struct{ kind, name string }{
		{"cycloidal", "a"},
		{"cycloidal", "b"},
		{"pointed", "escape"},
		{"pinion", "p"},
		{"lantern pinion", "q"},
		{"pair", "one"},
		{"pair", "two"},
		{"pair", "three"},
		{"arbor", "x"},
		{"arbor", "y"},
		{"train", "going"},
		{"stack", "s"},
		{"stack", "t"},
	} {
		before := written(t, j)
		next, id, err := j.Add(add.kind, add.name)
		require.NoError(t, err)
		require.Equal(t, add.name, id)
		require.Equal(t, before, written(t, j))
		require.Equal(t, next, read(t, written(t, next)))
		j = next
	}
	require.Equal(t, "cycloidal", j.Pinions[0].Form.Text)
	require.Equal(t, "lantern", j.Pinions[1].Form.Text)
	require.Equal(t, []*Pair{
		{ID: "one", Wheel: "a", Pinion: "p"}, {ID: "two", Wheel: "b", Pinion: "q"}, {ID: "three", Wheel: "b", Pinion: "q"},
	}, j.Pairs)
	require.Equal(t, []string{"p", "b"}, j.Arbors[0].Parts, "a drives p, so it stands on another arbor")
	require.Equal(t, []string{"q", "a"}, j.Arbors[1].Parts)
	require.Equal(t, &Train{ID: "going", From: "a", To: "escape"}, j.Trains[0])
	require.Equal(t, []*Stack{{ID: "s", Wheels: []string{"a", "b"}}, {ID: "t", Wheels: []string{"escape"}}}, j.Stacks)
	for _, kind := range Kinds() {
		_, _, err := New("in").Add(kind, "First")
		require.NoError(t, err, kind)
	}
}

func TestTwoEditsOfOneJobDoNotMeet(t *testing.T) {
	j := New("mm")
	for range 3 {
		j, _, _ = j.Add("cycloidal", "Wheel")
	}
	one, _, err := j.Add("cycloidal", "One")
	require.NoError(t, err)
	_, _, err = j.Add("cycloidal", "Other")
	require.NoError(t, err)
	require.Equal(t, "one", one.Wheels[3].ID)
}

func TestNoMoreThanTheMostParts(t *testing.T) {
	j := New("mm")
	for i := range maxParts {
		j.Arbors = append(j.Arbors, &Arbor{ID: strconv.Itoa(i)})
	}
	_, _, err := j.Add("cycloidal", "One too many")
	require.EqualError(t, err, "The job has more than 2000 parts, the most there may be.")
	_, _, err = j.Duplicate("7")
	require.Error(t, err)
}

func TestDuplicate(t *testing.T) {
	j, id, err := twoWheels(t).Duplicate("a")
	require.NoError(t, err)
	require.Equal(t, "a-2", id)
	require.Equal(t, []string{"a", "a-2", "b"}, ids(j))
	require.Same(t, j.Wheels[0].Teeth, j.Wheels[1].Teeth)
	_, _, err = j.Duplicate("nobody")
	require.EqualError(t, err, `The job has no part "nobody".`)
}

func TestDeleteTakesTheMentionsToo(t *testing.T) {
	j, err := twoWheels(t).Delete("b")
	require.NoError(t, err)
	require.Equal(t, []string{"a"}, ids(j))
	require.Empty(t, j.Pairs)
	require.Empty(t, j.Trains)
	require.Equal(t, []string{"a"}, j.Stacks[0].Wheels)
	require.Equal(t, []Value{Counted("3")}, j.Stacks[0].Tips)
	require.Equal(t, []string{"a", "p"}, j.Arbors[0].Parts)
	j, err = j.Delete("p")
	require.NoError(t, err)
	require.Equal(t, []string{"a"}, j.Arbors[0].Parts)
	_, err = j.Delete("p")
	require.Error(t, err)
}

func TestRenameFollowsTheMentions(t *testing.T) {
	j, err := twoWheels(t).Rename("a", "great")
	require.NoError(t, err)
	require.Equal(t, []string{"great", "b"}, ids(j))
	require.Equal(t, []string{"great", "p"}, j.Arbors[0].Parts)
	require.Equal(t, []string{"great", "b"}, j.Stacks[0].Wheels)
	require.Equal(t, "great", j.Trains[0].From)
	require.Equal(t, "great", j.Trains[0].Hour)
	j, err = j.Set("p", "id", "leaves")
	require.NoError(t, err)
	require.Equal(t, "leaves", j.Pairs[0].Pinion)
	for _, row := range []struct{ id, fresh, want string }{
		{"b", "great", `Another part has the id "great" already.`},
		{"b", "", "A part must have an id."},
		{"nobody", "x", `The job has no part "nobody".`},
	} {
		_, err = j.Rename(row.id, row.fresh)
		require.EqualError(t, err, row.want)
	}
}

func TestMove(t *testing.T) {
	j := twoWheels(t)
	j, _, err := j.Add("cycloidal", "c")
	require.NoError(t, err)
	for _, row := range []struct {
		id   string
		by   int
		want []string
	}{
		{"a", 1, []string{"b", "a", "c"}},
		{"a", 2, []string{"b", "c", "a"}},
		{"a", 9, []string{"b", "c", "a"}},
		{"c", -1, []string{"a", "c", "b"}},
		{"c", -9, []string{"c", "a", "b"}},
		{"b", 0, []string{"a", "b", "c"}},
	} {
		moved, err := j.Move(row.id, row.by)
		require.NoError(t, err)
		require.Equal(t, row.want, ids(moved))
	}
}

func ids(j *Job) []string {
	var out []string
	for _, w := range j.Wheels {
		out = append(out, w.ID)
	}
	return out
}

func TestAddStacksWheelsOfOneArbor(t *testing.T) {
	j := New("mm")
	for _, id := range []string{"a", "b", "c"} {
		j.Wheels = append(j.Wheels, &Wheel{ID: id})
	}
	j.Arbors = []*Arbor{{ID: "one", Parts: []string{"a"}}, {ID: "two", Parts: []string{"p", "c", "b"}}}
	j, _, err := j.Add("stack", "s")
	require.NoError(t, err)
	require.Equal(t, []string{"b", "c"}, j.Stacks[0].Wheels)
}
