package view

import (
	"math/rand/v2"
	"strings"
	"testing"

	"moldturn/sim/study"
)

// swept makes a sweep over factors in which boats and luster are functions of
// the values, with ten repeats that share almost all luck.
func swept(t *testing.T, form study.Form, boats, luster func(values []float64) float64, over ...string) *Sweep {
	t.Helper()
	var factors []study.Factor
	for _, text := range over {
		f, err := study.ParseFactor(text)
		if err != nil {
			t.Fatal(err)
		}
		factors = append(factors, f)
	}
	make := study.NewGrid
	if form == study.Each {
		make = study.NewEach
	}
	d, err := make(factors)
	if err != nil {
		t.Fatal(err)
	}
	s := &Sweep{Scenario: "Test", Replications: 10, Years: 2, Warm: 1, Design: d}
	for _, name := range []string{"boats_per_week", "luster_p10"} {
		s.Of = append(s.Of, *metric(name))
	}
	rng := rand.New(rand.NewPCG(1, 1))
	shared := [2][10]float64{}
	for k := range shared {
		for r := range shared[k] {
			shared[k][r] = rng.NormFloat64() / 10
		}
	}
	at := func(name string, values []float64) study.Figures {
		f := study.Figures{Name: name, Values: map[string]study.Values{}}
		for r := range 10 {
			f.Values["boats_per_week"] = append(f.Values["boats_per_week"], boats(values)+shared[0][r]+1e-4*float64(r%3)*values[0])
			f.Values["luster_p10"] = append(f.Values["luster_p10"], luster(values)+shared[1][r]+1e-4*float64(r%3)*values[0])
		}
		return f
	}
	s.Base = at("today", []float64{2, 2, 2})
	for i := range d.Points {
		values := []float64{2, 2, 2}
		for k := range factors {
			if v, ok := d.Number(i, k); ok {
				values[k] = v
			}
		}
		s.Points = append(s.Points, at(d.Name(i), values))
	}
	return s
}

func flat([]float64) float64 { return 97 }

func hill(v []float64) float64 { return 9 - (v[0]-4)*(v[0]-4)/10 }

func TestSweepInWords(t *testing.T) {
	ridge := func(v []float64) float64 { return 9 - (v[0]-v[1])*(v[0]-v[1])/10 }
	for _, test := range []struct {
		sweep *Sweep
		want  []string
	}{
		{swept(t, study.Grid, hill, flat, "a=1..8"), []string{"Boats per week: a peak at a 4 (9.", "worst at a 8 (7.", "The knee is at a 5 (",
			"of 8 different settings", "which is a 2", "20 years simulated for each of 9 settings"}},
		{swept(t, study.Grid, ridge, flat, "a=1..5", "b=2..4"), []string{"A ridge runs along b: the best a lies inside its range throughout, 2 at 2, 3 at 3, 4 at 4."}},
		{swept(t, study.Grid, hill, flat, "a=1..8", "b=1..3"), []string{"whatever b is, the best a is 4", "b makes no difference at all"}},
		{swept(t, study.Each, func(v []float64) float64 { return v[0] + v[1]/4 }, flat, "a=1..3", "b=1..9"),
			[]string{"Boats per week: a moves it most, by +2.", "from 1 to 3."}},
	} {
		text := strings.Join(test.sweep.Findings(), "\n")
		if f, ok := test.sweep.Frontier(); ok {
			text += f.Finding()
		}
		for _, want := range test.want {
			if !strings.Contains(strings.ReplaceAll(text, nb, " "), want) {
				t.Errorf("%q is not in:\n%s", want, text)
			}
		}
		p, err := test.sweep.Page()
		if err != nil {
			t.Fatal(err)
		}
		if err := p.Check(); err != nil {
			t.Error(err)
		}
		if err := test.sweep.Screen().Check(); err != nil {
			t.Error(err)
		}
	}
}

// Where nothing differs nothing is called best.
func TestSweepWithoutADifference(t *testing.T) {
	s := swept(t, study.Grid, func([]float64) float64 { return 9 }, flat, "a=1..4")
	rng := rand.New(rand.NewPCG(2, 2))
	for i := range s.Points {
		for r := range s.Points[i].Values["boats_per_week"] {
			s.Points[i].Values["boats_per_week"][r] += rng.NormFloat64()
		}
	}
	if text := s.Headline(); text != "Boats per week: no clear difference between any two of the 4 settings." {
		t.Error(text)
	}
}

func TestStoppedInWords(t *testing.T) {
	boats := *metric("boats_per_week")
	rule := study.Rule{Metrics: []study.Metric{boats}, Precision: .02, Matters: .01}
	for _, test := range []struct {
		verdict study.Verdict
		want    string
	}{
		{study.Verdict{Replications: 10, Precise: true, Worst: []study.Precision{{Metric: "boats_per_week", Share: .0123}}},
			"Enough after 10 repeats: boats per week known to ± 1.2 % of itself or better, wanted ± 2 %."},
		{study.Verdict{Replications: 15, Decided: true, Worst: []study.Precision{{Metric: "boats_per_week", Share: .03}}},
			"Enough after 15 repeats: every difference from the base in boats per week is clear or surely smaller than 1 % of the base's figure."},
		{study.Verdict{Replications: 10, Spent: true, Worst: []study.Precision{{Metric: "boats_per_week", Share: .03, Open: 1}}},
			"The budget of 20 years of each alternative ended the runs after 10 repeats; boats per week known to ± 3 % of itself or better, wanted ± 2 %; 1 difference in boats per week is neither clear nor surely smaller than 1 % of the base's figure."},
	} {
		s := &Study{Replications: test.verdict.Replications, Years: 2, Enough: &Enough{rule, test.verdict}}
		if got := s.Stopped(); got != test.want {
			t.Errorf("%s\nwant\n%s", got, test.want)
		}
	}
}

// The next limit is that of the best setting where one is clearly best, else that
// of the base; figures that were kept without it say nothing.
func TestSweepNamesTheNextLimit(t *testing.T) {
	s := swept(t, study.Grid, func(v []float64) float64 { return 9 - (v[0]-3)*(v[0]-3) }, func([]float64) float64 { return 97 }, "strip.every=1..5")
	if strings.Contains(s.Headline(), "limit") {
		t.Errorf("a limit from nowhere: %s", s.Headline())
	}
	s.Pools = []string{"gel", "finish", "booth"}
	s.Base.Values["first_limit"] = study.Values{0}
	for i := range s.Points {
		s.Points[i].Values["first_limit"] = study.Values{float64(i - 1), float64(i - 1)}
	}
	if got := s.Headline(); !strings.HasSuffix(got, "Next limit at strip.every 3: finish.") {
		t.Error(got)
	}
	s.Points[2].Values["first_limit"] = study.Values{-1}
	if got := s.Headline(); !strings.HasSuffix(got, "Next limit at strip.every 3: the molds.") {
		t.Error(got)
	}
	flat := swept(t, study.Grid, func([]float64) float64 { return 9 }, func([]float64) float64 { return 97 }, "strip.every=1..5")
	flat.Pools, flat.Base.Values["first_limit"] = s.Pools, study.Values{0}
	if got := flat.Headline(); !strings.HasSuffix(got, "Next limit at today: gel.") {
		t.Error(got)
	}
}
