// Package measure reads lengths, angles and counts as people write them, and
// writes them back. It is the only place that knows inches.
package measure

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"tipline/assets/words"
)

// Refusal is the error of a text that is no length, angle or count. Read is what
// was read, shortened and with what cannot be printed as a dot. Code says why
// and is a key of the catalogue of words; its text has a place {read}.
type Refusal struct {
	Read string
	Code string
}

// Error says the refusal in English.
func (r *Refusal) Error() string { return words.English().Say(r.Code, "read", r.Read) }

// longestText is the most that is read as one value, in bytes. The longest value
// that means anything, three numbers with their units, is under half of it.
const longestText = 64

// shownText is the most of a refused text that is shown again, in letters.
const shownText = 24

func refuse(text, code string) *Refusal { return &Refusal{shown(text), code} }

// shown returns a text fit to stand in a message.
func shown(text string) string {
	if len(text) > 4*longestText {
		text = text[:4*longestText]
	}
	letters := []rune(strings.TrimSpace(strings.ToValidUTF8(text, "·")))
	for i, l := range letters {
		if !unicode.IsPrint(l) {
			letters[i] = '·'
		}
	}
	if len(letters) > shownText {
		return string(letters[:shownText]) + "…"
	}
	return string(letters)
}

// plain replaces the signs that keyboards and other programs put in the place of
// a plain one.
var plain = strings.NewReplacer(
	"\u00a0", " ", "\u2009", " ", "\u202f", " ", "\t", " ",
	"\u2044", "/", "\u2215", "/", "\u2212", "-", "\u2013", "-",
	"″", `"`, "”", `"`, "“", `"`, "''", `"`, "′", "'", "’", "'", "º", "°", "μ", "µ",
)

// tidy returns a text ready to be read, or why it cannot be.
func tidy(text string) (string, *Refusal) {
	switch {
	case len(text) > longestText:
		return "", refuse(text, "measure.too-long")
	case strings.TrimSpace(text) == "":
		return "", refuse(text, "measure.empty")
	case !utf8.ValidString(text):
		return "", refuse(text, "measure.not-a-value")
	}
	return strings.TrimSpace(plain.Replace(text)), nil
}
