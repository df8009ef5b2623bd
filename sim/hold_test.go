package sim

import (
	"math"
	"testing"

	"moldturn/sim/climate"
	"moldturn/sim/clock"
	"moldturn/sim/cure"
	"moldturn/sim/policy"
	"moldturn/sim/record"
)

// holdWatch keeps the first pull, its waits and its notes.
type holdWatch struct {
	record.Nothing
	pulls  []record.Pull
	needs  []record.Span // waits for heat
	greens []float64
	waits  [record.Reasons]clock.Time
	curing clock.Time // of the first part
}

func (w *holdWatch) Pull(p *record.Pull) { w.pulls = append(w.pulls, *p) }

func (w *holdWatch) Span(s *record.Span) {
	if !s.Working {
		w.waits[s.Cause.Reason] += s.To - s.From
		if s.Cause.Reason == record.NeedsHeat {
			w.needs = append(w.needs, *s)
		}
	} else if s.Doing == record.Curing && len(w.pulls) == 0 {
		w.curing += s.To - s.From
	}
}

func (w *holdWatch) Note(n *record.Note) {
	if n.Kind == record.PulledGreen {
		w.greens = append(w.greens, n.Value)
	}
}

// held is one mold that is laid up in an hour, held, and pulled in half an
// hour, round the clock; a warm place, if any, is area 1.
func held(hold policy.Hold, warm bool) *Plan {
	p := loopPlan(1, []station{{"lay up", 1, 1, constant}, {"hold", 0, 0, constant}, {"pull", 0.5, 1, constant}}, 2, 0)
	steps := p.Routes[0].Steps
	steps[0].Verb = LaborEnded
	steps[1].Pace, steps[1].Verb, steps[1].Doing = ByPolicy, Held, record.Curing
	if warm {
		s := steps[1]
		s.Name, s.When, s.Area = "warm", NeedHeat, 1
		steps = []Step{steps[0], steps[1], s, steps[2]}
		p.Routes[0].Steps = steps
	}
	p.Hold = hold
	p.Length = 300 * clock.Hour
	return p
}

// shopAir is a shop of one temperature, with a warm place.
func shopAir(tempC, warmC float64) *Air {
	path := climate.Months{}
	for m := range 12 {
		path.PlantC[m], path.HeatIndexF[m] = tempC, 70
	}
	p := path.Path(loopPlan(1, []station{{"pull", 1, 1, constant}}, 0, 0).Start, 400)
	p.AddWarm(warmC)
	return NewAir(p, cure.Default())
}

func watchHold(t *testing.T, p *Plan, a *Air) *holdWatch {
	t.Helper()
	w := &holdWatch{}
	if err := Simulate(p, a, 1, 0, w); err != nil {
		t.Fatal(err)
	}
	if len(w.pulls) == 0 {
		t.Fatal("nothing was pulled")
	}
	return w
}

// degreeAt is the degree of cure after hours at one temperature, by the exact
// solution of the kinetics along one plateau.
func degreeAt(tempC, hours float64) float64 {
	p := cure.Default()
	te := hours * cure.Speed(tempC, p.ActivationEnergy)
	return p.At25(p.Plateau(tempC)).After(0, max(0, te-p.Induction*p.Thick)/p.Thick)
}

