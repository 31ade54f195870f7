package solve

import (
	"strings"

	"tipline/app/job"
	"tipline/assets/words"
)

// Placed returns the finding's sentence behind the place it is about, none where that is
// empty. Where it is an error whose sentence does not name its field, the field is named.
func (f Finding) Placed(place, sentence string, w words.Words) string {
	known, ok := job.FieldAt(f.Field)
	label := called(f.Field, w)
	named := strings.Contains(strings.ToLower(sentence), strings.ToLower(label))
	if f.Severity == Error && ok && known.Path == f.Field && w.Has("field."+string(f.Field)) && !named {
		if place == "" {
			place = label
		} else {
			place = w.Say("finding.field", "place", place, "label", label)
		}
	}
	if place == "" {
		return sentence
	}
	return w.Say("finding.at", "place", place, "sentence", sentence)
}

// Waits returns the id of the part that must be mended before the finding's, empty for
// none.
func (f Finding) Waits() string {
	for _, p := range f.Places {
		if p.Waits != "" {
			return p.Waits
		}
	}
	return ""
}

// waits names a part that must be mended before what the finding is about.
func waits(m Part) Place { return waitsAs("part", m) }

// waitsAs is waits under another name in the sentence.
func waitsAs(name string, m Part) Place { return Place{Name: name, Text: m.Name(), Waits: m.ID()} }
