package solve

import (
	"tipline/app/job"
	"tipline/geometry/dividing"
)

// jobFindings says what is to be said of the job itself, of its arbors, of pairs
// that stand on them as none can, and of wheels in several stacks.
func (r *Result) jobFindings(w works) []Finding {
	var fs []Finding
	for _, field := range r.Job.UnknownFields() {
		fs = append(fs, Finding{Note, "", "", "job.unknown-field", []Place{text("field", field)}})
	}
	fs = append(fs, arborFindings(r.Job.Arbors, w.made)...)
	fs = append(fs, againFindings(r.Pairs)...)
	fs = append(fs, w.centresFindings()...)
	fs = append(fs, stackFindings(r.Stacks)...)
	fs = append(fs, oneWay(r.answers())...)
	for _, p := range w.stuck {
		if p.Wheel != p.Pinion {
			fs = append(fs, Finding{
				Error, p.ID(), "pinion", "pair.one-arbor",
				[]Place{text("wheel", p.Wheel.Name()), text("pinion", p.Pinion.Name())},
			})
		}
	}
	return fs
}

// arborFindings says which parts of arbors are not there, twice on one, or on another
// too.
func arborFindings(arbors []*job.Arbor, made map[string]Made) []Finding {
	var fs []Finding
	on := map[string]string{}
	for _, a := range arbors {
		r := &reader{part: a.ID}
		for _, part := range a.Parts {
			switch {
			case made[part] == nil:
				r.find(Error, "parts", "arbor.no-such-part", text("read", part))
			case on[part] == a.ID:
				r.find(Caution, "parts", "arbor.part-again", text("part", made[part].Name()))
			case on[part] != "":
				r.find(Caution, "parts", "arbor.twice", text("part", made[part].Name()))
			}
			on[part] = a.ID
		}
		fs = append(fs, r.findings...)
	}
	return fs
}

// stackFindings says which wheels stand in a stack before too.
func stackFindings(stacks []*Stack) []Finding {
	var fs []Finding
	in := map[*Wheel]*Stack{}
	for _, s := range stacks {
		for _, w := range s.bare {
			if first := in[w]; w != nil && first != nil && first != s {
				fs = append(fs, Finding{
					Caution, s.ID(), "wheels", "stack.elsewhere",
					[]Place{text("part", w.Name()), text("stack", first.Name())},
				})
			} else if w != nil {
				in[w] = s
			}
		}
	}
	return fs
}

// answers returns how the parts that are divided are.
func (r *Result) answers() []*dividing.Answer {
	var all []*dividing.Answer
	for _, w := range r.Wheels {
		if w.Dividing != nil {
			all = append(all, w.Dividing)
		}
	}
	for _, p := range r.Pinions {
		if p.Dividing != nil {
			all = append(all, p.Dividing)
		}
	}
	return all
}
