package guide

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// Find returns the pages on which every word that is sought stands, those first whose title
// has them; all pages where nothing is sought. Accents need not be typed.
func (g *Guide) Find(sought string) []Page {
	words := strings.Fields(folded(sought))
	var titled, others []Page
	for _, p := range g.pages {
		switch {
		case has(folded(p.Title), words):
			titled = append(titled, p)
		case has(folded(p.says()), words):
			others = append(others, p)
		}
	}
	return append(titled, others...)
}

func has(text string, words []string) bool {
	for _, w := range words {
		if !begins(text, w) {
			return false
		}
	}
	return true
}

// begins reports whether a word of the text begins with w: a heel is sought in no wheel.
func begins(text, w string) bool {
	for at := 0; ; {
		i := strings.Index(text[at:], w)
		if i < 0 {
			return false
		}
		at += i
		if before, _ := utf8.DecodeLastRuneInString(text[:at]); at == 0 || !unicode.IsLetter(before) {
			return true
		}
		at += len(w)
	}
}

// unaccented are the letters and marks of the guide's languages as they are typed in haste.
var unaccented = strings.NewReplacer("à", "a", "â", "a", "ä", "a", "ç", "c", "é", "e", "è", "e", "ê", "e", "ë", "e",
	"î", "i", "ï", "i", "ô", "o", "ö", "o", "ù", "u", "û", "u", "ü", "u", "œ", "oe", "ß", "ss", "’", "'")

// folded writes a text small and without accents, as it is sought.
func folded(text string) string { return unaccented.Replace(strings.ToLower(text)) }
