package job

import (
	"errors"
	"io"
	"reflect"
	"strconv"
	"strings"

	"tipline/app/keep"
)

// Save writes the job into the named file, which stays as it was until the new
// one is whole and on the disk.
func Save(name string, j *Job) error {
	if err := keep.Write(name, j.Write); err != nil {
		var refusal *Refusal
		if errors.As(err, &refusal) {
			return err
		}
		return &Refusal{Code: "job.unwritable", File: name, Err: reason(err)}
	}
	return nil
}

// Write writes the job file: UTF-8, the same bytes for the same job, fields in
// the order of the work, empty ones left out, unknown ones last.
func (j *Job) Write(w io.Writer) error {
	root, err := encodeObject(reflect.ValueOf(j).Elem())
	if err != nil {
		return err
	}
	var b strings.Builder
	write(&b, root, 0, 0)
	b.WriteString("\n")
	_, err = io.WriteString(w, b.String())
	return err
}

func encodeObject(from reflect.Value) (*node, error) {
	p := planOf(from.Type())
	n := &node{shape: object}
	for _, name := range p.names {
		item, err := encode(from.Field(p.at[name]))
		if err != nil {
			return nil, err
		}
		if item != nil {
			n.add(name, item)
		}
	}
	for _, m := range from.Field(p.unknown).Interface().([]Member) {
		item, err := parse(m.Raw)
		if err != nil {
			return nil, err
		}
		n.add(m.Name, item)
	}
	return n, nil
}

// encode returns a field's node, or nil where the field is empty.
func encode(from reflect.Value) (*node, error) {
	switch v := from.Interface().(type) {
	case Value:
		return v.node(), nil
	case Pixels:
		if v.Empty() {
			return nil, nil
		}
		return parse(v)
	case string:
		if v == "" {
			return nil, nil
		}
		return textNode(v), nil
	case int:
		return numberNode(strconv.Itoa(v)), nil
	}
	if from.Kind() == reflect.Slice {
		return encodeList(from)
	}
	if from.IsNil() {
		return nil, nil
	}
	return encodeObject(from.Elem())
}

// encodeList returns nil for an empty list. An empty item is written as an empty
// text, since the others' places count.
func encodeList(from reflect.Value) (*node, error) {
	if from.Len() == 0 {
		return nil, nil
	}
	n := &node{shape: list}
	for i := range from.Len() {
		item, err := encode(from.Index(i))
		if err != nil {
			return nil, err
		}
		if item == nil {
			item = textNode("")
		}
		n.add("", item)
	}
	return n, nil
}
