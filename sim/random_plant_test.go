package sim

import (
	"fmt"
	"sync"

	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/finish/defect"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// maker draws one small plant. Its luck comes from the package draw, so a plant
// is named by its number alone.
type maker struct {
	key  draw.Key
	n    uint64
	p    *Plan
	has  map[string]bool // features of this plant
	air  int
	left clock.Time // horizon of calendars
}

func (m *maker) u() float64 {
	m.n++
	return m.key.U(m.n)
}

func (m *maker) between(low, high int) int { return low + int(m.u()*float64(high-low+1)) }

// some draws a feature and notes it.
func (m *maker) some(chance float64, feature string) bool {
	yes := m.u() < chance
	if yes {
		m.has[feature] = true
	}
	return yes
}

func (m *maker) pick(values ...float64) float64 { return values[m.between(0, len(values)-1)] }

// hours draws a law with the given mean.
func (m *maker) hours(mean float64) draw.Dist {
	var d draw.Dist
	var err error
	switch m.between(0, 3) {
	case 0:
		d, err = draw.Constant(mean)
	case 1:
		d, err = draw.Lognormal(mean, 0.4)
	case 2:
		d, err = draw.Triangular(mean/2, mean, mean*1.5)
	default:
		d, err = draw.Exponential(mean)
	}
	return must(d, err)
}

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// Crafts of a random plant, in the order of the plan.
const (
	moldCraft int16 = iota
	gelCraft
	layCraft
	pullCraft
	finishCraft
	boatCraft
)

// Places of a random plant.
const (
	boothPlace int16 = iota
	bayPlace
	curePlace
	moldStall
	finishStall
	storePlace
	hoistPlace
	boatPlace
	warmPlace
)

// randomPlan draws plant number n.
func randomPlan(n int) *maker {
	m := &maker{key: draw.Root(2027, n), has: map[string]bool{}, p: &Plan{Name: fmt.Sprintf("plant %d", n), Areas: []string{"plant"}, Cure: cure.Default(), Finish: finish.Default()}}
	p := m.p
	p.Start = shift.DateOf(2027, 1, 4)
	m.air = m.between(0, len(airStarts)-1)
	p.Start = airStarts[m.air]
	p.Length = clock.Time(m.between(3, 6))*clock.Week + clock.Time(m.between(0, 50))*clock.Hour
	m.left = p.Length + 30*clock.Day
	m.crafts()
	m.places()
	m.policies()
	m.models()
	m.background()
	m.failures()
	m.demand()
	return m
}

var airStarts = []shift.Date{shift.DateOf(2027, 1, 4), shift.DateOf(2027, 4, 5), shift.DateOf(2027, 7, 5), shift.DateOf(2027, 9, 20)}

// randomDefects are the flaws of random plants, to be copied.
var randomDefects = sync.OnceValue(defect.Default)

// randomAirs are the conditions random plants share, by start.
func randomAirs() []*Air {
	var out []*Air
	for i, start := range airStarts {
		outdoor := climate.Coast().Outdoor(draw.Root(5, i), start, 24*7*8)
		out = append(out, NewAir(climate.Plant(outdoor, []climate.Area{climate.OpenArea("plant").Heated(17)}), cure.Default()))
	}
	return out
}

func (m *maker) crafts() {
	day := shift.Shift{Days: shift.MonToFri, Hours: shift.Hours{From: 6 * clock.Hour, To: 14*clock.Hour + 30*clock.Minute, Breaks: []shift.Break{{From: 10 * clock.Hour, To: 10*clock.Hour + 30*clock.Minute}}}}
	evening := shift.Shift{Days: shift.MonToFri, Hours: shift.Hours{From: 14*clock.Hour + 30*clock.Minute, To: 23 * clock.Hour, Breaks: []shift.Break{{From: 18 * clock.Hour, To: 18*clock.Hour + 20*clock.Minute}}}}
	night := shift.Shift{Days: shift.MonToFri, Hours: shift.Hours{From: 22 * clock.Hour, To: 6 * clock.Hour, Breaks: []shift.Break{{From: 2 * clock.Hour, To: 2*clock.Hour + 30*clock.Minute}}}}
	calendar := func(s ...shift.Shift) *shift.Calendar {
		return must(shift.Compile(shift.Pattern{Shifts: s}, m.p.Start, m.left))
	}
	for i, name := range []string{"mold", "gel", "lamination", "pull", "finish", "assembly"} {
		c := Craft{Name: name, Late: clock.FromHours(m.pick(0, 0.5, 0.5, 2)), Overtime: clock.FromHours(m.pick(0, 0.5, 2))}
		if m.u() < 0.3 {
			c.Late, c.Overtime = clock.Never, clock.Never
		} else {
			m.has["overtime cap"] = true
		}
		if m.some(0.15, "hot slowdown") {
			c.HotSlow = m.pick(0.14, 0.3)
		}
		absence := 0.0
		if m.some(0.25, "absence") {
			absence = m.pick(0.05, 0.2)
		}
		crew := func(hours *shift.Calendar) {
			c.Crews = append(c.Crews, Crew{Hours: hours, People: m.between(2, 4), Absence: absence, AbsenceHot: 1.3 * absence})
		}
		switch m.between(0, 5) {
		case 0:
			m.has["never off"] = true
			crew(shift.Always())
		case 1:
			m.has["several shifts"] = true
			crew(calendar(day))
			crew(calendar(evening))
		case 2:
			m.has["several shifts"], m.has["shift over midnight"] = true, true
			crew(calendar(day))
			crew(calendar(night))
		case 3:
			m.has["two shifts of one crew"] = true
			crew(calendar(day, evening))
		default:
			crew(calendar(day))
		}
		if i > 0 && m.some(0.2, "helping crafts") {
			c.Helps = append(c.Helps, int16(m.between(0, i-1)))
			if m.u() < 0.3 && int(c.Helps[0]) != 0 {
				c.Helps = append(c.Helps, 0)
			}
		}
		m.p.Crafts = append(m.p.Crafts, c)
	}
	if m.some(0.15, "helping each other") {
		m.p.Crafts[gelCraft].Helps = []int16{layCraft}
		m.p.Crafts[layCraft].Helps = []int16{gelCraft}
	}
}

func (m *maker) places() {
	count := func(low, high int, finite float64, feature string) int {
		if m.some(finite, feature) {
			return m.between(low, high)
		}
		m.has["unlimited places"] = true
		return -1
	}
	colors := m.between(2, 5)
	for c := range colors {
		look := c % len(m.p.Finish.Colors)
		m.p.Colors = append(m.p.Colors, Color{Name: fmt.Sprintf("color %d", c), Look: look, Dark: m.p.Finish.Colors[look].Haze >= 0.9})
	}
	booth := Place{Name: "booth", Kind: Booth, Count: m.between(1, 2)}
	pot := m.some(0.5, "pot guns")
	for range booth.Count {
		var guns []Gun
		if m.some(0.4, "gun kept for a color") {
			guns = append(guns, Gun{Name: "kept", Color: 0})
		}
		for range m.between(1, 2) {
			guns = append(guns, Gun{Name: "pumped", Color: None, Flush: 15 * clock.Minute})
		}
		if pot {
			guns = append(guns, Gun{Name: "pot", Pot: true, Color: None, Flush: 5 * clock.Minute})
		}
		booth.Guns = append(booth.Guns, guns)
	}
	hoists := -1
	if m.some(0.7, "hoist") {
		hoists = m.between(1, 2)
	}
	m.p.Places = []Place{
		booth,
		{Name: "bay", Count: count(1, 4, 0.7, "finite bays")},
		{Name: "cure position", Count: count(1, 4, 0.5, "finite cure positions")},
		{Name: "mold stall", Count: count(1, 2, 0.5, "finite stalls")},
		{Name: "finish stall", Count: count(1, 3, 0.5, "finite stalls")},
		{Name: "store", Count: count(3, 8, 0.4, "finite store")},
		{Name: "hoist", Kind: Hoist, Count: hoists},
		{Name: "assembly station", Count: count(1, 2, 0.5, "finite stalls")},
		{Name: "warm place", Count: count(1, 2, 0.5, "finite stalls")},
	}
}

func (m *maker) policies() {
	p := m.p
	p.Strip = policy.Strip{Kind: policy.StripEvery, Every: m.between(2, 5), Hot: 2, Cool: 4, FullEvery: m.between(0, 3), LightCoats: m.between(1, 3), FullCoats: 3, LightLoss: 0.003, FullLoss: 0.02}
	if p.Strip.FullEvery > 0 {
		m.has["full strip"] = true
	}
	if p.Strip.FullEvery != 1 {
		m.has["light strip"] = true
	}
	if m.some(0.3, "strip by season") {
		p.Strip.Kind = policy.StripSeasonal
	}
	if m.some(0.5, "hot season") {
		p.Season = policy.Season{Kind: policy.ByHeatPeak, On: 80, Off: 75}
		if m.u() < 0.5 {
			p.Season.Kind = policy.ByMonths
			p.Season.Months = [12]bool{3: true, 6: true, 7: true}
		}
	}
	p.Wax = policy.Wax{Every: m.between(1, 3), Coats: m.between(1, 2)}
	if p.Wax.Every > 1 {
		m.has["wax interval above 1"] = true
	}
	p.Hold = policy.Hold{Clock: m.pick(6, 12, 24), Most: 72}
	if m.u() < 0.3 {
		p.Hold.Equivalent = m.pick(8, 16)
	}
	if m.some(0.3, "hold by degree of cure") {
		p.Hold.Degree, p.Hold.Most = m.pick(0.7, 0.9), m.pick(24, 48)
	}
	p.Release = policy.Release{Kind: policy.ReleaseKind(m.between(0, 2)), Run: m.between(1, 4), Look: m.between(1, 8), ByColor: m.u() < 0.3}
	m.has[[]string{"release oldest", "release by due date", "release by color run"}[p.Release.Kind]] = true
	p.BreakIn = policy.BreakIn{Coats: []int{3, 2, 1}, Hold: 24}
	if m.some(0.3, "life limit") {
		p.Life = policy.Life{Limit: m.between(3, 8), Resurfaces: m.between(0, 1), Surface: 0.05}
		p.Life.Replacement = float64(p.Life.Limit%3) * 60 // no lead time, two and a half days, five
	}
	p.Life.ReserveIdle, p.Life.CallAfter = 7, m.pick(0, 4)
	if m.some(0.5, "flaws") {
		d := randomDefects()
		p.Defects, p.Film = &d, 0.55
		d.Each[defect.Sticking].Chance, d.Each[defect.Sticking].Most = 0, 0
		if m.some(0.7, "sticking") {
			d.Each[defect.Sticking].Chance, d.Each[defect.Sticking].Most = 0.1, 0.5
		}
		if m.some(0.6, "scrap") {
			d.Each[defect.Sticking].Scrap, d.Each[defect.Porosity].Scrap = 0.4, 0.1
		}
	}
	p.Chip = draw.Compile(m.hours(1.5))
	p.Limits = Limits{DewMargin: m.pick(-100, 1, 3), MostRH: m.pick(0, 0, 0.9), LeastC: m.pick(-100, 16)}
	if p.Limits.DewMargin > 0 || p.Limits.LeastC > 0 {
		m.has["air limits"] = true
	}
	p.Window = Window{Craft: None}
	if m.some(0.6, "gel window") {
		p.Window = Window{Limit: m.pick(4, 8), Scuff: 0.03, Craft: layCraft}
		p.Window.Wash = p.Window.Limit * m.pick(1, 2, 4)
		if m.some(0.4, "limit of sprayed parts") {
			p.Window.Slots = m.between(1, 2)
		}
	}
	p.Rework = Rework{Target: m.pick(0, 96, 97.5), Rounds: m.between(0, 2)}
}

// step makes a step of labor.
func (m *maker) step(name string, does record.Doing, craft int16, mean float64, end EndRule) Step {
	want := int16(m.between(1, 3))
	least := int16(1)
	if want > 1 && m.u() < 0.3 {
		least = 2
	}
	s := Step{Name: name, Doing: does, Craft: craft, Want: want, Least: min(least, want), Slow: m.pick(1, 1, 0.7), End: end}
	if s.Least < s.Want {
		m.has["fewer people than wanted"] = true
		if s.Slow < 1 {
			m.has["slow exponent"] = true
		}
	}
	s.SetTime(m.hours(mean))
	m.has[[]string{"pause", "finish", "fit"}[end]] = true
	return s
}

// wait makes a step in which time passes.
func (m *maker) wait(name string, does record.Doing, pace Pace, mean float64) Step {
	s := Step{Name: name, Doing: does, Pace: pace, Craft: None, Want: 1, Least: 1, Slow: 1}
	s.SetTime(must(draw.Constant(0)))
	if mean > 0 {
		s.SetTime(m.hours(mean))
	}
	return s
}

func (m *maker) end(or EndRule) EndRule {
	if m.u() < 0.3 {
		return Pause
	}
	return or
}
