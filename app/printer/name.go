package printer

import (
	"fmt"
	"hash/crc32"
	"strings"
	"unicode"
	"unicode/utf8"
)

// longestName is the most letters of a printer's name.
const longestName = 60

// ending is what the files' names end in.
const ending = ".json"

// tidy returns a name with single spaces between its words.
func tidy(name string) string { return strings.Join(strings.Fields(name), " ") }

// keyOf returns the file's name for a printer's name and a paper's: their letters and
// digits, safe in any file system, and a sum that tells names apart which only
// differ in what was left out. It refuses a name that is empty, too long or holds
// what cannot be written in one line.
func keyOf(name, paper string) (string, error) {
	odd := func(r rune) bool { return !unicode.IsPrint(r) || r == utf8.RuneError }
	named := tidy(name)
	if named == "" || utf8.RuneCountInString(named) > longestName || strings.ContainsFunc(named, odd) {
		return "", &Refusal{Code: "printer.nameless", Name: name, Paper: paper}
	}
	name, paper = strings.ToLower(named), strings.ToLower(tidy(paper))
	sum := crc32.ChecksumIEEE([]byte(name + "\x00" + paper))
	return fmt.Sprintf("%s-%s-%08x%s", plainName(name), plainName(paper), sum, ending), nil
}

// plainName keeps a name's unaccented letters and its digits, with a dash for what
// stands between, up to longestName of them.
func plainName(name string) string {
	plain := strings.Map(func(r rune) rune {
		if r < utf8.RuneSelf && (unicode.IsLower(r) || unicode.IsDigit(r)) {
			return r
		}
		return '-'
	}, name)
	plain = strings.Trim(plain, "-")
	return plain[:min(len(plain), longestName)]
}
