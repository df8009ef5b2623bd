package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/param/guess"
	"moldturn/sim/study"
)

// bestFlags are the flags of best beside the common ones.
type bestFlags struct {
	common
	by      string
	matters float64
	chance  float64
	over    []string
	keep    int
	budget  int
}

func (o *bestFlags) add(f *pflag.FlagSet) {
	o.common.add(f)
	f.StringVar(&o.by, "by", "boats_per_week", "the figure to choose by; \"moldturn list metrics\" has them")
	f.Float64Var(&o.matters, "matters", 0, "the lead that matters, in the figure's unit; by default 0.1 point of luster, 1 point of a percentage, 1 % of other figures")
	f.Float64Var(&o.chance, "chance", 0.95, "chance of choosing the best when it leads by that much")
	f.StringArrayVar(&o.over, "over", nil, "choose among all values of an input instead of the alternatives, \"strip.every=1..15\"; may be given again")
	f.IntVar(&o.keep, "keep", 8, "with more alternatives than this, keep so many after a first look")
	f.IntVar(&o.budget, "budget", 200, "runs of one alternative at most")
}

func bestCommand() *command {
	o := &bestFlags{common: common{Inputs: inputPaths}}
	return &command{
		name:     "best",
		synopsis: "the best of several ways to run a plant, and how sure that is",
		help: `Runs the alternatives of the scenario, or all values of the inputs named with
--over, under the same luck, and drops each as soon as it is clear that it is not
the best. What is left is the best with the chance asked for, as long as it leads
the others by what matters (procedure of Kim and Nelson; "moldturn explain
selection"). Of more than --keep, a first look keeps the most promising.`,
		args:  scenarioArg(),
		flags: o.add,
		run:   func(c *Context) error { return best(c, o) },
	}
}

// complaints of the flags of best, all at once.
func (o *bestFlags) check() (*study.Metric, error) {
	var faults []string
	m, ok := study.MetricNamed(o.by)
	switch {
	case !ok:
		line := fmt.Sprintf("--by: unknown figure %q, allowed: names that \"moldturn list metrics\" shows", o.by)
		if near := guess.Near(o.by, figureNames()); near != "" {
			line += fmt.Sprintf("; did you mean %q?", near)
		}
		faults = append(faults, line)
	case m.Better == 0:
		faults = append(faults, fmt.Sprintf("--by: of %q neither more nor less is better", o.by))
	}
	if !(o.chance >= 0.5 && o.chance <= 0.999) {
		faults = append(faults, fmt.Sprintf("--chance: %v is not 0.5 to 0.999", o.chance))
	}
	if !(o.matters >= 0) {
		faults = append(faults, fmt.Sprintf("--matters: %v is below 0", o.matters))
	}
	if o.keep < 2 {
		faults = append(faults, fmt.Sprintf("--keep: %d is below 2", o.keep))
	}
	if o.Replications.Given {
		faults = append(faults, "--replications does not go with best: it runs each way as often as the choice needs; --budget limits that")
	}
	if o.budget < bestFirst {
		faults = append(faults, fmt.Sprintf("--budget: %d is below %d", o.budget, bestFirst))
	}
	if len(faults) > 0 {
		return nil, misuse("\"moldturn list metrics\" has the figures", "%s", strings.Join(faults, "\n"))
	}
	return &m, nil
}

// How many runs every alternative gets before any is dropped, and how many are
// added at a time.
const (
	bestFirst = 10
	bestRound = 5
	bestLook  = 4
)

func best(c *Context, o *bestFlags) error {
	m, err := o.check()
	if err != nil {
		return err
	}
	if err := mayWrite(o.Out); err != nil {
		return err
	}
	s, err := loadScenario(c.Args[0], &o.common)
	if err != nil {
		return err
	}
	if err := overGrid(s, o.over); err != nil {
		return err
	}
	if len(s.Alternatives) < 2 {
		return failed("list alternatives in the scenario, or name an input with --over", "%s: there is nothing to choose among", c.Args[0])
	}
	b := &chooser{c: c, o: o, s: s, m: m, all: s.Study()}
	for i := range b.all {
		if b.all[i].Capacity != nil && m.Name != "on_time_share" {
			b.all[i].Dated = nil
		}
	}
	told := newProgress(c, fmt.Sprintf("choosing among %d ways to run the plant", len(b.all)), o.Quiet)
	b.told = told
	v, err := b.choose()
	told.Close()
	if err != nil {
		return err
	}
	return tell(c, &o.common, "best", v, bestText)
}

func bestText(w io.Writer, v *view.Best) error {
	if _, err := fmt.Fprint(w, table.Wrap(v.Headline(), table.Style{}), "\n"); err != nil {
		return err
	}
	if err := table.Write(w, v.Table(), table.Style{}); err != nil {
		return err
	}
	_, err := fmt.Fprintf(w, "\n%s", table.Wrap(v.Cost(), table.Style{}))
	return err
}

