package finish

import (
	"math"
	"testing"

	"moldturn/sim/clock"

	"pgregory.net/rapid"
)

// spread is the luster of the parts between two strips: the mean, the worst and
// the share at 97 or above, with noise taken over its whole law.
func spread(t *testing.T, every int, heatF float64, p *Params) (mean, worst, at97 float64) {
	t.Helper()
	premium, _ := p.Grade("premium")
	dark, _ := p.Color("dark")
	part := Part{Grade: premium, Color: dark, Surface: 0.1, Noise: 0.5}
	worst = 100
	for range every {
		l := Luster(p, &part)
		mean += l / float64(every)
		worst = min(worst, l)
		at97 += 0.5 * math.Erfc((97-l)/p.Noise.SD/math.Sqrt2) / float64(every)
		part.BuildUp += Grow(p, Pull{Grade: premium, Shape: 1, HeatIndexF: heatF})
	}
	return mean, worst, at97
}

// By hand, dark premium hulls with a lasting loss of 0.1: losses are 1.9 + 0.1 +
// (B/5)², B = 0 … N−1 times 1 cool and 5/3 hot. Every 5 cool: mean haze 30/125.
// Every 3 hot: 25/9·5/75. Every 10 cool: 285/250, worst 81/25; hot 25/9 times
// as much. The choice of numbers is an assumption; that plants strip every 3
// hot and every 5 cool and see few parts below 97 is common practice, no source.
func TestStripIntervalsByHand(t *testing.T) {
	p := Default()
	for _, c := range []struct {
		every             int
		heatF             float64
		mean, worst, at97 float64
	}{
		{5, 60, 98 - 30.0/125, 98 - 16.0/25, 0.97},
		{3, 105, 98 - 25.0/9*5/75, 98 - 25.0/9*4/25, 0.99},
		{10, 60, 98 - 285.0/250, 98 - 81.0/25, -1},
		{10, 105, 98 - 25.0/9*285/250, 98 - 25.0/9*81/25, -1},
	} {
		mean, worst, at97 := spread(t, c.every, c.heatF, &p)
		if math.Abs(mean-c.mean) > 1e-9 || math.Abs(worst-c.worst) > 1e-9 {
			t.Errorf("every %d at %v °F: mean %.4f worst %.4f, want %.4f %.4f", c.every, c.heatF, mean, worst, c.mean, c.worst)
		}
		if c.at97 >= 0 && math.Abs(at97-c.at97) > 0.005 {
			t.Errorf("every %d at %v °F: share at 97 %.4f, want %.2f", c.every, c.heatF, at97, c.at97)
		}
	}
}

// Haze does not show on solid white: common practice, no source. A careful
// plant's limit of 97 must hold there for 12 – 18 pulls even in heat.
func TestWhiteUnharmed(t *testing.T) {
	p := Default()
	white, _ := p.Color("white")
	part := Part{Grade: 2, Color: white, Surface: 0.1, Noise: 0.5, BuildUp: 17 * 5.0 / 3}
	if l := Luster(&p, &part); l < 97 {
		t.Errorf("the 18th white part in heat has %.2f", l)
	}
}

func TestPostCureComesOutLater(t *testing.T) {
	p := Default()
	part := Part{Grade: 2, Color: 0, Noise: 0.5, Green: 0.03}
	loss := func(since clock.Time) float64 {
		part.Since = since
		return Explain(&p, &part)[2]
	}
	full := 44 * 1.5 * 0.03
	for _, c := range []struct {
		since clock.Time
		share float64
	}{{0, 0.4}, {3 * clock.Week, 1 - 0.6/math.E}, {clock.Never, 1}} {
		if got := loss(c.since); math.Abs(got-full*c.share) > 1e-12 {
			t.Errorf("after %v: loss %v, want %v", c.since, got, full*c.share)
		}
	}
}

func anyPart(t *rapid.T) Part {
	return Part{
		Grade: rapid.IntRange(0, 2).Draw(t, "grade"), Color: rapid.IntRange(0, 2).Draw(t, "color"),
		BuildUp: rapid.Float64Range(0, 60).Draw(t, "build-up"), Green: rapid.Float64Range(0, 0.9).Draw(t, "green"),
		Surface: rapid.Float64Range(0, 5).Draw(t, "surface"), MissingCoats: rapid.Float64Range(0, 5).Draw(t, "missing"),
		ExcessCoats: rapid.Float64Range(0, 5).Draw(t, "excess"), Noise: rapid.Float64Range(1e-12, 1-1e-12).Draw(t, "noise"),
		Buffs: rapid.IntRange(0, 3).Draw(t, "buffs"), Since: clock.Time(rapid.Int64Range(0, 1e11).Draw(t, "since")),
	}
}

// worse changes one driver for the worse; good names the term it acts on.
var worse = []struct {
	term   string
	change func(*Part)
}{
	{"haze", func(p *Part) { p.BuildUp += 1 }},
	{"postcure", func(p *Part) { p.Green += 0.01 }},
	{"postcure", func(p *Part) { p.Since += clock.Week }},
	{"surface", func(p *Part) { p.Surface += 0.1 }},
	{"wax", func(p *Part) { p.MissingCoats++ }},
	{"wax", func(p *Part) { p.ExcessCoats++ }},
	{"noise", func(p *Part) { p.Noise /= 2 }},
	{"grade", func(p *Part) { p.Grade = max(p.Grade-1, 0) }},
}

