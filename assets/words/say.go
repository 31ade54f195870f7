package words

import (
	"fmt"
	"slices"
	"strings"
)

// Say returns the text for key. args are pairs of a place's name and what stands
// there: Say("finding.hub", "value", "30 mm"). A place {n|tooth|teeth} takes the first
// of its two forms where n is a count that the language puts in the singular, else the
// second. A number that is given as a float64 has the language's decimal mark, and of an
// error its Reason is said, nothing of nil. A key without a text is returned itself, in angle brackets; a test finds such keys.
func (w Words) Say(key string, args ...any) string {
	rest, ok := w.texts[key]
	if !ok {
		return "‹" + key + "›"
	}
	var said strings.Builder
	for {
		before, after, opens := strings.Cut(rest, "{")
		place, behind, closes := strings.Cut(after, "}")
		if !opens || !closes {
			said.WriteString(rest)
			return said.String()
		}
		said.WriteString(before)
		said.WriteString(w.fill(place, args))
		rest = behind
	}
}

// fill returns what stands in a place; the place itself where nothing is given for it.
func (w Words) fill(place string, args []any) string {
	name, forms, counted := strings.Cut(place, "|")
	value, given := w.given(name, args)
	switch {
	case !given:
		return "{" + place + "}"
	case !counted:
		return value
	}
	one, many, _ := strings.Cut(forms, "|")
	if slices.Contains(strings.Fields(w.texts["language.single"]), value) {
		return one
	}
	return many
}

// given returns what is given for a place.
func (w Words) given(name string, args []any) (string, bool) {
	for i := 0; i+1 < len(args); i += 2 {
		if fmt.Sprint(args[i]) != name {
			continue
		}
		value := fmt.Sprint(args[i+1])
		switch reason := args[i+1].(type) {
		case nil:
			value = ""
		case error:
			value = w.Reason(reason)
		}
		if _, number := args[i+1].(float64); number && w.Comma() {
			value = strings.Replace(value, ".", ",", 1)
		}
		return value, true
	}
	return "", false
}

// Choice returns what the language calls a word that a job or a table holds, such as
// "on tips" for the field "crossing.placing" or "brass" for "material"; the word itself
// where the language has no other.
func (w Words) Choice(field, word string) string {
	text, ok := w.choice(field, word)
	if !ok {
		return word
	}
	return text
}

// dashed makes a word that is chosen the end of a key.
var dashed = strings.NewReplacer(" ", "-", "/", "-")

func (w Words) choice(field, word string) (text string, ok bool) {
	text, ok = w.texts["choice."+field+"."+dashed.Replace(strings.ToLower(word))]
	return text, ok
}
