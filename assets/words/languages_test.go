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

// others are the languages besides English.
func others(t *testing.T) []Words {
	var all []Words
	for _, lang := range Languages() {
		w, err := Load(lang)
		require.NoError(t, err)
		require.NotEmpty(t, w.Name())
		require.Contains(t, []string{".", ","}, w.Say("language.decimal"))
		if lang != "en" {
			all = append(all, w)
		}
	}
	return all
}

// placesIn lists the places of a text, each once, "{n}" for "{n|tooth|teeth}" too.
func placesIn(text string) []string {
	var names []string
	for _, m := range regexp.MustCompile(`\{([^}|]*)[^}]*\}`).FindAllStringSubmatch(text, -1) {
		names = append(names, "{"+m[1]+"}")
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// Every language has the texts that English has, each in a file of the same name, and no
// others.
func TestEveryLanguageHasEveryText(t *testing.T) {
	english := lines(t, "en")
	for _, w := range others(t) {
		theirs := lines(t, w.Language())
		var missing, unused []string
		for key, in := range english {
			if is := theirs[key]; len(is) == 0 {
				missing = append(missing, in[0]+" "+key)
			} else if name := w.Language() + strings.TrimPrefix(in[0], "en"); is[0] != name {
				missing = append(missing, name+" "+key+", which is in "+is[0])
			}
		}
		for key, in := range theirs {
			if english[key] == nil {
				unused = append(unused, in[0]+" "+key)
			}
		}
		slices.Sort(missing)
		slices.Sort(unused)
		require.Empty(t, missing, "no text in %s", w.Name())
		require.Empty(t, unused, "nobody asks for these in %s", w.Name())
	}
}

// What stands in a sentence's places stands in every language's sentence.
func TestEveryLanguageHasTheSamePlaces(t *testing.T) {
	english := English()
	for _, w := range others(t) {
		var differ []string
		for _, key := range english.Keys() {
			if ours, theirs := placesIn(english.Say(key)), placesIn(w.Say(key)); !slices.Equal(ours, theirs) {
				differ = append(differ, key+": "+strings.Join(theirs, " ")+" for "+strings.Join(ours, " "))
			}
		}
		require.Empty(t, differ, w.Name())
	}
}

// What is typed is the same in every language: commands, flags and their values.
func TestEveryLanguageNamesTheSameFlags(t *testing.T) {
	typed := regexp.MustCompile(`(?m)(^  tipline [a-z]+|[ \[]-[a-z]+( [a-z]+(\|[a-z0-9]+)+)?)`)
	english := English()
	for _, w := range others(t) {
		for _, key := range english.Keys() {
			require.Equal(t, typed.FindAllString(english.Say(key), -1), typed.FindAllString(w.Say(key), -1), "%s in %s", key, w.Name())
		}
	}
}

// A text that is the same as in English was forgotten, unless it holds no word or is in
// the list of those that are alike.
func TestNothingIsLeftInEnglish(t *testing.T) {
	place, word := regexp.MustCompile(`\{[^}]*\}`), regexp.MustCompile(`\pL{3,}`)
	english := English()
	keys := english.Keys()
	for _, w := range others(t) {
		alike := column(t, "testdata/alike.csv", w.Language())
		var left, idle []string
		for _, key := range keys {
			text := english.Say(key)
			same := text == w.Say(key)
			if same && word.MatchString(place.ReplaceAllString(text, "")) && !slices.Contains(alike, text) {
				left = append(left, key+" = "+text)
			}
		}
		for _, text := range alike {
			if !slices.ContainsFunc(keys, func(key string) bool { return english.Say(key) == text && w.Say(key) == text }) {
				idle = append(idle, text)
			}
		}
		require.Empty(t, left, w.Name())
		require.Empty(t, idle, "these are not alike in %s any more", w.Name())
	}
}

// column returns a column of a table, without the empty cells.
func column(t *testing.T, name, called string) []string {
	file, err := os.Open(name)
	require.NoError(t, err)
	defer file.Close()
	records, err := csv.NewReader(file).ReadAll()
	require.NoError(t, err)
	at := slices.Index(records[0], called)
	require.GreaterOrEqual(t, at, 0, "%s has no column %s", name, called)
	var cells []string
	for _, r := range records[1:] {
		if r[at] != "" {
			cells = append(cells, r[at])
		}
	}
	return cells
}
