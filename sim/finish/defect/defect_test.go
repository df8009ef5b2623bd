package defect

import (
	"math"
	"testing"

	"moldturn/sim/draw"

	"pgregory.net/rapid"
)

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: %v, want %v ± %v", what, got, want, tol)
	}
}

// seen is what a shop sees at reference conditions: the share of parts with
// any defect found, the share scrapped, and the law of the labor on one part in
// cells of 0.01 h, by convolution.
func seen(p *Params) (any, scrap float64, labor []float64) {
	const cells = 20_000
	part := Reference()
	none, kept := 1.0, 1.0
	labor = []float64{1}
	for i := range p.Each {
		found := Chance(p, i, &part) * p.Each[i].Found
		none *= 1 - found
		kept *= 1 - found*p.Each[i].Scrap
		one := make([]float64, int(100*highest(p.Each[i].Hours))+2)
		one[0] = 1 - found
		for k := range cells {
			h := p.Each[i].Hours.Quantile((float64(k) + 0.5) / cells)
			one[int(math.Ceil(h*100))] += found / cells
		}
		labor = convolve(labor, one)
	}
	return 1 - none, 1 - kept, labor
}

func highest(d draw.Dist) float64 {
	_, high := d.Bounds()
	return high
}

func convolve(a, b []float64) []float64 {
	out := make([]float64, len(a)+len(b)-1)
	for j, y := range b {
		if y == 0 {
			continue
		}
		for i, x := range a {
			out[i+j] += x * y
		}
	}
	return out
}

// Common practice, no source: 75 % of parts need some touch-up, 8 % more than
// 4 h, 0.4 % are scrapped.
func TestReferenceShop(t *testing.T) {
	p := Default()
	any, scrap, labor := seen(&p)
	over := 0.0
	for _, m := range labor[401:] {
		over += m
	}
	near(t, "parts that need touch-up", any, 0.75, 0.005)
	near(t, "parts over 4 h", over, 0.08, 0.005)
	near(t, "parts scrapped", scrap, 0.004, 0.0005)
}

// The law of sticking by hand, and the published 13 – 15 % of new molds that
// stick one of their first three parts (R. Lacovara, "Why Molds Stick",
// Fabrication News, Feb 1991).
func TestSticking(t *testing.T) {
	p := Default()
	for _, c := range []struct {
		change func(*Part)
		want   float64
	}{
		{func(*Part) {}, 0.0004},
		{func(x *Part) { x.AfterStrip = true }, 0.0016},
		{func(x *Part) { x.MissingCoats = 3 }, 0.0032},
		{func(x *Part) { x.BuildUp = 10 }, 0.0006},
		{func(x *Part) { x.PullC = 12 }, 0.0008},
		{func(x *Part) { x.AfterStrip, x.MissingCoats, x.BuildUp, x.PullC = true, 2, 5, 14 }, 0.0016 * 4 * 1.25 * 1.5},
		{func(x *Part) { x.MissingCoats = 30 }, 0.3},
		{func(x *Part) { x.BreakIn, x.MissingCoats = 1, 9 }, 0.08},
		{func(x *Part) { x.BreakIn = 2 }, 0.04},
		{func(x *Part) { x.BreakIn = 3 }, 0.025},
		{func(x *Part) { x.BreakIn = 4 }, 0.0004},
	} {
		part := Reference()
		c.change(&part)
		near(t, "chance to stick", Chance(&p, Sticking, &part), c.want, 1e-15)
	}
	if three := 1 - (1-p.BreakIn[0])*(1-p.BreakIn[1])*(1-p.BreakIn[2]); three < 0.13 || three > 0.15 {
		t.Errorf("a new mold sticks one of its first three parts with %v", three)
	}
}

func anyPart(t *rapid.T) Part {
	f := func(low, high float64, what string) float64 { return rapid.Float64Range(low, high).Draw(t, what) }
	return Part{
		Film: f(0.1, 1.2, "film"), SprayC: f(5, 45, "spray °C"), Humidity: f(0, 1, "humidity"), CureC: f(5, 70, "cure °C"),
		Window: f(0, 30, "window"), Green: f(0, 0.9, "green"), MissingCoats: f(0, 6, "missing"), BuildUp: f(0, 40, "build-up"),
		PullC: f(0, 45, "pull °C"), AfterStrip: rapid.Bool().Draw(t, "after strip"), BreakIn: rapid.IntRange(0, 4).Draw(t, "break-in"),
	}
}

