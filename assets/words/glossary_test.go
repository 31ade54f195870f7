package words

import (
	"encoding/csv"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/stretchr/testify/require"
)

// The trade's words are chosen in testdata/glossary.csv, one for each thing: where an
// English text has the word of a row, every language has its own, but for the texts
// listed there as doing without.
func TestTheTradesWordsAreTheGlossarys(t *testing.T) {
	file, err := os.Open("../../testdata/glossary.csv")
	require.NoError(t, err)
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	require.Equal(t, []string{"term", "en", "de", "fr", "without", "source"}, rows[0])
	place, english := regexp.MustCompile(`\{[^}|]*\}`), English()
	for _, r := range rows[1:] {
		require.NotEmpty(t, r[5], "%s has no source", r[0])
		word := regexp.MustCompile(`(?i)(^|[^\pL\d-])(` + r[1] + `)($|[^\pL\d-])`)
		said := slices.DeleteFunc(english.Keys(), func(key string) bool {
			return strings.HasPrefix(key, "command.help.") || !word.MatchString(place.ReplaceAllString(english.Say(key), ""))
		})
		require.NotEmpty(t, said, "no text says %s", r[0])
		without := strings.Fields(r[4])
		require.Subset(t, said, without, r[0])
		for _, w := range others(t) {
			its := r[slices.Index(rows[0], w.Language())]
			for _, key := range said {
				if !slices.Contains(without, key) {
					require.Regexp(t, "(?i)"+its, w.Say(key), "%s: %s in %s", key, r[0], w.Name())
				}
			}
		}
	}
}
