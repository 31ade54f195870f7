package job

import (
	"bytes"
	"encoding/json"
	"reflect"
	"strconv"
	"sync"
)

// plan is how a struct's fields are called in the file.
type plan struct {
	names   []string
	at      map[string]int // index of the struct's field by its name in the file
	unknown int            // index of the field Unknown
}

var plans sync.Map // reflect.Type to plan

func planOf(t reflect.Type) plan {
	if p, ok := plans.Load(t); ok {
		return p.(plan)
	}
	p := plan{at: map[string]int{}}
	for i := range t.NumField() {
		f := t.Field(i)
		if f.Name == "Unknown" {
			p.unknown = i
			continue
		}
		name := f.Tag.Get("json")
		p.names = append(p.names, name)
		p.at[name] = i
	}
	plans.Store(t, p)
	return p
}

var (
	valueType  = reflect.TypeOf(Value{})
	pixelsType = reflect.TypeOf(Pixels{})
)

// decodeObject fills a struct from an object; what the struct has no field for
// is kept in Unknown. It refuses a known field that stands twice, since one of the
// two would be lost.
func decodeObject(n *node, path string, into reflect.Value) error {
	if n.shape != object {
		return wrongShape(n, path, "job.is.object")
	}
	p := planOf(into.Type())
	seen := map[string]bool{}
	var unknown []Member
	for i, name := range n.open().names {
		item := &n.open().items[i]
		at, known := p.at[name]
		if !known {
			unknown = append(unknown, Member{name, compact(item)})
			continue
		}
		full := join(path, name)
		if seen[name] {
			return item.refuse(&Refusal{Code: "job.twice", Path: full})
		}
		seen[name] = true
		if err := decode(item, full, into.Field(at)); err != nil {
			return err
		}
	}
	into.Field(p.unknown).Set(reflect.ValueOf(unknown))
	return nil
}

// decode fills a field. A null is a field left out, but kept where all is kept.
func decode(n *node, path string, into reflect.Value) error {
	switch {
	case into.Type() == pixelsType:
		into.SetBytes(compact(n))
		return nil
	case n.shape == null:
		return nil
	case into.Type() == valueType:
		return decodeValue(n, path, into)
	}
	switch into.Kind() {
	case reflect.String:
		if n.shape != text {
			return wrongShape(n, path, "job.is.text")
		}
		into.SetString(n.text())
	case reflect.Pointer:
		into.Set(reflect.New(into.Type().Elem()))
		return decodeObject(n, path, into.Elem())
	case reflect.Slice:
		return decodeList(n, path, into)
	}
	return nil
}

func decodeValue(n *node, path string, into reflect.Value) error {
	switch n.shape {
	case text:
		into.Set(reflect.ValueOf(Value{Text: n.text()}))
	case number:
		into.Set(reflect.ValueOf(Value{Text: n.raw, number: true}))
	default:
		return wrongShape(n, path, "job.want.value")
	}
	return nil
}

func decodeList(n *node, path string, into reflect.Value) error {
	if n.shape != list {
		return wrongShape(n, path, "job.is.list")
	}
	items := n.open().items
	switch {
	case len(items) == 0:
		return nil
	case len(items) > maxItems:
		return n.refuse(&Refusal{Code: "job.too-many-items", Path: path, Max: strconv.Itoa(maxItems)})
	}
	into.Set(reflect.MakeSlice(into.Type(), len(items), len(items)))
	for i := range items {
		item := &items[i]
		if item.shape == null {
			return wrongShape(item, index(path, i), wanted(into.Type().Elem()))
		}
		if err := decode(item, index(path, i), into.Index(i)); err != nil {
			return err
		}
	}
	return nil
}

// wanted is the catalogue key of what a list's items must be.
func wanted(t reflect.Type) string {
	switch {
	case t == valueType:
		return "job.want.value"
	case t.Kind() == reflect.String:
		return "job.is.text"
	}
	return "job.is.object"
}

func wrongShape(n *node, path, want string) error {
	return n.refuse(&Refusal{Code: "job.wrong-type", Path: path, Is: n.shape.key(), Want: want})
}

// compact returns a piece of JSON as it stood, without blanks between its tokens.
func compact(n *node) json.RawMessage {
	var b bytes.Buffer
	if err := json.Compact(&b, []byte(n.raw)); err != nil {
		panic(err) // raw was read as well-formed
	}
	return b.Bytes()
}

func join(path, name string) string {
	if path == "" {
		return name
	}
	return path + "." + name
}
