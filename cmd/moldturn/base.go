package main

import (
	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
)

func runCommand() *command {
	o, facts := &common{Inputs: inputPaths}, &factsFlag{}
	return &command{
		name:     "run",
		synopsis: "simulate a plant as it is and print all its figures",
		help: `SCENARIO is a file, or the name of a scenario that comes with the program. Its
alternatives are left out; "moldturn compare" has them.
With --out the folder gets results.csv, results.json and report.html.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f)
			facts.add(f)
		},
		run: func(c *Context) error { return runBase(c, o, facts) },
	}
}

func runBase(c *Context, o *common, facts *factsFlag) error {
	if err := facts.judge(o); err != nil {
		return err
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
	more, err := facts.file(c, v.Seed, s)
	if err != nil {
		return err
	}
	if err := save(c, o.Out, v, more...); err != nil {
		return err
	}
	if o.JSON {
		return reports.JSON(c.Stdout, v)
	}
	return reports.TextOfBase(c.Stdout, v, table.Style{})
}
