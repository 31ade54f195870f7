package keep

import (
	"strings"
	"unicode/utf8"
)

// longestName is the most bytes of a name: disks take 255 of them, and an ending and what
// is written beside a file come to it.
const longestName = 200

// Name returns a title as every disk takes it for the name of a file or folder: with a
// dash for each letter that some disk does not take, cut where it is too long; empty
// where nothing is left.
func Name(title string) string {
	clean := strings.Map(func(r rune) rune {
		if strings.ContainsRune(`/\:*?"<>|`, r) || r < ' ' || r == utf8.RuneError {
			return '-'
		}
		return r
	}, title)
	for len(clean) > longestName {
		_, size := utf8.DecodeLastRuneInString(clean)
		clean = clean[:len(clean)-size]
	}
	return strings.Trim(clean, " .")
}
