package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"strings"

	"github.com/spf13/pflag"
	"golang.org/x/sync/errgroup"

	resultfiles "moldturn/reports/files"

	"moldturn/reports/cells"
	"moldturn/sim/validate"
)

// validateFlags are the flags of validate.
type validateFlags struct {
	seed    option[uint64]
	short   bool
	workers option[int]
	into    string
	quiet   bool
}

func (o *validateFlags) add(f *pflag.FlagSet) {
	f.Var(&whole[uint64]{flag: "seed", to: &o.seed, low: 0, high: mostSeed}, "seed", "draw all luck from this number; 1 by default")
	f.Var(&whole[int]{flag: "workers", to: &o.workers, low: 1, high: mostWorkers}, "workers", "use N processors, all by default")
	f.BoolVar(&o.short, "short", false, "a tenth of the hours, without the longest cases")
	f.StringVar(&o.into, "into", "", "write the table into this Markdown file, between its two validation marks")
	f.BoolVarP(&o.quiet, "quiet", "q", false, "show no progress")
}

func validateCommand() *command {
	o := &validateFlags{}
	return &command{
		name:     "validate",
		synopsis: "hold the engine against answers that are known exactly",
		help: `Runs skeleton plants on the engine that all commands use: single stations,
priorities, breakdowns, shift calendars, mold loops, blocking, hulls and decks.
Every number is shown with its exact value and where that is published. Subject
to luck, it passes within four standard errors; without, to the millisecond.`,
		flags: o.add,
		run:   func(c *Context) error { return validateEngine(c, o) },
	}
}

func validateEngine(c *Context, o *validateFlags) error {
	cases := validate.Cases()
	results := make([][]validate.Result, len(cases))
	told := newProgress(c, fmt.Sprintf("checking %d cases", len(cases)), o.quiet)
	g, ctx := errgroup.WithContext(c.Ctx)
	g.SetLimit((&common{Workers: o.workers}).workers())
	done := make(chan struct{}, len(cases))
	for i := range cases {
		g.Go(func() error {
			defer func() { done <- struct{}{} }()
			if ctx.Err() != nil || o.short && cases[i].Long {
				return ctx.Err()
			}
			var err error
			results[i], err = cases[i].Check(validate.Options{Seed: o.seed.Or(1), Short: o.short})
			return err
		})
	}
	finished := make(chan error, 1)
	go func() { finished <- g.Wait() }()
	for n := range cases {
		<-done
		told.Update(n+1, len(cases))
	}
	told.Close()
	if err := <-finished; err != nil {
		return err
	}
	failures, count := 0, 0
	for _, rs := range results {
		for i := range rs {
			count++
			if !rs[i].Pass {
				failures++
			}
		}
	}
	if o.into != "" {
		if err := intoMarkdown(o.into, markdownTable(results)); err != nil {
			return err
		}
		c.Wrote(o.into)
	} else if err := writeTables(c, checksTables(results)); err != nil {
		return err
	}
	if _, err := fmt.Fprintf(c.Stdout, "\n%d numbers checked, %d outside\n", count, failures); err != nil {
		return err
	}
	if failures > 0 {
		return failed("a few in a thousand fall outside four standard errors by luck: try another --seed", "%d of %d numbers are outside", failures, count)
	}
	return nil
}

// checksTables are the checked numbers, a table for each case with its source.
func checksTables(results [][]validate.Result) []cells.Table {
	var out []cells.Table
	for _, rs := range results {
		if len(rs) == 0 {
			continue
		}
		of := rs[0].Case
		t := cells.Table{Title: fmt.Sprintf("%s: %s (%s)", of.Group, of.Name, of.Source),
			Columns: columns("number", ">exact", ">simulated", ">std. error", "verdict")}
		for i := range rs {
			t.Rows = append(t.Rows, cells.Texts(numberCells(&rs[i])...))
		}
		out = append(out, t)
	}
	return out
}

// numberCells are the cells of one number checked.
func numberCells(r *validate.Result) []string {
	verdict, se := "ok", "–"
	if !r.Pass {
		verdict = "OUTSIDE"
		if r.Note != "" {
			verdict += ": " + r.Note
		}
	}
	if r.SE > 0 {
		se = fmt.Sprintf("%.2g", r.SE)
	}
	return []string{r.Name, fmt.Sprintf("%.6g", r.Exact), fmt.Sprintf("%.6g", r.Got), se, verdict}
}

// markdownTable has a row for each case: the number furthest from its exact
// value, and how many were checked.
func markdownTable(results [][]validate.Result) string {
	var b strings.Builder
	b.WriteString("| case | numbers | furthest | exact | simulated | standard errors apart | source |\n|---|---|---|---|---|---|---|\n")
	for _, rs := range results {
		if len(rs) == 0 {
			continue
		}
		worst := &rs[0]
		for i := range rs {
			if rs[i].Apart() > worst.Apart() {
				worst = &rs[i]
			}
		}
		x := numberCells(worst)
		fmt.Fprintf(&b, "| %s | %d | %s | %s | %s | %.1f | %s |\n", x[0], len(rs), x[1], x[2], x[3], worst.Apart(), x[6])
	}
	return b.String()
}

const (
	validationBegins = "<!-- validation begins -->\n"
	validationEnds   = "<!-- validation ends -->"
)

// intoMarkdown puts a table between the two marks of a file.
func intoMarkdown(file, text string) error {
	old, err := os.ReadFile(file)
	if err != nil {
		return failed("", "%s: cannot be read: %v", file, plain(err))
	}
	head, rest, ok := bytes.Cut(old, []byte(validationBegins))
	_, tail, ok2 := bytes.Cut(rest, []byte(validationEnds))
	if !ok || !ok2 {
		return failed("put the marks where the table belongs", "%s: has no lines %q and %q", file, strings.TrimSpace(validationBegins), validationEnds)
	}
	return resultfiles.Write(file, func(w io.Writer) error {
		_, err := fmt.Fprintf(w, "%s%s%s%s%s", head, validationBegins, text, validationEnds, tail)
		return err
	})
}
