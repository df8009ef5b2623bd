package main

import (
	"fmt"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/cells"
	"moldturn/reports/table"
	"moldturn/scenarios"
	"moldturn/sim/param/guess"
)

// listing is one row of the table of lists.
type listing struct {
	name, doc string
	plant     demand
	make      func(s *scenarios.Scenario) (*sheet, error) // s is nil without a scenario
}

// demand tells whether a list is about a scenario.
type demand uint8

const (
	noPlant demand = iota
	maybePlant
	needsPlant
)

// sheet is a finished list: lines and tables for people, rows for machines.
type sheet struct {
	lines  []string // paragraphs before the tables
	tables []cells.Table
	rows   any
}

// listings is the table of all lists, in the order in which help shows them.
func listings() []listing {
	return []listing{
		{"scenarios", "scenarios that come with the program", noPlant, listScenarios},
		{"models", "boats of a scenario with their parts and molds", needsPlant, listModels},
		{"steps", "lives of the parts, molds and boats of a scenario", needsPlant, listSteps},
		{"inputs", "what can be set, with defaults; of a scenario, its values", maybePlant, listInputs},
		{"distributions", "how varying times are written; of a scenario, each of them", maybePlant, listDistributions},
		{"metrics", "figures of results with their definitions", noPlant, listMetrics},
		{"floor", "files of a floor, with their columns and what a gap does", noPlant, listFloor},
		{"outputs", "result files with their columns and keys", noPlant, listOutputs},
	}
}

func listCommand() *command {
	asJSON := false
	return &command{
		name:     "list",
		synopsis: "list scenarios, models, steps, inputs, figures or files",
		help:     listHelp(),
		args:     argSpec{names: "WHAT [SCENARIO]", min: 1, max: 2, offer: offerList},
		flags: func(f *pflag.FlagSet) {
			f.BoolVar(&asJSON, "json", false, "print the list as JSON")
		},
		run: func(c *Context) error { return list(c, asJSON) },
	}
}

func listHelp() string {
	var b strings.Builder
	b.WriteString("WHAT is one of:\n")
	for _, l := range listings() {
		fmt.Fprintf(&b, "  %-13s  %s\n", l.name, l.doc)
	}
	b.WriteString("SCENARIO is a file, or the name of a scenario that comes with the program.")
	return b.String()
}

func listNames() []string {
	var names []string
	for _, l := range listings() {
		names = append(names, l.name)
	}
	return names
}

func offerList(c *Context, done []string) offer {
	if len(done) == 0 {
		return offerWords(listNames()...)
	}
	if l, err := findListing(done[0]); err == nil && l.plant != noPlant {
		return scenarioArg().offer(c, nil)
	}
	return offer{}
}

func findListing(name string) (listing, error) {
	for _, l := range listings() {
		if l.name == name {
			return l, nil
		}
	}
	hint := ""
	if near := guess.Near(name, listNames()); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return listing{}, misuse(hint, "there is no list of %q\n  allowed: %s", name, strings.Join(listNames(), ", "))
}

func list(c *Context, asJSON bool) error {
	l, err := findListing(c.Args[0])
	if err != nil {
		return err
	}
	s, err := l.scenario(c.Args[1:])
	if err != nil {
		return err
	}
	out, err := l.make(s)
	if err != nil {
		return err
	}
	if asJSON {
		return writeJSON(c, out.rows)
	}
	return out.write(c)
}

// write shows a list to people.
func (s *sheet) write(c *Context) error {
	for _, line := range s.lines {
		fmt.Fprint(c.Stdout, table.Wrap(line, table.Style{}))
	}
	if len(s.lines) > 0 && len(s.tables) > 0 {
		fmt.Fprintln(c.Stdout)
	}
	return writeTables(c, s.tables)
}

// scenario loads the scenario that a list is about, nil for none.
func (l *listing) scenario(args []string) (*scenarios.Scenario, error) {
	switch {
	case len(args) == 0 && l.plant == needsPlant:
		return nil, misuse(fmt.Sprintf("for example \"moldturn list %s fenwater\"", l.name), "list %s needs SCENARIO", l.name)
	case len(args) > 0 && l.plant == noPlant:
		return nil, misuse("", "list %s is about no scenario, found %q", l.name, args[0])
	case len(args) == 0:
		return nil, nil
	}
	return loadScenario(args[0], &common{})
}

// writeTables writes tables for a terminal with an empty line between them.
func writeTables(c *Context, tables []cells.Table) error {
	for i, t := range tables {
		if i > 0 {
			fmt.Fprintln(c.Stdout)
		}
		if err := table.Write(c.Stdout, t, table.Style{}); err != nil {
			return err
		}
	}
	return nil
}

// writeJSON writes a value for machines.
func writeJSON(c *Context, v any) error {
	return reports.Document(c.Stdout, v)
}

// columns are heads of columns of text; a head with a leading ">" is set right.
func columns(heads ...string) []cells.Column {
	var out []cells.Column
	for _, h := range heads {
		name, right := strings.CutPrefix(h, ">")
		col := cells.Column{Head: name}
		if right {
			col.Align = cells.Right
		}
		out = append(out, col)
	}
	return out
}
