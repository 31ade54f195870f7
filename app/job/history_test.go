package job

import (
	"strconv"
	"testing"

	"github.com/stretchr/testify/require"
	"pgregory.net/rapid"

	"tipline/geometry"
)

func typed(t require.TestingT, h *History, field geometry.Quantity, text string) {
	next, err := h.Job().Set("a", field, text)
	require.NoError(t, err)
	h.Type(next, "a", field)
}

func count0(t require.TestingT, j *Job) string {
	text, ok := j.Text("a", "teeth.count")
	require.True(t, ok)
	return text
}

func TestARunOfTypingIsOneStep(t *testing.T) {
	start := twoWheels(t)
	h := NewHistory(start)
	for _, s := range []string{"8", "80", "80"} {
		typed(t, h, "teeth.count", s)
	}
	typed(t, h, "bore", "5")
	typed(t, h, "bore", "5 mm")
	typed(t, h, "teeth.count", "81")
	require.Equal(t, "80", count0(t, h.Undo()))
	require.Equal(t, "5 mm", h.Job().Wheel("a").Bore.Text)
	require.Equal(t, "6", h.Undo().Wheel("a").Bore.Text)
	require.Same(t, start, h.Undo())
	require.False(t, h.CanUndo())
	require.Same(t, start, h.Undo())
	require.Equal(t, "80", count0(t, h.Redo()))
	require.True(t, h.CanRedo())
	typed(t, h, "teeth.count", "90")
	require.False(t, h.CanRedo(), "typing after undoing begins a new step and forgets what was undone")
	require.Equal(t, "80", count0(t, h.Undo()))
}

func TestARunEndsWhenTheFieldIsLeft(t *testing.T) {
	h := NewHistory(twoWheels(t))
	typed(t, h, "teeth.count", "80")
	h.EndRun()
	typed(t, h, "teeth.count", "81")
	require.Equal(t, "80", count0(t, h.Undo()))
}

func TestSavedMark(t *testing.T) {
	h := NewHistory(twoWheels(t))
	require.True(t, h.Saved())
	typed(t, h, "teeth.count", "8")
	require.False(t, h.Saved())
	h.MarkSaved(h.Job())
	require.True(t, h.Saved())
	typed(t, h, "teeth.count", "80")
	require.False(t, h.Saved())
	h.Undo()
	require.True(t, h.Saved(), "typing after saving is a step of its own")
	h.Undo()
	require.False(t, h.Saved())
}

func TestTheSameJobIsNoStep(t *testing.T) {
	h := NewHistory(twoWheels(t))
	h.Do(h.Job())
	require.False(t, h.CanUndo())
	typed(t, h, "teeth.count", "72")
	require.False(t, h.CanUndo())
}

// The history is compared with a plain list of states and a place in it.
func TestHistoryAgainstAPlainList(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		first := twoWheels(t)
		h, states, now := NewHistory(first), []*Job{first}, 0
		n := 100
		t.Repeat(map[string]func(*rapid.T){
			"do": func(t *rapid.T) {
				n++
				next, err := h.Job().Set("a", "teeth.count", strconv.Itoa(n))
				require.NoError(t, err)
				h.Do(next)
				states = append(states[:now+1], next)
				now++
			},
			"undo": func(*rapid.T) { h.Undo(); now = max(now-1, 0) },
			"redo": func(*rapid.T) { h.Redo(); now = min(now+1, len(states)-1) },
			"": func(t *rapid.T) {
				require.Same(t, states[now], h.Job())
				require.Equal(t, now > 0, h.CanUndo())
				require.Equal(t, now < len(states)-1, h.CanRedo())
			},
		})
	})
}
