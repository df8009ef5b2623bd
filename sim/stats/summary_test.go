package stats

import (
	"math"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// Two systems compared in ten replications: average time in system with the
// same luck for both, and the second with luck of its own. The printed means
// and spreads are those of the sheet (IE 305/404 review sheet, published at
// coursehero.com, document 3034253).
var (
	system1     = []float64{15.19, 12.13, 17.13, 17.5, 16.88, 11.97, 16.83, 18.44, 14.9, 15.15}
	system2     = []float64{16.29, 12.58, 19.35, 18.4, 18.38, 12.84, 18, 19.18, 16.03, 16.03}
	system2Free = []float64{15.65, 14.22, 16.17, 13.43, 15.52, 16.16, 12.67, 16.97, 11.83, 10.35}
)

func TestPublishedComparison(t *testing.T) {
	for i, want := range []struct{ mean, sd float64 }{{15.612, 2.192}, {16.708, 2.438}, {14.297, 2.174}} {
		xs := [][]float64{system1, system2, system2Free}[i]
		within(t, "printed mean", Mean(xs), want.mean, 5.1e-4)
		within(t, "printed sd", SD(xs), want.sd, 5.1e-4)
	}
	d := Paired(system1, system2, .95)
	within(t, "printed sd of differences", d.SD, .485, 5.1e-4)
	within(t, "difference", d.Mean, -1.096, 1e-12)
	within(t, "sd", d.SD, .484589173, 5.1e-10)
	within(t, "t", d.Mean/d.SE, -7.152154, 5.1e-7)
	within(t, "half width", d.Half, .346654212, 5.1e-10)
	within(t, "correlation", d.Correlation, .983714, 5.1e-7)
	if d.N != 10 || d.DF != 9 || !d.Clear || d.Warnings != nil {
		t.Errorf("paired: %+v", d)
	}
	w := Welch(system1, system2Free, .95)
	within(t, "independent difference", w.Mean, 1.315, 1e-12)
	within(t, "its standard error", w.SE, .976186287, 5.1e-10)
	within(t, "its degrees of freedom", w.DF, 17.998714, 5.1e-7)
	within(t, "its half width", w.Half, 2.050901789, 5.1e-10)
	if w.Clear || w.Correlation != 0 {
		t.Errorf("independent: %+v", w)
	}
	within(t, "gain of the same luck", w.Half/d.Half, 5.9, .05)
	within(t, "narrower", d.Narrower, Welch(system1, system2, .95).Half/d.Half, 1e-12)
}

func TestTooLittle(t *testing.T) {
	for _, row := range []struct {
		xs   []float64
		mean float64
		warn string
	}{
		{nil, 0, "no replications"},
		{[]float64{7}, 7, "only 1 replication: no interval"},
		{[]float64{7, math.NaN(), math.Inf(1)}, 7, "2 of 3 values are not finite numbers and are left out"},
	} {
		s := TInterval(row.xs, .9)
		if s.Known() || s.Mean != row.mean || s.Half != 0 || s.Low != row.mean || s.High != row.mean {
			t.Errorf("%v: %+v", row.xs, s)
		}
		if !slices.Contains(s.Warnings, row.warn) {
			t.Errorf("%v: warnings %q, want %q", row.xs, s.Warnings, row.warn)
		}
		if d := Paired(row.xs, row.xs, .9); d.Known() || d.Clear || d.Half != 0 || d.Narrower != 0 {
			t.Errorf("%v paired: %+v", row.xs, d)
		}
		if d := Welch(row.xs, []float64{1, 2, 3}, .9); d.Known() || d.Clear || d.Half != 0 {
			t.Errorf("%v independent: %+v", row.xs, d)
		}
	}
	s := TInterval([]float64{1, 2, 3, 4}, .9)
	if !s.Known() || !slices.Equal(s.Warnings, []string{"only 4 replications"}) {
		t.Errorf("four values: %+v", s)
	}
	if s := TInterval(make([]float64, 12), .9); !s.Known() || len(s.Warnings) != 1 || !strings.Contains(s.Warnings[0], "the same") {
		t.Errorf("twelve zeros: %+v", s)
	}
	for _, c := range []float64{0, 1, -1, 95, math.NaN()} {
		if s := TInterval(system1, c); s.Known() || s.Confidence != 0 || len(s.Warnings) != 1 {
			t.Errorf("confidence %v: %+v", c, s)
		}
	}
}

// Values that are all the same are no proof in few runs: 2^(1-N) ≤ 1-confidence
// from the sixth on at 95 %, from the eighth at 99 %.
func TestSameValuesAreNoProof(t *testing.T) {
	for _, row := range []struct {
		n          int
		confidence float64
		known      bool
	}{{2, .95, false}, {5, .95, false}, {6, .95, true}, {7, .99, false}, {8, .99, true}} {
		more, base := make([]float64, row.n), make([]float64, row.n)
		for i := range more {
			base[i] = 8 + float64(i)/10
			more[i] = base[i] + 0.25
		}
		d := Paired(more, base, row.confidence)
		if d.Known() != row.known || d.Clear != row.known {
			t.Errorf("%d equal differences at %v: known %v, clear %v", row.n, row.confidence, d.Known(), d.Clear)
		}
		said := strings.Join(d.Warnings, "; ")
		if strings.Contains(said, "too few to be sure") == row.known || !strings.Contains(said, "the same") {
			t.Errorf("%d equal differences at %v: warnings %q", row.n, row.confidence, said)
		}
	}
}

func TestPairedUsesTheCommonFirst(t *testing.T) {
	d := Paired(system1, system2[:8], .95)
	want := Paired(system1[:8], system2[:8], .95)
	if d.N != 8 || d.Half != want.Half || d.Mean != want.Mean {
		t.Errorf("%+v, want %+v", d, want)
	}
	if !slices.Contains(d.Warnings, "10 and 8 replications: the common first 8 are compared") {
		t.Errorf("warnings %q", d.Warnings)
	}
	holed := slices.Clone(system2)
	holed[3] = math.NaN()
	d = Paired(system1, holed, .95)
	want = Paired(slices.Delete(slices.Clone(system1), 3, 4), slices.Delete(slices.Clone(system2), 3, 4), .95)
	if d.N != 9 || d.Half != want.Half || d.Correlation != want.Correlation {
		t.Errorf("%+v, want %+v", d, want)
	}
}

// Type 7 of Hyndman and Fan by hand: place (n-1)p from 0. R's documented default
// gives the same: quantile(1:9, .33) is 3.64.
func TestQuantile(t *testing.T) {
	xs := []float64{9, 1, 8, 2, 7, 3, 6, 4, 5}
	for _, row := range [][2]float64{{0, 1}, {.1, 1.8}, {.25, 3}, {.33, 3.64}, {.5, 5}, {.9, 8.2}, {1, 9}, {-1, 1}, {2, 9}} {
		within(t, "quantile", Quantile(xs, row[0]), row[1], 1e-15*9)
	}
	if xs[0] != 9 {
		t.Error("the values were sorted in place")
	}
	if P10(nil) != 0 || P10([]float64{3}) != 3 {
		t.Error("quantile of no value or one")
	}
}

// Moving and scaling the data moves and scales the summary, whatever the data.
func TestSummaryScales(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		xs := rapid.SliceOfN(rapid.Float64Range(-1e6, 1e6), 0, 30).Draw(t, "xs")
		ys := make([]float64, len(xs))
		for i, x := range xs {
			ys[i] = 3 - 4*x
		}
		a, b := TInterval(xs, .9), TInterval(ys, .9)
		near := func(x, y float64) bool { return math.Abs(x-y) <= 1e-8 }
		if len(xs) > 0 && !near(b.Mean, 3-4*a.Mean) || !near(b.Half, 4*a.Half) || a.Known() && !near(b.Low, 3-4*a.High) {
			t.Fatalf("%+v and %+v", a, b)
		}
		d := Paired(xs, ys, .9)
		if r := Correlation(xs, ys); a.SD > 1e-3 && !near(r, -1) || d.Narrower > 1.0001 {
			t.Fatalf("correlation %v, narrower %v", r, d.Narrower)
		}
		for _, v := range []float64{d.Mean, d.SD, d.SE, d.Half, d.Low, d.High, d.Correlation, d.Narrower, Lag1(xs)} {
			if !finite(v) {
				t.Fatalf("not finite: %+v", d)
			}
		}
	})
}
