package job

import (
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// Every field of the structs stands in the registry, and the other way round.
func TestRegistryIsWhatTheStructsHold(t *testing.T) {
	held := map[string]bool{}
	for _, t := range []any{Job{}, Wheel{}, Pinion{}, Arbor{}, Pair{}, Stack{}, Train{}} {
		gather(reflect.TypeOf(t), "", held)
	}
	listed := map[string]bool{}
	for _, f := range Fields() {
		require.False(t, listed[string(f.Path)], "%s stands there twice", f.Path)
		listed[string(f.Path)] = true
	}
	require.Equal(t, held, listed)
}

func gather(at reflect.Type, path string, held map[string]bool) {
	p := planOf(at)
	for _, name := range p.names {
		below := at.Field(p.at[name]).Type
		full := join(path, name)
		switch {
		case isField(below):
			held[full] = true
		case below.Kind() == reflect.Pointer:
			gather(below.Elem(), full, held)
		case below.Kind() == reflect.Slice && below.Elem().Kind() == reflect.Pointer && at != reflect.TypeOf(Job{}):
			gather(below.Elem().Elem(), full, held)
		}
	}
}

func TestFieldsSayWhatTheyTake(t *testing.T) {
	for _, f := range Fields() {
		switch f.Kind {
		case Choice:
			require.NotEmpty(t, f.Choices, f.Path)
		case Length, Angle, Count, Number:
			require.Less(t, f.Min, f.Max, f.Path)
		}
	}
}

func TestFieldAt(t *testing.T) {
	f, ok := FieldAt("crossing.arms")
	require.True(t, ok)
	require.Equal(t, Field{Path: "crossing.arms", Kind: Count, Min: 3, Max: 12}, f)
	f, ok = FieldAt("additions[12].radius")
	require.True(t, ok)
	require.Equal(t, Length, f.Kind)
	_, ok = FieldAt("crossing.colour")
	require.False(t, ok)
}

// What a new part starts with is a value its field may have.
func TestStartingValuesAreKnownChoices(t *testing.T) {
	for _, kind := range Kinds() {
		j, id, err := New("mm").Add(kind, "Part")
		require.NoError(t, err)
		for _, f := range Fields() {
			text, ok := j.Text(id, f.Path)
			if ok && text != "" && f.Kind == Choice {
				require.Contains(t, f.Choices, text, f.Path)
			}
			require.False(t, strings.HasPrefix(text, " "), f.Path)
		}
	}
}
