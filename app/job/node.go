package job

import (
	"bytes"
	"encoding/json"
	"errors"
	"io"
	"unicode/utf8"
)

// Bounds of a file that is read: none of them is near what a movement needs, and
// each keeps a hostile file from filling the memory.
const (
	maxBytes = 16 << 20
	maxParts = 2000
	maxDepth = 100
)

// shape is what a piece of JSON is.
type shape int

const (
	null shape = iota
	truth
	number
	text
	list
	object
)

// key is the catalogue key of the shape's name.
func (s shape) key() string {
	return [...]string{"job.is.null", "job.is.truth", "job.is.number", "job.is.text", "job.is.list", "job.is.object"}[s]
}

// node is a piece of JSON with the order of its members and its place in the
// file.
type node struct {
	shape shape
	raw   string   // how it stands in the file, unless it holds items
	text  string   // a text without quotes and escapes
	names []string // of an object's members
	items []*node  // of a list or object
	line  int
}

// member returns the object's member with the name, or nil.
func (n *node) member(name string) *node {
	for i, m := range n.names {
		if m == name {
			return n.items[i]
		}
	}
	return nil
}

// parse reads one piece of JSON. It refuses what is empty, not UTF-8, nested
// deeper than maxDepth, cut short or not JSON.
func parse(data []byte) (*node, error) {
	data = bytes.TrimPrefix(data, []byte("\ufeff"))
	if len(bytes.TrimSpace(data)) == 0 {
		return nil, &Refusal{Code: "job.empty"}
	}
	if !utf8.Valid(data) {
		return nil, at(data, notUTF8(data), &Refusal{Code: "job.not-utf8"})
	}
	if deep, ok := tooDeep(data); ok {
		return nil, at(data, deep, &Refusal{Code: "job.too-deep"})
	}
	if err := checkSyntax(data); err != nil {
		return nil, err
	}
	p := &parser{data: data, source: string(data), in: json.NewDecoder(bytes.NewReader(data)), line: 1}
	p.in.UseNumber()
	return p.value()
}

// at fills in the line and column of an offset.
func at(data []byte, offset int, r *Refusal) *Refusal {
	before := data[:min(max(offset, 0), len(data))]
	r.Line = 1 + bytes.Count(before, []byte("\n"))
	r.Column = 1 + utf8.RuneCount(before[bytes.LastIndexByte(before, '\n')+1:])
	return r
}

func notUTF8(data []byte) int {
	for i := 0; i < len(data); {
		r, size := utf8.DecodeRune(data[i:])
		if r == utf8.RuneError && size == 1 {
			return i
		}
		i += size
	}
	return len(data)
}

// tooDeep returns where the nesting first passes maxDepth.
func tooDeep(data []byte) (int, bool) {
	depth, quoted := 0, false
	for i := 0; i < len(data); i++ {
		switch c := data[i]; {
		case quoted && c == '\\':
			i++
		case c == '"':
			quoted = !quoted
		case !quoted && (c == '{' || c == '['):
			if depth++; depth > maxDepth {
				return i, true
			}
		case !quoted && (c == '}' || c == ']'):
			depth--
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
		return &Refusal{Code: "job.not-json", Line: 1, Column: 1, Err: err}
	}
	end := int(in.InputOffset())
	if rest := bytes.TrimLeft(data[end:], " \t\r\n"); len(rest) > 0 {
		return at(data, len(data)-len(rest), &Refusal{Code: "job.not-json"})
	}
	return nil
}

// parser makes nodes of JSON that is known to be well formed.
type parser struct {
	data    []byte
	source  string // the same, which the nodes share
	in      *json.Decoder
	counted int // offset up to which lines are counted
	line    int
}

func (p *parser) value() (*node, error) {
	start := p.start()
	token, err := p.in.Token()
	if err != nil {
		return nil, err
	}
	n := &node{line: p.lineAt(start)}
	switch t := token.(type) {
	case json.Delim:
		err = p.items(n, t)
	case string:
		n.shape, n.text = text, t
	case json.Number:
		n.shape = number
	case bool:
		n.shape = truth
	}
	if !n.nested() {
		n.raw = p.source[start:p.in.InputOffset()]
	}
	return n, err
}

// items reads the rest of a list or object.
func (p *parser) items(n *node, opening json.Delim) error {
	n.shape = list
	if opening == '{' {
		n.shape = object
	}
	for p.in.More() {
		if n.shape == object {
			name, err := p.in.Token()
			if err != nil {
				return err
			}
			n.names = append(n.names, name.(string))
		}
		item, err := p.value()
		if err != nil {
			return err
		}
		n.items = append(n.items, item)
	}
	_, err := p.in.Token()
	return err
}

// start returns the offset of the next token.
func (p *parser) start() int {
	i := int(p.in.InputOffset())
	for i < len(p.data) && bytes.IndexByte([]byte(" \t\r\n,:"), p.data[i]) >= 0 {
		i++
	}
	return i
}

func (p *parser) lineAt(offset int) int {
	p.line += bytes.Count(p.data[p.counted:offset], []byte("\n"))
	p.counted = offset
	return p.line
}
