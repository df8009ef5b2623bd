package state

import (
	"math"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

type inner struct {
	n    int32
	f    float64
	text string
}

type sample struct {
	yes    bool
	key    uint64
	list   []inner
	empty  []int8
	none   []int8
	row    [3]float64
	one    *inner
	words  map[string]int16
	by     map[int32]*inner
	hidden func()
	Open   int
}

var sampleDerived = Derived{"sample.hidden"}

func drawInner(t *rapid.T) inner {
	return inner{rapid.Int32().Draw(t, "n"), rapid.Float64().Draw(t, "f"), rapid.String().Draw(t, "text")}
}

// What is written and read back is the same, bit for bit.
func TestWrittenAndReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := sample{
			yes: rapid.Bool().Draw(t, "yes"), key: rapid.Uint64().Draw(t, "key"), empty: []int8{}, Open: rapid.Int().Draw(t, "open"),
			row: [3]float64{rapid.Float64().Draw(t, "row"), math.Copysign(0, -1), math.Inf(1)}, hidden: func() {},
			words: map[string]int16{"b": 2, "a": 1, "": 3}, by: map[int32]*inner{},
		}
		for range rapid.IntRange(0, 3).Draw(t, "items") {
			x.list = append(x.list, drawInner(t))
			i := drawInner(t)
			x.by[i.n] = &i
		}
		if len(x.list) > 1 {
			x.one = &inner{f: math.SmallestNonzeroFloat64}
		}
		data, err := Write(&x, sampleDerived)
		if err != nil {
			t.Fatal(err)
		}
		y := sample{none: []int8{9}, Open: 7, words: map[string]int16{"old": 1}}
		if err := Read(data, &y, sampleDerived); err != nil {
			t.Fatalf("%v in %s", err, data)
		}
		x.hidden = nil
		if !reflect.DeepEqual(x, y) || !math.Signbit(y.row[1]) {
			t.Fatalf("%+v became %+v by %s", x, y, data)
		}
		again, _ := Write(&y, sampleDerived)
		if string(again) != string(data) {
			t.Fatalf("%s, then %s", data, again)
		}
	})
}

func TestNotANumberIsKept(t *testing.T) {
	x, y := inner{f: math.NaN()}, inner{}
	data, err := Write(&x, nil)
	if err != nil {
		t.Fatal(err)
	}
	if err := Read(data, &y, nil); err != nil || !math.IsNaN(y.f) {
		t.Errorf("%s became %v, %v", data, y.f, err)
	}
}

func TestDerivedStaysAsItIs(t *testing.T) {
	called := false
	y := sample{hidden: func() { called = true }, key: 4}
	if err := Read([]byte(`{"yes":true}`), &y, sampleDerived); err != nil {
		t.Fatal(err)
	}
	if y.hidden(); !called || y.key != 0 || !y.yes {
		t.Errorf("%+v", y)
	}
}

func TestWhatIsNotPlainIsRefused(t *testing.T) {
	if _, err := Write(&sample{}, nil); err == nil || !strings.Contains(err.Error(), "sample.hidden: func() is not plain data") {
		t.Error(err)
	}
	if _, err := Layout(&sample{}, nil); err == nil || !strings.Contains(err.Error(), "sample.hidden: func() is not plain data") {
		t.Error(err)
	}
	if _, err := Layout(&sample{}, Derived{"sample.hidden", "sample.gone"}); err == nil || !strings.Contains(err.Error(), "sample.gone is named as derived") {
		t.Error(err)
	}
	if _, err := Layout(&struct{ m map[float64]int }{}, nil); err == nil {
		t.Error("a map with keys that are not whole is not plain")
	}
}

func TestReadComplains(t *testing.T) {
	for text, want := range map[string]string{
		`{"yes":1}`:              "sample.yes: found \"1\", want bool",
		`{"list":[{"n":3.5}]}`:   "sample.list: inner.n: found \"3.5\", want int32",
		`{"empty":[300]}`:        "sample.empty: found \"300\", want int8",
		`{"row":[1,2]}`:          "want [3]float64",
		`{"yes":true,"more":1}`:  "state.sample: 1 fields that it does not have",
		`{"by":[[1]]}`:           "sample.by",
		`{"yes":true} {}`:        "more than one value",
		`{"yes":`:                "unexpected EOF",
		`{"one":{"text":false}}`: "want string",
	} {
		if err := Read([]byte(text), &sample{}, sampleDerived); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%s gives %v, want %q", text, err, want)
		}
	}
}

func TestLayoutTellsFieldsApart(t *testing.T) {
	type a struct{ X int32 }
	type b struct{ X int64 }
	type c struct{ Y int32 }
	seen := map[string]bool{}
	for _, x := range []any{&a{}, &b{}, &c{}, &struct{ l [2]a }{}, &struct{ l [3]a }{}} {
		l, err := Layout(x, nil)
		if err != nil || seen[l] {
			t.Errorf("%T: %s, %v", x, l, err)
		}
		seen[l] = true
	}
}

// A fingerprint is of content: sharing does not matter, every value does.
func TestHash(t *testing.T) {
	type tree struct {
		left, right *inner
		any         any
		f           func()
	}
	one := &inner{n: 1}
	same := tree{left: one, right: one, any: 3}
	apart := tree{left: &inner{n: 1}, right: &inner{n: 1}, any: 3}
	other := tree{left: &inner{n: 1}, right: &inner{n: 2}, any: 3}
	kind := tree{left: one, right: one, any: int8(3)}
	hash := func(x *tree) string {
		h, err := Hash(x)
		if err != nil {
			t.Fatal(err)
		}
		return h
	}
	if hash(&same) != hash(&apart) {
		t.Error("equal content has two fingerprints")
	}
	if hash(&same) == hash(&other) || hash(&same) == hash(&kind) {
		t.Error("different content has one fingerprint")
	}
	if _, err := Hash(&tree{f: func() {}}); err == nil {
		t.Error("a function has no content")
	}
}
