package words

import (
	"strings"
	"unicode"
)

// The blanks at which no line may end: they stand before a French colon, and between a
// number and its unit.
const firm = "\u00a0\u202f"

// Pieces breaks a text where a line of it may end: at its blanks that are not firm.
func Pieces(text string) []string {
	return strings.FieldsFunc(text, func(c rune) bool {
		return unicode.IsSpace(c) && !strings.ContainsRune(firm, c)
	})
}
