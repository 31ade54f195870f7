package printer

import "fmt"

// Refusal is the error of a profile that is not there, cannot be read or cannot be
// kept. Code is a key of the catalogue with the places {name}, {paper}, {file} and
// {reason}.
type Refusal struct {
	Code              string
	Name, Paper, File string
	Reason            error // nil where there is no more to say
}

// Error says the refusal in English; the program's own messages are made from the
// catalogue.
func (r *Refusal) Error() string {
	switch r.Code {
	case "printer.unknown":
		return fmt.Sprintf("no profile of a printer %q for %s paper", r.Name, r.Paper)
	case "printer.nameless":
		return fmt.Sprintf("%q is no name to keep a printer's profile under", r.Name)
	}
	return fmt.Sprintf("%s: %s: %v", r.Code, r.File, r.Reason)
}

// Unwrap returns the reason.
func (r *Refusal) Unwrap() error { return r.Reason }

// Say returns the refusal as say, which says a text of the catalogue, says it.
func (r *Refusal) Say(say func(string, ...any) string) string {
	return say(r.Code, "name", r.Name, "paper", r.Paper, "file", r.File, "reason", r.Reason)
}
