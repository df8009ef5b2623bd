package study

import (
	"math"
	"math/rand/v2"
	"testing"

	"github.com/google/go-cmp/cmp"

	"moldturn/sim/stats"
)

// twoFigures makes points with given means of boats a week and luster, and ten
// replications whose luck is shared except for a small part.
func twoFigures(rng *rand.Rand, own float64, means ...[2]float64) []Figures {
	out := make([]Figures, len(means))
	for i := range out {
		out[i].Values = map[string]Values{}
	}
	for range 10 {
		x, y := rng.NormFloat64(), rng.NormFloat64()
		for i, m := range means {
			v := out[i].Values
			v["boats_per_week"] = append(v["boats_per_week"], m[0]+x+own*rng.NormFloat64())
			v["luster_p10"] = append(v["luster_p10"], m[1]+y+own*rng.NormFloat64())
		}
	}
	return out
}

func named(t *testing.T, name string) *Metric {
	t.Helper()
	m, ok := MetricNamed(name)
	if !ok {
		t.Fatalf("no figure %q", name)
	}
	return &m
}

func curve(rng *rand.Rand, own float64, ys ...float64) []Figures {
	var means [][2]float64
	for _, y := range ys {
		means = append(means, [2]float64{y, 97})
	}
	return twoFigures(rng, own, means...)
}

// A curve that rises and levels off: 1 - 2^-(k-1) reaches nine tenths of its
// gain at the fifth point (15/16 of 127/128).
func TestKneeOfACurve(t *testing.T) {
	rng := rand.New(rand.NewPCG(1, 1))
	d, _ := NewGrid([]Factor{factor(t, "a=1..8")})
	var ys []float64
	for k := range 8 {
		ys = append(ys, 8+1-math.Pow(2, -float64(k)))
	}
	s, ok := ShapeOf(d, curve(rng, 1e-4, ys...), named(t, "boats_per_week"))
	if !ok || !s.Clear || s.Worst != 0 || s.Best != 7 || s.Knee != 4 || s.Inside {
		t.Errorf("%v %+v", ok, s)
	}
	s, _ = ShapeOf(d, curve(rng, 1e-4, 1, 3, 5, 6, 6.05, 5, 3, 1.5), named(t, "boats_per_week"))
	if !s.Inside || s.Best != 4 || s.Knee != 3 {
		t.Errorf("a peak: %+v", s)
	}
	s, _ = ShapeOf(d, curve(rng, 1, 8, 8, 8, 8, 8, 8, 8, 8), named(t, "boats_per_week"))
	if s.Clear {
		t.Errorf("a flat curve has a clear best: %+v", s.Gain)
	}
}

// The ridge of -(x-y)² over 5 by 3 values lies where the two are equal; moved to
// the edge there is none.
func TestRidge(t *testing.T) {
	d, _ := NewGrid([]Factor{factor(t, "x=1..5"), factor(t, "y=2..4")})
	worth := func(f func(x, y float64) float64) []Figures {
		var ys []float64
		for i := range d.Points {
			x, _ := d.Number(i, 0)
			y, _ := d.Number(i, 1)
			ys = append(ys, f(x, y))
		}
		return curve(rand.New(rand.NewPCG(1, 2)), 1e-4, ys...)
	}
	s, ok := ShapeOf(d, worth(func(x, y float64) float64 { return -(x - y) * (x - y) }), named(t, "boats_per_week"))
	if diff := cmp.Diff([]int{1*3 + 0, 2*3 + 1, 3*3 + 2}, s.Ridge); !ok || diff != "" || s.Along != 1 {
		t.Errorf("along %d: %s", s.Along, diff)
	}
	s, _ = ShapeOf(d, worth(func(x, y float64) float64 { return x + y }), named(t, "boats_per_week"))
	if s.Ridge != nil || s.Best != 14 || s.Worst != 0 {
		t.Errorf("a slope: %+v", s)
	}
}

