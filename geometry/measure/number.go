package measure

import (
	"math/big"
	"strings"
	"unicode/utf8"
)

// vulgar are the fractions that are one sign.
var vulgar = map[rune]*big.Rat{
	'½': big.NewRat(1, 2), '⅓': big.NewRat(1, 3), '⅔': big.NewRat(2, 3),
	'¼': big.NewRat(1, 4), '¾': big.NewRat(3, 4), '⅕': big.NewRat(1, 5),
	'⅖': big.NewRat(2, 5), '⅗': big.NewRat(3, 5), '⅘': big.NewRat(4, 5),
	'⅙': big.NewRat(1, 6), '⅚': big.NewRat(5, 6), '⅐': big.NewRat(1, 7),
	'⅛': big.NewRat(1, 8), '⅜': big.NewRat(3, 8), '⅝': big.NewRat(5, 8),
	'⅞': big.NewRat(7, 8), '⅑': big.NewRat(1, 9), '⅒': big.NewRat(1, 10),
}

// takeNumber reads one number without sign from the front of a tidied text: a
// whole number, a decimal with a point or a comma, a fraction, or a whole number
// and a fraction. It returns the number, exact, and what follows it, or the code
// of a refusal.
func takeNumber(text string) (number *big.Rat, rest, code string) {
	if fraction, rest, ok := takeVulgar(text); ok {
		return fraction, rest, numberEnd(rest)
	}
	digits, rest := takeDigits(text)
	switch {
	case strings.HasPrefix(rest, "/") && digits != "":
		number, rest, code = takeFraction(text)
	case rest != "" && (rest[0] == '.' || rest[0] == ','):
		number, rest, code = takeDecimal(digits, rest)
	case digits == "":
		return nil, text, "measure.not-a-value"
	default:
		number, rest, code = takeMixed(digits, rest)
	}
	if code == "" {
		code = numberEnd(rest)
	}
	return number, rest, code
}

// numberEnd returns the code of a refusal when what follows a number belongs to
// it in a way that has no one meaning.
func numberEnd(rest string) string {
	next := strings.TrimLeft(rest, " ")
	_, _, fraction := takeVulgar(next)
	switch {
	case next == "":
		return ""
	case isExponent(rest):
		return "measure.exponent"
	case rest[0] == '.' || rest[0] == ',':
		return "measure.thousands"
	case fraction || strings.IndexByte("0123456789.,/-", next[0]) >= 0:
		return "measure.two-numbers"
	}
	return ""
}

func isExponent(rest string) bool {
	if rest[0] != 'e' && rest[0] != 'E' {
		return false
	}
	digits, _ := takeDigits(strings.TrimLeft(rest[1:], "+-"))
	return digits != ""
}

// takeDecimal reads the decimals after the whole digits.
func takeDecimal(digits, rest string) (*big.Rat, string, string) {
	decimals, rest := takeDigits(rest[1:])
	if digits == "" && decimals == "" {
		return nil, rest, "measure.not-a-value"
	}
	tens := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(len(decimals))), nil)
	return new(big.Rat).SetFrac(wholeNumber(digits+decimals), tens), rest, ""
}

// takeMixed reads the fraction after a whole number, as in 1 3/8, 1-3/8 and 1⅜,
// if there is one.
func takeMixed(digits, rest string) (*big.Rat, string, string) {
	whole := new(big.Rat).SetInt(wholeNumber(digits))
	next := strings.TrimLeft(rest, " ")
	if strings.HasPrefix(rest, "-") {
		next = rest[1:]
	}
	if fraction, after, ok := takeVulgar(next); ok {
		return whole.Add(whole, fraction), after, ""
	}
	top, after := takeDigits(next)
	if top == "" || next == rest || !strings.HasPrefix(after, "/") {
		return whole, rest, ""
	}
	fraction, after, code := takeFraction(next)
	if code == "" && fraction.Cmp(big.NewRat(1, 1)) >= 0 {
		code = "measure.improper"
	}
	if code != "" {
		return nil, after, code
	}
	return whole.Add(whole, fraction), after, ""
}

// takeFraction reads top/bottom.
func takeFraction(text string) (*big.Rat, string, string) {
	top, rest := takeDigits(text)
	bottom, rest := takeDigits(rest[1:])
	switch {
	case bottom == "":
		return nil, rest, "measure.not-a-value"
	case strings.Trim(bottom, "0") == "":
		return nil, rest, "measure.over-nothing"
	}
	return new(big.Rat).SetFrac(wholeNumber(top), wholeNumber(bottom)), rest, ""
}

// wholeNumber returns the number that digits write, in tens whatever zeros lead
// them.
func wholeNumber(digits string) *big.Int {
	n, _ := new(big.Int).SetString(digits, 10)
	return n
}

// takeVulgar reads a fraction that is one sign.
func takeVulgar(text string) (*big.Rat, string, bool) {
	first, size := utf8.DecodeRuneInString(text)
	fraction, ok := vulgar[first]
	if !ok {
		return nil, text, false
	}
	return new(big.Rat).Set(fraction), text[size:], true
}

func takeDigits(text string) (digits, rest string) {
	n := 0
	for n < len(text) && '0' <= text[n] && text[n] <= '9' {
		n++
	}
	return text[:n], text[n:]
}
