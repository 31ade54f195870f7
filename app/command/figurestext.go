package command

import (
	"fmt"
	"io"
	"math"
	"reflect"
	"strconv"
	"strings"

	"tipline/app/solve"
	"tipline/assets/words"
	"tipline/geometry"
	"tipline/geometry/measure"
)

// printer writes figures as text, one a line, each labelled from the catalogue by
// its name in JSON and written in the unit that name ends with.
type printer struct {
	out   io.Writer
	words words.Words
	units measure.Units
}

// labelWidth is the columns kept for labels.
const labelWidth = 30

// figures prints every part's figures below its name.
func (p printer) figures(r *solve.Result, f Figures) error {
	for _, parts := range []any{f.Wheels, f.Pinions, f.Pairs, f.Trains, f.Stacks} {
		list := reflect.ValueOf(parts)
		for i := range list.Len() {
			id := list.Index(i).FieldByName("ID").String()
			if err := p.part(r.Part(id).Name(), id, list.Index(i)); err != nil {
				return err
			}
		}
	}
	return nil
}

func (p printer) part(name, id string, figures reflect.Value) error {
	heading := name
	if name != id {
		heading += " (" + id + ")"
	}
	if _, err := fmt.Fprintln(p.out, heading); err != nil {
		return err
	}
	return p.fields(figures)
}

func (p printer) fields(v reflect.Value) error {
	for i := range v.NumField() {
		name, _, _ := strings.Cut(v.Type().Field(i).Tag.Get("json"), ",")
		if err := p.field(name, v.Field(i)); err != nil {
			return err
		}
	}
	return nil
}

func (p printer) field(name string, v reflect.Value) error {
	if v.Kind() == reflect.Pointer {
		if v.IsNil() {
			return nil
		}
		v = v.Elem()
	}
	switch {
	case name == "id" || empty(v):
		return nil
	case v.Kind() == reflect.Struct:
		return p.group(name, v)
	case v.Kind() == reflect.Slice && v.Type().Elem().Kind() == reflect.Struct:
		for i := range v.Len() {
			if err := p.group(name, v.Index(i)); err != nil {
				return err
			}
		}
		return nil
	}
	label := p.words.Say("figures." + name)
	pad := strings.Repeat(" ", max(labelWidth-len([]rune(label)), 1))
	_, err := fmt.Fprintf(p.out, "    %s%s%s\n", label, pad, p.value(name, v))
	return err
}

// group prints figures that belong together below their name.
func (p printer) group(name string, v reflect.Value) error {
	if _, err := fmt.Fprintf(p.out, "  %s\n", p.words.Say("figures."+name)); err != nil {
		return err
	}
	return p.fields(v)
}

// empty reports whether a text or list has nothing in it.
func empty(v reflect.Value) bool {
	return (v.Kind() == reflect.String || v.Kind() == reflect.Slice) && v.Len() == 0
}

// value writes a figure, or several as a list.
func (p printer) value(name string, v reflect.Value) string {
	switch v := v.Interface().(type) {
	case int:
		return strconv.Itoa(v)
	case bool:
		return p.words.Say("figures.is." + strconv.FormatBool(v))
	case string:
		if name == "kind" {
			return p.words.Choice("additions.kind", v)
		}
		return v
	case []string:
		return strings.Join(v, ", ")
	case float64:
		return p.number(name, v)
	case Each:
		if one, ok := v.One(); ok {
			return p.number(name, one)
		}
		return p.several(name, v)
	case []float64:
		return p.several(name, v)
	case [][]float64:
		places := make([]string, len(v))
		for i := range v {
			places[i] = p.several(name, v[i])
		}
		return strings.Join(places, " / ")
	}
	return strings.Trim(strings.Join(strings.Fields(fmt.Sprint(v.Interface())), ", "), "[]")
}

func (p printer) several(name string, vs []float64) string {
	texts := make([]string, len(vs))
	for i, v := range vs {
		texts[i] = p.number(name, v)
	}
	return p.units.List(texts)
}

// number writes a figure in the unit that its name ends with.
func (p printer) number(name string, v float64) string {
	for _, u := range []struct {
		ending string
		text   func() string
	}{
		{"_g_mm2", func() string { return p.significant(v) + " g·mm²" }},
		{"_g_mm", func() string { return p.units.Number(v, 3) + " g·mm" }},
		{"_m_min", func() string { return p.significant(v) + " m/min" }},
		{"_rpm", func() string { return p.units.Number(v, 0) + " " + p.words.Say("figures.rpm") }},
		{"_um_per_n", func() string { return p.significant(v) + " µm/N" }},
		{"_um", func() string { return p.units.Number(v, 1) + " µm" }},
		{"_mm2", func() string { return p.units.Number(v, 2) + " mm²" }},
		{"_mm", func() string { return p.units.Fine(v) }},
		{"_deg", func() string { return p.units.Angle(geometry.Degrees(v)) }},
		{"_share", func() string { return p.units.Number(100*v, 1) + " %" }},
		{"_s", func() string { return p.units.Number(v, 4) + " s" }},
		{"_g", func() string { return p.units.Number(v, 2) + " g" }},
	} {
		if strings.HasSuffix(name, u.ending) {
			return u.text()
		}
	}
	return p.significant(v)
}

// significant writes four figures.
func (p printer) significant(v float64) string {
	if v == 0 {
		return "0"
	}
	return p.units.Number(v, 3-int(math.Floor(math.Log10(math.Abs(v)))))
}
