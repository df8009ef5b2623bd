package ahead

import (
	"math"
	"slices"
	"testing"

	"moldturn/sim/stats"
)

// about is a summary of so many days, give or take half.
func about(mean, half float64) stats.Summary {
	return stats.Summary{N: 20, Mean: mean, SD: half, Half: half, Low: mean - half, High: mean + half, Confidence: Confidence}
}

// No way wins back more than was lost, and what it wins beyond is told apart. What
// is not clear, or hurts all orders together, is not ranked with those that help.
func TestWaysWinBackNoMoreThanWasLost(t *testing.T) {
	for _, c := range []struct {
		name            string
		won, all        stats.Summary
		back, low, high float64
		beyond          float64
		helps, harms    bool
	}{
		{"part of it", about(4, 1), about(6, 2), 4, 3, 5, 2, true, false},
		{"all and more", about(44, 3), about(50, 3), 10, 10, 10, 40, true, false},
		{"about all", about(10.5, 2), about(10.5, 2), 10, 8.5, 10, 0.5, true, false},
		{"not clear", about(1, 1.5), about(9, 1), 0, 0, 0, 9, false, false},
		{"on the edge", about(1, 1), about(1, 1), 0, 0, 0, 1, false, false},
		{"at the cost of others", about(3, 1), about(-20, 5), 0, 0, 0, -20, false, true},
		{"worse", about(-3, 1), about(2, 5), 0, 0, 0, 2, false, true},
	} {
		o := OptionOf(Change{}, 10, c.won, c.all)
		if o.Helps() != c.helps || o.Harms() != c.harms {
			t.Errorf("%s: helps %v, harms %v", c.name, o.Helps(), o.Harms())
		}
		if o.Back != c.back || o.Least != c.low || o.Most != c.high || math.Abs(o.Beyond-c.beyond) > 1e-9 {
			t.Errorf("%s: won back %v (%v to %v), %v beyond; want %v (%v to %v), %v", c.name, o.Back, o.Least, o.Most, o.Beyond, c.back, c.low, c.high, c.beyond)
		}
	}
}

// Of ways that win all of it back the one with fewest hours stands first; what is
// not clear comes after all that help, what harms last.
func TestTheCheapestWayOfEqualsIsFirst(t *testing.T) {
	way := func(name string, won, hours float64) Option {
		o := OptionOf(Change{Words: name}, 10, about(won, 1), about(won, 1))
		o.Hours = hours
		return o
	}
	list := []Option{way("worse", -5, 0), way("unclear", 0.5, 0), way("Saturday", 44, 490), way("little", 3, 0), way("help", 40, 2)}
	slices.SortStableFunc(list, better)
	var got []string
	for _, o := range list {
		got = append(got, o.Words)
	}
	if want := []string{"help", "Saturday", "little", "unclear", "worse"}; !slices.Equal(got, want) {
		t.Errorf("ranked %v, want %v", got, want)
	}
}

// Changes cost days only where that is clear and worth a word.
func TestCostsAreClear(t *testing.T) {
	one := []Moved{{Days: 0.8, Half: 0.2}}
	for _, c := range []struct {
		name         string
		e            Effect
		costs, gains bool
	}{
		{"noise", Effect{Net: about(-0.3, 1.2), Lost: stats.Summary{}}, false, false},
		{"little", Effect{Net: about(0.4, 0.1), Lost: about(0.4, 0.1)}, false, false},
		{"many by little", Effect{Net: about(5, 2), Lost: about(6, 1)}, true, false},
		{"small ones in noise", Effect{Net: about(0.2, 2), Lost: about(0.9, 0.5)}, false, false},
		{"one order", Effect{Net: about(0.2, 2), Lost: about(0.8, 0.2), Moved: one}, true, false},
		{"one order, others gain", Effect{Net: about(-5, 1), Lost: about(0.8, 0.2), Moved: one}, true, false},
		{"gain", Effect{Net: about(-5, 1)}, false, true},
		{"small gain", Effect{Net: about(-0.4, 0.1)}, false, false},
	} {
		if c.e.Costs() != c.costs || c.e.Gains() != c.gains {
			t.Errorf("%s: costs %v, gains %v", c.name, c.e.Costs(), c.e.Gains())
		}
	}
}
