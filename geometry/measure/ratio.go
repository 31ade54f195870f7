package measure

import (
	"math/big"
	"strings"
)

// ParseRatio reads a plain number of nothing or more, exact: 8, 7.5, 15/2, 7 1/2.
// The error is a *Refusal.
func ParseRatio(text string) (*big.Rat, error) {
	tidied, refusal := tidy(text)
	if refusal != nil {
		return nil, refuse(text, "measure.not-a-ratio")
	}
	ratio, rest, code := takeNumber(tidied)
	if code != "" || strings.TrimSpace(rest) != "" {
		return nil, refuse(text, "measure.not-a-ratio")
	}
	return ratio, nil
}

// Ratio writes a ratio as it is said, 7.5 : 1 or 1 : 12, in decimals where three
// of them are exact, else as 64 : 15. What is no ratio is nothing.
func (u Units) Ratio(r *big.Rat) string {
	if r == nil || r.Sign() <= 0 {
		return ""
	}
	one, inverse := big.NewRat(1, 1), new(big.Rat).Inv(r)
	switch {
	case r.Cmp(one) >= 0 && short(r):
		return u.Exact(r) + " : 1"
	case r.Cmp(one) < 0 && short(inverse):
		return "1 : " + u.Exact(inverse)
	}
	return r.Num().String() + " : " + r.Denom().String()
}

// Exact writes a number in decimals where three of them are exact, else as a
// fraction.
func (u Units) Exact(r *big.Rat) string {
	if !short(r) {
		return r.RatString()
	}
	text := strings.TrimRight(r.FloatString(3), "0")
	return u.pointed(strings.TrimSuffix(text, "."))
}

// short reports whether three decimals of a ratio are exact.
func short(r *big.Rat) bool { return new(big.Rat).Mul(r, big.NewRat(1000, 1)).IsInt() }
