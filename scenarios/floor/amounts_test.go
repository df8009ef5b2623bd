package floor

import "testing"

func TestAmounts(t *testing.T) {
	turns, luster, money := turnsAmount(), lusterAmount(), &amount{units: []string{"k", "usd"}, high: 1e8, scale: map[string]float64{"k": 1000}}
	for _, c := range []struct {
		a    *amount
		s    string
		want float64
	}{
		{turns, "3", 3}, {turns, "3 turns", 3}, {turns, "3turns", 3}, {turns, "12.0", 12}, {turns, "1,204", 1204}, {turns, "1.204", 1204}, {turns, "1 204", 1204}, {turns, "1'204 pulls", 1204},
		{luster, "97.2", 97.2}, {luster, "97,2 pts", 97.2}, {luster, "97.2 points", 97.2}, {luster, "97.125", 97.125}, {luster, "100 %", 100}, {luster, ".5", 0.5},
		{money, "$54,900", 54900}, {money, "$54,900.50", 54900.5}, {money, "€ 112.500,25", 112500.25}, {money, "112.5k", 112500}, {money, "1,112,500", 1112500}, {money, "54900 USD", 54900},
	} {
		if got, err := c.a.parse(c.s); err != nil || got != c.want {
			t.Errorf("%q is %v (%v), want %v", c.s, got, err, c.want)
		}
	}
	for _, c := range []struct {
		a *amount
		s string
	}{
		{turns, "three"}, {turns, "3.5"}, {turns, "-1"}, {turns, "3 boats"}, {turns, "3-5"}, {turns, "~3"}, {turns, "12,34"}, {turns, "1,20,4"}, {turns, "1e9"}, {turns, "NaN"}, {turns, "99999999999999999999"},
		{luster, "972"}, {luster, "97..2"}, {luster, "97 98"}, {luster, "Inf"}, {money, "1,204.5.6"}, {money, "1.204,5,6"},
	} {
		if got, err := c.a.parse(c.s); err == nil {
			t.Errorf("%q is read as %v", c.s, got)
		}
	}
}
