package state

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"hash"
	"io"
	"math"
	"reflect"
)

// Hash is a fingerprint of the content of what x points to: the same for equal
// content, wherever it lies in memory. Unlike Write it takes interfaces and
// pointers to shared things, and fails only on functions, channels and maps,
// unless they are nil. Things that lead back to themselves are not allowed.
func Hash(x any) (string, error) {
	h := &hasher{sum: sha256.New(), seen: map[target][]byte{}}
	if err := h.value(reflect.ValueOf(x).Elem()); err != nil {
		return "", err
	}
	return hex.EncodeToString(h.sum.Sum(nil)[:16]), nil
}

// hasher remembers the fingerprints of shared things, so that each is read once.
type hasher struct {
	sum  hash.Hash
	seen map[target][]byte
	word [8]byte
}

// target is what a pointer leads to.
type target struct {
	of reflect.Type
	at uintptr
}

func (h *hasher) number(n uint64) {
	binary.LittleEndian.PutUint64(h.word[:], n)
	h.sum.Write(h.word[:])
}

func (h *hasher) text(s string) {
	h.number(uint64(len(s)))
	io.WriteString(h.sum, s)
}

func (h *hasher) value(v reflect.Value) error {
	switch v.Kind() {
	case reflect.Bool:
		n := uint64(0)
		if v.Bool() {
			n = 1
		}
		h.number(n)
	case reflect.Float32, reflect.Float64:
		h.number(math.Float64bits(v.Float()))
	case reflect.String:
		h.text(v.String())
	case reflect.Slice, reflect.Array:
		return h.list(v)
	case reflect.Struct:
		for i := range v.NumField() {
			if err := h.value(v.Field(i)); err != nil {
				return err
			}
		}
	case reflect.Interface:
		return h.behind(v)
	case reflect.Pointer:
		return h.shared(v)
	case reflect.Map, reflect.Func, reflect.Chan:
		if !v.IsNil() {
			return notPlain(v.Type())
		}
	default:
		switch {
		case v.CanInt():
			h.number(uint64(v.Int()))
		case v.CanUint():
			h.number(v.Uint())
		default:
			return notPlain(v.Type())
		}
	}
	return nil
}

func (h *hasher) list(v reflect.Value) error {
	h.number(uint64(v.Len()))
	for i := range v.Len() {
		if err := h.value(v.Index(i)); err != nil {
			return err
		}
	}
	return nil
}

func (h *hasher) behind(v reflect.Value) error {
	if v.IsNil() {
		h.text("nil")
		return nil
	}
	h.text(v.Elem().Type().String())
	return h.value(v.Elem())
}

func (h *hasher) shared(v reflect.Value) error {
	if v.IsNil() {
		h.text("nil")
		return nil
	}
	to := target{v.Type(), v.Pointer()}
	sum, ok := h.seen[to]
	if !ok {
		inner := &hasher{sum: sha256.New(), seen: h.seen}
		if err := inner.value(v.Elem()); err != nil {
			return err
		}
		sum = inner.sum.Sum(nil)
		h.seen[to] = sum
	}
	h.text(v.Type().String())
	h.sum.Write(sum)
	return nil
}
