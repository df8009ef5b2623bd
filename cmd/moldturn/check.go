package main

import (
	"errors"
	"fmt"

	"github.com/spf13/pflag"

	"moldturn/reports/table"
	"moldturn/scenarios"
	paper "moldturn/sim/hand"
)

func checkCommand() *command {
	o, shop := &common{Inputs: inputPaths}, &floorFlags{}
	return &command{
		name:     "check",
		synopsis: "find every mistake in a scenario, and work the plant out by hand",
		help: `SCENARIO is a file, or the name of a scenario that comes with the program. All
mistakes are shown at once, each with its place. A scenario without any is
worked out by hand: molds times turns, and hours there are over hours a boat
takes.
With --floor the files of a floor are checked instead: rows used, rows not used
and why, what contradicts itself, and what each gap does to the answer. FOLDER
is a folder, or the name of a floor that comes with the program; its files are
never changed. "moldturn list floor" shows which files and columns there are.`,
		args: scenarioArg(),
		flags: func(f *pflag.FlagSet) {
			f.Var(&settings{flag: "set", to: &o.Settings, paths: o.Inputs}, "set", "change one input for this check; may be given again")
			f.BoolVar(&o.JSON, "json", false, "print mistakes, warnings and the work by hand as JSON")
			f.BoolVarP(&o.Quiet, "quiet", "q", false, "changes nothing: there is no progress to show")
			shop.add(f, "check the floor files of this folder for the scenario")
		},
		run: func(c *Context) error { return check(c, o, shop) },
	}
}

// checked is all that check found; ByHand is nil where there are mistakes.
type checked struct {
	Complaints []scenarios.Complaint `json:"complaints"`
	Warnings   []warning             `json:"warnings"`
	ByHand     *paper.Table          `json:"by_hand"`
}

func check(c *Context, o *common, shop *floorFlags) error {
	s, err := loadScenario(c.Args[0], o)
	var found scenarios.Complaints
	if errors.As(err, &found) {
		return complain(c, found, o.JSON)
	}
	if err != nil {
		return err
	}
	t := byHand(s.Base)
	warnings := warningsOf(s, &t)
	if shop.Folder != "" && o.JSON {
		return checkFloor(c, s, shop, warnings, true)
	}
	if o.JSON {
		return writeJSON(c, checked{[]scenarios.Complaint{}, warnings, &t})
	}
	tellWarnings(c, warnings)
	fmt.Fprintf(c.Stdout, "%s: no mistakes; %s\n", c.Args[0], sizes(s))
	if shop.Folder != "" {
		return checkFloor(c, s, shop, warnings, false)
	}
	fmt.Fprintln(c.Stdout)
	return writeHand(c, s.Base.Plan(), &t, s.Base.Style())
}

func tellWarnings(c *Context, warnings []warning) {
	for _, w := range warnings {
		fmt.Fprint(c.Stderr, table.Wrap(w.String(), table.Style{}))
	}
}

// complain tells the mistakes and fails.
func complain(c *Context, found scenarios.Complaints, asJSON bool) error {
	if !asJSON {
		return failed("", "%s\n%s", found.Error(), count(len(found), "mistake", "mistakes"))
	}
	if err := writeJSON(c, checked{Complaints: found, Warnings: []warning{}}); err != nil {
		return err
	}
	return failed("", "%s", count(len(found), "mistake", "mistakes"))
}

// byHand works a plant out under the weather to be expected.
func byHand(p *scenarios.Plant) paper.Table {
	return paper.Work(p.Plan(), p.Forecast(), p.Frame)
}

// sizes is a plant in one line.
func sizes(s *scenarios.Scenario) string {
	p := s.Base.Plan()
	return fmt.Sprintf("%s, %s, %s, %s", count(len(p.Models), "model", "models"), count(len(p.Parts), "part", "parts"),
		count(len(p.Molds), "mold", "molds"), count(len(s.Alternatives)-1, "alternative", "alternatives"))
}

func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
