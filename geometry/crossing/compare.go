package crossing

// Row is what one count of arms comes to; Err says why where it cannot be laid out.
type Row struct {
	Arms         int
	Mass         float64 // g
	Inertia      float64 // g·mm²
	WindUp       float64 // µm of rim movement per newton at the rim
	Unbalance    float64 // g·mm
	RemovedShare float64 // windows ÷ (tooth outline − bore), 0 to 1
	Narrowest    Section // of an arm
	Divides      bool    // every arm stands on a tip exactly
	Err          error
}

// Compare works out the same crossing with each of these counts of arms, without
// windows to draw. The maker's own holes are weighed; whether they find metal among
// that many arms is for Lay to say.
func Compare(b Blank, s Spec, counts []int) []Row {
	b = b.Weighed()
	rows := make([]Row, len(counts))
	for i, k := range counts {
		s.Arms = k
		l, _, err := lay(b, s)
		rows[i] = Row{k, l.Mass, l.Inertia, l.WindUp, l.Unbalance, l.RemovedShare, l.Narrowest, err == nil && b.Count%k == 0, err}
	}
	return rows
}
