package validate

import (
	"math"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/shift"
)

const byPeriodic = "periodic Markov chain, computed"

// week is five days of 8 h from 0, 24, … and a weekend off.
var week = [][2]float64{{0, 8}, {24, 32}, {48, 56}, {72, 80}, {96, 104}}

// shifts holds one station whose people come and go. Work that is left pauses,
// or is finished when the case says so.
func shifts() []Case {
	cal := func(rate float64, end sim.EndRule, period float64, on ...[2]float64) func(clock.Time, uint64) *sim.Plan {
		return func(length clock.Time, _ uint64) *sim.Plan {
			p := newPlant("shifts", length)
			s := work("work", p.craft("crew", crew{1, cycle(length, period, on...)}), exponential(1))
			s.End = end
			p.part(p.model(), s)
			p.demand(rate)
			return &p.Plan
		}
	}
	l := func(exact float64) Value { return Value{"L", exact, number("work"), 0} }
	w := func(exact float64) Value { return Value{"W", exact, lead, 0} }
	at := func(name string, exact float64, mark int) Value {
		return Value{"L at " + name, exact, numberAt(mark), 0}
	}
	base := Case{Group: "shifts", Source: byPeriodic, WarmUp: 20 * 168, Hours: 24 * 80_000, Period: 24, Watch: []string{"work"}}

	pause := base
	pause.Name, pause.Plant, pause.Marks = "8 h on, 16 h off, work pauses", cal(.25, sim.Pause, 24, [2]float64{0, 8}), []float64{0, 8}
	pause.Values = []Value{l(3.884510), w(15.538042), at("start", 5.995074, 0), at("end", 1.995074, 1)}

	finish := base
	finish.Name, finish.Plant, finish.Marks = "8 h on, 16 h off, work is finished", cal(.25, sim.Finish, 24, [2]float64{0, 8}), []float64{0, 8}
	finish.Values = []Value{l(2.793621), w(11.174485), at("start", 4.826477, 0), at("end", 1.274382, 1),
		{"overtime, h a day", .447904, overtime(0), 0}, {"regular, h a day", 5.552096, regular(0), 0}}

	days := base
	days.Name, days.Plant, days.Period, days.Hours = "five days of 8 h, weekend off, work pauses", cal(.15, sim.Pause, 168, week...), 168, 168*24_000
	days.Values = []Value{l(3.851374), w(25.675825)}
	names := []string{"Mon", "Tue", "Wed", "Thu", "Fri"}
	starts := []float64{10.022180, 6.240087, 4.195884, 3.313634, 2.960184}
	ends := []float64{3.840087, 1.795884, .913634, .560184, .422180}
	for i, name := range names {
		days.Marks = append(days.Marks, float64(24*i), float64(24*i+8))
		days.Values = append(days.Values, at(name+" start", starts[i], 2*i), at(name+" end", ends[i], 2*i+1))
	}

	brk := base
	brk.Name, brk.Plant, brk.Period, brk.Marks = "3.5 h of work, half an hour of break", cal(.7, sim.Pause, 4, [2]float64{0, 3.5}), 4, []float64{0, 3.5}
	brk.Values = []Value{l(4.010403), w(5.729148), at("start", 4.199968, 0), at("end", 3.849968, 1)}

	two := base
	two.Name, two.Plant, two.Marks = "two people by day, one by night, work pauses", dayAndNight, []float64{0, 12}
	two.Values = []Value{l(3.603732), w(4.004147), at("start of day", 5.047989, 0), at("end of day", 2.396992, 1)}

	only := base
	only.Name, only.Plant, only.Marks = "arrivals in the shift only", arrivalsInShift, []float64{0, 8}
	only.Source = "M/M/1 that stands still off shift: Gross and Harris, ch. 2"
	only.Values = []Value{l(3), w(12), at("start", 3, 0), at("end", 3, 1)}
	return []Case{pause, finish, days, brk, two, only}
}

// dayAndNight is two people for 12 h and one for the other 12 h. Who leaves
// hands over to whoever is free first.
func dayAndNight(length clock.Time, _ uint64) *sim.Plan {
	p := newPlant("day and night", length)
	c := p.craft("crew", crew{1, shift.Always()}, crew{1, cycle(length, 24, [2]float64{0, 12})})
	p.part(p.model(), work("work", c, exponential(1/.8)))
	p.demand(.9)
	return &p.Plan
}

// arrivalLuck is the stream of arrivals that a case draws itself.
const arrivalLuck draw.Purpose = 1000

// arrivalsInShift is 0.75 orders an hour at random in the shift of 8 h, none
// outside, as an order book.
func arrivalsInShift(length clock.Time, seed uint64) *sim.Plan {
	p := newPlant("arrivals in the shift", length)
	hours := cycle(length, 24, [2]float64{0, 8})
	p.part(p.model(), work("work", p.craft("crew", crew{1, hours}), exponential(1)))
	p.Demand.CancelLate = clock.Never
	key := draw.Root(seed, 0).At0(arrivalLuck)
	for i, t := uint64(0), 0.0; ; i++ {
		t -= math.Log(key.U(i)) / .75
		at := hours.Finish(0, clock.FromHours(t))
		if at >= length {
			return &p.Plan
		}
		p.Demand.Dated = append(p.Demand.Dated, sim.DatedOrder{Color: sim.None, Band: sim.None, Arrives: at, Due: clock.Never})
	}
}
