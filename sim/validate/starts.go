package validate

import (
	"fmt"

	"moldturn/sim/exact"
)

// fromEmpty holds a station that starts empty: expected waits of the first
// orders, and the number there at set times.
func fromEmpty() []Case {
	times := []float64{1, 2, 5, 10, 20, 50}
	var out []Case
	for _, row := range []struct {
		rho       float64
		waits     [5]float64 // of the 2nd, 5th, 10th, 25th, 50th
		number    [6]float64
		none      [6]float64
		first25   float64
		firstHalf float64
		first5    float64
		first10   float64
	}{
		{.5, [5]float64{.333333, .720622, .907162, .993264, .999837}, [6]float64{.334745, .508124, .751083, .895942, .974846, .999242}, [6]float64{.726255, .633795, .549166, .516452, .503289, .500082}, .841626, .920022, .442067, .646950},
		{.8, [5]float64{.444444, 1.188959, 1.859832, 2.797181, 3.410509}, [6]float64{.551552, .877584, 1.469461, 2.030282, 2.647635, 3.405039}, [6]float64{.597399, .472530, .348968, .286423, .244852, .214118}, 1.919005, 2.541800, .675273, 1.148842},
		{.9, [5]float64{.473684, 1.329465, 2.195003, 3.667232, 4.998451}, [6]float64{.626143, 1.009952, 1.752183, 2.530695, 3.519710, 5.122480}, [6]float64{.559449, .427231, .295806, .227266, .178952, .137669}, 2.360544, 3.392189, .742500, 1.311208},
	} {
		c := Case{
			Group: "start from empty", Name: fmt.Sprintf("M/M/1, load %g", row.rho),
			Source: "exact recursion and matrix exponential, computed; the model of Kelton and Law 1985, Operations Research 33:378–396",
			Plant:  station(row.rho, 1, exponential(1)), Hours: 50/row.rho + 200, Runs: 8000, Marks: times, Watch: []string{"work"}, Firsts: 50,
			Values: []Value{{"mean of 5 waits", row.first5, meanWait(5), 0}, {"mean of 10 waits", row.first10, meanWait(10), 0}, {"mean of 25 waits", row.first25, meanWait(25), 0}, {"mean of 50 waits", row.firstHalf, meanWait(50), 0}},
		}
		for i, n := range []int{2, 5, 10, 25, 50} {
			c.Values = append(c.Values, Value{fmt.Sprintf("wait of order %d", n), row.waits[i], waitOf(n), 0})
		}
		for i, t := range times {
			c.Values = append(c.Values, Value{fmt.Sprintf("number at %g h", t), row.number[i], numberAt(i), 0}, Value{fmt.Sprintf("chance of none at %g h", t), row.none[i], chanceAt(i, 0), 0})
		}
		out = append(out, c)
	}
	return append(out, first25(), loopFromWax(2), loopFromWax(4))
}

// first25 is the well-known start of 25 orders at load 0.9, in hours of which
// one brings an order on average.
func first25() Case {
	c := Case{
		Group: "start from empty", Name: "first waits, one order an hour, work of 0.9 h",
		Source: "exact recursion; Law, Simulation Modeling and Analysis, gives 2.12 for 25 (from memory)",
		Plant:  station(1, 1, exponential(.9)), Hours: 120, Runs: 16000, Firsts: 25,
		Values: []Value{{"mean of 25 waits", 2.124489, meanWait(25), 0}},
	}
	for i, w := range exact.FirstWaits(.9, 25) {
		if i%6 == 0 && i > 0 {
			c.Values = append(c.Values, Value{fmt.Sprintf("wait of order %d", i+1), .9 * w, waitOf(i + 1), 0})
		}
	}
	return c
}

// loopFromWax is loop A from the start, all molds before wax: pulls so far.
func loopFromWax(n int) Case {
	times := []float64{24, 48, 72, 168, 336, 720}
	pulls := map[int][]float64{
		2: {.50357685, 1.64800712, 2.80728225, 7.44332327, 15.55639747, 34.10056708},
		4: {.65144441, 2.70448415, 4.92627930, 13.81006250, 29.35637782, 64.89081285},
	}
	l := moldLoop(n, 1, 1, 2, false, exponential, exponential)
	c := Case{Group: "start from empty", Name: fmt.Sprintf("loop A, %d molds, pulls so far", n), Source: "matrix exponential of the Markov chain, computed",
		Plant: l.plan, Hours: 721, Runs: 6000, Marks: times}
	for i, t := range times {
		c.Values = append(c.Values, Value{fmt.Sprintf("pulls by %g h", t), pulls[n][i], pulledBy(i), 0})
	}
	return c
}
