package validate

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
)

// loopShifts holds a loop of molds whose crews have shifts while cure goes on
// round the clock: wax 2 h, laminate 10 h with two servers, cure 24 h, pull 2
// h, all exponential, work pauses.
func loopShifts() []Case {
	var out []Case
	type crews func(length clock.Time, people int) []crew
	on := func(period float64, hours ...[2]float64) crews {
		return func(length clock.Time, people int) []crew { return []crew{{people, cycle(length, period, hours...)}} }
	}
	night := func(length clock.Time, people int) []crew {
		if people == 1 {
			return []crew{{1, shift.Always()}}
		}
		return []crew{{1, shift.Always()}, {2, cycle(length, 24, [2]float64{0, 12})}}
	}
	for _, row := range []struct {
		name          string
		n             int
		hours         crews
		x             float64
		q             [4]float64
		period, count float64
	}{
		{"12 h on, 12 h off", 1, on(24, [2]float64{0, 12}), .0190386841, [4]float64{.061045, .360622, .456928, .121404}, 24, 50_000},
		{"12 h on, 12 h off", 2, on(24, [2]float64{0, 12}), .0375245487, [4]float64{.131645, .717380, .900589, .250386}, 24, 50_000},
		{"12 h on, 12 h off", 4, on(24, [2]float64{0, 12}), .0677288454, [4]float64{.286987, 1.590233, 1.625492, .497288}, 24, 50_000},
		{"five days of 8 h", 1, on(168, week...), .0113050682, [4]float64{.061195, .447724, .271322, .219760}, 168, 10_000},
		{"five days of 8 h", 2, on(168, week...), .0220605829, [4]float64{.141794, .884071, .529454, .444681}, 168, 10_000},
		{"five days of 8 h", 4, on(168, week...), .0370731756, [4]float64{.322143, 1.971069, .889756, .817031}, 168, 10_000},
		{"laminators 3 by day, 1 by night", 4, night, .0964250893, [4]float64{.224705, 1.236379, 2.314202, .224715}, 24, 30_000},
	} {
		c := Case{
			Group: "loops with shifts", Name: fmt.Sprintf("%s, %d molds", row.name, row.n), Source: byPeriodic,
			Plant: func(length clock.Time, seed uint64) *sim.Plan {
				l := loop{molds: row.n, stops: []stop{{"wax", 2, row.hours(length, 1), exponential}, {"laminate", 10, row.hours(length, 2), exponential}, {"cure", 24, nil, exponential}, {"pull", 2, row.hours(length, 1), exponential}}}
				return l.plan(length, seed)
			},
			WarmUp: 20 * 168, Hours: row.period * row.count, Period: row.period,
			Values: []Value{{"X", row.x, perHour, 0}}, Long: row.n == 2,
		}
		for i, name := range []string{"wax", "laminate", "cure", "pull"} {
			c.Values = append(c.Values, Value{"Q " + name, row.q[i], number(name), 0})
		}
		out = append(out, c)
	}
	return out
}

// sharedCrews holds one person who waxes for a h and pulls for b h, between two
// laminators and the cure: in the order of request, or the pull or the wax
// first.
func sharedCrews() []Case {
	var out []Case
	for _, row := range []struct {
		n         int
		a, b      float64
		x         [3]float64 // in order, pull first, wax first
		wax, pull float64    // Q in order
	}{
		{2, 2, 4, [3]float64{.048684590, .048684590, .049124932}, .126057, .218667},
		{3, 3, 3, [3]float64{.070871599, .070759798, .071711477}, .284353, .284353},
		{3, 2, 4, [3]float64{.070203687, .070026900, .071617447}, .230686, .358192},
		{4, 4, 2, [3]float64{.090966702, .090729056, .091862031}, .485136, .347563},
	} {
		for i, first := range []string{"", "pull", "wax"} {
			l := loop{molds: row.n, stops: []stop{{"wax", row.a, people(1), exponential}, {"laminate", 10, people(2), exponential}, {"cure", 24, nil, exponential}, {"pull", row.b, people(1), exponential}},
				shared: []string{"wax", "pull"}, urgency: map[string]int8{first: 1}}
			name := "in order of request"
			values := []Value{{"X", row.x[i], perHour, 0}}
			if first != "" {
				name = first + " first"
			} else {
				values = append(values, Value{"Q wax", row.wax, number("wax"), 0}, Value{"Q pull", row.pull, number("pull"), 0})
			}
			out = append(out, Case{
				Group: "one crew for wax and pull", Name: fmt.Sprintf("%d molds, wax %g h, pull %g h, %s", row.n, row.a, row.b, name),
				Source: "Markov chain, computed", Plant: l.plan, WarmUp: 4000, Hours: 4_000_000, Values: values, Long: row.n == 2,
			})
		}
	}
	return out
}

// finiteSource holds a crew that serves a small number of molds: exact
// fractions, and cells of Peck and Hazelwood's tables.
func finiteSource() []Case {
	var out []Case
	for _, row := range []struct {
		n, crews   int
		cure, work float64
		x          float64
		source     string
	}{
		{3, 1, 24, 6, 13. / 142, "exact fraction 13/142; machine repair model, Gross and Harris, ch. 2"},
		{6, 2, 24, 6, 929. / 4835, "exact fraction 929/4835; machine repair model, Gross and Harris, ch. 2"},
	} {
		l := loop{molds: row.n, stops: []stop{{"cure", row.cure, nil, exponential}, {"pull", row.work, people(row.crews), exponential}}}
		values := l.values()
		values[0].Exact = row.x
		out = append(out, Case{Group: "few molds", Name: fmt.Sprintf("%d molds, cure %g h, %d crews of %g h", row.n, row.cure, row.crews, row.work), Source: row.source,
			Plant: l.plan, WarmUp: 1000, Hours: 800_000, Values: values})
	}
	for _, row := range []struct {
		factor float64
		crews  int
	}{{.05, 1}, {.1, 1}, {.1, 2}} {
		l := loop{molds: 5, stops: []stop{{"run", 10 * (1 - row.factor), nil, exponential}, {"pull", 10 * row.factor, people(row.crews), exponential}}}
		out = append(out, Case{Group: "few molds", Name: fmt.Sprintf("5 machines, service factor %g, %d servers", row.factor, row.crews),
			Source: "Peck and Hazelwood 1958, Finite Queuing Tables; more digits by mean value analysis",
			Plant:  l.plan, WarmUp: 500, Hours: 200_000, Values: l.values()})
	}
	return out
}