// overGrid puts every value of the inputs named with every other in place of
// the scenario's alternatives.
func overGrid(s *scenarios.Scenario, over []string) error {
	if len(over) == 0 {
		return nil
	}
	var factors []study.Factor
	for _, text := range over {
		f, err := study.ParseFactor(text)
		if err != nil {
			return misuse("write an input and its values: --over strip.every=1..15", "--over %s: %v", text, err)
		}
		factors = append(factors, f)
	}
	d, err := study.NewGrid(factors)
	if err != nil {
		return misuse("", "--over: %v", err)
	}
	s.Alternatives = nil
	for i := range d.Points {
		var changes []scenarios.Change
		for k, f := range factors {
			ch, complaints := s.Changes("--over", f.Path+"="+d.Points[i].Values[k])
			if len(complaints) > 0 {
				return complaints
			}
			changes = append(changes, ch...)
		}
		a, complaints := s.With(d.Name(i), changes...)
		if len(complaints) > 0 {
			return complaints
		}
		s.Alternatives = append(s.Alternatives, a)
	}
	return nil
}

// chooser runs what Select and Shortlist ask for.
type chooser struct {
	c    *Context
	o    *bestFlags
	s    *scenarios.Scenario
	m    *study.Metric
	all  []study.Alternative
	told *progress
	runs int
	xs   [][]float64 // figures so far, by alternative
}

func (b *chooser) choose() (*view.Best, error) {
	b.xs = make([][]float64, len(b.all))
	v := &view.Best{Metric: b.m.Name, Label: b.m.Label, Unit: b.m.Unit, Chance: b.o.chance}
	among := make([]int, len(b.all))
	for i := range among {
		among[i] = i
		v.Names = append(v.Names, b.s.Alternatives[i].Name)
	}
	v.Used = make([]int, len(b.all))
	if len(b.all) > b.o.keep {
		kept, used, err := study.Shortlist(len(b.all), b.o.keep, bestLook, bestLook, 2*bestLook*len(b.all), b.draws(among, 1_000_000))
		if err != nil {
			return nil, err
		}
		among = kept
		for i, n := range used {
			v.Used[i] += n
		}
		v.Kept = len(kept)
		b.xs = make([][]float64, len(b.all)) // the choice is made on fresh luck
	}
	v.Matters = b.o.matters
	switch {
	case v.Matters > 0:
	case b.m.Unit == "points":
		v.Matters = 0.1
	case b.m.Share:
		v.Matters = 0.01
	default:
		first, err := b.draws(among, 0)([]int{0}, 0, 1)
		if err != nil {
			return nil, err
		}
		b.xs = make([][]float64, len(b.all))
		v.Matters = max(0.01*abs(first[0][0]), 1e-6)
	}
	picked, err := study.Select(len(among), study.Pick{Chance: b.o.chance, Matters: v.Matters, First: bestFirst, Round: bestRound, Budget: b.o.budget}, b.draws(among, 0))
	if err != nil {
		return nil, err
	}
	for i, a := range among {
		v.Used[a] += picked.Used[i]
	}
	v.Best, v.Decided = among[picked.Best], picked.Decided
	all := study.Picked{Used: v.Used}
	v.Saved = all.Saved()
	for _, i := range picked.Left {
		v.Left = append(v.Left, among[i])
	}
	for _, d := range picked.Drops {
		v.Drops = append(v.Drops, view.BestDrop{Alternative: among[d.Alternative], By: among[d.By], After: d.After, Behind: d.Behind})
	}
	v.Means = make([]float64, len(b.all))
	for i, x := range b.xs {
		for _, y := range x {
			v.Means[i] += y / float64(len(x))
		}
		if b.m.Better < 0 {
			v.Means[i] = -v.Means[i]
		}
	}
	v.Years = b.s.Base.Years
	return v, nil
}

func abs(x float64) float64 {
	if x < 0 {
		return -x
	}
	return x
}

// draws runs alternatives, named by their place in among, in replications from
// offset on.
func (b *chooser) draws(among []int, offset int) study.Draws {
	return func(which []int, first, n int) ([][]float64, error) {
		setup := &study.Setup{First: offset + first, Replications: n, Seed: b.o.Seed.Or(uint64(b.s.Base.Value.At("run.seed").Count())), Workers: b.o.workers()}
		for _, i := range which {
			setup.Alternatives = append(setup.Alternatives, b.all[among[i]])
		}
		b.runs += len(which) * n
		b.told.Update(b.runs, max(len(b.all)*bestFirst*2, b.runs))
		runs, err := study.Compare(b.c.Ctx, setup)
		if err != nil {
			return nil, err
		}
		out := make([][]float64, len(which))
		for k := range runs {
			xs, _ := runs[k].Values(b.m)
			if len(xs) != n {
				return nil, failed("", "%s: some runs have no %q", runs[k].Name, b.m.Label)
			}
			for _, x := range xs {
				b.xs[among[which[k]]] = append(b.xs[among[which[k]]], x*float64(b.m.Better))
			}
			out[k] = b.xs[among[which[k]]][len(b.xs[among[which[k]]])-n:]
		}
		return out, nil
	}
}
