package study

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func factor(t *testing.T, text string) Factor {
	t.Helper()
	f, err := ParseFactor(text)
	if err != nil {
		t.Fatal(err)
	}
	return f
}

func TestParseFactor(t *testing.T) {
	for _, test := range []struct {
		text string
		want []string
		unit string
	}{
		{"strip.every=1..4", []string{"1", "2", "3", "4"}, ""},
		{"strip.every=1..15/4", []string{"1", "5", "9", "13"}, ""},
		{"hold.clock=12h..18h/2h", []string{"12 h", "14 h", "16 h", "18 h"}, "h"},
		{"hold.clock = 12 .. 13 h / 0.5 h", []string{"12.0 h", "12.5 h", "13.0 h"}, "h"},
		{"finish.x=0.1..0.3/0.1", []string{"0.1", "0.2", "0.3"}, ""},
		{"a=-1..1", []string{"-1", "0", "1"}, ""},
		{"a=0%..20%/10%", []string{"0 %", "10 %", "20 %"}, "%"},
		{"strip.policy=never, every", []string{"never", "every"}, ""},
		{`models."Rush = 23".molds=2,3`, []string{"2", "3"}, ""},
		{"hold.clock=12h..36h", nil, "h"},
	} {
		f := factor(t, test.text)
		if diff := cmp.Diff(test.want, f.Levels); diff != "" || f.Unit != test.unit {
			t.Errorf("%s: unit %q, %s", test.text, f.Unit, diff)
		}
	}
	for _, test := range []struct{ text, want string }{
		{"strip.every", "allowed: path=low..high"},
		{"=1..3", "allowed: path=low..high"},
		{"a=3..1", "does not rise"},
		{"a=1h..2min", "one unit"},
		{"a=1..2/0", "above 0"},
		{"a=1..2/5", "at most the range"},
		{"a=1..1000000", "allowed: 1000"},
		{"a=x..3", "not a number"},
		{"a=1,,2", "is empty"},
		{"a=1,1", "given twice"},
		{"a=1h..2h/1min", "one unit"},
	} {
		if _, err := ParseFactor(test.text); err == nil || !strings.Contains(err.Error(), test.want) {
			t.Errorf("%s: %v, want something about %q", test.text, err, test.want)
		}
	}
}

func TestGrid(t *testing.T) {
	d, err := NewGrid([]Factor{factor(t, "a=1..2"), factor(t, "b=x,y,z")})
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for i := range d.Points {
		names = append(names, d.Name(i))
	}
	want := []string{"a 1, b x", "a 1, b y", "a 1, b z", "a 2, b x", "a 2, b y", "a 2, b z"}
	if diff := cmp.Diff(want, names); diff != "" {
		t.Error(diff)
	}
	if _, err := NewGrid([]Factor{factor(t, "a=1h..2h")}); err == nil || !strings.Contains(err.Error(), "has no step") {
		t.Errorf("a range without a step: %v", err)
	}
	if _, err := NewGrid([]Factor{factor(t, "a=1..500"), factor(t, "b=1..500")}); err == nil {
		t.Error("250 000 points are accepted")
	}
}

func TestEach(t *testing.T) {
	d, err := NewEach([]Factor{factor(t, "a=1..9"), factor(t, "b=2h..8h"), factor(t, "c=1..5/2")})
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for i := range d.Points {
		names = append(names, d.Name(i))
	}
	want := []string{"a 1", "a 9", "b 2 h", "b 8 h", "c 1", "c 3", "c 5"}
	if diff := cmp.Diff(want, names); diff != "" {
		t.Error(diff)
	}
}

// A Latin hypercube of n points uses each of n slices of each factor once
// (McKay, Beckman and Conover 1979), and a seed always gives the same points.
func TestLatin(t *testing.T) {
	factors := []Factor{factor(t, "a=0h..10h"), factor(t, "b=1..20")}
	d, err := NewLatin(factors, 20, 7)
	if err != nil {
		t.Fatal(err)
	}
	for k := range 2 {
		var slices20 []int
		for i := range d.Points {
			v, ok := d.Number(i, k)
			if !ok {
				t.Fatalf("%q is no number", d.Points[i].Values[k])
			}
			slice := int(v / 10 * 20 * .99999)
			if k == 1 {
				slice = int(v) - 1
			}
			slices20 = append(slices20, slice)
		}
		slices.Sort(slices20)
		for i, s := range slices20 {
			if s != i && !(k == 0 && s == i-1) { // a value rounded down may touch the slice below
				t.Errorf("factor %d: slices %v", k, slices20)
				break
			}
		}
	}
	again, _ := NewLatin(factors, 20, 7)
	other, _ := NewLatin(factors, 20, 8)
	if fmt.Sprint(d.Points) != fmt.Sprint(again.Points) || fmt.Sprint(d.Points) == fmt.Sprint(other.Points) {
		t.Error("points do not belong to the seed")
	}
}
