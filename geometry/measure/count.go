package measure

import "strconv"

// ParseCount reads a whole number of nothing or more, up to a million. The error
// is a *Refusal.
func ParseCount(text string) (int, error) {
	tidied, refusal := tidy(text)
	if refusal != nil {
		return 0, refuse(text, countCode[refusal.Code])
	}
	digits, rest := takeDigits(tidied)
	if digits == "" || rest != "" {
		return 0, refuse(text, "measure.not-a-count")
	}
	n, err := strconv.Atoi(digits)
	if err != nil || n > 1_000_000 {
		return 0, refuse(text, "measure.count-too-large")
	}
	return n, nil
}

// countCode gives the advice for a count in the place of that for a length.
var countCode = map[string]string{
	"measure.empty":       "measure.count-empty",
	"measure.too-long":    "measure.count-too-large",
	"measure.not-a-value": "measure.not-a-count",
}
