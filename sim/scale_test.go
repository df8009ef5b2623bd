package sim

import (
	"cmp"
	"math/rand/v2"
	"slices"
	"testing"

	"moldturn/sim/clock"
	"moldturn/sim/draw"
	"moldturn/sim/record"
)

// randomLoop is a loop of molds through three to six stops, with times in whole
// quarter hours so that multiples of them are exact.
type randomLoop struct {
	molds, strip int // strip 0: never
	stops        []station
	values       [][]float64 // quarter hours by stop; one value: always the same
}

func newRandomLoop(n int, luck, strip bool) randomLoop {
	r := rand.New(rand.NewPCG(uint64(n), 7))
	l := randomLoop{molds: 1 + r.IntN(9)}
	for range 3 + r.IntN(4) {
		values := []float64{float64(1 + r.IntN(40))}
		for luck && len(values) < 4 {
			values = append(values, float64(1+r.IntN(80)))
		}
		slices.Sort(values)
		l.stops = append(l.stops, station{name: "stop", servers: r.IntN(4)})
		l.values = append(l.values, slices.Compact(values))
	}
	if strip {
		l.strip = 2 + r.IntN(4)
		l.stops, l.values = append(l.stops, station{name: "strip", servers: 1}), append(l.values, []float64{8})
	}
	return l
}

// plan is the loop with all times so many times as long.
func (l *randomLoop) plan(factor, hours float64) *Plan {
	stops := slices.Clone(l.stops)
	for i := range stops {
		stops[i].law = func(float64) draw.Dist {
			if len(l.values[i]) == 1 {
				return constant(factor * l.values[i][0] / 4)
			}
			values, weights := slices.Clone(l.values[i]), make([]float64, len(l.values[i]))
			for k := range values {
				values[k], weights[k] = factor*values[k]/4, 1
			}
			return must(draw.Discrete(values, weights))
		}
	}
	pull := len(stops) - 1
	if l.strip > 0 {
		pull--
	}
	p := loopPlan(l.molds, stops, pull, l.strip)
	p.Length = clock.FromHours(factor * hours)
	return p
}

// pullsAndUse keeps when parts are pulled, and the hours of each craft in use.
type pullsAndUse struct {
	pullTimes
	used []clock.Time
}

func (o *pullsAndUse) Use(u *record.Use) {
	for len(o.used) <= int(u.Pool) {
		o.used = append(o.used, 0)
	}
	o.used[u.Pool] += clock.Time(u.Used) * (u.To - u.From)
}

func runLoop(t *testing.T, p *Plan, air *Air) *pullsAndUse {
	t.Helper()
	o := &pullsAndUse{}
	if err := Simulate(p, air, 5, 0, o); err != nil {
		t.Fatal(err)
	}
	return o
}

// All times longer by a factor: every pull of random loops comes later by the
// factor, to the millisecond, and the shares of people in use stay as they are.
func TestRandomLoopsScale(t *testing.T) {
	air, pulls := steadyAir(), 0
	for n := range 150 {
		l := newRandomLoop(n, true, n%2 == 0)
		one := runLoop(t, l.plan(1, 600), air)
		for _, factor := range []clock.Time{2, 7} {
			more := runLoop(t, l.plan(float64(factor), 600), air)
			if len(more.at) != len(one.at) || len(more.used) != len(one.used) {
				t.Fatalf("loop %d: %d pulls, times %d: %d", n, len(one.at), factor, len(more.at))
			}
			for i := range one.at {
				if more.at[i] != factor*one.at[i] {
					t.Fatalf("loop %d, times %d: pull %d at %v, before at %v", n, factor, i, more.at[i], one.at[i])
				}
			}
			for i := range one.used {
				if more.used[i] != factor*one.used[i] {
					t.Errorf("loop %d, times %d: craft %d in use for %v, before %v", n, factor, i, more.used[i], one.used[i])
				}
			}
		}
		pulls += len(one.at)
	}
	if pulls < 4000 {
		t.Errorf("only %d pulls", pulls)
	}
}

