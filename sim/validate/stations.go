package validate

import (
	"fmt"
	"math"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/exact"
)

// station is one craft of c people who never leave, with orders at random.
func station(rate float64, c int, time draw.Dist) func(clock.Time, uint64) *sim.Plan {
	return func(length clock.Time, _ uint64) *sim.Plan {
		p := newPlant("station", length)
		p.part(p.model(), work("work", p.always("crew", c), time))
		p.demand(rate)
		return &p.Plan
	}
}

const classic = "Gross and Harris, Fundamentals of Queueing Theory, ch. 2; spread of averages: Whitt 1989, Management Science 35, and Daley 1968"

// oneServer holds M/M/1: L = ρ/(1−ρ), Wq = ρ/(μ−λ).
func oneServer() []Case {
	var out []Case
	for _, row := range []struct{ rate, mean, l, wq, spreadL, spreadWq, hours float64 }{
		{0.5, 1, 1, 1, 24, 29, 600_000},
		{0.8, 1, 4, 4, 1800, 1976, 1_600_000},
		{0.9, 1, 9, 9, 34200, 35901, 1_600_000},
		{1, 0.9, 9, 8.1, 30780, 29079.81, 1_600_000},
	} {
		load := row.rate * row.mean
		slack := 1/row.mean - row.rate // waits and stays beyond t have chances of load·exp(−slack·t) and exp(−slack·t)
		out = append(out, Case{
			Group: "one server", Name: fmt.Sprintf("M/M/1, %g an hour, work of %g h", row.rate, row.mean), Source: classic,
			Plant: station(row.rate, 1, exponential(row.mean)), WarmUp: 5000, Hours: row.hours,
			Period: 20, Marks: []float64{0}, Watch: []string{"work"},
			Over: Over{Wait: math.Log(load/0.05) / slack, Lead: math.Log(10) / slack},
			Values: []Value{
				{"L", row.l, number("work"), row.spreadL},
				{"Wq", row.wq, wait("work"), row.spreadWq},
				{"W", row.wq + row.mean, lead, 0},
				{"share that waits", load, waited("work"), 0},
				{"chance of 2", (1 - load) * load * load, chanceAt(0, 2), 0},
				{"chance of 5 or more", math.Pow(load, 5), chanceFrom(0, 5), 0},
				{"waits beyond the 95 % point", 0.05, longWait("work"), 0},
				{"lead times beyond the 90 % point", 0.1, longLead, 0},
			},
		})
	}
	return out
}

// severalServers holds M/M/c. The eye clinic is of Gross and Harris.
func severalServers() []Case {
	var out []Case
	for _, row := range []struct {
		rate, mean                       float64
		c                                int
		p0, wait, l, wq, w, spread, warm float64
		hours                            float64
	}{
		{1.6, 1, 2, 0.11111111, 0.71111111, 4.44444444, 1.77777778, 2.77777778, 906.9959, 3000, 1_200_000},
		{2.4, 1, 3, 0.05617978, 0.64719101, 4.98876404, 1.07865169, 2.07865169, 610.8022, 3000, 1_200_000},
		{8, 1, 10, 0.00027657, 0.40918015, 9.63672060, 0.20459008, 1.20459008, 204.0665, 1000, 500_000},
		{0.2, 8, 2, 0.11111111, 0.71111111, 4.44444444, 14.22222222, 22.22222222, 7255.97, 20000, 8_000_000},
		{6, 1. / 3, 3, 1. / 9, 4. / 9, 26. / 9, 4. / 27, 13. / 27, 21.4888, 500, 150_000},
	} {
		out = append(out, Case{
			Group: "several servers", Name: fmt.Sprintf("M/M/%d, %g an hour, work of %.4g h", row.c, row.rate, row.mean),
			Source: "Erlang C: Gross and Harris, ch. 2; computed with the GNU Octave queueing package 1.2.7 (qsmmm)",
			Plant:  station(row.rate, row.c, exponential(row.mean)), WarmUp: row.warm, Hours: row.hours,
			Period: 5 * row.mean, Marks: []float64{0}, Watch: []string{"work"},
			Values: []Value{
				{"L", row.l, number("work"), row.spread},
				{"Wq", row.wq, wait("work"), 0},
				{"W", row.w, lead, 0},
				{"share that waits", row.wait, waited("work"), 0},
				{"busy share", row.rate * row.mean / float64(row.c), busy(row.c, "work"), 0},
			},
		})
		if row.p0 > .01 { // otherwise too rare to be seen
			c := &out[len(out)-1]
			c.Values = append(c.Values, Value{"chance of none", row.p0, chanceAt(0, 0), 0})
		}
	}
	return out
}

