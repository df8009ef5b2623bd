package main

import (
	"fmt"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
)

func compareCommand() *command {
	o, e, facts := &common{Inputs: inputPaths}, &enoughFlags{}, &factsFlag{}
	return &command{
		name:     "compare",
		synopsis: "simulate a plant and its alternatives, and say what differs",
		first:    "moldturn compare fenwater -o out",
		help: `SCENARIO is a file, or the name of a scenario that comes with the program. Every
alternative in it meets the same weather, orders, absences and failures, so that
differences come from the change alone. A difference that luck could have made
is shown as "not clear".
With --precision or --matters it is repeated until that is reached, or until the
budget of simulated years is used up, and the report says which.
With --out the folder gets results.csv, results.json, results.xlsx, report.html,
and all outcomes in results.jsonl.gz, for "moldturn report" and --add.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			o.add(f)
			e.flags(f)
			facts.add(f)
		},
		run: func(c *Context) error { return compare(c, o, e, facts) },
	}
}

func compare(c *Context, o *common, e *enoughFlags, facts *factsFlag) error {
	if err := facts.judge(o); err != nil {
		return err
	}
	if err := e.judge(o); err != nil {
		return err
	}
	op, err := openScenario(c.Args[0], o)
	if err != nil {
		return err
	}
	t := byHand(op.Base)
	tellWarnings(c, warningsOf(op.Scenario, &t))
	v, book, err := simulateEnough(c, o, e, op, fmt.Sprintf("simulating %d ways to run the plant", len(op.Alternatives)))
	if err != nil {
		return err
	}
	more, err := facts.file(c, v.Seed, op.Scenario)
	if err != nil {
		return err
	}
	if err := save(c, o.Out, v, append(more, book...)...); err != nil {
		return err
	}
	if o.JSON {
		return reports.JSON(c.Stdout, v)
	}
	return reports.Text(c.Stdout, v, table.Style{})
}
