package study

import (
	"math"
	"testing"

	"moldturn/sim/draw"
	"moldturn/sim/stats"
)

// The ends of Fieller's interval are, by definition, the ratios r at which the
// mean of x - r·y differs from zero by exactly its t interval.
func TestRatioEndsAreWhereTheDifferenceTurnsClear(t *testing.T) {
	x := []float64{41, 52, 38, 60, 47, 55, 44, 49}
	y := []float64{4.1, 5.6, 3.9, 5.8, 5.1, 4.9, 4.6, 5.2}
	r, ok := RatioOfMeans(x, y, 0.95)
	if !ok || !r.Bounded || !(r.Low < r.Value && r.Value < r.High) {
		t.Fatalf("%+v, %v", r, ok)
	}
	for _, end := range []float64{r.Low, r.High} {
		d := make([]float64, len(x))
		for i := range d {
			d[i] = x[i] - end*y[i]
		}
		s := stats.TInterval(d, 0.95)
		if math.Abs(math.Abs(s.Mean)-s.Half) > 1e-9*math.Abs(x[0]) {
			t.Errorf("at %v the difference is %v ± %v", end, s.Mean, s.Half)
		}
	}
}

func TestRatioWithoutAnInterval(t *testing.T) {
	if _, ok := RatioOfMeans([]float64{1}, []float64{1}, 0.95); ok {
		t.Error("a ratio of one pair has an interval")
	}
	r, ok := RatioOfMeans([]float64{1, 2, 3}, []float64{-1, 1.2, 0.1}, 0.95)
	if !ok || r.Bounded {
		t.Errorf("the mean below the line is not clear, yet %+v", r)
	}
}

// Of many ratios of made-up normal pairs about 95 % are inside their interval.
func TestRatioCoversAsOftenAsItSays(t *testing.T) {
	normal, err := draw.Normal(0, 1)
	if err != nil {
		t.Fatal(err)
	}
	noise := draw.Compile(normal)
	const trials, n = 2000, 8
	inside := 0
	for k := range trials {
		key := draw.Root(11, k)
		var x, y []float64
		for i := range n {
			shared := noise.Quantile(key.U(uint64(3 * i)))
			x = append(x, 30+4*shared+2*noise.Quantile(key.U(uint64(3*i+1))))
			y = append(y, 10+shared+noise.Quantile(key.U(uint64(3*i+2))))
		}
		if r, _ := RatioOfMeans(x, y, 0.95); r.Bounded && r.Low <= 3 && 3 <= r.High {
			inside++
		}
	}
	// three standard errors of a binomial share around 0.95
	if share := float64(inside) / trials; math.Abs(share-0.95) > 3*math.Sqrt(0.95*0.05/trials) {
		t.Errorf("%.3f of the intervals hold the true ratio", share)
	}
}

// What SideOfMeans promises, asked of the difference itself: on the stated side
// and clear below To, not clear just above it.
func TestSideHoldsUpToWhereTheDifferenceTurnsUnclear(t *testing.T) {
	y := []float64{-1, 1.2, 0.1, 0.6, -0.4}
	for _, c := range []struct {
		x    []float64
		sign int
	}{
		{[]float64{410, 520, 380, 600, 470}, 1},
		{[]float64{-410, -520, -380, -600, -470}, -1},
	} {
		s := SideOfMeans(c.x, y, 0.95)
		if s.Sign != c.sign || math.IsInf(s.To, 1) || s.To <= 0 {
			t.Fatalf("%+v", s)
		}
		for _, at := range []struct {
			r     float64
			clear bool
		}{{0, true}, {0.5, true}, {0.999, true}, {1.001, false}} {
			d := make([]float64, len(y))
			for i := range d {
				d[i] = c.x[i] - at.r*s.To*y[i]
			}
			m := stats.TInterval(d, 0.95)
			if clear := math.Abs(m.Mean) > m.Half && m.Mean*float64(c.sign) > 0; clear != at.clear {
				t.Errorf("sign %d at %g of the limit %g: %g ± %g", c.sign, at.r, s.To, m.Mean, m.Half)
			}
		}
	}
}

func TestSideWithoutALimit(t *testing.T) {
	dear, fewer := []float64{40, 45, 42, 41}, []float64{-4, -5, -4.5, -4.2}
	if s := SideOfMeans(dear, fewer, 0.95); s.Sign != 1 || !math.IsInf(s.To, 1) {
		t.Errorf("dearer and with more claims, yet %+v", s)
	}
	if s := SideOfMeans([]float64{-1, 1, 0.5, -0.4}, fewer, 0.95); s != (Side{}) {
		t.Errorf("costs that do not differ have a side: %+v", s)
	}
	if s := SideOfMeans(dear[:1], fewer[:1], 0.95); s != (Side{}) {
		t.Errorf("one pair has a side: %+v", s)
	}
	if s := SideOfMeans([]float64{4, 4, 4}, []float64{-2, -2, -2}, 0.95); s.Sign != 1 || !math.IsInf(s.To, 1) {
		t.Errorf("equal pairs, dearer and with more claims, yet %+v", s)
	}
}
