package study

import (
	"bytes"
	"math"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
)

func written(t *testing.T, b *Book, keys ...string) string {
	t.Helper()
	var out bytes.Buffer
	if err := b.Write(&out, keys); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func entry(key string, first int, values ...float64) *Entry {
	return &Entry{Key: key, Names: []string{key}, First: first, Values: map[string]Values{"boats_per_week": values}}
}

// Whatever the order in which results came, and in how many pieces, the file
// that is written is the same, and reading it gives the same results.
func TestBookIsTheSameFromPieces(t *testing.T) {
	whole, pieces := NewBook(Head{Kind: "sweep"}), NewBook(Head{Kind: "sweep"})
	whole.Add(entry("a", 0, 1./3, 2, math.NaN(), 4))
	whole.Add(entry("b", 0, 5))
	pieces.Add(entry("b", 0, 5))
	pieces.Add(entry("a", 0, 1./3, 2))
	pieces.Add(entry("a", 3, 99))                // leaves a gap: of no use
	pieces.Add(entry("a", 1, 77, math.NaN(), 4)) // overlaps: what was there first stays
	want := written(t, whole, "a", "b")
	if diff := cmp.Diff(want, written(t, pieces, "a", "b")); diff != "" {
		t.Error(diff)
	}
	again, n, err := ReadBook([]byte(want))
	if err != nil || n != len(want) {
		t.Fatal(n, err)
	}
	if diff := cmp.Diff(want, written(t, again, "a", "b")); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff(map[string]Values{"boats_per_week": {1. / 3, 2, math.NaN()}}, again.Figures("a", 3), cmpopts.EquateNaNs()); diff != "" {
		t.Error(diff)
	}
	if again.Has("a") != 4 || again.Has("c") != 0 || again.Len() != 2 {
		t.Error(again.Has("a"), again.Has("c"), again.Len())
	}
}

// A file that was cut off anywhere is read up to its last whole line.
func TestBookCutOffAnywhere(t *testing.T) {
	b := NewBook(Head{Kind: "sweep"})
	b.Add(entry("a", 0, 1, 2))
	b.Add(entry("b", 0, 3))
	text := written(t, b, "a", "b")
	head := strings.IndexByte(text, '\n') + 1
	for n := range len(text) {
		got, whole, err := ReadBook([]byte(text[:n]))
		if n < head {
			if err == nil {
				t.Fatalf("%d bytes: a file without a first line is read", n)
			}
			continue
		}
		if err != nil || whole != strings.LastIndexByte(text[:n], '\n')+1 || got.Len() != strings.Count(text[:n], "\n")-1 {
			t.Fatalf("%d bytes: %d whole, %v", n, whole, err)
		}
	}
}

func TestBookComplains(t *testing.T) {
	head := written(t, NewBook(Head{}))
	for _, test := range []struct{ text, want string }{
		{"boats,luster\n", "line 1: this is no file of results"},
		{"{}\n", "line 1: this is no file of results"},
		{strings.Replace(head, `":1`, `":9`, 1), "line 1: results of version 9"},
		{head + "nonsense\n", "line 2: these results cannot be read"},
		{head + "{}\n", "line 2: results without a key"},
		{"", "line 1: the file ends"},
	} {
		if _, _, err := ReadBook([]byte(test.text)); err == nil || !strings.HasPrefix(err.Error(), test.want) {
			t.Errorf("%q: %v, want %q", test.text, err, test.want)
		}
	}
}

// Bytes from outside make an error or a book, never a panic.
func FuzzReadBook(f *testing.F) {
	b := NewBook(Head{Kind: "sweep"})
	b.Add(entry("a", 0, 1, math.NaN()))
	var out bytes.Buffer
	if err := b.Write(&out, nil); err != nil {
		f.Fatal(err)
	}
	f.Add(out.Bytes())
	f.Add([]byte(out.String() + `{"key":"a","first":1,"values":{"x":[1],"y":[]}}` + "\n"))
	f.Fuzz(func(t *testing.T, data []byte) {
		b, _, err := ReadBook(data)
		if err == nil {
			if err := b.Write(&bytes.Buffer{}, nil); err != nil {
				t.Error(err)
			}
		}
	})
}
