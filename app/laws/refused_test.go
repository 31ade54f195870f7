package laws

import (
	"math"
	"strings"
	"sync"

	"tipline/app/job"
	"tipline/app/solve"
	"tipline/assets/words"
)

// english is the catalogue, read once.
var english = sync.OnceValue(words.English)

// findings looks at what is said: each names a field that there is, or none, and is a
// whole sentence whose numbers are numbers.
func (v *verdict) findings(r *solve.Result) {
	units := solve.Units(r.Job, english())
	said := v.seldom(16)
	for _, f := range r.Findings {
		v.holds(english().Has(f.Code), "%s: no sentence for %q", f.Part, f.Code)
		if _, known := job.FieldAt(f.Field); !known && f.Field != "" && !step(string(f.Field)) {
			v.breaks("%s: %q is on %q, which is no field", f.Part, f.Code, f.Field)
		}
		v.holds(f.Severity != solve.Error || f.Field != "" || f.Part == "", "%s: %q blames no field", f.Part, f.Code)
		for _, p := range f.Places {
			v.holds(!math.IsNaN(p.Value), "%s: %q says NaN for %s", f.Part, f.Code, p.Name)
		}
		if said || f.Severity == solve.Error {
			s := f.Sentence(english(), units)
			v.holds(s != "" && !strings.ContainsAny(s, "‹{–∞") || strings.Contains(s, " – "), "%s: %q is said %q", f.Part, f.Code, s)
		}
	}
}

// step reports whether a path is that of a step of the work, or of a list in it.
func step(path string) bool {
	for _, f := range job.Fields() {
		if strings.HasPrefix(string(f.Path), path+".") {
			return true
		}
	}
	return strings.HasPrefix(path, "dividing.") || strings.Contains(path, "[")
}

// refused reports whether an error stands on a part, in one of the steps where any are
// named: what is not built must have one.
func refused(findings []solve.Finding, steps ...string) bool {
	for _, f := range findings {
		if f.Severity != solve.Error {
			continue
		}
		for _, s := range steps {
			if strings.HasPrefix(string(f.Field), s) {
				return true
			}
		}
		if len(steps) == 0 {
			return true
		}
	}
	return false
}
