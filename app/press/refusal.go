package press

import "fmt"

// Refusal is the error of a program that is not there or failed. Code is a key of the
// catalogue with the places {program} and {reason}.
type Refusal struct {
	Code, Program, Reason string
}

// Error says the refusal in English; the program's own messages are made from the
// catalogue.
func (r *Refusal) Error() string { return fmt.Sprintf("%s: %s %s", r.Code, r.Program, r.Reason) }

// Say returns the refusal as say, which says a text of the catalogue, says it.
func (r *Refusal) Say(say func(string, ...any) string) string {
	return say(r.Code, "program", r.Program, "reason", r.Reason)
}
