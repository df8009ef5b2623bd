package validate

import (
	"fmt"
	"slices"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/exact"
	"moldturn/sim/policy"
	"moldturn/sim/shift"
)

// stop is one stop of a loop of molds.
type stop struct {
	name  string
	mean  float64
	crews []crew // nil: only time passes
	law   law
}

// loop is a number of molds that go round stops without end. What follows the
// stop "pull" is care of the mold, done when a strip is due.
type loop struct {
	molds   int
	stops   []stop
	strip   int     // at every k-th pull of each mold; 0: never
	chance  float64 // or by chance
	shared  []string
	urgency map[string]int8
}

func (l loop) plan(length clock.Time, _ uint64) *sim.Plan {
	p := newPlant("loop", length)
	var part, care []sim.Step
	crafts := map[string]int16{}
	for i, s := range l.stops {
		step := passing(s.name, s.law(s.mean))
		if s.crews != nil {
			who := s.name
			if slices.Contains(l.shared, who) {
				who = l.shared[0]
			}
			if _, ok := crafts[who]; !ok {
				crafts[who] = p.craft(who, s.crews...)
			}
			step = work(s.name, crafts[who], s.law(s.mean))
			step.Urgent = l.urgency[s.name]
		}
		switch pull := slices.IndexFunc(l.stops, func(s stop) bool { return s.name == "pull" }); {
		case i == pull:
			part = append(part, means(step, sim.Pulled))
		case i < pull:
			part = append(part, step)
		case l.chance > 0:
			step.When = sim.Damaged
			care = append(care, means(step, sim.Repaired))
		default:
			step.When = sim.DueLight
			care = append(care, means(step, sim.LightStripped))
		}
	}
	hull := p.part(p.model(), part...)
	p.molds(hull, l.molds, append([]sim.Step{means(passing("check", constant(0)), sim.MoldChecked)}, care...)...)
	if l.chance > 0 { // a damage that takes no time of its own is the strip by chance
		p.Parts[hull].Chips, p.Chip = l.chance, draw.Compile(constant(1e-9))
	}
	if l.strip > 0 {
		p.Strip = policy.Strip{Kind: policy.StripEvery, Every: l.strip, LightCoats: 2}
	}
	p.Demand.Full = true
	return &p.Plan
}

func people(n int) []crew { return []crew{{n, shift.Always()}} }

// moldLoop is wax 2 h, gel 3 h, laminate 10 h, cure 24 h, pull 2 h, and a strip
// of 6 h after every fifth pull.
func moldLoop(n, wax, gel, laminate int, strip bool, crewLaw, cureLaw law) loop {
	l := loop{molds: n, stops: []stop{{"wax", 2, people(wax), crewLaw}, {"gel", 3, people(gel), crewLaw}, {"laminate", 10, people(laminate), crewLaw}, {"cure", 24, nil, cureLaw}, {"pull", 2, people(1), crewLaw}}}
	if strip {
		l.stops = append(l.stops, stop{"strip", 6, people(1), crewLaw})
		l.strip = 5
	}
	return l
}

// solved gives the exact loop by mean value analysis.
func (l loop) solved() exact.Loop {
	var stops []exact.Stop
	for _, s := range l.stops {
		e := exact.Stop{Name: s.name, Time: s.mean, Visits: 1}
		for _, c := range s.crews {
			e.Servers += c.people
		}
		if s.name == "strip" {
			e.Visits = l.chance
			if l.strip > 0 {
				e.Visits = 1 / float64(l.strip)
			}
		}
		stops = append(stops, e)
	}
	return must(exact.Solve(l.molds, stops))[l.molds-1]
}

const byMVA = "mean value analysis: Reiser and Lavenberg 1980, J. ACM 27:313–322; also computed with the GNU Octave queueing package 1.2.7 (qncsmva)"

