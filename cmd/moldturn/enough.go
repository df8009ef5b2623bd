package main

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"strconv"
	"strings"
	"sync/atomic"

	"github.com/spf13/pflag"

	"moldturn/reports/view"
	"moldturn/sim/study"
)

// enoughFlags say when a comparison has run enough.
type enoughFlags struct {
	precision option[float64]
	matters   option[float64]
	of        []study.Metric
	budget    option[int]
	add       bool
}

// roundSize is how many replications are added between two looks.
const roundSize = 5

// defaultBudget is how many years of each alternative are simulated at most
// when the program decides how many are enough.
const defaultBudget = 200

func (e *enoughFlags) flags(f *pflag.FlagSet) {
	f.Var(&percents{flag: "precision", to: &e.precision}, "precision", "repeat until every figure of --of is known to this share of itself, as 2%")
	f.Var(&percents{flag: "matters", to: &e.matters}, "matters", "repeat until every difference in --of is clear, or surely smaller than this share of the base")
	f.Var(&figures{to: &e.of}, "of", "figures that --precision and --matters look at")
	f.Var(&whole[int]{flag: "budget", to: &e.budget, low: 1, high: mostReplications}, "budget",
		fmt.Sprintf("counted years to simulate of each alternative at most, %d by default", defaultBudget))
	f.BoolVar(&e.add, "add", false, "take what the folder of --out already holds and simulate only what is missing")
}

// asked tells whether the program is to decide how much is enough.
func (e *enoughFlags) asked() bool { return e.precision.Given || e.matters.Given || e.budget.Given }

// judge reports flags that contradict each other.
func (e *enoughFlags) judge(o *common) error {
	switch {
	case e.asked() && o.Replications.Given:
		return misuse("--budget limits the years, and so the replications", "--replications does not go with --precision, --matters and --budget")
	case len(e.of) > 0 && !e.precision.Given && !e.matters.Given:
		return misuse("", "--of goes with --precision or --matters")
	case e.add && o.Out == "":
		return misuse("", "--add needs --out")
	}
	return nil
}

// rule is what the flags ask for, with replications for a budget in years.
func (e *enoughFlags) rule(o *common, op *opened) *study.Rule {
	if !e.asked() {
		n := op.replications(o)
		return &study.Rule{Round: n, Budget: n}
	}
	r := &study.Rule{Metrics: e.of, Precision: e.precision.Or(0), Matters: e.matters.Or(0), Round: roundSize}
	if len(r.Metrics) == 0 {
		r.Metrics = defaultOf()
	}
	r.Budget = max(1, e.budget.Or(defaultBudget)/max(1, op.Base.Years))
	return r
}

// simulateEnough runs the alternatives of a scenario until the rule of the flags
// is met. book is the file that keeps the outcomes.
func simulateEnough(c *Context, o *common, e *enoughFlags, op *opened, what string) (v *view.Study, book []resultFile, err error) {
	if err := mayWrite(o.Out); err != nil {
		return nil, nil, err
	}
	rule := e.rule(o, op)
	head := op.head("compare", op.seed(o), 0)
	have, err := e.had(c, o, op, &head)
	if err != nil {
		return nil, nil, err
	}
	setup := &study.Setup{Alternatives: op.Study(), Seed: op.seed(o), Workers: o.workers()}
	each := *setup
	each.Replications = 1
	told := newProgress(c, what, o.Quiet)
	var done atomic.Int64
	if len(have) > 0 {
		done.Add(int64(len(have[0].Outcomes) * each.Total()))
	}
	setup.Done = func(n int) { told.Update(int(done.Add(int64(n))), rule.Budget*each.Total()) }
	runs, verdict, err := study.Rounds(c.Ctx, setup, rule, have)
	told.Close()
	if err != nil {
		return nil, nil, err
	}
	head.Replications, setup.Replications = verdict.Replications, verdict.Replications
	if e.asked() {
		head.Enough = &study.Enough{Precision: rule.Precision, Matters: rule.Matters, Budget: rule.Budget * op.Base.Years}
		for _, m := range rule.Metrics {
			head.Of = append(head.Of, m.Name)
		}
	}
	curve, err := holdCurve(c, o, op)
	if err != nil {
		return nil, nil, err
	}
	v = studyOf(op.Scenario, setup, runs)
	v.Holds = curve
	withPermit(c, o, op.Scenario, v)
	tellAir(v, op.Scenario)
	if e.asked() {
		v.Enough = &view.Enough{Rule: *rule, Verdict: verdict}
	}
	return v, []resultFile{keptComparison(op, head, runs, curve)}, nil
}

// had is the runs that the folder holds, if they were asked for.
func (e *enoughFlags) had(c *Context, o *common, op *opened, head *study.Head) ([]study.Runs, error) {
	if !e.add {
		return nil, nil
	}
	path := filepath.Join(o.Out, resultNames[1])
	book, _, err := readBook(path)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil
	}
	if err != nil {
		return nil, err
	}
	if err := same(path, "without --add all is simulated anew", &book.Head, head); err != nil {
		return nil, err
	}
	runs, err := comparedRuns(book, op)
	if err != nil {
		return nil, failed("without --add all is simulated anew", "%s: %v", path, err)
	}
	if !o.Quiet {
		fmt.Fprintf(c.Stderr, "%d replications are in %s already\n", len(runs[0].Outcomes), path)
	}
	return runs, nil
}

// ruleOf is the rule that a file of results was made with; nil without one.
func ruleOf(h *study.Head, runs []study.Runs) *view.Enough {
	if h.Enough == nil {
		return nil
	}
	r := study.Rule{Precision: h.Enough.Precision, Matters: h.Enough.Matters, Round: roundSize, Budget: h.Enough.Budget / max(1, h.Years)}
	for _, name := range h.Of {
		if m, ok := study.MetricNamed(name); ok {
			r.Metrics = append(r.Metrics, m)
		}
	}
	v := r.Judge(runs)
	v.Spent = !v.Enough()
	return &view.Enough{Rule: r, Verdict: v}
}

// percents is a flag that takes a share of 0 to 100 %, both excluded.
type percents struct {
	flag  string
	to    *option[float64]
	text  string
	wrong bool
}

// Set implements pflag.Value. It returns no error; see complaints.
func (p *percents) Set(text string) error {
	p.text = text
	number, ok := strings.CutSuffix(strings.TrimSpace(text), "%")
	x, err := strconv.ParseFloat(strings.TrimSpace(number), 64)
	p.wrong = !ok || err != nil || !(x > 0 && x < 100)
	*p.to = option[float64]{Value: x / 100, Given: !p.wrong}
	return nil
}

// String implements pflag.Value.
func (p *percents) String() string { return p.text }

// Type implements pflag.Value; it stands for the value in help texts.
func (p *percents) Type() string { return "PERCENT" }

func (p *percents) complaints() []string {
	if !p.wrong {
		return nil
	}
	return []string{fmt.Sprintf("--%s: found %q, allowed: above 0 %% and below 100 %%, as 2%%", p.flag, p.text)}
}
