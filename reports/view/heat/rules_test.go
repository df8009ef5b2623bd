package heat

import (
	"math"
	"strings"
	"testing"

	"moldturn/sim/record"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

// falling is a curve of so many turns that is under 97 from turn at on; 0: never.
func falling(turns, at int) *curve {
	var c curve
	for i := range c {
		switch {
		case i == 0 || i > turns:
			c[i] = math.NaN()
		case at > 0 && i >= at:
			c[i] = 96.99
		default:
			c[i] = 97
		}
	}
	return &c
}

func says(t *testing.T, got, want string) {
	t.Helper()
	if !strings.Contains(got, want) {
		t.Errorf("found %q, want %q in it", got, want)
	}
}

// Both sides of every switch of the title on luster by turns. A part at the
// target exactly is not under it.
func TestFall(t *testing.T) {
	for _, c := range []struct {
		cool, hot *curve
		want      string
	}{
		{falling(5, 0), falling(3, 0), "stays at 97 or above through all 5 turns"},
		{falling(1, 0), falling(0, 0), "through all 1 turn since"},
		{falling(10, 8), falling(10, 6), "In the hot season the average part is under 97 from turn 6 since a strip on, in the cool season from turn 8"},
		{falling(10, 6), falling(10, 6), "From turn 6 since a strip on"},
		{falling(10, 6), falling(0, 0), "From turn 6 since a strip on"},
		{falling(0, 0), falling(10, 4), "From turn 4 since a strip on"},
		{falling(10, 0), falling(10, 9), "In the hot season the average part is under 97 from turn 9 since a strip on; in the cool season it never is"},
		{falling(10, 9), falling(10, 0), "In the cool season the average part is under 97 from turn 9 since a strip on; in the hot season it never is"},
	} {
		says(t, fall(c.cool, c.hot, 97), c.want)
	}
}

// What a pull leaves is told only where the difference is clear.
func TestLeaves(t *testing.T) {
	for _, c := range []struct {
		hot  []float64
		want string
	}{
		{[]float64{1.5, 1.52, 1.48}, "1.50 times the build-up"},
		{[]float64{0.8, 0.82, 0.78}, "leaves less build-up on its mold than in the coolest: 0.80 of it"},
		{[]float64{0.5, 2, 1.1}, "no clear difference"},
		{[]float64{1.5}, "no clear difference"},
	} {
		says(t, leaves(grown{cool: []float64{1, 1, 1}[:len(c.hot)], hot: c.hot}), c.want)
	}
}

// A week is hot from half of the years on, and not from one fewer.
func TestSwitches(t *testing.T) {
	year := func(hot func(w int) int) *[record.WeeksOfYear]record.Heat {
		var weeks [record.WeeksOfYear]record.Heat
		for w := range 52 {
			weeks[w] = record.Heat{Looks: 10, Hot: hot(w)}
		}
		return &weeks
	}
	between := year(func(w int) int {
		if w >= 19 && w < 40 {
			return 5
		}
		return 4
	})
	for _, c := range []struct {
		weeks    *[record.WeeksOfYear]record.Heat
		bySeason bool
		want     string
	}{
		{between, true, "The hot season begins about May 14 and ends about Oct 8 in most years"},
		{between, false, "in most years; strips do not go by it"},
		{year(func(int) int { return 4 }), true, "No week is in the hot season"},
		{year(func(int) int { return 5 }), true, "Every week is in the hot season"},
		{&[record.WeeksOfYear]record.Heat{}, true, "The plant has no seasons"},
	} {
		says(t, switches(c.weeks, 52, c.bySeason), c.want)
	}
	if got := hotWeeks(between, 52); len(got) != 1 || got[0].From != 19 || got[0].To != 39 {
		t.Errorf("hot weeks %+v", got)
	}
	between[30] = record.Heat{} // shut down: nobody looked
	if got := hotWeeks(between, 52); len(got) != 1 || got[0].To != 39 {
		t.Errorf("hot weeks %+v", got)
	}
	between[10].Hot = 5
	if got := hotWeeks(between, 52); len(got) != 2 || got[0].From != 10 || got[0].To != 10 {
		t.Errorf("hot weeks %+v", got)
	}
}

// Weeks with fewer than a fourth of the pulls of the busiest are not drawn, and
// the coolest come first.
func TestWeeksDrawn(t *testing.T) {
	var weeks [record.WeeksOfYear]record.Heat
	weeks[0] = record.Heat{Pulls: 40, HeatIndex: 40 * 80}
	weeks[1] = record.Heat{Pulls: 10, HeatIndex: 10 * 70}
	weeks[2] = record.Heat{Pulls: 9, HeatIndex: 9 * 60}
	at := usual(&weeks)
	if len(at) != 2 || at[0] != 0 || at[1] != 1 {
		t.Errorf("weeks %v", at)
	}
	if got := coolFirst(&weeks, at); got[0] != 1 || got[1] != 0 {
		t.Errorf("coolest first: %v", got)
	}
}

// held is a curve with these means, each known to ± spread or so.
func held(spread float64, means ...float64) *study.HoldCurve {
	c := &study.HoldCurve{Base: 24}
	for i, x := range means {
		c.Hours = append(c.Hours, 8+2*i)
		values := study.Values{}
		for r := range 5 {
			wobble := spread * float64((r*7+i*3)%5-2)
			values = append(values, x+wobble)
		}
		c.Points = append(c.Points, study.Figures{Values: map[string]study.Values{"boats_per_week": values, "luster_p10": values}})
	}
	return c
}

func TestStairs(t *testing.T) {
	m := named("boats_per_week")
	says(t, stairs(held(0.001, 9.2, 9.5, 9.4, 8.9, 8.8), m), "Most boats at 10 h in the mold, 0.7 a week more than at 16 h; the largest step is from 12 to 14 h")
	says(t, stairs(held(0.001, 8, 9.5, 9.4), m), "Most boats at 10 h in the mold, 1.5 a week more than at 8 h; the largest step is from 8 to 10 h")
	says(t, stairs(held(1, 9, 9.5, 9.4, 8.9, 8.8), m), "From 8 to 16 h in the mold, no clear difference in boats per week")
	clear, vague := stats.Difference{Summary: stats.Summary{Mean: -0.2}, Clear: true}, stats.Difference{Summary: stats.Summary{Mean: -0.9}}
	up := stats.Difference{Summary: stats.Summary{Mean: 0.9}, Clear: true}
	for _, c := range []struct {
		steps []stats.Difference
		best  int
		want  int
	}{
		{[]stats.Difference{vague, clear}, 0, 1},        // only clear steps count
		{[]stats.Difference{vague, vague}, 0, -1},       // none does
		{[]stats.Difference{up, clear}, 0, 1},           // up again is no way down
		{[]stats.Difference{up, clear}, 1, 0},           // from the best to the left
		{[]stats.Difference{clear, vague, clear}, 0, 0}, // of equal ones the first
	} {
		if got := steepest(c.steps, c.best); got != c.want {
			t.Errorf("steepest %+v from %d: %d, want %d", c.steps, c.best, got, c.want)
		}
	}
}

// The knee is the first point with nine tenths of the gain, and not with less.
func TestKnee(t *testing.T) {
	m := named("luster_p10")
	says(t, knee(held(0.0001, 96, 96.5, 96.91, 96.95, 97), m), "The knee is at 12 h in the mold: nine tenths of the 1.00 points of luster that 16 h have over 8 h")
	says(t, knee(held(0.0001, 96, 96.5, 96.89, 96.95, 97), m), "The knee is at 14 h")
	says(t, knee(held(0.0001, 96, 96.2, 96.4, 96.6, 97), m), "Luster is 1.00 points better at 16 h in the mold than at 8 h, and has no knee before")
	says(t, knee(held(1, 96, 96.2, 96.4, 96.6, 97), m), "no clear difference in luster")
}
