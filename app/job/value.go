package job

import (
	"encoding/json"
	"reflect"
)

// Typed returns the value of a text as it was typed.
func Typed(text string) Value { return Value{Text: text} }

// Counted returns the value of a text that is written as a bare number where it
// can be, as counts are; a text that is no number of JSON stays a text.
func Counted(text string) Value { return Value{text, isNumber(text)} }

// String returns the text as typed.
func (v Value) String() string { return v.Text }

// MarshalJSON writes the value as it stood: a bare number or a text.
func (v Value) MarshalJSON() ([]byte, error) {
	if v.number {
		return []byte(v.Text), nil
	}
	return []byte(quote(v.Text)), nil
}

// UnmarshalJSON reads a text or a bare number.
func (v *Value) UnmarshalJSON(data []byte) error {
	n, err := parse(data)
	if err != nil {
		return err
	}
	if n.shape == null {
		return nil
	}
	return decodeValue(n, "", reflect.ValueOf(v).Elem())
}

// node returns nil for an empty value.
func (v Value) node() *node {
	switch {
	case v.Text == "":
		return nil
	case v.number:
		return numberNode(v.Text)
	}
	return textNode(v.Text)
}

// isNumber reports whether a text is a number as JSON writes one.
func isNumber(s string) bool {
	var n json.Number
	return s != "" && s[0] != '"' && json.Unmarshal([]byte(s), &n) == nil && n.String() == s
}
