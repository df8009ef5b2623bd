package main

import (
	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/reports/view"
)

func runCommand() *command {
	o, facts, pause := &common{Inputs: inputPaths}, &factsFlag{}, &pausing{}
	return &command{
		name:     "run",
		synopsis: "simulate a plant as it is and print all its figures",
		help: `SCENARIO is a file, or the name of a scenario that comes with the program. Its
alternatives are left out; "moldturn compare" has them.
With --out the folder gets results.csv, results.json, results.xlsx and
report.html.
With --save the runs can be stopped on a day and gone on with later: the figures
are then those of runs that were never stopped.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f)
			facts.add(f)
			pause.add(f)
		},
		run: func(c *Context) error { return runBase(c, o, facts, pause) },
	}
}

func runBase(c *Context, o *common, facts *factsFlag, pause *pausing) error {
	if err := facts.judge(o); err != nil {
		return err
	}
	if pause.given() {
		if err := pause.judge(facts); err != nil {
			return err
		}
		v, err := runPaused(c, o, pause)
		if err != nil || v == nil {
			return err
		}
		return showBase(c, o, v)
	}
	s, err := loadScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	s.Alternatives = s.Alternatives[:1]
	v, err := simulate(c, o, s, "simulating the plant as it is")
	if err != nil {
		return err
	}
	tellAir(v, s)
	more, err := facts.file(c, v.Seed, s)
	if err != nil {
		return err
	}
	return showBase(c, o, v, more...)
}

// showBase writes and prints the figures of the plant as it is.
func showBase(c *Context, o *common, v *view.Study, more ...resultFile) error {
	if err := save(c, o.Out, v, more...); err != nil {
		return err
	}
	if o.JSON {
		return reports.JSON(c.Stdout, v)
	}
	return reports.TextOfBase(c.Stdout, v, table.Style{})
}
