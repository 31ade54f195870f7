package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

func TestAPartIsCopiedToAnotherJob(t *testing.T) {
	from, _ := opened(t)
	into := New(words.English(), Recent{})
	for _, id := range from.order() {
		from.Choose(id)
		text, err := from.Copied()
		require.NoError(t, err)
		require.NoError(t, into.Paste(text), id)
		require.Equal(t, from.kindOf(id), into.kindOf(into.Part()), id)
		require.True(t, into.CanUndo())
		into.Undo()
	}
	require.Empty(t, into.Part(), "each paste is one step")
	from.Choose("great")
	text, err := from.Copied()
	require.NoError(t, err)
	require.NoError(t, from.Paste(text))
	require.Equal(t, "great-2", from.Part())
	require.Equal(t, "Great wheel 2", from.Name("great-2"))
}

func TestWhatHoldsNoPartIsNotPasted(t *testing.T) {
	d, changes := opened(t)
	for text, want := range map[string]string{
		"":                                      "There is no part of a job on the clipboard.",
		"hello":                                 "There is no part of a job on the clipboard.",
		`{"a": 1}`:                              "There is no part of a job on the clipboard.",
		`{"tipline": 1}`:                        "There is no part of a job on the clipboard.",
		`{"tipline": 1, "wheels": [{"id": 7}]}`: "There is no part of a job on the clipboard.",
	} {
		require.EqualError(t, d.Paste(text), want, text)
	}
	require.ErrorContains(t, d.Paste(`{"tipline": 99, "wheels": [{"id": "a"}]}`), "99")
	require.Zero(t, *changes)
	_, err := New(words.English(), Recent{}).Copied()
	require.Error(t, err, "there is nothing to copy")
}

func TestRename(t *testing.T) {
	d, _ := opened(t)
	d.Choose("great")
	require.NoError(t, d.Rename("  Main wheel "))
	require.Equal(t, "Main wheel", d.Name("great"))
	pair := d.Job().Pairs[0].ID
	d.Choose(pair)
	require.Equal(t, "id", string(d.NameField(pair)))
	require.NoError(t, d.Rename("first-pair"))
	require.Equal(t, "first-pair", d.Part())
	require.Error(t, d.Rename("great"), "that id is taken")
	require.Error(t, d.Rename(" "))
	d.Undo()
	require.Equal(t, pair, d.Part())
	d.Undo()
	require.False(t, d.CanUndo())
}

func TestPartingTellsWhatDeletingDoes(t *testing.T) {
	d, _ := opened(t)
	d.Choose("great")
	p := d.Parting()
	require.NotEmpty(t, p.Go, "its pair and the train that begins with it")
	for _, name := range p.Go {
		require.Contains(t, name, "Great wheel")
	}
	pair := d.Job().Pairs[0].ID
	d.Choose(pair)
	require.Equal(t, Parting{}, d.Parting())
	d.Choose("third")
	require.NotEmpty(t, d.Parting().Stay, "its arbor")
}
