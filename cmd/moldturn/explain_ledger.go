package main

import (
	"fmt"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/reports/cells"
	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/sim/param/guess"
)

// ledgerFlags are the flags of moldturn explain that trace money.
type ledgerFlags struct {
	common
	Scenario string // whose ledger; "" for a word
}

func (o *ledgerFlags) add(f *pflag.FlagSet) {
	f.StringVar(&o.Scenario, "ledger", "", "trace the money of this `SCENARIO`")
	f.Var(&whole[int]{flag: "replications", to: &o.Replications, low: 1, high: mostReplications}, "replications", "with --ledger: repeat N times with other luck")
	f.Var(&whole[int]{flag: "years", to: &o.Years, low: 1, high: mostYears}, "years", "with --ledger: simulate N years in each repeat")
	f.Var(&settings{flag: "set", to: &o.Settings, paths: o.Inputs}, "set", "with --ledger: change one input for this run")
	f.BoolVarP(&o.Quiet, "quiet", "q", false, "with --ledger: show no progress")
}

// explainLedger traces lines of the ledger of the plant as it is.
func explainLedger(c *Context, o *ledgerFlags, line string, asJSON bool) error {
	s, err := loadScenario(o.Scenario, &o.common)
	if err != nil {
		return err
	}
	if err := needsMoney(s); err != nil {
		return err
	}
	s.Alternatives = s.Alternatives[:1]
	v, err := simulate(c, &o.common, s, "simulating the plant as it is")
	if err != nil {
		return err
	}
	all := v.Trace("")
	found := all
	if line != "all" {
		if found = v.Trace(line); len(found) == 0 {
			return unknownLine(all, line)
		}
	}
	if asJSON {
		return writeJSON(c, found)
	}
	return writeTraced(c, v, found, line)
}

// writeTraced writes lines in full, or a table of them where all are asked for.
func writeTraced(c *Context, v *view.Study, found []view.Traced, line string) error {
	fmt.Fprint(c.Stdout, table.Wrap(fmt.Sprintf("%s, as it is, means a year over %s of %s, orders always waiting. Each line is quantity × price, rounded to cents once in every repeat.",
		v.Scenario, count(v.Replications, "repeat", "repeats"), count(v.Years, "year", "years")), table.Style{}))
	if line == "all" {
		t := cells.Table{Title: "Every line", Columns: columns("line", "quantity × price = amount")}
		for _, x := range found {
			t.Rows = append(t.Rows, cells.Texts(breakable(x.Name), x.Sum))
		}
		return writeTables(c, []cells.Table{v.Money.Spending(&v.Base().Runs), t, v.Money.Totals(found)})
	}
	for _, x := range found {
		fmt.Fprintf(c.Stdout, "\n%s", table.Wrap(fmt.Sprintf("%s (%s; in “%s”)", x.Name, x.Class, x.Group), table.Style{}))
		for _, text := range append([]string{x.Label + ": " + x.Sum, "counted: " + x.Counted}, x.Inputs...) {
			for wrapped := range strings.Lines(table.Wrap(text, table.Style{Width: table.DefaultWidth - 2})) {
				fmt.Fprint(c.Stdout, "  ", wrapped)
			}
		}
	}
	if len(found) > 1 {
		fmt.Fprintln(c.Stdout)
		return writeTables(c, []cells.Table{v.Money.Totals(found)})
	}
	return nil
}

func unknownLine(all []view.Traced, line string) error {
	var names, first []string
	for _, x := range all {
		names = append(names, x.Name)
		word, _, _ := strings.Cut(x.Name, ".")
		if len(first) == 0 || first[len(first)-1] != word {
			first = append(first, word)
		}
	}
	hint := ""
	if near := guess.Near(line, append(names, first...)); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return misuse(hint, "no line of the ledger begins with %q\n  allowed: all, or lines of %s", line, strings.Join(unique(first), ", "))
}

// unique keeps the first of each word.
func unique(words []string) []string {
	seen := map[string]bool{}
	var out []string
	for _, w := range words {
		if !seen[w] {
			out = append(out, w)
		}
		seen[w] = true
	}
	return out
}
