package state

import (
	"encoding/json"
	"fmt"
	"math"
	"reflect"
	"slices"
	"strconv"
)

// Write gives the JSON of what x points to, all but derived fields. The same
// data gives the same bytes. It fails on data that is not plain.
func Write(x any, derived Derived) ([]byte, error) {
	w := &writer{derived: derived}
	if err := w.value(reflect.ValueOf(x).Elem()); err != nil {
		return nil, err
	}
	return w.out, nil
}

type writer struct {
	derived Derived
	out     []byte
}

func (w *writer) text(s string) { w.out = append(w.out, s...) }

func (w *writer) value(v reflect.Value) error {
	switch v.Kind() {
	case reflect.Bool:
		w.out = strconv.AppendBool(w.out, v.Bool())
	case reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64:
		w.out = strconv.AppendInt(w.out, v.Int(), 10)
	case reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		w.out = strconv.AppendUint(w.out, v.Uint(), 10)
	case reflect.Float32, reflect.Float64:
		w.float(v.Float())
	case reflect.String:
		quoted, _ := json.Marshal(v.String()) // text always can be written
		w.out = append(w.out, quoted...)
	case reflect.Slice, reflect.Array:
		return w.list(v)
	case reflect.Struct:
		return w.fields(v)
	case reflect.Map:
		return w.table(v)
	case reflect.Pointer:
		if v.IsNil() {
			w.text("null")
			return nil
		}
		return w.value(v.Elem())
	default:
		return notPlain(v.Type())
	}
	return nil
}

func notPlain(t reflect.Type) error { return fmt.Errorf("%v is not plain data", t) }

// float writes a number; those that JSON has no word for are text.
func (w *writer) float(f float64) {
	if math.IsNaN(f) || math.IsInf(f, 0) {
		w.text(strconv.Quote(strconv.FormatFloat(f, 'g', -1, 64)))
		return
	}
	w.out = strconv.AppendFloat(w.out, f, 'g', -1, 64)
}

func (w *writer) list(v reflect.Value) error {
	if v.Kind() == reflect.Slice && v.IsNil() {
		w.text("null")
		return nil
	}
	w.text("[")
	for i := range v.Len() {
		if i > 0 {
			w.text(",")
		}
		if err := w.value(v.Index(i)); err != nil {
			return err
		}
	}
	w.text("]")
	return nil
}

func (w *writer) fields(v reflect.Value) error {
	w.text("{")
	first := true
	for i := range v.NumField() {
		if w.derived.has(v.Type(), i) || zero(v.Field(i)) {
			continue
		}
		if !first {
			w.text(",")
		}
		first = false
		w.text(strconv.Quote(v.Type().Field(i).Name) + ":")
		if err := w.value(v.Field(i)); err != nil {
			return fmt.Errorf("%s: %w", fieldName(v.Type(), i), err)
		}
	}
	w.text("}")
	return nil
}

// zero is true for what reading leaves as it is found; not for -0, and not for
// what is not plain, so that it is complained about.
func zero(v reflect.Value) bool {
	switch v.Kind() {
	case reflect.Float32, reflect.Float64:
		return math.Float64bits(v.Float()) == 0
	case reflect.Struct:
		for i := range v.NumField() {
			if !zero(v.Field(i)) {
				return false
			}
		}
		return true
	case reflect.Array:
		for i := range v.Len() {
			if !zero(v.Index(i)) {
				return false
			}
		}
		return true
	case reflect.Func, reflect.Interface, reflect.Chan, reflect.UnsafePointer, reflect.Uintptr, reflect.Complex64, reflect.Complex128:
		return false
	}
	return v.IsZero()
}

// table writes a map as pairs in the order of its keys, which are numbers or
// text.
func (w *writer) table(v reflect.Value) error {
	if v.IsNil() {
		w.text("null")
		return nil
	}
	keys := v.MapKeys()
	switch {
	case v.Type().Key().Kind() == reflect.String:
		slices.SortFunc(keys, func(a, b reflect.Value) int { return compare(a.String(), b.String()) })
	case v.Type().Key().ConvertibleTo(reflect.TypeFor[int64]()):
		slices.SortFunc(keys, func(a, b reflect.Value) int { return compare(whole(a), whole(b)) })
	default:
		return notPlain(v.Type())
	}
	w.text("[")
	for i, k := range keys {
		if i > 0 {
			w.text(",")
		}
		w.text("[")
		if err := w.value(k); err != nil {
			return err
		}
		w.text(",")
		if err := w.value(v.MapIndex(k)); err != nil {
			return err
		}
		w.text("]")
	}
	w.text("]")
	return nil
}
