package desk

import (
	"testing"

	"github.com/stretchr/testify/require"

	"tipline/assets/words"
)

func TestSearchFindsPartsByNameIDAndTeeth(t *testing.T) {
	d, changes := opened(t)
	require.True(t, d.Searchable())
	all := d.order()
	require.Equal(t, all, d.Found())
	count, _ := d.Job().Text("great", "teeth.count")
	for _, row := range []struct {
		text string
		want string // among what is found
		not  string
	}{
		{"great", "great", "escape"},
		{"GREAT wh", "great", "third"},
		{count, "great", "escape"},
		{"wheel third", "third", "great"},
		{"eat", "", "great"},
	} {
		d.Search(row.text)
		require.NotContains(t, d.Found(), row.not, row.text)
		if row.want != "" {
			require.Contains(t, d.Found(), row.want, row.text)
			require.Equal(t, row.want, d.Groups()[0].Parts[0].ID, row.text)
		}
	}
	d.Search("nothing like it")
	require.Empty(t, d.Groups())
	require.Equal(t, "great", d.Part(), "what is looked at stays")
	*changes = 0
	d.Search("")
	require.Equal(t, 1, *changes)
	require.Equal(t, all, d.Found())
	require.False(t, New(words.English(), Recent{}).Searchable())
}

// While parts are searched for, the next part is the next of those that are found.
func TestTurningWalksTheFound(t *testing.T) {
	d, _ := opened(t)
	d.Search("wheel")
	found := d.Found()
	d.Choose(found[len(found)-2])
	d.Turn(5)
	require.Equal(t, found[len(found)-1], d.Part())
}

func TestSearchTakesNoHeedOfAccents(t *testing.T) {
	d, _ := opened(t)
	d.Type("great", "name", "Roue d’Échappement")
	d.Type("third", "name", "Großes Œil")
	for text, part := range map[string]string{"echapp": "great", "D’ÉCHAPP": "great", "roue d’éch": "great", "grosses": "third", "oeil": "third", "œil": "third"} {
		d.Search(text)
		require.Equal(t, part, d.Found()[0], text)
		require.NotContains(t, d.Found(), "escape", text)
	}
}
