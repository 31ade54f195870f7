package solve

import (
	"context"

	"tipline/geometry/fault"
)

// each works out the parts of a list, taking what is known from memory, as many at
// a time as there are processors. It is false when ctx is done.
func each[P, S any, K comparable](ctx context.Context, parts []P, known map[K]S, key func(P) K, work func(P) S) ([]S, map[K]S, bool) {
	if len(parts) == 0 {
		return nil, nil, ctx.Err() == nil
	}
	all, keys := make([]S, len(parts)), make([]K, len(parts))
	var fresh []int
	for i, part := range parts {
		keys[i] = key(part)
		s, ok := known[keys[i]]
		if all[i] = s; !ok {
			fresh = append(fresh, i)
		}
	}
	fault.All(len(fresh), func(n int) {
		if ctx.Err() == nil {
			all[fresh[n]] = work(parts[fresh[n]])
		}
	})
	next := make(map[K]S, len(parts))
	for i, k := range keys {
		next[k] = all[i]
	}
	return all, next, ctx.Err() == nil
}

// soundly works one part out. Where the program itself fails on it, the part is one of
// which nothing could be worked out, with a finding that says so; the others stand.
func soundly[S any](part string, work func() S, broken func([]Finding) S) (s S) {
	if f := fault.Caught(func() { s = work() }); f != nil {
		return broken([]Finding{{Error, part, "", "finding.fault", []Place{text("reason", f.String())}}})
	}
	return s
}
