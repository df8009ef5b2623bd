package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/scenarios"
	"moldturn/sim"
	"moldturn/sim/clock"
	"moldturn/sim/param/guess"
	"moldturn/sim/study"
)

// whyFlags say whose life to tell.
type whyFlags struct {
	common
	order       option[int]
	mold        string
	replication option[int]
	from, weeks option[int]
	waiting     bool
	alternative string
}

func (o *whyFlags) add(f *pflag.FlagSet) {
	f.Var(&whole[int]{flag: "order", to: &o.order, low: 1, high: 1_000_000}, "order", "tell the life of this order, numbered from 1 as they come")
	f.StringVar(&o.mold, "mold", "", "tell the life of this mold: its name, or its number from 1")
	f.Var(&whole[int]{flag: "replication", to: &o.replication, low: 1, high: mostReplications}, "replication", "in this replication, the first by default")
	f.Var(&whole[int]{flag: "week", to: &o.from, low: 1, high: 53 * mostYears}, "week", "with --mold: from this week of the run, after the warm-up by default")
	f.Var(&whole[int]{flag: "weeks", to: &o.weeks, low: 1, high: 53}, "weeks", "with --mold: so many weeks, one by default")
	f.BoolVar(&o.waiting, "always-waiting", false, "with orders always waiting, though the scenario has orders with dates")
	addAlternative(f, &o.alternative)
	f.Var(&whole[int]{flag: "years", to: &o.Years, low: 1, high: mostYears}, "years", "simulate N years")
	f.Var(&whole[uint64]{flag: "seed", to: &o.Seed, low: 0, high: mostSeed}, "seed", "draw all luck from this number")
	f.Var(&settings{flag: "set", to: &o.Settings, paths: o.Inputs}, "set", "change one input for this run; may be given again")
	f.BoolVarP(&o.Quiet, "quiet", "q", false, "changes nothing: there is no progress to show")
	f.BoolVar(&o.JSON, "json", false, "print the result as JSON, lengths of time in milliseconds")
}

func whyCommand() *command {
	o := &whyFlags{common: common{Inputs: inputPaths}}
	return &command{
		name:     "why",
		synopsis: "tell the life of one order or mold: every step and wait, and why",
		help: `Runs one replication again and follows one order from its start to its shipping,
or one mold for some weeks. Every wait has its reason, and the orders and molds that
had the people, the place or the molds it waited for. Work and reasons add up to the
lead time, along each part of the boat, or to the weeks. With orders that have
dates the lead time begins when the order comes, otherwise with its first part.`,
		args:  scenarioArg(),
		flags: o.add,
		run:   func(c *Context) error { return why(c, o) },
	}
}

func why(c *Context, o *whyFlags) error {
	switch {
	case o.order.Given == (o.mold != ""):
		return misuse(`"moldturn list models SCENARIO" shows what is built`, "why needs one of --order N and --mold NAME")
	case o.mold == "" && (o.from.Given || o.weeks.Given):
		return misuse("", "--week and --weeks go with --mold; an order is followed from start to end")
	}
	s, err := loadScenario(c.Args[0], &o.common)
	if err != nil {
		return err
	}
	a, err := pickAlternative(s, o.alternative)
	if err != nil {
		return err
	}
	plan := a.Plant.Dated
	if plan == nil || o.waiting {
		plan = a.Plant.Capacity
	}
	if plan == nil {
		return failed("", "--always-waiting: the scenario has only orders with dates")
	}
	one := *s
	one.Alternatives = []scenarios.Alternative{*a}
	alternative := &one.Study()[0]
	run := reports.LifeRun{Scenario: s.Base.Value.At("name").Text(), Alternative: a.Name, Waiting: plan.Demand.Full,
		Seed: o.Seed.Or(uint64(s.Base.Value.At("run.seed").Count())), Replication: o.replication.Or(1)}
	story, err := o.story(alternative, plan, a.Plant, run)
	if err != nil {
		return err
	}
	if o.JSON {
		return reports.LifeJSON(c.Stdout, story, run)
	}
	return reports.LifeText(c.Stdout, story, table.Style{})
}

// story runs the plant and keeps the life asked for.
func (o *whyFlags) story(a *study.Alternative, plan *sim.Plan, plant *scenarios.Plant, run reports.LifeRun) (*study.Story, error) {
	if o.order.Given {
		s, err := study.OrderStory(a, plan, run.Seed, run.Replication-1, int32(o.order.Value-1))
		var none *study.NoSuchOrder
		if errors.As(err, &none) {
			return nil, failed("", "--order: found %d, allowed: 1 to %d, the orders of this run", o.order.Value, none.Orders)
		}
		return s, err
	}
	m, err := moldNamed(plan, o.mold)
	if err != nil {
		return nil, err
	}
	from := plant.Frame.From
	if o.from.Given {
		from = clock.Time(o.from.Value-1) * clock.Week
	}
	if last := int((plan.Length - 1) / clock.Week); from >= plan.Length {
		return nil, failed("", "--week: found %d, allowed: 1 to %d, the weeks of this run", o.from.Value, last+1)
	}
	return study.MoldStory(a, plan, run.Seed, run.Replication-1, m, from, min(from+clock.Time(o.weeks.Or(1))*clock.Week, plan.Length))
}

// moldNamed finds a mold by its name, or by its number from 1.
func moldNamed(p *sim.Plan, name string) (int32, error) {
	if n, err := strconv.Atoi(name); err == nil {
		if n < 1 || n > len(p.Molds) {
			return 0, failed("", "--mold: found %d, allowed: 1 to %d", n, len(p.Molds))
		}
		return int32(n - 1), nil
	}
	var names []string
	for i := range p.Molds {
		if strings.EqualFold(p.Molds[i].Name, name) {
			return int32(i), nil
		}
		names = append(names, p.Molds[i].Name)
	}
	hint := ""
	if near := guess.Near(name, names); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return 0, failed(hint, "--mold: there is no mold %q\n  allowed: %s, or 1 to %d", name, strings.Join(names, ", "), len(names))
}