// values lists X, Q and U of the exact loop. spread is that of X and of each Q
// where known.
func (l loop) values(spread ...float64) []Value {
	e := l.solved()
	of := func(i int) float64 {
		if i < len(spread) {
			return spread[i]
		}
		return 0
	}
	out := []Value{{"X", e.X, perHour, of(0)}}
	for i, s := range l.stops {
		out = append(out, Value{"Q " + s.name, e.Stops[i].Q, number(s.name), of(i + 1)})
	}
	for i, s := range l.stops {
		if s.crews != nil {
			out = append(out, Value{"U " + s.name, e.Stops[i].U, busy(s.crews[0].people, s.name), 0})
		}
	}
	return out
}

// moldLoops holds the small mold loop in three configurations, 1 to 8 molds.
// Cure is exponential where the spread of theory is used, which depends on it.
func moldLoops() []Case {
	var out []Case
	spreads := map[string][]float64{
		"A 4": {.033730, .917, 2.600, 12.450, 18.003, .919}, "A 8": {.060283, 3.534, 14.506, 81.439, 68.790, 3.550},
		"B 4": {.031793, .872, 2.463, 11.938, 18.212, .875, 1.704}, "B 8": {.056726, 3.331, 13.500, 77.250, 65.535, 3.352, 4.697},
		"C 4": {.035992, .495, 1.101, 8.884, 14.935, .939, 1.783}, "C 8": {.063303, 1.055, 2.725, 30.269, 40.953, 4.309, 5.814},
	}
	for _, config := range []struct {
		name               string
		wax, gel, laminate int
		strip              bool
	}{{"A", 1, 1, 2, false}, {"B", 1, 1, 2, true}, {"C", 2, 2, 3, true}} {
		for n := 1; n <= 8; n++ {
			name := fmt.Sprintf("%s %d", config.name, n)
			l := moldLoop(n, config.wax, config.gel, config.laminate, config.strip, exponential, exponential)
			c := Case{
				Group: "mold loops", Name: fmt.Sprintf("loop %s, %d molds", config.name, n), Source: byMVA,
				Plant: l.plan, WarmUp: 4000, Hours: 1_000_000, Values: l.values(spreads[name]...),
				Long: n != 1 && n != 4 && n != 8,
			}
			c.watchLaminate(name)
			out = append(out, c)
		}
	}
	return out
}

// watchLaminate adds the chances of each number of molds at laminate, in loops
// where they are known, as often as they are not rare.
func (c *Case) watchLaminate(loop string) {
	chances := map[string][]float64{
		"B 4": {.34671831, .40646372, .18248841, .05568311},
		"C 8": {.11951868, .27991455, .29023111, .17379677, .08755231},
	}[loop]
	for n, p := range chances {
		c.Period, c.Marks, c.Watch = 10, []float64{0}, []string{"laminate"}
		c.Values = append(c.Values, Value{fmt.Sprintf("chance of %d at laminate", n), p, chanceAt(0, n), 0})
	}
}

// oneMold holds a mold alone, which meets no queue: whatever the laws, a cycle
// takes the sum of the mean times.
func oneMold() []Case {
	var out []Case
	for _, laws := range []struct {
		name       string
		crew, cure law
	}{{"Erlang-4 work, constant cure", erlang(4), constant}, {"constant work, exponential cure", constant, exponential}, {"Erlang-2 work, Erlang-10 cure", erlang(2), erlang(10)}} {
		l := moldLoop(1, 1, 1, 2, true, laws.crew, laws.cure)
		out = append(out, Case{Group: "one mold", Name: laws.name + ", strip at every pull number 5", Source: "the mean of a sum: 41 h and a fifth of 6 h",
			Plant: l.plan, WarmUp: 400, Hours: 400_000, Values: []Value{{"X", 1 / 42.2, perHour, 0}}})
	}
	return out
}

