package job

import (
	"fmt"
	"strings"
	"unicode"
)

// FreeID returns an id that no part of the job has, made from a name: its letters
// and digits in lower case, with hyphens between words, and a number when that is
// taken.
func (j *Job) FreeID(name string) string {
	base := slug(name)
	id := base
	for n := 2; ; n++ {
		if _, taken := j.part(id); !taken {
			return id
		}
		id = fmt.Sprintf("%s-%d", base, n)
	}
}

// slug returns "part" for a name without a letter or digit.
func slug(name string) string {
	words := strings.FieldsFunc(strings.ToLower(name), func(r rune) bool {
		return !unicode.IsLetter(r) && !unicode.IsDigit(r)
	})
	if len(words) == 0 {
		return "part"
	}
	return strings.Join(words, "-")
}
