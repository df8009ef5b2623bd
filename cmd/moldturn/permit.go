package main

import (
	"fmt"
	"sync/atomic"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim"
	"moldturn/sim/param/guess"
	"moldturn/sim/permit"
	"moldturn/sim/study"
)

func permitCommand() *command {
	o := &common{Inputs: inputPaths}
	which := ""
	return &command{
		name:     "permit",
		synopsis: "estimate material and emissions by month against the air permit",
		help: `Counts what the simulated plant sprays and lays up, and looks back over twelve
months at every month's end: averaging and contents of 40 CFR 63 Subpart VVVV,
tons of HAP by emission factors against permit.cap, boats left under it, and which
change gives most room. Materials with their contents and last year's use are
inputs: moldturn list inputs, those that begin with permit.
A planning estimate: compliance is shown by the plant's own records and its permit,
judged by licensed people.
With --out the folder gets permit.csv, permit.json and permit.html.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f)
			addAlternative(f, &which)
		},
		run: func(c *Context) error { return runPermit(c, o, which) },
	}
}

// addAlternative is the flag that picks one way to run the plant.
func addAlternative(f *pflag.FlagSet, to *string) {
	f.StringVar(to, "alternative", "", "show this alternative of the scenario instead of its base")
}

func runPermit(c *Context, o *common, which string) error {
	s, err := loadWith(c.Args[0], o, scenarios.PermitDefaults)
	if err != nil {
		return err
	}
	a, err := pickAlternative(s, which)
	if err != nil {
		return err
	}
	p, err := permitOf(c, o, s, a, "simulating the plant for its permit")
	if err != nil {
		return err
	}
	if err := savePermit(c, o.Out, p); err != nil {
		return err
	}
	if o.JSON {
		return reports.PermitJSON(c.Stdout, p)
	}
	return reports.PermitText(c.Stdout, p, table.Style{})
}

// loadWith loads a scenario; groups of inputs that it does not have take their
// defaults.
func loadWith(name string, o *common, defaults ...func() (scenarios.Change, scenarios.Complaints)) (*scenarios.Scenario, error) {
	shown, data, file, err := readScenario(name)
	if err != nil {
		return nil, err
	}
	opt := scenarios.Options{Years: o.Years.Or(-1), Files: file}
	var complaints scenarios.Complaints
	for _, group := range defaults {
		change, faults := group()
		complaints = append(complaints, faults...)
		if !scenarios.Names(shown, data, change.Path) {
			opt.Sets = append(opt.Sets, change)
		}
	}
	for _, set := range o.Settings {
		change, faults := scenarios.ParseChange("--set", set.Path+"="+set.Value)
		complaints = append(complaints, faults...)
		opt.Sets = append(opt.Sets, change)
	}
	if len(complaints) > 0 {
		return nil, complaints
	}
	s, complaints := scenarios.Load(shown, data, opt)
	if len(complaints) > 0 {
		return nil, complaints
	}
	return s, nil
}

// pickAlternative finds an alternative by name; the base for no name.
func pickAlternative(s *scenarios.Scenario, name string) (*scenarios.Alternative, error) {
	if name == "" {
		return &s.Alternatives[0], nil
	}
	var names []string
	for i := range s.Alternatives {
		if s.Alternatives[i].Name == name {
			return &s.Alternatives[i], nil
		}
		names = append(names, s.Alternatives[i].Name)
	}
	hint := ""
	if near := guess.Near(name, names); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return nil, failed(hint, "there is no alternative %q\n  allowed: %s", name, nameList(names))
}

// permitOf simulates one alternative and makes its ledgers; what says in words
// what for.
func permitOf(c *Context, o *common, s *scenarios.Scenario, a *scenarios.Alternative, what string) (*view.Permit, error) {
	one := *s
	one.Alternatives = []scenarios.Alternative{*a}
	run := s.Base.Value.At("run")
	setup := &study.Setup{Alternatives: one.Study(), Replications: o.Replications.Or(run.At("replications").Count()),
		Seed: o.Seed.Or(uint64(run.At("seed").Count())), Workers: o.workers()}
	told := newProgress(c, what, o.Quiet)
	defer told.Close()
	var done atomic.Int64
	setup.Done = func(n int) { told.Update(int(done.Add(int64(n))), setup.Total()) }
	p := &view.Permit{Study: studyOf(&one, setup, []study.Runs{{Name: a.Name, Changes: a.Changes}}), Orders: a.Plant.Dated != nil, Units: s.Base.Units()}
	if a.Plant.Capacity != nil {
		full, err := countPermit(c, setup, a, a.Plant.Capacity)
		if err != nil {
			return nil, err
		}
		p.Full, p.Ledger = full, full
	}
	if a.Plant.Dated != nil {
		dated, err := countPermit(c, setup, a, a.Plant.Dated)
		if err != nil {
			return nil, err
		}
		p.Ledger = dated
	}
	return p, nil
}

func countPermit(c *Context, setup *study.Setup, a *scenarios.Alternative, plan *sim.Plan) (*study.Permits, error) {
	ledger := a.Plant.Permit()
	books, err := study.Watch(c.Ctx, setup, &setup.Alternatives[0], plan, func() *permit.Book { return permit.NewBook(&ledger.Plant) })
	if err != nil {
		return nil, err
	}
	counts := make([]*permit.Counts, len(books))
	for i, b := range books {
		counts[i] = b.Counts()
	}
	return study.NewPermits(ledger, counts), nil
}

// savePermit writes the ledger into a folder; nothing without one.
func savePermit(c *Context, folder string, p *view.Permit) error {
	return saveAs(c, folder, []resultFile{
		resultOf("permit.csv", p, reports.PermitCSV),
		resultOf("permit.json", p, reports.PermitJSON),
		resultOf("permit.html", p, reports.PermitHTML),
	})
}
