package job

import (
	"errors"
	"strings"

	"tipline/assets/words"
)

// Refusal says why a file is no job, or an edit cannot be made. Code is a key of
// the catalogue; the other fields fill the sentence's places and are empty where
// it has none.
type Refusal struct {
	Code   string
	File   string // the file's name, when it is known
	Line   int    // in the file, from 1
	Column int    // in the line, from 1
	Path   string // of the field, such as "wheels[0].teeth.count"
	Is     string // catalogue keys of what stands there
	Want   string // and of what should
	Value  string // what was read
	Max    string // what would do
	Err    error  // what the system said

	node *node // where it stands, while the file is at hand
}

// refuse says where in the file the refusal is about.
func (n *node) refuse(r *Refusal) error {
	r.node = n
	return r
}

// Error says the refusal in English.
func (r *Refusal) Error() string { return r.Sentence(words.English()) }

// Unwrap returns what the system said, or nil.
func (r *Refusal) Unwrap() error { return r.Err }

// Reason returns what the system said, empty where it said nothing.
func (r *Refusal) Reason() string {
	if r.Err == nil {
		return ""
	}
	return r.Err.Error()
}

// Sentence says the refusal in the words given, led by the file's name.
func (r *Refusal) Sentence(w words.Words) string {
	s := w.Say(r.Code, "line", r.Line, "column", r.Column, "path", r.Path, "is", phrase(w, r.Is),
		"want", phrase(w, r.Want), "value", r.Value, "max", r.Max, "reason", r.Err)
	if r.File == "" || strings.Contains(s, r.File) {
		return s
	}
	return r.File + ": " + s
}

// Say says an error in the words given where it is a *Refusal, else the system's reason.
func Say(err error, w words.Words) string {
	var r *Refusal
	if errors.As(err, &r) {
		return r.Sentence(w)
	}
	return w.Reason(err)
}

func phrase(w words.Words, key string) string {
	if key == "" {
		return ""
	}
	return w.Say(key)
}
