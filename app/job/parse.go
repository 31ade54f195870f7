package job

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"strconv"
	"unicode/utf8"
)

// Bounds of a file that is read: none of them is near what a movement needs, and
// each keeps a hostile file from filling the memory.
const (
	maxBytes  = 16 << 20
	maxParts  = 2000
	maxItems  = 2000 // of any list
	maxDepth  = 100
	maxValues = 250_000 // over a hundred to each of the most parts
)

// parse reads one piece of JSON. It refuses what is empty, not UTF-8, nested
// deeper than maxDepth, of more than maxValues, cut short or not JSON.
func parse(data []byte) (*node, error) {
	if len(bytes.TrimSpace(data)) == 0 {
		return nil, &Refusal{Code: "job.empty"}
	}
	if bad, ok := notUTF8(data); ok {
		return nil, at(data, bad, &Refusal{Code: "job.not-utf8"})
	}
	if deep, ok := tooDeep(data); ok {
		return nil, at(data, deep, &Refusal{Code: "job.too-deep"})
	}
	if more, ok := tooMany(data); ok {
		return nil, at(data, more, &Refusal{Code: "job.too-many-values", Max: strconv.Itoa(maxValues)})
	}
	if err := checkSyntax(data); err != nil {
		return nil, err
	}
	c := scan{raw: string(data)}
	c.ended()
	n := c.next()
	return &n, nil
}

// at fills in the line and column of an offset.
func at(data []byte, offset int, r *Refusal) *Refusal {
	before := data[:min(max(offset, 0), len(data))]
	r.Line = 1 + bytes.Count(before, []byte("\n"))
	r.Column = 1 + utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:])
	return r
}

// notUTF8 returns where the text first is not UTF-8.
func notUTF8(data []byte) (int, bool) {
	for i := 0; i < len(data); {
		r, size := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && size == 1 {
			return i, true
		}
		i += size
	}
	return 0, false
}

// tooDeep returns where the nesting first passes maxDepth.
func tooDeep(data []byte) (int, bool) {
	depth := 0
	return bareAt(data, func(c byte) bool {
		switch c {
		case '{', '[':
			depth++
		case '}', ']':
			depth--
		}
		return depth > maxDepth
	})
}

// tooMany returns where a value more than maxValues begins.
func tooMany(data []byte) (int, bool) {
	values := 0
	return bareAt(data, func(c byte) bool {
		if c == ',' || c == '{' || c == '[' {
			values++
		}
		return values > maxValues
	})
}

// bareAt returns where that is first true of a character that stands in no text.
func bareAt(data []byte, that func(byte) bool) (int, bool) {
	quoted := false
	for i := 0; i < len(data); i++ {
		switch c := data[i]; {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case !quoted && that(c):
			return i, true
		}
	}
	return 0, false
}

func checkSyntax(data []byte) error {
	in := json.NewDecoder(bytes.NewReader(data))
	var whole json.RawMessage
	err := in.Decode(&whole)
	var syntax *json.SyntaxError
	switch {
	case errors.Is(err, io.ErrUnexpectedEOF):
		return at(data, len(bytes.TrimSpace(data)), &Refusal{Code: "job.truncated"})
	case errors.As(err, &syntax):
		return at(data, int(syntax.Offset)-1, &Refusal{Code: "job.not-json"})
	case err != nil:
		return at(data, 0, &Refusal{Code: "job.not-json", Err: err})
	}
	end := int(in.InputOffset())
	if rest := bytes.TrimLeft(data[end:], " \t\r\n"); len(rest) > 0 {
		return at(data, len(data)-len(rest), &Refusal{Code: "job.not-json"})
	}
	return nil
}
