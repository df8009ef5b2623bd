package validate

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

const maxPlus = "Baccelli, Cohen, Olsder and Quadrat 1992, Synchronization and Linearity: maximum cycle ratio; times by enumeration in whole numbers"

// steadyLoops holds loops with constant times. The rate is N over the cycle, or
// that of the narrowest stop.
func steadyLoops() []Case {
	var out []Case
	for _, row := range []struct {
		n, strip int
		times    []float64
		cycle    Cycle
	}{
		{1, 0, []float64{41, 82, 123, 164}, Cycle{1, 41}},
		{2, 0, []float64{41, 44, 82, 85, 123, 126, 164, 167}, Cycle{2, 41}},
		{3, 0, []float64{41, 44, 51, 82, 85, 92, 123, 126, 133}, Cycle{3, 41}},
		{4, 0, []float64{41, 44, 51, 54, 82, 85, 92, 95, 123, 126}, Cycle{4, 41}},
		{8, 0, []float64{41, 44, 51, 54, 61, 64, 71, 74, 82, 85}, Cycle{8, 41}},
		{9, 0, []float64{41, 44, 51, 54, 61, 64, 71, 74, 81, 84}, Cycle{2, 10}},
		{10, 0, []float64{41, 44, 51, 54, 61, 64, 71, 74, 81, 84}, Cycle{2, 10}},
		{1, 3, []float64{41, 82, 123, 170, 211, 252, 299, 340, 381, 428}, Cycle{3, 129}},
		{2, 3, []float64{41, 44, 82, 85, 123, 126, 170, 176, 211, 217, 252, 258}, Cycle{6, 129}},
		{4, 3, nil, Cycle{12, 129}},
		{4, 5, nil, Cycle{20, 211}},
	} {
		name := fmt.Sprintf("%d molds", row.n)
		if row.strip > 0 {
			name += fmt.Sprintf(", strip at every pull number %d", row.strip)
		}
		l := moldLoop(row.n, 1, 1, 2, row.strip > 0, constant, constant)
		if row.strip > 0 {
			l.strip = row.strip
		}
		out = append(out, Case{Group: "loops without luck", Name: name, Source: maxPlus, Plant: l.plan, Exact: true, Times: row.times, Length: 4000, Cycle: row.cycle})
	}
	for i := range out {
		if out[i].Times == nil {
			out[i].Times = []float64{41, 44, 51, 54}
		}
	}
	return out
}

// pennyFabs holds the two lines of Hopp and Spearman: constant times give the
// best case, and four like stations with exponential times the practical worst
// case, X(w) = w/(2(w+3)).
func pennyFabs() []Case {
	const source = "Hopp and Spearman, Factory Physics, ch. 7"
	var out []Case
	for _, w := range []int{1, 2, 3, 4, 5, 6, 8, 10, 12, 20} {
		out = append(out, Case{
			Group: "production lines", Name: fmt.Sprintf("Penny Fab One, exponential, %d jobs", w), Source: source,
			Plant: pennyFab(w, []int{1, 1, 1, 1}, []float64{2, 2, 2, 2}, exponential), WarmUp: 1000, Hours: 200_000,
			Values: []Value{{"X", float64(w) / (2 * float64(w+3)), shipped, 0}, {"time through", 8 + 2*float64(w-1), lead, 0}}, Long: w != 1 && w != 3 && w != 4 && w != 12,
		})
	}
	best := func(name string, w int, cycle Cycle, servers []int, means []float64) {
		out = append(out, Case{Group: "production lines", Name: fmt.Sprintf("%s, constant times, %d jobs", name, w), Source: source + ", best case",
			Plant: pennyFab(w, servers, means, constant), Exact: true, Times: []float64{means[0] + means[1] + means[2] + means[3]}, Length: 2000, Cycle: cycle})
	}
	for _, row := range []struct {
		w     int
		cycle Cycle
	}{{1, Cycle{1, 8}}, {2, Cycle{2, 8}}, {3, Cycle{3, 8}}, {4, Cycle{1, 2}}, {5, Cycle{1, 2}}, {6, Cycle{1, 2}}, {8, Cycle{1, 2}}, {10, Cycle{1, 2}}, {12, Cycle{1, 2}}, {20, Cycle{1, 2}}} {
		best("Penny Fab One", row.w, row.cycle, []int{1, 1, 1, 1}, []float64{2, 2, 2, 2})
	}
	for _, row := range []struct {
		w     int
		cycle Cycle
	}{{1, Cycle{1, 20}}, {2, Cycle{2, 20}}, {3, Cycle{3, 20}}, {4, Cycle{4, 20}}, {5, Cycle{5, 20}}, {6, Cycle{6, 20}}, {8, Cycle{2, 5}}, {10, Cycle{2, 5}}, {12, Cycle{2, 5}}, {20, Cycle{2, 5}}} {
		best("Penny Fab Two", row.w, row.cycle, []int{1, 2, 6, 2}, []float64{2, 5, 10, 3})
	}
	return out
}

