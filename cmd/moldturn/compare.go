package main

import (
	"fmt"

	"moldturn/reports"
	"moldturn/reports/table"
)

func compareCommand() *command {
	o := &common{Inputs: inputPaths}
	return &command{
		name:     "compare",
		synopsis: "simulate a plant and its alternatives, and say what differs",
		first:    "moldturn compare fenwater -o out",
		help: `SCENARIO is a file, or the name of a scenario that comes with the program. Every
alternative in it meets the same weather, orders, absences and failures, so that
differences come from the change alone. A difference that luck could have made
is shown as "not clear".
With --out the folder gets results.csv, results.json and report.html.`,
		args:  scenarioArg(),
		flags: o.add,
		run:   func(c *Context) error { return compare(c, o) },
	}
}

func compare(c *Context, o *common) error {
	s, err := loadScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	v, err := simulate(c, o, s, fmt.Sprintf("simulating %d ways to run the plant", len(s.Alternatives)))
	if err != nil {
		return err
	}
	if err := save(c, o.Out, v); err != nil {
		return err
	}
	if o.JSON {
		return reports.JSON(c.Stdout, v)
	}
	return reports.Text(c.Stdout, v, table.Style{})
}
