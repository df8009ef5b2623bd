package assume

import (
	"testing"

	"moldturn/reports/view"
)

func TestAround(t *testing.T) {
	for _, c := range []struct {
		value, allowed, low, high string
	}{
		{"300", "0 to 100000", "210", "390"}, {"2", "0 to 50", "1", "3"}, {"0.5 h", "0 h to 24 h", "0.3 h", "0.7 h"},
		{"6 %", "0 % to 90 %", "4 %", "8 %"}, {"85 %", "0 % to 100 %", "", ""}, {"1", "1 to 9", "", ""}, {"0", "0 to 9", "", ""},
		{"every", "", "", ""}, {"4 x 14 h", "", "", ""}, {"3/week", "0/week to 100/week", "2/week", "4/week"},
	} {
		low, high, ok := around(c.value, c.allowed)
		if low != c.low || high != c.high || ok != (c.low != "") {
			t.Errorf("%s in %s: %q and %q, %v; want %q and %q", c.value, c.allowed, low, high, ok, c.low, c.high)
		}
	}
}

func TestMeasureVariesTheFirst(t *testing.T) {
	item := func(path, value string) Item {
		return Item{Input: view.Input{Path: path, Value: value, Range: "0 to 1000"}}
	}
	if got := measure([]Item{item("note", "text")}); got != "" {
		t.Errorf("a text was moved: %q", got)
	}
	got := measure([]Item{item("note", "text"), item(`models."A B".x`, "10"), item("b", "20"), item("c", "30"), item("d", "40"), item("e", "50")})
	if want := `moldturn sweep SCENARIO --each --over 'models."A B".x=7, 13' --over 'b=14, 26' --over 'c=21, 39' --over 'd=28, 52'`; got != want {
		t.Errorf("got  %s\nwant %s", got, want)
	}
}
