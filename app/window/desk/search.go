package desk

import (
	"slices"
	"strings"
	"unicode"

	"golang.org/x/text/unicode/norm"

	"tipline/app/solve"
)

// handful is how many parts are seen at a glance; more of them can be searched.
const handful = 8

// Searchable reports whether the job has more than a handful of parts.
func (d *Desk) Searchable() bool { return len(d.order()) > handful }

// Search has only those parts listed whose name, id or count of teeth or leaves begins
// a word with the text, whatever the case and accents of either; all for an empty one.
func (d *Desk) Search(text string) {
	if text != d.sought {
		d.sought = text
		d.Changed()
	}
}

// Sought returns what is searched for.
func (d *Desk) Sought() string { return d.sought }

// Found lists the ids of the parts that are listed, in the order of the rail.
func (d *Desk) Found() []string {
	return slices.DeleteFunc(d.order(), func(id string) bool { return !d.found(id) })
}

func (d *Desk) found(id string) bool {
	sought := wordsIn(d.sought)
	if len(sought) == 0 {
		return true
	}
	words := wordsIn(d.Name(id) + " " + id + " " + d.counted(id))
	for _, s := range sought {
		if !slices.ContainsFunc(words, func(w string) bool { return strings.HasPrefix(w, s) }) && !strings.HasPrefix(id, s) {
			return false
		}
	}
	return true
}

// wordsIn returns the words of a text as they are searched for.
func wordsIn(text string) []string {
	return strings.FieldsFunc(plainly(text), func(r rune) bool { return strings.ContainsRune(" -–+,()'’", r) })
}

// plainly returns a text in small letters without accents, as it is searched for.
func plainly(text string) string {
	return joinedLetters.Replace(strings.Map(func(r rune) rune {
		if unicode.Is(unicode.Mn, r) {
			return -1
		}
		return r
	}, norm.NFD.String(strings.ToLower(text))))
}

// joinedLetters are letters that are another's with no accent to take off.
var joinedLetters = strings.NewReplacer("ß", "ss", "æ", "ae", "œ", "oe", "ø", "o", "ł", "l")

// counted returns how many teeth or leaves a part has, as typed.
func (d *Desk) counted(id string) string {
	switch p := d.of(id).(type) {
	case *solve.Wheel:
		if p.Part.Teeth != nil {
			return p.Part.Teeth.Count.Text
		}
	case *solve.Pinion:
		return p.Part.Leaves.Text
	}
	return ""
}
