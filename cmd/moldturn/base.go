package main

import (
	"moldturn/reports"
	"moldturn/reports/table"
)

func runCommand() *command {
	o := &common{Inputs: inputPaths}
	return &command{
		name:     "run",
		synopsis: "simulate a plant as it is and print all its figures",
		help: `SCENARIO is a file, or the name of a scenario that comes with the program. Its
alternatives are left out; "moldturn compare" has them.
With --out the folder gets results.csv, results.json and report.html.`,
		args:  scenarioArg(),
		flags: o.add,
		run:   func(c *Context) error { return runBase(c, o) },
	}
}

func runBase(c *Context, o *common) error {
	s, err := loadScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	s.Alternatives = s.Alternatives[:1]
	v, err := simulate(c, o, s, "simulating the plant as it is")
	if err != nil {
		return err
	}
	if err := save(c, o.Out, v); err != nil {
		return err
	}
	if o.JSON {
		return reports.JSON(c.Stdout, v)
	}
	return reports.TextOfBase(c.Stdout, v, table.Style{})
}
