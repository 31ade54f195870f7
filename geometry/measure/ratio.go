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
