package main

import (
	"fmt"
	"sync/atomic"
	"time"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/clock"
	"moldturn/sim/shift"
	"moldturn/sim/study"
)

func launchCommand() *command {
	o := &common{Inputs: inputPaths}
	which := ""
	return &command{
		name:     "launch",
		synopsis: "what new molds bring week by week, and take from other models",
		help: `New molds come on the days of models.*.parts.*.mold_dates, or one after the other
off a master as on_master says; a model of which all molds come so is launched.
The plant is simulated with them and without them under the same luck: boats a
week by model in the weeks before and after, and the wave of break-in turns.
With --out the folder gets launch.csv, launch.json and launch.html.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f)
			addAlternative(f, &which)
		},
		run: func(c *Context) error { return runLaunch(c, o, which) },
	}
}

func runLaunch(c *Context, o *common, which string) error {
	s, err := loadScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	a, err := pickAlternative(s, which)
	if err != nil {
		return err
	}
	if err := comesInTime(a); err != nil {
		return err
	}
	l, err := launchOf(c, o, s, a)
	if err != nil {
		return err
	}
	if err := saveLaunch(c, o.Out, l); err != nil {
		return err
	}
	if o.JSON {
		return reports.LaunchJSON(c.Stdout, l)
	}
	return reports.LaunchText(c.Stdout, l, table.Style{})
}

// comesInTime tells of a plant into which no mold comes while it is simulated.
func comesInTime(a *scenarios.Alternative) error {
	p := a.Plant.Plan()
	t, ok := study.FirstArrival(p)
	switch {
	case t == clock.Never:
		return failed(fmt.Sprintf("for example --set '%s=[%s]'; some alternative may have them: --alternative NAME", datesPath(a), dayIn(p.Start, a.Plant.Frame.From+13*clock.Week)),
			"no mold comes into %q", a.Name)
	case !ok:
		return failed("more --years, or an earlier day", "the first new mold comes on %s, and the simulated years end on %s", dayIn(p.Start, t), dayIn(p.Start, p.Length))
	}
	return nil
}

// datesPath is the path of the dates of new molds of the first part of the plant.
func datesPath(a *scenarios.Alternative) string {
	for model, m := range a.Plant.Value.Each("models") {
		for part := range m.Each("parts") {
			return fmt.Sprintf("models.%q.parts.%s.mold_dates", model, part)
		}
	}
	return "models.*.parts.*.mold_dates"
}

// dayIn is the date of an instant.
func dayIn(start shift.Date, t clock.Time) string {
	d := shift.DateAt(start, t)
	return time.Date(d.Year, d.Month, d.Day, 0, 0, 0, 0, time.UTC).Format(time.DateOnly)
}

// launchOf simulates one alternative with its new molds and without them.
func launchOf(c *Context, o *common, s *scenarios.Scenario, a *scenarios.Alternative) (*view.Launch, error) {
	one := *s
	one.Alternatives = []scenarios.Alternative{*a}
	run := s.Base.Value.At("run")
	setup := &study.Setup{Alternatives: one.Study(), Replications: o.Replications.Or(run.At("replications").Count()),
		Seed: o.Seed.Or(uint64(run.At("seed").Count())), Workers: o.workers()}
	told := newProgress(c, "simulating the launch", o.Quiet)
	defer told.Close()
	var done atomic.Int64
	setup.Done = func(n int) { told.Update(int(done.Add(int64(n))), 2*setup.Replications) }
	plan := a.Plant.Plan()
	var books [2][]*study.WeekBook
	for i := range books {
		p := plan
		if i == 1 {
			p = study.WithoutLaunch(plan)
		}
		var err error
		if books[i], err = study.Watch(c.Ctx, setup, &setup.Alternatives[0], p, func() *study.WeekBook { return study.NewWeekBook(p) }); err != nil {
			return nil, err
		}
	}
	return &view.Launch{Study: studyOf(&one, setup, []study.Runs{{Name: a.Name, Changes: a.Changes}}),
		Launch: study.NewLaunch(plan, &a.Plant.Frame, books[0], books[1])}, nil
}

// saveLaunch writes the launch into a folder; nothing without one.
func saveLaunch(c *Context, folder string, l *view.Launch) error {
	return saveAs(c, folder, []resultFile{
		resultOf("launch.csv", l, reports.LaunchCSV),
		resultOf("launch.json", l, reports.LaunchJSON),
		resultOf("launch.html", l, reports.LaunchHTML),
	})
}