// anyLaw holds M/G/1: Wq = λE[S²]/(2(1−ρ)), with work of 1 h on average.
func anyLaw() []Case {
	var out []Case
	for _, l := range []struct {
		name string
		law  draw.Dist
		wq   [3]float64
		more float64 // hours, as a multiple
	}{
		{"constant", constant(1), [3]float64{.5, 2, 4.5}, 1},
		{"triangular(0.5, 1, 1.5)", must(draw.Triangular(.5, 1, 1.5)), [3]float64{.52083333, 2.08333333, 4.6875}, 1},
		{"Erlang-4", must(draw.Erlang(4, 1)), [3]float64{.625, 2.5, 5.625}, 1},
		{"lognormal, cv 0.5", must(draw.Lognormal(1, .5)), [3]float64{.625, 2.5, 5.625}, 1},
		{"uniform(0, 2)", must(draw.Uniform(0, 2)), [3]float64{.66666667, 2.66666667, 6}, 1},
		{"Erlang-2", must(draw.Erlang(2, 1)), [3]float64{.75, 3, 6.75}, 1},
		{"hyperexponential, scv 4", must(draw.Hyperexponential(1, 4)), [3]float64{2.5, 10, 22.5}, 4},
	} {
		for i, rate := range []float64{.5, .8, .9} {
			out = append(out, Case{
				Group: "any law of work", Name: fmt.Sprintf("M/G/1, %s, load %g", l.name, rate),
				Source: "Pollaczek–Khinchine: Gross and Harris, ch. 5; computed with the GNU Octave queueing package 1.2.7 (qsmg1)",
				Plant:  station(rate, 1, l.law), WarmUp: 5000, Hours: []float64{500_000, 1_200_000, 1_000_000}[i] * l.more,
				Values: []Value{
					{"Wq", l.wq[i], wait("work"), 0},
					{"L", rate * (1 + l.wq[i]), number("work"), 0},
				},
				Long: i == 2,
			})
		}
	}
	return append(out, constantWork())
}

// constantWork holds the chances of each number in M/D/1 with load 0.8.
func constantWork() Case {
	c := Case{
		Group: "any law of work", Name: "M/D/1, load 0.8, number there", Source: "series of Crommelin and Erlang, computed with 50 digits",
		Plant: station(.8, 1, constant(1)), WarmUp: 3000, Hours: 1_000_000, Period: 3.7, Marks: []float64{0}, Watch: []string{"work"},
	}
	for n, p := range []float64{.2, .24510819, .18941175, .12757958, .08327559, .05412765, .03517813, .02286419} {
		c.Values = append(c.Values, Value{fmt.Sprintf("chance of %d", n), p, chanceAt(0, n), 0})
	}
	return c
}