// listed runs a loop without luck and without strip as a plain list of arrivals,
// first come, first served; those that come at one instant go in an order drawn
// from r. It gives the pulls, in quarter hours, up to the end.
func (l *randomLoop) listed(end float64, r *rand.Rand) []float64 {
	type arrival struct {
		at   float64
		stop int
	}
	free := make([][]float64, len(l.stops))
	for i, s := range l.stops {
		free[i] = make([]float64, s.servers)
	}
	waiting := make([]arrival, l.molds)
	var pulls []float64
	for {
		least := slices.MinFunc(waiting, func(a, b arrival) int { return cmp.Compare(a.at, b.at) }).at
		if least > end {
			slices.Sort(pulls)
			return pulls
		}
		var ties []int
		for i := range waiting {
			if waiting[i].at == least {
				ties = append(ties, i)
			}
		}
		a := &waiting[ties[r.IntN(len(ties))]]
		begin := a.at
		if f := free[a.stop]; len(f) > 0 {
			k := slices.Index(f, slices.Min(f))
			begin = max(begin, f[k])
			f[k] = begin + l.values[a.stop][0]
		}
		a.at = begin + l.values[a.stop][0]
		if a.stop++; a.stop == len(l.stops) {
			a.stop = 0
			if a.at < end {
				pulls = append(pulls, a.at)
			}
		}
	}
}

// In loops with constant times and without strip the set of pull times does not
// depend on who goes first among those that come at one instant (max-plus
// algebra: Baccelli, Cohen, Olsder and Quadrat 1992, Synchronization and
// Linearity). The engine gives the same set as a plain list, whatever its order.
func TestPullsWhateverTheOrderAtOneInstant(t *testing.T) {
	air, ties := steadyAir(), 0
	for n := range 200 {
		l := newRandomLoop(n, false, false)
		got := runLoop(t, l.plan(1, 500), air).at
		for seed := range uint64(3) {
			want := l.listed(4*500, rand.New(rand.NewPCG(seed, uint64(n))))
			if len(got) != len(want) {
				t.Fatalf("loop %d: %d pulls, by the list %d", n, len(got), len(want))
			}
			for i := range want {
				if got[i] != clock.FromHours(want[i]/4) {
					t.Fatalf("loop %d: pull %d at %v, by the list %g h", n, i, got[i], want[i]/4)
				}
				if i > 0 && want[i] == want[i-1] {
					ties++
				}
			}
		}
	}
	if ties == 0 {
		t.Error("no two pulls at one instant")
	}
}

// One more person never delays a pull in loops with constant times where all
// serve first come, first served (monotone in max-plus algebra, same source).
func TestOneMorePersonDelaysNoPull(t *testing.T) {
	air, sooner := steadyAir(), 0
	for n := range 150 {
		l := newRandomLoop(n, false, false)
		before := runLoop(t, l.plan(1, 300), air).at
		for i := range l.stops {
			if l.stops[i].servers == 0 {
				continue
			}
			l.stops[i].servers++
			after := runLoop(t, l.plan(1, 300), air).at
			l.stops[i].servers--
			if len(after) < len(before) {
				t.Fatalf("loop %d: %d pulls, with one more at stop %d only %d", n, len(before), i, len(after))
			}
			for k := range before {
				if after[k] > before[k] {
					t.Fatalf("loop %d, one more at stop %d: pull %d at %v, before at %v", n, i, k, after[k], before[k])
				}
				sooner += int(bit(after[k] < before[k]))
			}
		}
	}
	if sooner == 0 {
		t.Error("no pull came sooner")
	}
}

// Elsewhere one more person can lower what leaves by a day. A second laminator
// brings the long job to the one fitter first, and the short one, which would
// have left the same day, waits behind it; its wait says so.
func TestOneMorePersonCanLowerBoats(t *testing.T) {
	run := func(laminators int) (*diary, [3]int32) {
		s := newShop(3)
		laminate := s.craft(crewOf(laminators, s.daily(0, 24)))
		fit := s.craft(crewOf(1, s.daily(0, 24)))
		plain := s.task(0, 0, labor(laminate, 1, 4, Pause))
		long := s.task(0, 0, labor(laminate, 1, 4, Pause), labor(fit, 1, 10, Pause))
		short := s.task(5, 0, labor(fit, 1, 1, Pause))
		return s.run(t), [3]int32{plain, long, short}
	}
	one, jobs := run(1)
	two, _ := run(2)
	byTen := func(d *diary) (n int) {
		for _, j := range jobs {
			n += int(bit(d.shipped(j) <= 10*clock.Hour))
		}
		return n
	}
	if byTen(one) != 2 || byTen(two) != 1 {
		t.Errorf("%d boats by ten with one laminator, %d with two", byTen(one), byTen(two))
	}
	one.want(t, jobs[2], "works 1 5:00-6:00")
	two.want(t, jobs[2], "no free crew 5:00-14:00, works 1 14:00-15:00")
}
