package main

import (
	"fmt"
	"io"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/money"
	"moldturn/sim/param/guess"
	"moldturn/sim/study"
)

func investCommand() *command {
	o := &common{Inputs: inputPaths}
	var alternative string
	return &command{
		name:     "invest",
		synopsis: "whether buying something pays: a third mold set, a booth, a crew",
		help: `SCENARIO needs a group "money" with prices and margins, and an alternative that
is what the plant would be with the purchase. Its price, lead time, years of use
and worth at the end stand under "investments" by the name of the alternative;
without a price, molds that the alternative has more are priced as such. The plant
with and without it meets the same luck. Shown are net present value, payback,
equivalent annual cost, rate of return, the demand and the margin from which on
it pays, and what limits the plant when it brings nothing.
With --out the folder gets invest.html, invest.json, ledger.csv and results.csv.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			f.StringVar(&alternative, "alternative", "", "the alternative with the purchase; needed when the scenario has several")
			o.add(f)
		},
		run: func(c *Context) error { return invest(c, o, alternative) },
	}
}

func invest(c *Context, o *common, name string) error {
	s, err := loadScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	if err := needsMoney(s); err != nil {
		return err
	}
	a, err := alternativeNamed(s, name)
	if err != nil {
		return err
	}
	for _, m := range s.Base.Money().Plant.Models {
		if !m.Known {
			return failed(fmt.Sprintf("write models.%q.margin: $9k, say", m.Name), "the margin of %q is not known, so no gain can be worked out", m.Name)
		}
	}
	s.Alternatives = []scenarios.Alternative{s.Alternatives[0], a}
	v := &view.Invest{}
	v.Investment, v.Bought = investmentOf(s, a)
	if v.Study, err = simulate(c, o, s, "simulating the plant without and with “"+a.Name+"”"); err != nil {
		return err
	}
	runs := runsOf(v.Study)
	v.Full, _ = study.InvestIn(&v.Investment, &runs[0], &runs[1], false)
	v.Dated, _ = study.InvestIn(&v.Investment, &runs[0], &runs[1], true)
	if err := saveAs(c, o.Out, []resultFile{
		{"invest.html", func(w io.Writer) error { return reports.InvestHTML(w, v) }},
		{"invest.json", func(w io.Writer) error { return reports.InvestJSON(w, v) }},
		{"ledger.csv", func(w io.Writer) error { return reports.LedgerCSV(w, v.Study) }},
		{"results.csv", func(w io.Writer) error { return reports.CSV(w, v.Study) }},
	}); err != nil {
		return err
	}
	if o.JSON {
		return reports.InvestJSON(c.Stdout, v)
	}
	return reports.InvestText(c.Stdout, v, table.Style{})
}

// alternativeNamed finds an alternative of the scenario; without a name, the
// only one.
func alternativeNamed(s *scenarios.Scenario, name string) (scenarios.Alternative, error) {
	var names []string
	for _, a := range s.Alternatives[1:] {
		names = append(names, a.Name)
		if a.Name == name || name == "" && len(s.Alternatives) == 2 {
			return a, nil
		}
	}
	hint := ""
	if near := guess.Near(name, names); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	switch {
	case len(names) == 0:
		return scenarios.Alternative{}, failed(`write one under "alternatives"`, "the scenario has no alternative to invest in")
	case name == "":
		return scenarios.Alternative{}, misuse("", "--alternative: which one?\n  allowed: %s", nameList(names))
	}
	return scenarios.Alternative{}, misuse(hint, "--alternative: found %q\n  allowed: %s", name, nameList(names))
}

// investmentOf is what the scenario says about buying an alternative, and what
// the purchase is.
func investmentOf(s *scenarios.Scenario, a scenarios.Alternative) (money.Investment, string) {
	const weeksAYear = 365.25 / 7
	out := money.Investment{Lead: 6 / weeksAYear, Life: 5, Rate: s.Base.Value.At("money.discount").Share()}
	if v, ok := s.Base.Value.At("investments").Item(a.Name); ok {
		out = money.Investment{Purchase: v.At("purchase").Dollars(), Lead: v.At("lead").Hours() / 168 / weeksAYear, Life: v.At("life").Count(),
			Residual: v.At("residual").Dollars(), Rate: out.Rate}
	}
	if out.Purchase > 0 {
		return out, "as given"
	}
	price, n := moldsBought(s.Base, a.Plant)
	if n == 0 {
		return out, "nothing"
	}
	out.Purchase = price
	return out, fmt.Sprintf("%d molds", n)
}

// moldsBought is the price and the number of the molds that b has more than a,
// by part type.
func moldsBought(a, b *scenarios.Plant) (price float64, n int) {
	count := make([]int, len(a.Plan().Parts))
	for _, m := range a.Plan().Molds {
		count[m.Part]--
	}
	for _, m := range b.Plan().Molds {
		if int(m.Part) < len(count) {
			count[m.Part]++
		}
	}
	setup := b.Money()
	for part, more := range count {
		if more > 0 && setup != nil {
			price += float64(more) * setup.Plant.Parts[part].MoldPrice
			n += more
		}
	}
	return price, n
}
