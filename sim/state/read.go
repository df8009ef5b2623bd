package state

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"reflect"
	"strconv"
	"unsafe"
)

// Read sets what x points to from what Write gave with the same derived fields,
// which stay as they are. It fails on data of another layout, and then leaves x
// in no particular state.
func Read(data []byte, x any, derived Derived) error {
	d := json.NewDecoder(bytes.NewReader(data))
	d.UseNumber()
	var tree any
	if err := d.Decode(&tree); err != nil {
		return err
	}
	if _, err := d.Token(); err != io.EOF {
		return fmt.Errorf("more than one value")
	}
	return (&reader{derived}).value(tree, reflect.ValueOf(x).Elem())
}

type reader struct{ derived Derived }

// open is v with the right to set it, an unexported field or not.
func open(v reflect.Value) reflect.Value {
	return reflect.NewAt(v.Type(), unsafe.Pointer(v.UnsafeAddr())).Elem()
}

func (r *reader) value(from any, v reflect.Value) error {
	v = open(v)
	if from == nil && (v.Kind() == reflect.Slice || v.Kind() == reflect.Map || v.Kind() == reflect.Pointer) {
		v.SetZero()
		return nil
	}
	switch v.Kind() {
	case reflect.Bool:
		b, ok := from.(bool)
		v.SetBool(b)
		return is(ok, from, v)
	case reflect.String:
		s, ok := from.(string)
		v.SetString(s)
		return is(ok, from, v)
	case reflect.Slice, reflect.Array:
		return r.list(from, v)
	case reflect.Struct:
		return r.fields(from, v)
	case reflect.Map:
		return r.table(from, v)
	case reflect.Pointer:
		v.Set(reflect.New(v.Type().Elem()))
		return r.value(from, v.Elem())
	}
	return number(from, v)
}

// is complains of a value that cannot be what is wanted.
func is(ok bool, from any, v reflect.Value) error {
	if ok {
		return nil
	}
	return fmt.Errorf("found %.60q, want %v", fmt.Sprint(from), v.Type())
}

func number(from any, v reflect.Value) error {
	text := ""
	switch x := from.(type) {
	case json.Number:
		text = x.String()
	case string: // "NaN", "+Inf"
		text = x
	default:
		return is(false, from, v)
	}
	var err error
	switch {
	case v.CanInt():
		var n int64
		n, err = strconv.ParseInt(text, 10, v.Type().Bits())
		v.SetInt(n)
	case v.CanUint() && v.Kind() != reflect.Uintptr:
		var n uint64
		n, err = strconv.ParseUint(text, 10, v.Type().Bits())
		v.SetUint(n)
	case v.CanFloat():
		var f float64
		f, err = strconv.ParseFloat(text, v.Type().Bits())
		v.SetFloat(f)
	default:
		return notPlain(v.Type())
	}
	return is(err == nil, from, v)
}

func (r *reader) list(from any, v reflect.Value) error {
	items, ok := from.([]any)
	if !ok || v.Kind() == reflect.Array && len(items) != v.Len() {
		return is(false, from, v)
	}
	if v.Kind() == reflect.Slice {
		v.Set(reflect.MakeSlice(v.Type(), len(items), len(items)))
	}
	for i, item := range items {
		if err := r.value(item, v.Index(i)); err != nil {
			return err
		}
	}
	return nil
}

func (r *reader) fields(from any, v reflect.Value) error {
	fields, ok := from.(map[string]any)
	if !ok {
		return is(false, from, v)
	}
	seen := 0
	for i := range v.NumField() {
		if r.derived.has(v.Type(), i) {
			continue
		}
		item, ok := fields[v.Type().Field(i).Name]
		if !ok {
			open(v.Field(i)).SetZero()
			continue
		}
		seen++
		if err := r.value(item, v.Field(i)); err != nil {
			return fmt.Errorf("%s: %w", fieldName(v.Type(), i), err)
		}
	}
	if seen < len(fields) {
		return fmt.Errorf("%v: %d fields that it does not have", v.Type(), len(fields)-seen)
	}
	return nil
}

func (r *reader) table(from any, v reflect.Value) error {
	pairs, ok := from.([]any)
	if !ok {
		return is(false, from, v)
	}
	v.Set(reflect.MakeMap(v.Type()))
	for _, p := range pairs {
		pair, ok := p.([]any)
		if !ok || len(pair) != 2 {
			return is(false, p, v)
		}
		key, item := reflect.New(v.Type().Key()).Elem(), reflect.New(v.Type().Elem()).Elem()
		if err := r.value(pair[0], key); err != nil {
			return err
		}
		if err := r.value(pair[1], item); err != nil {
			return err
		}
		v.SetMapIndex(key, item)
	}
	return nil
}
