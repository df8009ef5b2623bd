package sim

import (
	"math"
	"testing"

	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/draw"
	"moldturn/sim/finish"
	"moldturn/sim/policy"
	"moldturn/sim/record"
	"moldturn/sim/shift"
)

// station is one step of a skeleton plant: servers are people who never leave.
type station struct {
	name    string
	mean    float64
	servers int // 0: only time passes
	law     func(mean float64) draw.Dist
}

func exponential(mean float64) draw.Dist {
	d, err := draw.Exponential(mean)
	if err != nil {
		panic(err)
	}
	return d
}

func constant(mean float64) draw.Dist {
	d, err := draw.Constant(mean)
	if err != nil {
		panic(err)
	}
	return d
}

// loopPlan is n molds of one part going round stations for ever, with a strip
// every k-th pull at the last station. The steps after "pull" are the mold's
// care.
func loopPlan(n int, stations []station, pull, k int) *Plan {
	p := &Plan{Name: "loop", Start: shift.DateOf(2027, 1, 4), Areas: []string{"plant"}, Cure: cure.Default(), Finish: finish.Default()}
	steps := make([]Step, len(stations))
	for i, s := range stations {
		st := Step{Name: s.name, Craft: None, Want: 1, Least: 1, Slow: 1}
		st.SetTime(s.law(s.mean))
		if s.servers > 0 {
			st.Craft = int16(len(p.Crafts))
			p.Crafts = append(p.Crafts, Craft{Name: s.name, Crews: []Crew{{Hours: shift.Always(), People: s.servers}}, Late: clock.Never, Overtime: clock.Never})
		} else {
			st.Pace = ByClock
		}
		steps[i] = st
	}
	steps[pull].Verb = Pulled
	care := append([]Step{{Name: "check", Craft: None, Pace: ByClock, Verb: MoldChecked}}, steps[pull+1:]...)
	care[0].SetTime(constant(0))
	for i := range care[1:] {
		care[i+1].When, care[i+1].Verb = DueLight, LightStripped
	}
	p.Routes = []Route{{"part", steps[:pull+1]}, {"care", care}, {"boat", nil}}
	p.Parts = []Part{{Name: "hull", Area: 30, Color: None, Zone: 1, Route: 0, Care: 1, InUse: n, Visible: true}}
	p.Models = []Model{{Name: "boat", Parts: []int16{0}, Boat: 2}}
	for range n {
		p.Molds = append(p.Molds, Mold{Part: 0})
	}
	p.Demand = Demand{Full: true}
	if k > 0 {
		p.Strip = policy.Strip{Kind: policy.StripEvery, Every: k, LightCoats: 2}
	}
	return p
}

func configC(n int, law func(float64) draw.Dist, cureLaw func(float64) draw.Dist) *Plan {
	return loopPlan(n, []station{{"wax", 2, 2, law}, {"gel", 3, 2, law}, {"laminate", 10, 3, law}, {"cure", 24, 0, cureLaw}, {"pull", 2, 1, law}, {"strip", 6, 1, law}}, 4, 5)
}

// pullCount counts pulls after a warm-up.
type pullCount struct {
	record.Nothing
	from  clock.Time
	pulls int
	times []clock.Time
}

func (c *pullCount) Pull(p *record.Pull) {
	if p.At >= c.from {
		c.pulls++
	}
	if len(c.times) < 20 {
		c.times = append(c.times, p.At)
	}
}

func steadyAir() *Air { return NewAir(climate.Steady(25, 0.5), cure.Default()) }

// X of the mold loop, configuration C with 8 molds: exact value by mean value
// analysis (Reiser & Lavenberg 1980); constant cure changes nothing (Baskett,
// Chandy, Muntz & Palacios 1975).
func TestMoldLoopC(t *testing.T) {
	p := configC(8, exponential, constant)
	hours := 400_000.0
	p.Length = clock.FromHours(hours + 2000)
	c := &pullCount{from: clock.FromHours(2000)}
	if err := Simulate(p, steadyAir(), 1, 0, c); err != nil {
		t.Fatal(err)
	}
	const exact, v = 0.179138377064127, 0.063303
	x := float64(c.pulls) / hours
	se := math.Sqrt(v / hours)
	if math.Abs(x-exact) > 4*se {
		t.Errorf("X = %.6f, exact %.6f, %.1f standard errors apart", x, exact, (x-exact)/se)
	}
	t.Logf("X = %.6f, exact %.6f, SE %.6f", x, exact, se)
}

// First pull times of the deterministic loop, computed by integer enumeration
// (maximum cycle ratio: Baccelli, Cohen, Olsder & Quadrat 1992).
func TestDeterministicLoop(t *testing.T) {
	for n, want := range map[int][]float64{
		1: {41, 82, 123, 164},
		3: {41, 44, 51, 82, 85, 92, 123, 126, 133},
		4: {41, 44, 51, 54, 82, 85, 92, 95, 123, 126},
		8: {41, 44, 51, 54, 61, 64, 71, 74, 82, 85},
		9: {41, 44, 51, 54, 61, 64, 71, 74, 81, 84},
	} {
		p := loopPlan(n, []station{{"wax", 2, 1, constant}, {"gel", 3, 1, constant}, {"laminate", 10, 2, constant}, {"cure", 24, 0, constant}, {"pull", 2, 1, constant}}, 4, 0)
		p.Length = clock.FromHours(300)
		c := &pullCount{}
		if err := Simulate(p, steadyAir(), 1, 0, c); err != nil {
			t.Fatal(err)
		}
		for i, w := range want {
			if c.times[i] != clock.FromHours(w) {
				t.Errorf("%d molds, pull %d at %v h, want %v", n, i, c.times[i].Hours(), w)
			}
		}
	}
}

func BenchmarkMoldLoop(b *testing.B) {
	p := configC(8, exponential, constant)
	p.Length = clock.FromHours(float64(b.N) / 0.179138)
	b.ReportAllocs()
	b.ResetTimer()
	c := &pullCount{}
	if err := Simulate(p, steadyAir(), 1, 0, c); err != nil {
		b.Fatal(err)
	}
	b.ReportMetric(float64(c.pulls)/b.Elapsed().Seconds(), "cycles/s")
}
