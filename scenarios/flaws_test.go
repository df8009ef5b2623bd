package scenarios

import (
	"fmt"
	"math"
	"testing"

	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/finish/defect"
	"moldturn/sim/record"
)

// flawWatch keeps the flaws of every part by what it is in every alternative:
// its model, which order of that model, and its kind.
type flawWatch struct {
	record.Nothing
	orders  map[int32]string // by number
	made    map[int16]int    // by model
	flaws   map[string]uint8
	again   map[string]bool // sprayed or made a second time
	ships   []record.Ship
	escaped int
}

func (w *flawWatch) Note(n *record.Note) {
	switch n.Kind {
	case record.OrderArrived:
		w.orders[n.Order] = fmt.Sprintf("%d/%d", n.Model, w.made[n.Model])
		w.made[n.Model]++
	case record.FlawFound, record.FlawMissed:
		w.flaws[fmt.Sprintf("%s/%d", w.orders[n.Order], n.Part)] |= 1 << n.Of
	case record.Inspected:
		w.flaws[fmt.Sprintf("%s/%d", w.orders[n.Order], n.Part)] |= 0
	case record.Scrapped, record.Resprayed:
		w.again[fmt.Sprintf("%s/%d", w.orders[n.Order], n.Part)] = true
	case record.Escaped:
		w.escaped++
	}
}

func (w *flawWatch) Ship(s *record.Ship) { w.ships = append(w.ships, *s) }

func watchFlaws(t *testing.T, s *Scenario) *flawWatch {
	t.Helper()
	w := &flawWatch{orders: map[int32]string{}, made: map[int16]int{}, flaws: map[string]uint8{}, again: map[string]bool{}}
	air, err := s.Base.Air(5, 0)
	if err != nil {
		t.Fatal(err)
	}
	if err := sim.Simulate(s.Base.Plan(), air, 5, 0, w); err != nil {
		t.Fatal(err)
	}
	return w
}

// In air that never changes the flaws of the spray belong to the order and its
// part: another number of molds, another hold, and another strip policy leave
// them where they are.
func TestFlawsBelongToTheOrder(t *testing.T) {
	still := "climate.weather = months"
	base := watchFlaws(t, fenwater(t, 1, still))
	other := watchFlaws(t, fenwater(t, 1, still, `models."Rush 23".parts.hull.molds = 4`, "hold.clock = 16 h", "strip.policy = by build-up", "crafts.gel.people.day = 6"))
	const spray = 1<<defect.Porosity | 1<<defect.Sag
	both, with := 0, 0
	for part, flaws := range base.flaws {
		theirs, ok := other.flaws[part]
		if !ok || base.again[part] || other.again[part] {
			continue
		}
		both++
		if flaws&spray != 0 {
			with++
		}
		if flaws&spray != theirs&spray {
			t.Fatalf("part %s has %b, and %b in another plant", part, flaws, theirs)
		}
	}
	if both < 500 || with < both/2 {
		t.Errorf("%d parts in both, %d of them with flaws", both, with)
	}
}

// A boat has escaped when it is shipped with a missed flaw, or when its luster,
// once all post-cure has come out, is under the promise by more than the slack;
// post-cure only takes luster away.
func TestEscapes(t *testing.T) {
	s := fenwater(t, 1, "hold.clock = 12 h")
	w := watchFlaws(t, s)
	r := s.Base.Plan().Rework
	counted, dull := 0, 0
	for _, x := range w.ships {
		late := x.Shown < r.Target-r.Slack
		if x.Escaped != (late || x.Missed != 0) {
			t.Errorf("order %d: shown %.2f, missed %b, escaped %v", x.Order, x.Shown, x.Missed, x.Escaped)
		}
		if x.Shown > x.Luster+1e-9 {
			t.Errorf("order %d gains luster: %.3f to %.3f", x.Order, x.Luster, x.Shown)
		}
		if x.Escaped {
			counted++
		}
		if late && x.Luster >= r.Target {
			dull++
		}
	}
	if counted != w.escaped || dull == 0 {
		t.Errorf("%d escaped, %d notes, %d of them dull only later", counted, w.escaped, dull)
	}
}

// Without flaws nothing is found, sticks or is thrown away.
func TestNoFlaws(t *testing.T) {
	f := figures(t, fenwater(t, 1, "quality.flaws = false"), 1, "touch_up_hours_per_boat", "stuck_per_100_pulls", "scrapped_per_100_pulls")
	for name, x := range f {
		if x != 0 {
			t.Errorf("%s is %v", name, x)
		}
	}
}

// Priors of the trade, common practice, no source: some 75 % of parts need
// touch-up and 0.4 % are thrown away, here in the plant and its climate.
func TestFlawRates(t *testing.T) {
	f := figures(t, fenwater(t, 3), 3, "first_pass_share", "scrapped_per_100_pulls")
	if need := 1 - f["first_pass_share"]; need < 0.7 || need > 0.85 {
		t.Errorf("%.3f of parts need touch-up or buffing", need)
	}
	if f["scrapped_per_100_pulls"] < 0.2 || f["scrapped_per_100_pulls"] > 0.8 {
		t.Errorf("%.2f %% are thrown away", f["scrapped_per_100_pulls"])
	}
}

