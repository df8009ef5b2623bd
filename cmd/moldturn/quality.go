package main

import (
	"fmt"
	"io"
	"slices"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/study"
)

// qualityFlags are the flags of moldturn quality beside the common ones.
type qualityFlags struct {
	common
	Intervals turns
	Pair      turns
}

func qualityCommand() *command {
	o := &qualityFlags{common: common{Inputs: inputPaths},
		Intervals: turns{flag: "intervals", least: 2, most: 20, list: []int{3, 5, 7, 10, 15}},
		Pair:      turns{flag: "break-even", least: 2, most: 2}}
	return &command{
		name:     "quality",
		synopsis: "what stripping molds more or less often costs and returns",
		help: `SCENARIO needs a group "money" with prices. Stripping every so many turns is
compared with the scenario's own policy under the same luck: costs of prevention,
appraisal, internal and external failure, a year and a boat; the policy that costs
least and how flat the valley around it is; and the warranty claim from which on
stripping more often pays.
With --out the folder gets quality.html, quality.json, ledger.csv and results.csv.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			f.Var(&o.Intervals, "intervals", "turns between strips to compare (3,5,7,10,15)")
			f.Var(&o.Pair, "break-even", "the two of them whose break-even is worked out (3,10, or the first and the last)")
			o.add(f)
		},
		run: func(c *Context) error { return quality(c, o) },
	}
}

func quality(c *Context, o *qualityFlags) error {
	s, err := loadScenario(c.Args[0], &o.common)
	if err != nil {
		return err
	}
	if err := needsMoney(s); err != nil {
		return err
	}
	often, seldom, err := o.pair()
	if err != nil {
		return err
	}
	every, err := stripPolicies(s, o.Intervals.list)
	if err != nil {
		return err
	}
	v := &view.Quality{Claim: s.Base.Money().Prices.Claim, Chance: s.Base.Money().Prices.ClaimChance}
	if v.Study, err = simulate(c, &o.common, s, fmt.Sprintf("simulating %d strip policies", len(s.Alternatives))); err != nil {
		return err
	}
	v.Often, v.Seldom = slices.Index(every, often), slices.Index(every, seldom)
	runs := runsOf(v.Study)
	v.Full, v.Dated = study.CompareQuality(runs, every, false), study.CompareQuality(runs, every, true)
	if err := saveAs(c, o.Out, []resultFile{
		{"quality.html", func(w io.Writer) error { return reports.QualityHTML(w, v) }},
		{"quality.json", func(w io.Writer) error { return reports.QualityJSON(w, v) }},
		{"ledger.csv", func(w io.Writer) error { return reports.LedgerCSV(w, v.Study) }},
		{"results.csv", func(w io.Writer) error { return reports.CSV(w, v.Study) }},
	}); err != nil {
		return err
	}
	if o.JSON {
		return reports.QualityJSON(c.Stdout, v)
	}
	return reports.QualityText(c.Stdout, v, table.Style{})
}

// stripPolicies makes the alternatives of a scenario the strip policies to
// compare: its own first, unless it is one of them. It gives the turns of each,
// 0 for another policy.
func stripPolicies(s *scenarios.Scenario, intervals []int) (every []int, err error) {
	base := s.Alternatives[0]
	s.Alternatives = nil
	strip := s.Base.Value.At("strip")
	own := 0
	if strip.At("policy").Text() == "every" {
		own = strip.At("every").Count()
	}
	if !slices.Contains(intervals, own) {
		s.Alternatives, every = append(s.Alternatives, base), append(every, own)
	}
	for _, n := range intervals {
		if n == own {
			base.Name = fmt.Sprintf("every %d", n)
			s.Alternatives, every = append(s.Alternatives, base), append(every, n)
			continue
		}
		a, err := changed(s, fmt.Sprintf("every %d", n), "strip.policy=every", fmt.Sprintf("strip.every=%d", n))
		if err != nil {
			return nil, err
		}
		s.Alternatives, every = append(s.Alternatives, a), append(every, n)
	}
	return every, nil
}

// changed is the plant with changes written as on a command line.
func changed(s *scenarios.Scenario, name string, texts ...string) (scenarios.Alternative, error) {
	var changes []scenarios.Change
	for _, text := range texts {
		ch, complaints := scenarios.ParseChange(name, text)
		if len(complaints) > 0 {
			return scenarios.Alternative{}, complaints
		}
		changes = append(changes, ch)
	}
	a, complaints := s.With(name, changes...)
	if len(complaints) > 0 {
		return a, complaints
	}
	return a, nil
}

// pair is the two intervals whose break-even is asked for.
func (o *qualityFlags) pair() (often, seldom int, err error) {
	list := o.Intervals.list
	switch p := o.Pair.list; {
	case len(p) == 2:
		for _, n := range p {
			if !slices.Contains(list, n) {
				return 0, 0, misuse("add it to --intervals", "--break-even: %d is none of the intervals %s", n, joined(list))
			}
		}
		often, seldom = p[0], p[1]
	case slices.Contains(list, 3) && slices.Contains(list, 10):
		often, seldom = 3, 10
	default:
		often, seldom = list[0], list[len(list)-1]
	}
	if often > seldom {
		often, seldom = seldom, often
	}
	return often, seldom, nil
}

// needsMoney is the error for a scenario without prices.
func needsMoney(s *scenarios.Scenario) error {
	if s.Base.Money() != nil {
		return nil
	}
	return failed(`write "money: {}" for the default prices, and give models their margin; "moldturn list inputs" has the rest`,
		"the scenario has no group money, so nothing can be priced")
}

// moneyOf is how the scenario wants amounts and quantities written.
func moneyOf(s *scenarios.Scenario) view.Money {
	return view.Money{Currency: s.Base.Currency(), Units: s.Base.Units()}
}

func runsOf(v *view.Study) []study.Runs {
	runs := make([]study.Runs, len(v.Alternatives))
	for i := range runs {
		runs[i] = v.Alternatives[i].Runs
	}
	return runs
}
