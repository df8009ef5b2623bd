package view

import (
	"strings"
	"testing"

	"moldturn/sim"
)

func TestOrdersMove(t *testing.T) {
	level := [12]float64{9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9, 9}
	nearly, moving := level, level
	nearly[3], moving[3], moving[11] = 9.1, 9.5, 6
	for _, c := range []struct {
		months [12]float64
		want   string
	}{
		{level, ""}, {nearly, ""},
		{moving, " Orders move from 6.0 a week in December to 9.5 in April; the order book carries the difference."},
	} {
		if got, ok := ordersMove(c.months); got != c.want || ok != (c.want != "") {
			t.Errorf("%v: %q, want %q", c.months, got, c.want)
		}
	}
}

// Two models with months of their own add up, and the mean of the line over a
// year of equal months is the mean that came in.
func TestOrdersLine(t *testing.T) {
	var first, even [12]float64
	for m := range first {
		first[m], even[m] = 0.5, 1
		if m < 6 {
			first[m] = 1.5
		}
	}
	d := &sim.Demand{Models: []sim.ModelDemand{{PerWeek: 3, Monthly: first}, {PerWeek: 1, Monthly: even}}}
	g, words := ordersLine(d, 8, 52)
	if len(g.Values) != 52 || g.Values[0] != 11 || g.Values[51] != 5 || !strings.Contains(words, "from 5.0 a week in July to 11.0 in January") {
		t.Errorf("%v, %q", g.Values, words)
	}
	d.Models = d.Models[1:]
	if g, words := ordersLine(d, 8, 52); g.Values != nil || g.Value != 8 || !strings.Contains(words, "level") {
		t.Errorf("level orders: %+v, %q", g, words)
	}
	d.Dated = make([]sim.DatedOrder, 1)
	if g, words := ordersLine(d, 8, 52); g.Value != 8 || !strings.Contains(words, "from a book") {
		t.Errorf("a book: %+v, %q", g, words)
	}
}