// pennyFab is a line of four stations with w jobs in it.
func pennyFab(w int, servers []int, means []float64, l law) func(clock.Time, uint64) *sim.Plan {
	return func(length clock.Time, _ uint64) *sim.Plan {
		p := newPlant("line", length)
		var steps []sim.Step
		for i := range servers {
			name := fmt.Sprintf("station %d", i+1)
			steps = append(steps, work(name, p.always(name, servers[i]), l(means[i])))
		}
		p.part(p.model(), steps...)
		p.Demand.Full, p.Demand.FloorLimit = true, w
		return &p.Plan
	}
}

// Calendars of the rows below: A is Monday to Friday 06:00–14:00, B the same
// with a break, 06:00–10:00 and 10:30–14:30. Instant 0 is Monday 00:00.
func calendarA(length clock.Time) *shift.Calendar { return fiveDays(length, [2]float64{6, 14}) }
func calendarB(length clock.Time) *shift.Calendar {
	return fiveDays(length, [2]float64{6, 10}, [2]float64{10.5, 14.5})
}

func fiveDays(length clock.Time, hours ...[2]float64) *shift.Calendar {
	var all []shift.Interval
	for day := range 5 {
		for i, h := range hours {
			iv := shift.Interval{From: clock.FromHours(24*float64(day) + h[0]), To: clock.FromHours(24*float64(day) + h[1]), Ends: shift.StartOfBreak}
			if i == len(hours)-1 {
				iv.Ends = shift.EndOfShift
			}
			all = append(all, iv)
		}
	}
	return must(shift.Repeat(all, 7*clock.Day, length+clock.Week))
}

// byHand holds single jobs on the two calendars, and two loops.
func byHand() []Case {
	const source = "hand arithmetic on the calendar"
	var out []Case
	add := func(name string, times []float64, length float64, plant func(p *plant, length clock.Time)) {
		out = append(out, Case{Group: "calendars by hand", Name: name, Source: source, Exact: true, Times: times, Length: length,
			Plant: func(length clock.Time, _ uint64) *sim.Plan {
				p := newPlant(name, length)
				plant(p, length)
				return &p.Plan
			}})
	}
	job := func(ready float64, steps func(crew int16) []sim.Step, hours func(clock.Time) *shift.Calendar) func(*plant, clock.Time) {
		return func(p *plant, length clock.Time) {
			p.part(p.model(), steps(p.craft("crew", crew{1, hours(length)}))...)
			p.Demand.Dated = []sim.DatedOrder{{Color: sim.None, Band: sim.None, Arrives: clock.FromHours(ready), Due: clock.Never}}
		}
	}
	for _, row := range []struct {
		name                string
		hours               func(clock.Time) *shift.Calendar
		ready, work, ready2 float64
	}{
		{"Mon 12:00, 5 h", calendarA, 12, 5, 33},
		{"Fri 13:00, 4 h", calendarA, 109, 4, 177},
		{"Sat 10:00, 2 h", calendarA, 130, 2, 176},
		{"Mon 14:00 sharp, 1 h", calendarA, 14, 1, 31},
		{"Mon 12:00, 2 h, done as the shift ends", calendarA, 12, 2, 14},
		{"Mon 06:00, 40 h", calendarA, 6, 40, 110},
		{"Mon 06:00, 41 h", calendarA, 6, 41, 175},
		{"Fri 14:00, 8 h", calendarA, 110, 8, 182},
		{"Mon 13:30, half an hour", calendarA, 13.5, .5, 14},
		{"Tue 03:00, 1.5 h", calendarA, 27, 1.5, 31.5},
		{"Fri 13:00, 24 h of work", calendarA, 109, 24, 229},
		{"with a break, Mon 09:00, 3 h", calendarB, 9, 3, 12.5},
		{"with a break, Mon 13:00, 3 h", calendarB, 13, 3, 31.5},
	} {
		add(row.name, []float64{row.ready2}, 400, job(row.ready, func(c int16) []sim.Step { return []sim.Step{work("work", c, constant(row.work))} }, row.hours))
	}
	add("Fri 13:00, cure of 24 h by the clock, pull of 2 h", []float64{176}, 400, job(109, func(c int16) []sim.Step {
		return []sim.Step{passing("cure", constant(24)), work("pull", c, constant(2))}
	}, calendarA))
	add("9 h that must fit into a shift of 8 h: never", nil, 2000, job(6, func(c int16) []sim.Step {
		s := work("work", c, constant(9))
		s.End = sim.Fit
		return []sim.Step{s}
	}, calendarA))
	for _, row := range []struct {
		n, laminators int
		times         []float64
	}{
		{1, 1, []float64{60, 176, 230, 344, 398, 512, 566, 680}},
		{2, 2, []float64{60, 62, 176, 178, 230, 248, 344, 346, 398, 416}},
	} {
		c := Case{Group: "calendars by hand", Name: fmt.Sprintf("loop of %d molds in shifts: wax 2 h, laminate 10 h, cure 24 h, pull 2 h", row.n), Source: source, Exact: true, Times: row.times, Length: 2000, Cycle: Cycle{2 * row.n, 168},
			Plant: func(length clock.Time, seed uint64) *sim.Plan {
				on := func(people int) []crew { return []crew{{people, calendarA(length)}} }
				return loop{molds: row.n, stops: []stop{{"wax", 2, on(1), constant}, {"laminate", 10, on(row.laminators), constant}, {"cure", 24, nil, constant}, {"pull", 2, on(1), constant}}}.plan(length, seed)
			}}
		out = append(out, c)
	}
	return out
}
