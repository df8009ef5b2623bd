package state

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"fmt"
	"hash"
	"io"
	"reflect"
)

func compare[T cmp.Ordered](a, b T) int { return cmp.Compare(a, b) }

// whole is a key of a map as a number.
func whole(v reflect.Value) int64 {
	if v.CanUint() {
		return int64(v.Uint())
	}
	return v.Int()
}

// Layout is a fingerprint of the names and kinds of all that Write saves of what
// x points to: data saved under another layout cannot be read. It fails on types
// that are not plain and on derived fields that there are not, which is what a
// test should ask of every table that is saved.
func Layout(x any, derived Derived) (string, error) {
	l := &layout{derived: derived, sum: sha256.New(), seen: map[reflect.Type]bool{}, used: map[string]bool{}}
	if err := l.of(reflect.TypeOf(x).Elem()); err != nil {
		return "", err
	}
	for _, name := range derived {
		if !l.used[name] {
			return "", fmt.Errorf("%s is named as derived, but is not there", name)
		}
	}
	return hex.EncodeToString(l.sum.Sum(nil)[:8]), nil
}

type layout struct {
	derived Derived
	sum     hash.Hash
	seen    map[reflect.Type]bool
	used    map[string]bool
}

func (l *layout) of(t reflect.Type) error {
	io.WriteString(l.sum, t.Kind().String()+" "+t.Name()+"\n")
	switch t.Kind() {
	case reflect.Bool, reflect.String, reflect.Float32, reflect.Float64,
		reflect.Int, reflect.Int8, reflect.Int16, reflect.Int32, reflect.Int64,
		reflect.Uint, reflect.Uint8, reflect.Uint16, reflect.Uint32, reflect.Uint64:
		return nil
	case reflect.Array:
		fmt.Fprintf(l.sum, "%d\n", t.Len())
		return l.of(t.Elem())
	case reflect.Slice, reflect.Pointer:
		return l.of(t.Elem())
	case reflect.Map:
		if k := t.Key().Kind(); k < reflect.Int || k > reflect.Uint64 && k != reflect.String {
			return notPlain(t)
		}
		if err := l.of(t.Key()); err != nil {
			return err
		}
		return l.of(t.Elem())
	case reflect.Struct:
		return l.fields(t)
	}
	return notPlain(t)
}

func (l *layout) fields(t reflect.Type) error {
	if l.seen[t] {
		return nil
	}
	l.seen[t] = true
	for i := range t.NumField() {
		name := fieldName(t, i)
		if l.derived.has(t, i) {
			l.used[name] = true
			continue
		}
		io.WriteString(l.sum, name+"\n")
		if err := l.of(t.Field(i).Type); err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
	}
	return nil
}