// worsen moves one driver of part further the wrong way.
var worsen = map[Driver]func(p *Part, sign float64){
	Film:         func(p *Part, sign float64) { p.Film += 0.05 * sign },
	SprayC:       func(p *Part, sign float64) { p.SprayC += 2 * sign },
	Humidity:     func(p *Part, sign float64) { p.Humidity += 0.1 * sign },
	CureC:        func(p *Part, sign float64) { p.CureC += 2 * sign },
	Window:       func(p *Part, sign float64) { p.Window += 4 * sign },
	Green:        func(p *Part, sign float64) { p.Green += 0.02 * sign },
	MissingCoats: func(p *Part, sign float64) { p.MissingCoats += sign },
	BuildUp:      func(p *Part, sign float64) { p.BuildUp += 3 * sign },
	PullC:        func(p *Part, sign float64) { p.PullC += 2 * sign },
	AfterStrip:   func(p *Part, _ float64) { p.AfterStrip = true },
}

// One battery for every defect, with TestDefectsAnywhere: at reference
// conditions the chance is the prior; everywhere it is a probability within its
// bound; each driver raises it when it moves the wrong way far enough and never
// lowers it; a driver that is not named does nothing.
func TestDefects(t *testing.T) {
	p := Default()
	for i, d := range All() {
		part := Reference()
		near(t, d.Key+" at reference", Chance(&p, i, &part), d.chance, 0)
		if d.Key == "" || d.Doc == "" || d.Source == "" {
			t.Errorf("%q: no key, doc or source", d.Key)
		}
		for driver, change := range worsen {
			far := Reference()
			named := false
			for _, e := range d.effects {
				if named = named || e.Driver == driver; e.Driver == driver {
					for range 10 {
						change(&far, direction(e))
					}
				}
			}
			if c := Chance(&p, i, &far); named && c <= d.chance || !named && c != d.chance {
				t.Errorf("%s: %v (named %v) moved the chance from %v to %v", d.Key, driver, named, d.chance, c)
			}
		}
	}
}

func TestDefectsAnywhere(t *testing.T) {
	p := Default()
	rapid.Check(t, func(t *rapid.T) {
		part := anyPart(t)
		for i, d := range all {
			before := Chance(&p, i, &part)
			if !(before >= 0 && before <= d.most) {
				t.Fatalf("%s: chance %v", d.Key, before)
			}
			for _, e := range d.effects {
				if e.Driver == None {
					continue
				}
				worse := part
				worsen[e.Driver](&worse, direction(e))
				if after := Chance(&p, i, &worse); after < before || e.Factor(&part) < 1 {
					t.Fatalf("%s: worse %v lowers the chance from %v to %v", d.Key, e.Driver, before, after)
				}
			}
		}
	})
}

func direction(e Effect) float64 {
	if e.Shape == Below {
		return -1
	}
	return 1
}

// Shares of many independent parts against the numbers they are drawn from,
// within 5 standard errors; the luck is fixed, so the outcome is too.
func TestTry(t *testing.T) {
	p := Default()
	part := Reference()
	part.Green, part.MissingCoats, part.BuildUp = 0.2, 6, 20
	const n = 100_000
	for i, d := range All() {
		law := p.Each[i]
		var has, found, scrap, hours float64
		for k := range n {
			o := Try(&p, i, &part, draw.Root(7, k).At1(1, uint64(i)))
			if o.Found && !o.Has || o.Scrap && !o.Found || (o.Hours > 0) != (o.Found && !o.Scrap) || (o.Mold > 0) != (i == Sticking && o.Has) {
				t.Fatalf("%s: %+v", d.Key, o)
			}
			has += count(o.Has)
			found += count(o.Found)
			scrap += count(o.Scrap)
			hours += o.Hours
		}
		share(t, d.Key+" has", has, n, Chance(&p, i, &part))
		share(t, d.Key+" found", found, has, law.Found)
		share(t, d.Key+" scrapped", scrap, found, law.Scrap)
		reworked := found - scrap
		near(t, d.Key+" hours", hours/reworked, law.Hours.Mean(), 5*math.Sqrt(law.Hours.Variance()/reworked))
	}
}

func count(b bool) float64 {
	if b {
		return 1
	}
	return 0
}

func share(t *testing.T, what string, k, n, want float64) {
	t.Helper()
	near(t, what, k/n, want, 5*math.Sqrt(want*(1-want)/n))
}

func BenchmarkTryAll(b *testing.B) {
	p := Default()
	part := Reference()
	b.ReportAllocs()
	for i := 0; i < b.N; i++ {
		for k := range Count {
			Try(&p, k, &part, draw.Key(i*Count+k))
		}
	}
}