// Of means that lie far apart against the noise the frontier is certain; equal
// points share it, and one that is close to another is neither sure nor out.
func TestFrontier(t *testing.T) {
	points := twoFigures(rand.New(rand.NewPCG(2, 1)), .01,
		[2]float64{1, 9}, [2]float64{2, 8}, [2]float64{1.5, 7}, [2]float64{3, 5}, [2]float64{2.9, 4.9}, [2]float64{3, 8.001})
	f, ok := FrontierOf(points, named(t, "boats_per_week"), named(t, "luster_p10"))
	if !ok {
		t.Fatal("no frontier")
	}
	want := []bool{true, false, false, false, false, true}
	for i := range want {
		if i == 1 || i == 3 { // too close to call by design of the example
			continue
		}
		if f.Undominated[i] != want[i] || f.Confidence[i] > .05 && f.Confidence[i] < .95 {
			t.Errorf("point %d: undominated %v with confidence %.2f, want %v", i+1, f.Undominated[i], f.Confidence[i], want[i])
		}
	}
	if f.Confidence[1] < .02 || f.Confidence[1] > .7 {
		t.Errorf("point 2 is close to point 6 in luster only: confidence %.2f", f.Confidence[1])
	}
	twins := []Figures{points[0], points[0]}
	if f, _ := FrontierOf(twins, named(t, "boats_per_week"), named(t, "luster_p10")); f.Confidence[0] != 1 || f.Confidence[1] != 1 {
		t.Errorf("two equal points: %v", f.Confidence)
	}
}

// With one figure equal for both, a point that leads by one standard error of
// the drawn means is ahead in the share of draws that the normal distribution
// gives for z = 1, 0.8413 (any table). A thousand draws know it to ± 0.023.
func TestFrontierConfidence(t *testing.T) {
	const n = 40
	lead := make([]float64, n)
	for i := range lead {
		lead[i] = stats.NormalQuantile((float64(i) + .5) / n)
	}
	spread := stats.SD(lead) * math.Sqrt((n-1.)/n)
	points := make([]Figures, 2)
	for i := range points {
		points[i].Values = map[string]Values{"luster_p10": make(Values, n), "boats_per_week": make(Values, n)}
	}
	for r := range n {
		points[0].Values["boats_per_week"][r] = lead[r] + spread/math.Sqrt(n)
	}
	f, _ := FrontierOf(points, named(t, "boats_per_week"), named(t, "luster_p10"))
	if math.Abs(f.Confidence[0]-.8413) > .023 {
		t.Errorf("confidence %.3f, want 0.841", f.Confidence[0])
	}
}

func TestFrontierAgainstDefinition(t *testing.T) {
	rng := rand.New(rand.NewPCG(2, 3))
	for range 50 {
		var means [][2]float64
		for range 30 {
			means = append(means, [2]float64{float64(rng.IntN(6)), float64(rng.IntN(6))})
		}
		points := twoFigures(rng, 0, means...)
		f, _ := FrontierOf(points, named(t, "boats_per_week"), named(t, "luster_p10"))
		for i, a := range means {
			beaten := false
			for _, b := range means {
				beaten = beaten || b[0] >= a[0] && b[1] >= a[1] && b != a
			}
			if f.Undominated[i] == beaten {
				t.Fatalf("point %d of %v: undominated %v", i, means, f.Undominated[i])
			}
		}
	}
}

// Straight lines are found again, with their intervals; a curve shows in what
// they do not explain.
func TestEffects(t *testing.T) {
	rng := rand.New(rand.NewPCG(4, 4))
	d, _ := NewLatin([]Factor{factor(t, "a=0h..10h"), factor(t, "b=1..9"), factor(t, "c=x,y")}, 40, 3)
	make40 := func(f func(a, b float64) float64) []Figures {
		var ys []float64
		for i := range d.Points {
			a, _ := d.Number(i, 0)
			b, _ := d.Number(i, 1)
			ys = append(ys, f(a, b))
		}
		return curve(rng, .01, ys...)
	}
	e, ok := EffectsOf(d, make40(func(a, b float64) float64 { return .2*a - .1*b }), named(t, "boats_per_week"))
	if !ok || len(e.All) != 2 || e.Linear < .99 {
		t.Fatalf("%v %+v", ok, e)
	}
	for i, slope := range []float64{.2, -.1} {
		x := e.All[i]
		low, _ := parseAmount(x.Low)
		high, _ := parseAmount(x.High)
		want := slope * (high.value - low.value)
		if !x.Change.Clear || math.Abs(x.Change.Mean-want) > 2*x.Change.Half {
			t.Errorf("%s to %s: %.3f ± %.3f, want %.3f", x.Low, x.High, x.Change.Mean, x.Change.Half, want)
		}
	}
	e, _ = EffectsOf(d, make40(func(a, b float64) float64 { return (a - 5) * (a - 5) }), named(t, "boats_per_week"))
	if e.Linear > .3 {
		t.Errorf("straight lines explain %.2f of a parabola", e.Linear)
	}
}
