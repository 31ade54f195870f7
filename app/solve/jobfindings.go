package solve

import "tipline/app/job"

// jobFindings says what is to be said of the job itself, of its arbors, and of
// pairs that stand on them as none can.
func (r *Result) jobFindings(w works) []Finding {
	var fs []Finding
	for _, field := range r.Job.UnknownFields() {
		fs = append(fs, Finding{Note, "", "", "job.unknown-field", []Place{text("field", field)}})
	}
	fs = append(fs, arborFindings(r.Job.Arbors, w.made)...)
	for _, p := range w.stuck {
		if p.Wheel != p.Pinion {
			fs = append(fs, Finding{Error, p.ID(), "pinion", "pair.one-arbor",
				[]Place{text("wheel", p.Wheel.Name()), text("pinion", p.Pinion.Name())}})
		}
	}
	return fs
}

// arborFindings says which parts of arbors are not there, or on another arbor too.
func arborFindings(arbors []*job.Arbor, made map[string]Made) []Finding {
	var fs []Finding
	on := map[string]bool{}
	for _, a := range arbors {
		r := &reader{part: a.ID}
		for _, part := range a.Parts {
			switch {
			case made[part] == nil:
				r.find(Error, "parts", "arbor.no-such-part", text("read", part))
			case on[part]:
				r.find(Caution, "parts", "arbor.twice", text("part", made[part].Name()))
			}
			on[part] = true
		}
		fs = append(fs, r.findings...)
	}
	return fs
}