// Weather is the replication's: plants that are heated otherwise have the same
// air wherever heating does nothing, and another seed has other air.
func TestWeatherIsShared(t *testing.T) {
	plant := func(seed uint64, sets ...string) *sim.Air {
		air, err := fenwater(t, 1, sets...).Base.Air(seed, 2)
		if err != nil {
			t.Fatal(err)
		}
		return air
	}
	base, warmer, other := plant(1), plant(1, "climate.areas.plant.heat = 24 C"), plant(2)
	same, differ := 0, 0
	for h := range 8760 {
		at := clock.Time(h) * clock.Hour
		c := base.AirC(0, at)
		if want := max(c, 24); math.Abs(warmer.AirC(0, at)-want) > 1e-5 {
			t.Fatalf("hour %d: %v °C, heated to 24 it is %v", h, c, warmer.AirC(0, at))
		}
		if c > 24 {
			same++
		}
		if other.AirC(0, at) != c {
			differ++
		}
	}
	if same < 2000 || differ < 2000 {
		t.Errorf("%d hours need no heating, %d differ with another seed", same, differ)
	}
}

// The promise may be given in gloss units, by the plant's own scale, or by eye.
func TestTargetOnOtherScales(t *testing.T) {
	for want, sets := range map[float64][]string{
		97:   {"quality.target_gloss = 82.5"},
		96.5: {"quality.target_by_eye = B"},
		94:   {"finish.gloss_scale = [{gloss: 60, luster: 90}, {gloss: 80, luster: 98}]", "quality.target_gloss = 70"},
		95:   {"finish.by_eye = [{grade: good, luster: 98}, {grade: fair, luster: 95}]", "quality.target_by_eye = fair"},
	} {
		if got := fenwater(t, 1, sets...).Base.Plan().Rework.Target; math.Abs(got-want) > 1e-9 {
			t.Errorf("%v: target %v, want %v", sets, got, want)
		}
	}
}

// Strip policies by what is seen keep dark parts as good as a careful calendar
// does; one that waits for a quiet moment does not cost boats; darks after a
// strip have better luster than as they come.
func TestStripPoliciesInThePlant(t *testing.T) {
	names := []string{"boats_per_week", "strips_per_week"}
	run := func(sets ...string) (float64, map[string]float64) {
		mean, _ := darks(t, fenwater(t, 2, sets...), 2)
		f := figures(t, fenwater(t, 2, sets...), 2, names...)
		t.Logf("%v: dark parts %.2f, %v", sets, mean, f)
		return mean, f
	}
	every := []string{"strip.policy = every", "strip.every = 6"}
	fixed, f := run(every...)
	if seen, g := run("strip.policy = by build-up", "strip.haze = 0.6"); seen < 97 || g["strips_per_week"] <= 0 {
		t.Errorf("by build-up: dark parts %.2f, %v", seen, g)
	}
	if read, g := run("strip.policy = by luster"); read < 97 || g["strips_per_week"] <= 0 {
		t.Errorf("by luster: dark parts %.2f, %v", read, g)
	}
	if _, g := run("strip.policy = opportunistic", "strip.every = 6"); g["strips_per_week"] <= f["strips_per_week"] || g["boats_per_week"] < f["boats_per_week"]-0.3 {
		t.Errorf("opportunistic: %v, at fixed turns %v", g, f)
	}
	if sorted, _ := run(append(every, "release.dark_after_strip = true")...); sorted <= fixed+0.1 {
		t.Errorf("darks after a strip: %.2f, as they come %.2f", sorted, fixed)
	}
}

// The plant on the invented coast has some 22 hot weeks a year by heat index.
func TestHotWeeks(t *testing.T) {
	s := fenwater(t, 9)
	w := &hotWatch{}
	air, err := s.Base.Air(1, 0)
	if err != nil {
		t.Fatal(err)
	}
	if err := sim.Simulate(s.Base.Plan(), air, 1, 0, w); err != nil {
		t.Fatal(err)
	}
	weeks := float64(w.hot) / float64(clock.Week) / (float64(s.Base.Plan().Length) / float64(clock.Week) / 52.18)
	if weeks < 20 || weeks > 24 {
		t.Errorf("%.1f hot weeks a year", weeks)
	}
}

// hotWatch sums the hot season.
type hotWatch struct {
	record.Nothing
	since, hot clock.Time
	now        bool
}

func (w *hotWatch) Note(n *record.Note) {
	if n.Kind != record.Season {
		return
	}
	if w.now {
		w.hot += n.At - w.since
	}
	w.now, w.since = n.Value > 0, n.At
}
