package study

import (
	"math"
	"math/rand/v2"
	"testing"

	"moldturn/sim/record"
	"moldturn/sim/stats"
)

// boats is a figure that a test can set.
var boats = Metric{Name: "boats", Of: func(o *Outcome) (float64, bool) { return o.Capacity.Boats.Sum, true }}

// add gives runs one more replication with these values of the figure.
func add(runs []Runs, values ...float64) {
	for i, v := range values {
		runs[i].Outcomes = append(runs[i].Outcomes, Outcome{Capacity: &record.Result{Boats: record.Lusters{Sum: v}}})
	}
}

// The published example of systems 1 and 2 under common random numbers (IE
// 305/404 review sheet): mean 15.612, standard deviation 2.192 and 10 values
// give a half width of 2.262·2.192/√10 = 1.568, 10.04 % of the mean.
func TestPrecisionByHand(t *testing.T) {
	runs := make([]Runs, 1)
	for _, x := range []float64{15.19, 12.13, 17.13, 17.5, 16.88, 11.97, 16.83, 18.44, 14.9, 15.15} {
		add(runs, x)
	}
	for _, test := range []struct {
		wanted float64
		met    bool
	}{{.12, true}, {.112, true}, {.111, false}, {.1, false}} { // .1004/(1-.1004) = .1116
		v := (&Rule{Metrics: []Metric{boats}, Precision: test.wanted, Round: 5}).Judge(runs)
		if v.Precise != test.met || math.Abs(v.Worst[0].Share-.1004) > 1e-3 {
			t.Errorf("±%v wanted: %+v", test.wanted, v)
		}
	}
}

// Systems 1 and 2 of the same sheet differ by -1.096 ± 0.347 under common luck:
// clear at once; a shift of all of system 2 to within 0.05 is not, until a
// difference of 2.5 % is too small to matter.
func TestDecisionByHand(t *testing.T) {
	first := []float64{15.19, 12.13, 17.13, 17.5, 16.88, 11.97, 16.83, 18.44, 14.9, 15.15}
	second := []float64{16.29, 12.58, 19.35, 18.4, 18.38, 12.84, 18, 19.18, 16.03, 16.03}
	for _, test := range []struct {
		shift, matters float64
		decided        bool
	}{{0, .001, true}, {1.1, .01, false}, {1.1, .04, true}} {
		runs := make([]Runs, 2)
		for i := range first {
			add(runs, first[i], second[i]-test.shift)
		}
		v := (&Rule{Metrics: []Metric{boats}, Matters: test.matters, Round: 5}).Judge(runs)
		if v.Decided != test.decided {
			t.Errorf("shift %v, %v matters: %+v", test.shift, test.matters, v)
		}
	}
}

// Looking again and again must not find differences that are not there: over
// many studies of four equal alternatives, each with up to 19 looks, at most
// one in 20 may be called clear.
func TestManyLooksFindNothingThatIsNotThere(t *testing.T) {
	const studies = 400
	rng := rand.New(rand.NewPCG(9, 9))
	rule := &Rule{Metrics: []Metric{boats}, Matters: 1e-9, Round: 5}
	wrong := 0
	for range studies {
		runs := make([]Runs, 3)
		found := false
		for n := 1; n <= 100 && !found; n++ {
			luck := rng.NormFloat64()
			add(runs, 9+luck+.5*rng.NormFloat64(), 9+luck+.5*rng.NormFloat64(), 9+luck+.5*rng.NormFloat64())
			if n >= stats.Few && n%5 == 0 {
				// One difference that looks clear is an error already.
				for _, r := range runs[1:] {
					pair := []Runs{runs[0], r}
					k := rule.look(n)
					d, _ := pair[1].difference(&pair[0], &boats, stats.Bonferroni(1-(1-Confidence)/float64(k*(k+1)), 2))
					found = found || d.Clear
				}
			}
		}
		if found {
			wrong++
		}
	}
	if limit := studies/20 + 2*math.Sqrt(studies*.05*.95); float64(wrong) > limit {
		t.Errorf("%d of %d studies found a difference, at most %.0f may", wrong, studies, limit)
	}
}

// A figure that does not vary is known exactly; one with a mean of zero that
// varies is never known as a share of itself.
func TestPrecisionAtTheEnds(t *testing.T) {
	same, zero := make([]Runs, 1), make([]Runs, 1)
	for i := range 10 {
		add(same, 3)
		add(zero, float64(i%2)-.5)
	}
	rule := &Rule{Metrics: []Metric{boats}, Precision: .01, Round: 5}
	if v := rule.Judge(same); !v.Precise {
		t.Errorf("values that are all the same: %+v", v)
	}
	if v := rule.Judge(zero); v.Precise {
		t.Errorf("a mean of zero: %+v", v)
	}
}
