package main

import (
	"fmt"

	"moldturn/reports"
	"moldturn/reports/cells"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/stats"
	"moldturn/sim/study"
)

func worthCommand() *command {
	o := &common{Inputs: inputPaths}
	return &command{
		name:     "worth",
		synopsis: "what one more and one less of each craft, place, mold set is worth",
		help: `Simulates the plant with one person more and one less on every shift of every
craft, one place more and less, one mold set more and less for every model, all
under the same luck, and ranks them by what they add in boats a week: over the
year and month by month. The intervals hold together for all of them.`,
		args:  scenarioArg(),
		flags: o.add,
		run:   func(c *Context) error { return worth(c, o) },
	}
}

func worth(c *Context, o *common) error {
	s, err := loadScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	w := &view.Worth{}
	s.Alternatives = s.Alternatives[:1]
	var moved, steps []int
	for i, l := range s.Levers() {
		w.Levers = append(w.Levers, l.Label)
		w.Now = append(w.Now, l.Now)
		for _, n := range []int{+1, -1} {
			a, ok := moveLever(s, &l, n)
			if !ok {
				continue
			}
			s.Alternatives = append(s.Alternatives, a)
			moved, steps = append(moved, i), append(steps, n)
		}
	}
	for i := range s.Alternatives { // only what the plant can do is asked for
		if p := s.Alternatives[i].Plant; p.Capacity != nil {
			p.Dated = nil
		}
	}
	if w.Study, err = simulate(c, o, s, fmt.Sprintf("simulating %d plants", len(s.Alternatives))); err != nil {
		return err
	}
	runs := make([]study.Runs, len(w.Study.Alternatives))
	for i := range runs {
		runs[i] = w.Study.Alternatives[i].Runs
	}
	w.Rows = study.RankWorth(runs, moved, steps)
	if err := save(c, o.Out, w.Study); err != nil {
		return err
	}
	if o.JSON {
		return worthJSON(c, w)
	}
	if _, err := fmt.Fprint(c.Stdout, table.Wrap(w.Headline(), table.Style{}), "\n"); err != nil {
		return err
	}
	tables := []cells.Table{w.Table()}
	if money, ok := w.Money(); ok {
		tables = append(tables, money)
	}
	for _, t := range append(tables, w.Months()) {
		if err := table.Write(c.Stdout, t, table.Style{}); err != nil {
			return err
		}
		fmt.Fprintln(c.Stdout)
	}
	for _, line := range append(w.Limits(), w.Study.Known()) {
		if _, err := fmt.Fprint(c.Stdout, table.Wrap(line, table.Style{})); err != nil {
			return err
		}
	}
	return nil
}

// moveLever makes the alternative of a lever moved by some steps; ok is false
// where the plant could not run that way, with nobody on the only shift of a
// craft that is needed, say.
func moveLever(s *scenarios.Scenario, l *scenarios.Lever, steps int) (scenarios.Alternative, bool) {
	changes, ok := l.By(steps)
	if !ok {
		return scenarios.Alternative{}, false
	}
	a, complaints := s.With(l.Name(steps), changes...)
	return a, len(complaints) == 0
}

func worthJSON(c *Context, w *view.Worth) error {
	type gain struct {
		Mean  float64 `json:"mean"`
		Low   float64 `json:"low"`
		High  float64 `json:"high"`
		Clear bool    `json:"clear"`
	}
	type row struct {
		Lever  string   `json:"lever"`
		Now    int      `json:"now"`
		Steps  int      `json:"steps"`
		Boats  gain     `json:"boats_per_week"`
		Months [12]gain `json:"boats_per_week_by_month"` // January first
		Money  *gain    `json:"dollars_per_week"`        // null without prices
	}
	of := func(d stats.Difference) gain { return gain{d.Mean, d.Low, d.High, d.Clear} }
	rows := []row{}
	for _, r := range w.Rows {
		line := row{Lever: w.Levers[r.Lever], Now: w.Now[r.Lever], Steps: r.Steps, Boats: of(r.Year)}
		for m, d := range r.Months {
			line.Months[m] = of(d)
		}
		if r.Priced {
			money := of(r.Money)
			line.Money = &money
		}
		rows = append(rows, line)
	}
	return reports.Document(c.Stdout, rows)
}
