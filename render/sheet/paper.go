// Package sheet lays drawings out on paper: at exact scale, with bars to check
// that scale by in both directions, a title block and a line of caution; a
// drawing larger than the sheet is tiled.
package sheet

import (
	"regexp"
	"strconv"
	"strings"

	"tipline/geometry/measure"
)

// Paper is a sheet, upright: the width is the shorter side as a rule.
type Paper struct {
	Name          string
	Width, Height float64 // millimetres
}

// Least and greatest sides of a sheet in millimetres. The least hold a 4 in bar
// beside the margins, and title, bars and title block one above the other.
const (
	LeastWidth   = 140
	LeastHeight  = 200
	GreatestSide = 2000
)

// Papers lists the papers that have names. Sizes: ISO 216 (A series); ASME Y14.1
// sizes A, B and Legal, from memory of it (8.5 × 11, 8.5 × 14, 11 × 17 in).
func Papers() []Paper {
	return []Paper{
		{"a4", 210, 297},
		{"a3", 297, 420},
		{"letter", 215.9, 279.4},
		{"legal", 215.9, 355.6},
		{"tabloid", 279.4, 431.8},
	}
}

// Refusal is the error of a paper that is not known or will not do. Code is a key
// of the catalogue with the place {read}.
type Refusal struct{ Read, Code string }

// Error says the refusal in English; the program's own messages are made from the
// catalogue.
func (r *Refusal) Error() string {
	switch r.Code {
	case "paper.tiles":
		return "the drawing would take more than 400 sheets of paper " + strconv.Quote(r.Read)
	case "paper.profile":
		return "the printer's profile is for paper " + strconv.Quote(r.Read)
	case "paper.size":
		return "paper " + strconv.Quote(r.Read) + " is too small or too large: 140 to 2000 mm wide and 200 to 2000 mm high"
	}
	return "paper " + strconv.Quote(r.Read) + " is not known: a4, a3, letter, legal, tabloid or a size such as 200x280mm or 8x11in"
}

var sized = regexp.MustCompile(`^([0-9]+(?:\.[0-9]+)?) ?(mm|in)? ?[x×] ?([0-9]+(?:\.[0-9]+)?) ?(mm|in)$`)

// ParsePaper reads a paper's name, in capitals or not, or a size such as "200x280mm" or
// "8x11in", its unit behind both sides or the last, with decimal points or commas. The
// error is a *Refusal.
func ParsePaper(text string) (Paper, error) {
	name := strings.ReplaceAll(strings.ToLower(strings.TrimSpace(text)), ",", ".")
	for _, p := range Papers() {
		if p.Name == name {
			return p, nil
		}
	}
	m := sized.FindStringSubmatch(name)
	if m == nil || m[2] != "" && m[2] != m[4] {
		return Paper{}, &Refusal{text, "paper.unknown"}
	}
	by := 1.0
	if m[4] == "in" {
		by = measure.MMPerInch
	}
	width, _ := strconv.ParseFloat(m[1], 64)
	height, _ := strconv.ParseFloat(m[3], 64)
	p := Paper{m[1] + "x" + m[3] + m[4], width * by, height * by}
	if !p.usable() {
		return Paper{}, &Refusal{text, "paper.size"}
	}
	return p, nil
}

// usable reports whether bars, title block and some drawing fit on the paper.
func (p Paper) usable() bool {
	short, long := min(p.Width, p.Height), max(p.Width, p.Height)
	return short >= LeastWidth && long >= LeastHeight && long <= GreatestSide
}

// Turned returns the paper laid on its side.
func (p Paper) Turned() Paper { return Paper{p.Name, p.Height, p.Width} }
