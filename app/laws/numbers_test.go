package laws

import (
	"math"
	"reflect"
	"strings"

	"tipline/app/solve"
	"tipline/geometry"
)

// numbers looks for what is no number, in everything that was worked out.
func (v *verdict) numbers(r *solve.Result) {
	for _, part := range r.Parts() {
		s := search{v, part.ID(), map[uintptr]bool{}}
		s.below(reflect.ValueOf(part), "")
	}
}

// search goes through a value for floats that are no numbers.
type search struct {
	verdict *verdict
	part    string
	seen    map[uintptr]bool
}

var (
	limitType   = reflect.TypeFor[geometry.Limit]()
	placeType   = reflect.TypeFor[solve.Place]()
	outlineType = reflect.TypeFor[geometry.Outline]()
	chainType   = reflect.TypeFor[geometry.Chain]()
)

func (s search) below(v reflect.Value, path string) {
	switch v.Kind() {
	case reflect.Float64:
		if f := v.Float(); math.IsNaN(f) || math.IsInf(f, 0) {
			s.verdict.breaks("%s%s is %v", s.part, path, f)
		}
	case reflect.Pointer:
		if !v.IsNil() && !s.seen[v.Pointer()] && !strings.HasPrefix(v.Type().String(), "*job.") {
			s.seen[v.Pointer()] = true
			s.below(v.Elem(), path)
		}
	case reflect.Interface:
		s.below(v.Elem(), path)
	case reflect.Slice:
		for i := range v.Len() {
			s.below(v.Index(i), path)
		}
	case reflect.Struct:
		s.fields(v, path)
	}
}

// fields looks into a struct. An open bound of a limit may be infinite, and is not
// said.
func (s search) fields(v reflect.Value, path string) {
	if v.Type() == outlineType || v.Type() == chainType {
		s.vertices(v.Field(0), path)
		return
	}
	for i := range v.NumField() {
		name := v.Type().Field(i).Name
		f := v.Field(i)
		open := v.Type() == limitType && (name == "Min" || name == "Max") || v.Type() == placeType && name == "Value"
		if open && !math.IsNaN(f.Float()) {
			continue
		}
		s.below(f, path+"."+name)
	}
}

func (s search) vertices(list reflect.Value, path string) {
	for i := range list.Len() {
		at := list.Index(i)
		x, y, bulge := at.Field(0).Field(0).Float(), at.Field(0).Field(1).Float(), at.Field(1).Float()
		if sum := x + y + bulge; math.IsNaN(sum) || math.IsInf(sum, 0) {
			s.verdict.breaks("%s%s has the corner %v, %v, %v", s.part, path, x, y, bulge)
		}
	}
}