// priorities holds classes of work that do not break into each other.
func priorities() []Case {
	var out []Case
	for _, row := range []struct {
		rates, means, wq []float64
		c                int
		hours            float64
	}{
		{[]float64{.2, .6}, []float64{1, 1}, []float64{1, 5}, 1, 1_600_000},
		{[]float64{.4, .4}, []float64{1, 1}, []float64{4. / 3, 20. / 3}, 1, 1_600_000},
		{[]float64{.2, .3}, []float64{1, 2}, []float64{1.75, 8.75}, 1, 6_400_000},
		{[]float64{.3, .2}, []float64{2, 1}, []float64{3.5, 17.5}, 1, 6_400_000},
		{[]float64{1, .6}, []float64{1, 1}, []float64{.71111111, 3.55555556}, 2, 1_600_000},
		{[]float64{.5, .5, 1.4}, []float64{1, 1, 1}, []float64{.25887640, .38831461, 1.61797753}, 3, 1_000_000},
	} {
		c := Case{
			Group: "priorities", Name: fmt.Sprintf("rates %v, work of %v h, %d servers", row.rates, row.means, row.c),
			Source: "Cobham 1954, Operations Research 2:70–76",
			Plant:  classes(row.rates, row.means, row.c), WarmUp: 5000, Hours: row.hours,
		}
		for i, wq := range row.wq {
			c.Values = append(c.Values, Value{fmt.Sprintf("Wq of class %d", i+1), wq, wait(className(i)), 0})
		}
		out = append(out, c)
	}
	return out
}

func className(i int) string { return fmt.Sprintf("class %d", i+1) }

// classes is a model for each class of work at one craft, the first the most
// urgent.
func classes(rates, means []float64, c int) func(clock.Time, uint64) *sim.Plan {
	return func(length clock.Time, _ uint64) *sim.Plan {
		p := newPlant("classes", length)
		crew := p.always("crew", c)
		for i := range rates {
			s := work(className(i), crew, exponential(means[i]))
			s.Urgent = int8(len(rates) - i)
			p.part(p.model(), s)
			p.demand(rates[i])
		}
		return &p.Plan
	}
}

// breakdowns holds a server that fails, at any time or only at work. The
// server is a place, so that it can break down.
func breakdowns() []Case {
	var out []Case
	for _, row := range []struct{ rate, mu, xi, eta, l, lWork, hours float64 }{
		{.5, 1, .1, .5, 1.91666667, 1.75, 800_000},
		{.5, 1, .05, .2, 3, 2.5, 1_600_000},
		{.1, .2, .01, .1, 1.42424242, 1.33333333, 3_200_000},
	} {
		for _, working := range []bool{false, true} {
			l, name, source := row.l, "at any time", "Avi-Itzhak and Naor 1963, Operations Research 11:303–320"
			if working {
				l, name, source = row.lWork, "at work only", "Gaver 1962, J. Royal Statistical Society B 24:73–90"
			}
			down := exact.Breakdowns{Rate: row.xi, Repair: exact.WorkOf(1/row.eta, 1)}
			out = append(out, Case{
				Group: "breakdowns", Name: fmt.Sprintf("%g an hour, work %g h, up %g h, repair %g h, fails %s", row.rate, 1/row.mu, 1/row.xi, 1/row.eta, name),
				Source: source + "; confirmed by Markov chains",
				Plant:  failing(row.rate, 1/row.mu, down, working), WarmUp: 5000, Hours: row.hours,
				Values: []Value{{"L", l, number("work"), 0}, {"W", l / row.rate, lead, 0}},
			})
		}
	}
	return out
}

func failing(rate, mean float64, b exact.Breakdowns, working bool) func(clock.Time, uint64) *sim.Plan {
	return func(length clock.Time, _ uint64) *sim.Plan {
		p := newPlant("failing", length)
		server := p.place("server", 1)
		s := work("work", sim.None, exponential(mean))
		s.Take, s.Free = []int16{server}, []int16{server}
		p.part(p.model(), s)
		p.demand(rate)
		p.Failures = []sim.Failure{{
			Place: server, Gun: sim.None, WhileWorking: working,
			Up: draw.Compile(exponential(1 / b.Rate)), Repair: draw.Compile(exponential(b.Repair.Mean)),
		}}
		return &p.Plan
	}
}