// One battery for every term: nothing is lost where nothing is wrong, each
// driver acts on its term only and never for the better, and the sum of the
// losses is what luster lacks.
func TestTerms(t *testing.T) {
	p := Default()
	p.AddGrade(Grade{"perfect", 0, 1})
	neutral := Part{Grade: 3, Noise: 0.5}
	for i, l := range Explain(&p, &neutral) {
		if l != 0 {
			t.Errorf("%s: a perfect part loses %v", terms[i].Key, l)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		part := anyPart(t)
		before := Explain(&p, &part)
		sum := 0.0
		for i, l := range before {
			sum += l
			if math.IsNaN(l) || l < 0 && terms[i].Key != "noise" {
				t.Fatalf("%s: loss %v", terms[i].Key, l)
			}
		}
		if got := Luster(&p, &part); math.Abs(got-min(max(100-sum, 0), 100)) > 1e-12 {
			t.Fatalf("luster %v, losses %v", got, sum)
		}
		for _, w := range worse {
			changed := part
			w.change(&changed)
			for i, l := range Explain(&p, &changed) {
				if l < before[i] || l != before[i] && terms[i].Key != w.term {
					t.Fatalf("a change of %s moved %s from %v to %v", w.term, terms[i].Key, before[i], l)
				}
			}
		}
	})
	covered := map[string]bool{}
	for _, w := range worse {
		covered[w.term] = true
	}
	for _, term := range Terms() {
		if !covered[term.Key] || term.Doc == "" {
			t.Errorf("%s: no driver in this test, or no doc", term.Key)
		}
	}
}

// Each driver costs something of its own, on a part that has a little of all.
func TestEveryDriverCosts(t *testing.T) {
	p := Default()
	part := Part{Grade: 2, Color: 1, BuildUp: 3, Green: 0.02, Surface: 0.1, MissingCoats: 1, ExcessCoats: 1, Noise: 0.5}
	before := Luster(&p, &part)
	for i, w := range worse {
		changed := part
		w.change(&changed)
		if after := Luster(&p, &changed); !(after < before) {
			t.Errorf("change %d, of %s, moves luster from %v to %v", i, w.term, before, after)
		}
	}
	part.ExcessCoats, part.MissingCoats = 3, 0
	if got := Explain(&p, &part)[4]; math.Abs(got-0.6) > 1e-12 {
		t.Errorf("three coats too many cost %v, want 0.6", got)
	}
}

func TestBuff(t *testing.T) {
	p := Default()
	part := Part{Grade: 2, BuildUp: 5, Surface: 0.4, MissingCoats: 2, Green: 0.02, Noise: 0.3}
	before := Luster(&p, &part)
	gain := Regain(&p, &part)
	if want := 0.7 * (1 + 0.4 + 1); math.Abs(gain-want) > 1e-9 {
		t.Errorf("a round gives %v points back, want %v", gain, want)
	}
	part.Buffs = 2
	if want := 0.91 * (1 + 0.4 + 1); math.Abs(Luster(&p, &part)-before-want) > 1e-9 {
		t.Errorf("two rounds give %v back, want %v", Luster(&p, &part)-before, want)
	}
}

// The mean over the law, by the midpoint rule on its uniform number, must be
// the stated mean, and the cv the stated cv.
func TestLaws(t *testing.T) {
	p := Default()
	const n = 200_000
	var hours, hours2, read, read2 float64
	for i := range n {
		u := (float64(i) + 0.5) / n
		h := BuffHours(&p, 95, 97, 17, u)
		r := Reading(&p, 90, u)
		hours, hours2 = hours+h/n, hours2+h*h/n
		read, read2 = read+r/n, read2+(r-90)*(r-90)/n
	}
	if want := (1 + 0.8*2) / 2; math.Abs(hours-want) > 1e-4 {
		t.Errorf("mean buff %v h, want %v", hours, want)
	}
	if cv := math.Sqrt(hours2/hours/hours - 1); math.Abs(cv-0.5) > 1e-3 {
		t.Errorf("cv of buff hours %v, want 0.5", cv)
	}
	if math.Abs(read-90) > 1e-9 || math.Abs(math.Sqrt(read2)-0.25) > 1e-4 {
		t.Errorf("reading: mean %v sd %v, want 90 and 0.25", read, math.Sqrt(read2))
	}
	if h := BuffHours(&p, 97, 97, 34, 0.9); h != 0 {
		t.Errorf("a part at target is buffed for %v h", h)
	}
}

func TestGrow(t *testing.T) {
	p := Default()
	for _, c := range []struct {
		pull Pull
		want float64
	}{
		{Pull{2, 1, 75, 0}, 1},
		{Pull{2, 1, 20, -1}, 1},
		{Pull{2, 1, 105, 0}, 5.0 / 3},
		{Pull{2, 1, 150, 0}, 2},
		{Pull{2, 1.5, 75, 0}, 1.5},
		{Pull{0, 1, 75, 0.05}, 3.2},
		{Pull{1, 1.2, 90, 0.01}, 1.25 * 1.2 * (4.0 / 3) * 1.2},
	} {
		if got := Grow(&p, c.pull); math.Abs(got-c.want) > 1e-12 {
			t.Errorf("%+v: %v, want %v", c.pull, got, c.want)
		}
	}
}

func BenchmarkLuster(b *testing.B) {
	p := Default()
	part := Part{Grade: 2, BuildUp: 3, Surface: 0.1, Noise: 0.3, Green: 0.01}
	b.ReportAllocs()
	sink := 0.0
	for i := 0; i < b.N; i++ {
		sink += Luster(&p, &part)
	}
	_ = sink
}