// insensitive holds what the law of cure may not change: with exponential work
// of crews, X and Q are the same for any cure, and for a strip by chance or by
// count. Then what it does change, once a crew's work is not exponential.
func insensitive() []Case {
	var out []Case
	three := map[string]law{"exponential": exponential, "Erlang-3": erlang(3), "Erlang-10": erlang(10), "constant": constant}
	for _, n := range []int{2, 3} {
		for _, cureName := range []string{"exponential", "Erlang-3", "Erlang-10", "constant"} {
			for _, byCount := range []bool{true, false} {
				l := loop{molds: n, stops: []stop{{"wax", 2, people(1), exponential}, {"laminate", 10, people(2), exponential}, {"cure", 24, nil, three[cureName]}, {"pull", 2, people(1), exponential}, {"strip", 6, people(1), exponential}}}
				how := "by chance"
				if l.chance = 1. / 3; byCount {
					l.chance, l.strip, how = 0, 3, "at every third pull"
				}
				out = append(out, Case{
					Group: "any law of cure", Name: fmt.Sprintf("%d molds, cure %s, strip %s", n, cureName, how),
					Source: "Baskett, Chandy, Muntz and Palacios 1975, J. ACM 22:248–260; values by Markov chain",
					Plant:  l.plan, WarmUp: 4000, Hours: 800_000, Values: stripValues(n), Long: n == 3,
				})
			}
		}
	}
	return append(out, sensitive()...)
}

// stripValues are X and Q of the loop in insensitive.
func stripValues(n int) []Value {
	v := [][]float64{{.049627792, .104218, .496278, 1.191067, .104218, .104218}, {.073286052, .161848, .755592, 1.758865, .161848, .161848}}[n-2]
	out := []Value{{"X", v[0], perHour, 0}}
	for i, name := range []string{"wax", "laminate", "cure", "pull", "strip"} {
		out = append(out, Value{"Q " + name, v[i+1], number(name), 0})
	}
	return out
}

// sensitive holds loops without a product form: wax 2 h, laminate 10 h with one
// server, cure 24 h, pull 2 h.
func sensitive() []Case {
	var out []Case
	for _, row := range []struct {
		n                   int
		laminate, wax, cure string
		x                   float64
	}{
		{2, "E1", "E1", "E1", .048969072}, {2, "E1", "E1", "constant", .048969072}, {2, "E2", "E1", "E1", .049621954}, {2, "E4", "E1", "E1", .050008582}, {2, "E10", "E4", "E1", .050371225},
		{3, "E1", "E1", "E1", .067267684}, {3, "E1", "E1", "E4", .067267684}, {3, "E2", "E1", "E1", .068891533}, {3, "E4", "E1", "E1", .069906729}, {3, "E4", "E1", "E4", .070605198},
		{3, "E4", "E2", "E1", .070064694}, {3, "E10", "E4", "E1", .070855026},
		{4, "E1", "E1", "E1", .080838659}, {4, "E2", "E1", "E1", .083205180}, {4, "E4", "E1", "E1", .084717330}, {4, "E4", "E2", "E1", .084923216}, {4, "E10", "E4", "E1", .086090850},
		{6, "E1", "E1", "E1", .095211138}, {6, "E2", "E1", "E1", .097092005}, {6, "E4", "E1", "E1", .098086357},
	} {
		laws := map[string]law{"E1": exponential, "E2": erlang(2), "E4": erlang(4), "E10": erlang(10), "constant": constant}
		l := loop{molds: row.n, stops: []stop{{"wax", 2, people(1), laws[row.wax]}, {"laminate", 10, people(1), laws[row.laminate]}, {"cure", 24, nil, laws[row.cure]}, {"pull", 2, people(1), exponential}}}
		out = append(out, Case{
			Group: "work that is not exponential", Name: fmt.Sprintf("%d molds, laminate %s, wax %s, cure %s", row.n, row.laminate, row.wax, row.cure),
			Source: "Markov chain, computed; limits of Baskett, Chandy, Muntz and Palacios 1975",
			Plant:  l.plan, WarmUp: 4000, Hours: 2_000_000, Values: []Value{{"X", row.x, perHour, 0}}, Long: row.n != 3,
		})
	}
	return out
}
