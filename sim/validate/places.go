package validate

import (
	"fmt"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
)

// blocking holds molds that keep the booth until a bay is free: wax 2 h, gel 3
// h in one booth, laminate 10 h in one of some bays, cure 24 h, pull 2 h.
func blocking() []Case {
	var out []Case
	for _, row := range []struct {
		n, bays    int
		x, blocked float64
	}{
		{2, 2, .048292108, 0}, {3, 2, .071147239, .020950306}, {4, 2, .092478319, .066237861},
		{2, 1, .045606229, .111234705}, {3, 1, .063010693, .272557727}, {4, 1, .076087712, .434698083},
	} {
		out = append(out, Case{
			Group: "blocking", Name: fmt.Sprintf("%d molds, %d bays", row.n, row.bays), Source: "blocking after service; Markov chain, computed",
			Plant: func(length clock.Time, _ uint64) *sim.Plan { return boothAndBays(length, row.n, row.bays) }, WarmUp: 4000, Hours: 1_200_000,
			Values: []Value{{"X", row.x, perHour, 0}, {"booth blocked", row.blocked, waiting("laminate"), 0}}, Long: row.n == 2,
		})
	}
	return out
}

func boothAndBays(length clock.Time, n, bays int) *sim.Plan {
	p := newPlant("booth and bays", length)
	booth, bay := p.place("booth", 1), p.place("bay", bays)
	gel, laminate := work("gel", sim.None, exponential(3)), work("laminate", sim.None, exponential(10))
	gel.Take = []int16{booth}
	laminate.Swap, laminate.Take, laminate.Free = []int16{booth}, []int16{bay}, []int16{bay}
	hull := p.part(p.model(), work("wax", p.always("waxer", 1), exponential(2)), gel, laminate,
		passing("cure", exponential(24)), means(work("pull", p.always("puller", 1), exponential(2)), sim.Pulled))
	p.molds(hull, n)
	p.Demand.Full = true
	return &p.Plan
}

// bays holds molds that stand in one bay from lay-up to pull.
func bays() []Case {
	var out []Case
	for _, row := range []struct {
		n, bays int
		x       float64
	}{{3, 2, .055192900}, {4, 2, .055379875}, {4, 3, .081433742}, {6, 4, .106581498}} {
		out = append(out, Case{
			Group: "bay kept from lay-up to pull", Name: fmt.Sprintf("%d molds, %d bays", row.n, row.bays), Source: "Markov chain, computed",
			Plant: func(length clock.Time, _ uint64) *sim.Plan { return keptBays(length, row.n, row.bays) }, WarmUp: 4000, Hours: 1_200_000,
			Values: []Value{{"X", row.x, perHour, 0}},
		})
	}
	return out
}

func keptBays(length clock.Time, n, bays int) *sim.Plan {
	p := newPlant("kept bays", length)
	bay := p.place("bay", bays)
	enter := passing("enter", constant(0))
	enter.Take = []int16{bay}
	pull := means(work("pull", p.always("puller", 1), exponential(2)), sim.Pulled)
	pull.Free = []int16{bay}
	hull := p.part(p.model(), work("wax", p.always("waxer", 1), exponential(2)), enter,
		work("laminate", p.always("laminators", 2), exponential(10)), passing("cure", exponential(24)), pull)
	p.molds(hull, n)
	p.Demand.Full = true
	return &p.Plan
}

// orderBook holds orders at random that wait for a mold, first come first
// served: wax 2 h, laminate 10 h with two laminators, cure 24 h, pull 2 h.
func orderBook() []Case {
	var out []Case
	for _, row := range []struct {
		n                                 int
		rate, waits, backlog, delay, lead float64
		hours                             float64
	}{
		{1, .015, .57, .55674419, 37.11627907, 75.11627907, 12_000_000},
		{2, .03, .41379868, .41692805, 13.89760176, 52.03605369, 8_000_000},
		{2, .04, .65844630, 1.58234665, 39.55866632, 77.72843384, 16_000_000},
	} {
		source := "Markov chain, computed"
		if row.n == 1 {
			source = "M/G/1 with the sum of four exponential times, Gross and Harris, ch. 5; Markov chain"
		}
		out = append(out, Case{
			Group: "orders that wait for molds", Name: fmt.Sprintf("%d molds, %g orders an hour", row.n, row.rate), Source: source,
			Plant:  func(length clock.Time, _ uint64) *sim.Plan { return ordered(length, row.n, row.rate) },
			WarmUp: 10_000, Hours: row.hours,
			Values: []Value{{"share that waits", row.waits, startWaited, 0}, {"orders waiting", row.backlog, orders, 0}, {"wait", row.delay, startWait, 0}, {"lead time", row.lead, lead, 0}},
		})
	}
	return out
}

func ordered(length clock.Time, n int, rate float64) *sim.Plan {
	p := newPlant("orders", length)
	hull := p.part(p.model(), work("wax", p.always("waxer", 1), exponential(2)), work("laminate", p.always("laminators", 2), exponential(10)),
		passing("cure", exponential(24)), means(work("pull", p.always("puller", 1), exponential(2)), sim.Pulled))
	p.molds(hull, n)
	p.demand(rate)
	p.Demand.Models[0].Due = draw.Compile(constant(1000)) // all alike, so due dates are in the order of arrival
	return &p.Plan
}