// Hold rules alone and joined, against the cure of one temperature. The part is
// laid up at hour 1 and its pull takes half an hour.
func TestHoldRules(t *testing.T) {
	for _, c := range []struct {
		name  string
		tempC float64
		hold  policy.Hold
		want  float64 // hours from the last labor to the pull's start
	}{
		{"clock", 21, policy.Hold{Clock: 24}, 24},
		{"equivalent at 25 °C is clock", 25, policy.Hold{Equivalent: 16}, 16},
		{"equivalent in the cold is longer", 15, policy.Hold{Equivalent: 16}, 16 / cure.Speed(15, 50_000)},
		{"joined: the later one counts", 25, policy.Hold{Clock: 20, Equivalent: 16}, 20},
		{"longest hold cuts equivalent hours", 10, policy.Hold{Clock: 12, Equivalent: 40, Most: 48}, 48},
		{"longest hold is never before the clock", 21, policy.Hold{Clock: 24, Most: 10}, 24},
	} {
		w := watchHold(t, held(c.hold, false), shopAir(c.tempC, 30))
		got := w.pulls[0].At.Hours() - 1.5
		if math.Abs(got-c.want) > 1e-6 {
			t.Errorf("%s: pulled after %.4f h, want %.4f", c.name, got, c.want)
		}
		want := max(0, degreeAt(21, 24)-degreeAt(c.tempC, c.want+0.5))
		if math.Abs(w.pulls[0].Green-want) > 2e-6 {
			t.Errorf("%s: green %.6f, want %.6f", c.name, w.pulls[0].Green, want)
		}
	}
	w := watchHold(t, held(policy.Hold{Degree: 0.83}, false), shopAir(21, 30))
	if got := degreeAt(21, w.pulls[0].At.Hours()-1.5); math.Abs(got-0.83) > 2e-6 {
		t.Errorf("held to a degree of 0.83 and has %.6f", got)
	}
}

// Too cold for the hardness: the part waits for heat from the end of its clock
// hold to its longest hold, and is pulled green with a warning.
func TestNeedsHeat(t *testing.T) {
	p := held(policy.Hold{Clock: 24, Degree: cure.DefaultBarcol().Degree(35), Most: 72}, false)
	w := watchHold(t, p, shopAir(14, 30))
	if got := w.pulls[0].At.Hours(); got != 1+72+0.5 {
		t.Errorf("pulled at %v h", got)
	}
	if len(w.needs) == 0 || w.needs[0].From != 25*clock.Hour || w.needs[0].To != 73*clock.Hour {
		t.Errorf("waits for heat: %v", w.needs)
	}
	if w.curing != 24*clock.Hour {
		t.Errorf("cured for %v", w.curing)
	}
	want := degreeAt(21, 24) - degreeAt(14, 72)
	if len(w.greens) < len(w.pulls) || math.Abs(w.greens[0]-want) > 2e-6 || want <= 0 {
		t.Errorf("pulled green by %v, want %v", w.greens, want)
	}
}

// With a warm place it is brought there after the longest hold and pulled as
// soon as it is hard enough.
func TestWarmPlace(t *testing.T) {
	hold := policy.Hold{Clock: 24, Degree: cure.DefaultBarcol().Degree(35), Most: 48}
	w := watchHold(t, held(hold, true), shopAir(14, 30))
	if len(w.greens) != 0 {
		t.Errorf("pulled green: %v", w.greens)
	}
	p := cure.Default()
	kinetics := p.At25(p.Plateau(30))
	warmed := w.pulls[0].At.Hours() - 0.5 - 49
	got := kinetics.After(degreeAt(14, 48), warmed*cure.Speed(30, p.ActivationEnergy)/p.Thick)
	if warmed <= 0 || math.Abs(got-hold.Degree) > 3e-6 {
		t.Errorf("after %.3f h in the warm place it has %.6f, wanted %.6f", warmed, got, hold.Degree)
	}
}

// A warm place that is too cold itself ends in a green pull, not in waiting for
// ever.
func TestWarmPlaceTooCold(t *testing.T) {
	hold := policy.Hold{Clock: 24, Degree: cure.DefaultBarcol().Degree(42), Most: 48}
	w := watchHold(t, held(hold, true), shopAir(14, 16))
	if got := w.pulls[0].At.Hours(); got != 1+48+48+0.5 || len(w.greens) == 0 {
		t.Errorf("pulled at %v h, green %v", got, w.greens)
	}
}

// The forecast of a hold is the hold, when the forecast comes true.
func TestReadyForecast(t *testing.T) {
	a := shopAir(19, 30)
	for _, h := range []policy.Hold{{Clock: 24}, {Clock: 20, Equivalent: 30}, {Degree: 0.82, Most: 72}, {Degree: 0.9, Most: 72}} {
		p := held(h, false)
		w := watchHold(t, p, a)
		ready, missed := a.Ready(0, &h, clock.Hour)
		if got := w.pulls[0].At - clock.Hour/2; got != ready || missed != (len(w.greens) > 0) {
			t.Errorf("%+v: foretold %v %v, pulled at %v", h, ready, missed, got)
		}
	}
}
