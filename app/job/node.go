package job

import (
	"encoding/json"
	"strings"
)

// shape is what a piece of JSON is.
type shape uint8

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

// node is a piece of well-formed JSON. Its items are looked for when they are
// asked for, so that what nobody asks for costs nothing.
type node struct {
	shape  shape
	offset int32  // in the file
	raw    string // how it stands in the file
	below  *below
}

// below is what a list or object holds, in the order of the file.
type below struct {
	names []string // of an object's members
	items []node
}

func textNode(s string) *node   { return &node{shape: text, raw: quote(s)} }
func numberNode(s string) *node { return &node{shape: number, raw: s} }

func (n *node) nested() bool { return n.shape == list || n.shape == object }

// text returns a text without quotes and escapes.
func (n *node) text() string {
	var s string
	if err := json.Unmarshal([]byte(n.raw), &s); err != nil {
		panic(err) // raw was read as a well-formed text
	}
	return s
}

// add puts one more item into a list or object that was made, not read.
func (n *node) add(name string, item *node) {
	b := n.open()
	if n.shape == object {
		b.names = append(b.names, name)
	}
	b.items = append(b.items, *item)
}

// open returns the names and items of a list or object.
func (n *node) open() *below {
	if n.below == nil {
		n.below = n.split()
	}
	return n.below
}

// member returns the object's member with the name, or nil.
func (n *node) member(name string) *node {
	b := n.open()
	for i, m := range b.names {
		if m == name {
			return &b.items[i]
		}
	}
	return nil
}

func (n *node) split() *below {
	b := new(below)
	if n.raw == "" {
		return b
	}
	c := scan{raw: n.raw, at: 1, offset: n.offset}
	for !c.ended() {
		if n.shape == object {
			name := c.next()
			b.names = append(b.names, name.text())
			c.ended()
		}
		b.items = append(b.items, c.next())
	}
	return b
}

// scan cuts well-formed JSON into its pieces.
type scan struct {
	raw    string
	at     int
	offset int32 // of raw in the file
}

// ended passes over blanks and marks between pieces and reports whether the list
// or object ends there.
func (c *scan) ended() bool {
	for strings.IndexByte(" \t\r\n,:", c.raw[c.at]) >= 0 {
		c.at++
	}
	return c.raw[c.at] == ']' || c.raw[c.at] == '}'
}

// next returns the piece that begins here and passes over it.
func (c *scan) next() node {
	n := node{offset: c.offset + int32(c.at)}
	from := c.at
	switch c.raw[c.at] {
	case '{':
		n.shape = object
		c.passNested()
	case '[':
		n.shape = list
		c.passNested()
	case '"':
		n.shape = text
		c.passText()
	case 't', 'f':
		n.shape = truth
		c.passWord()
	case 'n':
		n.shape = null
		c.passWord()
	default:
		n.shape = number
		c.passWord()
	}
	n.raw = c.raw[from:c.at]
	return n
}

func (c *scan) passWord() {
	for c.at < len(c.raw) && strings.IndexByte(" \t\r\n,]}", c.raw[c.at]) < 0 {
		c.at++
	}
}

func (c *scan) passText() {
	for c.at++; c.raw[c.at] != '"'; c.at++ {
		if c.raw[c.at] == '\\' {
			c.at++
		}
	}
	c.at++
}

func (c *scan) passNested() {
	for depth := 0; ; {
		switch c.raw[c.at] {
		case '"':
			c.passText()
			continue
		case '{', '[':
			depth++
		case '}', ']':
			depth--
		}
		if c.at++; depth == 0 {
			return
		}
	}
}
