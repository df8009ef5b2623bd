package main

import (
	"fmt"
	"path/filepath"
	"sync/atomic"

	"github.com/spf13/pflag"

	"moldturn/scenarios"
	"moldturn/sim/study"
)

func sweepCommand() *command {
	o, s := &common{Inputs: inputPaths}, &sweepFlags{}
	return &command{
		name:     "sweep",
		synopsis: "simulate a plant over ranges of inputs: curves, maps, frontier",
		first:    "moldturn sweep fenwater --set strip.policy=every --over strip.every=1..15",
		help: `Every value of an input given with --over is tried with every value of the
others; --each changes one at a time, --latin spreads --points settings over the
ranges. All settings meet the same weather, orders, absences and failures.
Short names stand for the inputs behind them: hold, strip, wax, floor, molds,
molds.MODEL, crew.CRAFT, and places by their names.
Results go to the folder of --out, or to one named after the scenario. Each
setting is kept there as soon as it is finished: when the program is stopped or
killed, the same command goes on where it was. More values or more replications
add to what is there. "moldturn report" reports again without simulating.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			s.add(f)
			o.add(f)
		},
		run: func(c *Context) error { return sweep(c, o, s) },
	}
}

// sweeping is a sweep under way.
type sweeping struct {
	*opened
	design *study.Design
	of     []study.Metric
	head   study.Head
	dated  bool     // runs with the dated order book are needed
	keys   []string // of the base, then of the points
}

func sweep(c *Context, o *common, flags *sweepFlags) error {
	asked, err := flags.asked()
	if err != nil {
		return err
	}
	op, err := openScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	s := &sweeping{opened: op, of: flags.of}
	if len(s.of) == 0 {
		s.of = defaultOf()
	}
	if s.design, err = designOf(asked, op.seed(o)); err != nil {
		return err
	}
	s.head = op.head("sweep", op.seed(o), op.replications(o))
	s.head.Sweep = asked
	for _, m := range s.of {
		s.head.Of = append(s.head.Of, m.Name)
		s.dated = s.dated || m.NeedsDates
	}
	if err := s.findKeys(c, o.Quiet); err != nil {
		return err
	}
	folder := sweepFolder(o.Out, op.shown)
	book, err := s.simulate(c, o, filepath.Join(folder, "results.jsonl"), flags.fresh)
	if err != nil {
		return err
	}
	v, missing := sweepOf(op, &s.head, s.design, s.of, func(i int) map[string]study.Values {
		return book.Figures(s.keys[i], s.head.Replications)
	})
	if missing > 0 {
		return fmt.Errorf("%d of %d settings have no results", missing, len(s.keys))
	}
	return sweepOut(c, o.JSON, folder, v)
}

// alternative makes point i of the design; 0 is the base, 1 the first point.
func (s *sweeping) alternative(i int) (scenarios.Alternative, error) {
	if i == 0 {
		a, complaints := s.With(s.baseName())
		return a, orNil(complaints)
	}
	var changes []scenarios.Change
	for k, v := range s.design.Points[i-1].Values {
		if v == "" {
			continue
		}
		path := s.design.Factors[k].Path
		ch, complaints := s.Changes("--over", path+"="+v)
		if len(complaints) > 0 {
			return scenarios.Alternative{}, complaints
		}
		changes = append(changes, ch...)
	}
	a, complaints := s.With(s.design.Name(i-1), changes...)
	return a, orNil(complaints)
}

// orNil is complaints as an error that is nil without any.
func orNil(c scenarios.Complaints) error {
	if len(c) == 0 {
		return nil
	}
	return c
}

// worthTelling is from how many settings on their check takes long enough to
// show progress.
const worthTelling = 100

// findKeys checks every point and finds the key of its results. All complaints
// come together, each once.
func (s *sweeping) findKeys(c *Context, quiet bool) error {
	told := newProgress(c, "checking the settings", quiet || len(s.design.Points) < worthTelling)
	defer told.Close()
	var complaints scenarios.Complaints
	seen := map[string]bool{}
	n := len(s.design.Points) + 1
	for i := range n {
		if err := c.Ctx.Err(); err != nil {
			return err
		}
		a, err := s.alternative(i)
		if faults, ok := err.(scenarios.Complaints); ok {
			for _, f := range faults {
				if !seen[f.String()] {
					seen[f.String()] = true
					complaints = append(complaints, f)
				}
			}
			continue
		}
		s.keys = append(s.keys, a.Plant.Fingerprint(s.files)+" "+s.runs(a.Plant))
		told.Update(i+1, n)
	}
	return orNil(complaints)
}

// runs says which runs of a plant a sweep makes: only those that its figures
// need.
func (s *sweeping) runs(p *scenarios.Plant) string {
	switch {
	case p.Capacity == nil:
		return "dated"
	case p.Dated == nil || !s.dated:
		return "full"
	}
	return "both"
}

// simulate runs what is not kept yet.
func (s *sweeping) simulate(c *Context, o *common, path string, fresh bool) (*study.Book, error) {
	k, err := keep(path, s.head, fresh)
	if err != nil {
		return nil, err
	}
	defer k.close()
	b := &study.Batch{Seed: s.head.Seed, Workers: o.workers()}
	var which []int
	queued := map[string]bool{}
	total, ready := 0, 0
	for i, key := range s.keys {
		has := k.book.Has(key)
		switch {
		case has >= s.head.Replications:
			ready++
		case !queued[key]:
			queued[key] = true
			which = append(which, i)
			b.Tasks = append(b.Tasks, study.Task{First: has, Replications: s.head.Replications - has,
				Make: func() (study.Alternative, error) { return s.make(i) }})
			total += s.head.Replications - has
		}
	}
	if ready > 0 && len(which) > 0 && !o.Quiet {
		fmt.Fprintf(c.Stderr, "%d of %d settings are in %s already\n", ready, len(s.keys), path)
	}
	told := newProgress(c, fmt.Sprintf("simulating %d settings", len(which)), o.Quiet)
	var done atomic.Int64
	b.Done = func(n int) { told.Update(int(done.Add(int64(n))), total*s.plans()) }
	b.Kept = func(i int, outcomes []study.Outcome) error {
		return k.add(&study.Entry{Key: s.keys[which[i]], Names: []string{s.name(which[i])}, First: b.Tasks[i].First, Values: study.ValuesOf(outcomes)})
	}
	err = b.Run(c.Ctx)
	told.Close()
	if err != nil {
		if c.Ctx.Err() != nil {
			c.Wrote(fmt.Sprintf("%d of %d settings in %s; the same command goes on", s.ready(k.book), len(s.keys), path))
		}
		return nil, err
	}
	for i, key := range s.keys {
		k.book.Name(key, s.name(i))
	}
	if err := k.finish(s.keys); err != nil {
		return nil, err
	}
	c.Wrote(path)
	return k.book, nil
}

func (s *sweeping) ready(b *study.Book) int {
	n := 0
	for _, key := range s.keys {
		if b.Has(key) >= s.head.Replications {
			n++
		}
	}
	return n
}

// plans is how many runs a replication of the base takes.
func (s *sweeping) plans() int {
	if s.runs(s.Base) == "both" {
		return 2
	}
	return 1
}

func (s *sweeping) name(i int) string {
	if i == 0 {
		return s.baseName()
	}
	return s.design.Name(i - 1)
}

// make is a point ready to run.
func (s *sweeping) make(i int) (study.Alternative, error) {
	a, err := s.alternative(i)
	if err != nil {
		return study.Alternative{}, err
	}
	p := a.Plant
	out := study.Alternative{Name: a.Name, Changes: a.Changes, Capacity: p.Capacity, Dated: p.Dated, Frame: p.Frame,
		Money: p.Money(), Climate: p.Climate, Air: p.Air}
	if s.runs(p) == "full" {
		out.Dated = nil
	}
	return out, nil
}
