package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/pflag"

	"moldturn/reports"
	"moldturn/reports/table"
	"moldturn/sim/study"
)

func reportCommand() *command {
	o := &common{}
	return &command{
		name:     "report",
		synopsis: "report on finished results again, without simulating",
		help: `FILE is a results.jsonl or results.jsonl.gz that "moldturn sweep" or
"moldturn compare" left in its folder, or that folder. The file holds the
scenario it came from, so that nothing else is needed.`,
		args: argSpec{names: "FILE", min: 1, max: 1, offer: func(*Context, []string) offer { return offer{paths: files} }},
		flags: func(f *pflag.FlagSet) {
			f.VarP(&folder{flag: "out", to: &o.Out}, "out", "o", "write the report into this folder")
			f.BoolVar(&o.JSON, "json", false, "print the result as JSON")
		},
		run: func(c *Context) error { return report(c, o) },
	}
}

// resultNames are what files of results are called.
var resultNames = [...]string{"results.jsonl", "results.jsonl.gz"}

func report(c *Context, o *common) error {
	path, err := bookPath(c.Args[0])
	if err != nil {
		return err
	}
	book, _, err := readBook(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return failed("", "%s: no such file", path)
	case err != nil:
		return err
	}
	op, err := reopen(&book.Head)
	if err != nil {
		return fmt.Errorf("%s: the scenario in it is not accepted by this version of the program:\n%w", path, err)
	}
	switch book.Head.Kind {
	case "sweep":
		return reportSweep(c, o, path, book, op)
	case "compare":
		return reportCompare(c, o, path, book, op)
	}
	return fmt.Errorf("%s: results of %q, on which this version cannot report", path, "moldturn "+book.Head.Kind)
}

// bookPath is the file itself, or the one in a folder.
func bookPath(name string) (string, error) {
	info, err := os.Stat(name)
	if err != nil || !info.IsDir() {
		return name, nil
	}
	for _, file := range resultNames {
		path := filepath.Join(name, file)
		if _, err := os.Stat(path); err == nil {
			return path, nil
		}
	}
	return "", failed("", "%s: there is no %s and no %s in this folder", name, resultNames[0], resultNames[1])
}

func reportSweep(c *Context, o *common, path string, book *study.Book, op *opened) error {
	h := &book.Head
	if h.Sweep == nil {
		return fmt.Errorf("%s: does not say what was swept", path)
	}
	d, err := designOf(h.Sweep, h.Seed)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	var of []study.Metric
	for _, name := range h.Of {
		m, ok := study.MetricNamed(name)
		if !ok {
			return fmt.Errorf("%s: there is no figure %q in this version", path, name)
		}
		of = append(of, m)
	}
	if len(of) == 0 {
		of = defaultOf()
	}
	v, missing := sweepOf(op, h, d, of, func(i int) map[string]study.Values {
		name := op.baseName()
		if i > 0 {
			name = d.Name(i - 1)
		}
		return book.Figures(book.Named(name), h.Replications)
	})
	if missing > 0 {
		return failed("the same sweep command finishes it", "%s: unfinished: %d of %d settings have no results", path, missing, len(d.Points)+1)
	}
	return sweepOut(c, o.JSON, o.Out, v)
}

// reportCompare prints a comparison as "moldturn compare" did.
func reportCompare(c *Context, o *common, path string, book *study.Book, op *opened) error {
	runs, err := comparedRuns(book, op)
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	h := &book.Head
	v := studyOf(op.Scenario, &study.Setup{Alternatives: op.Study(), Seed: h.Seed, Replications: h.Replications}, runs)
	v.Holds = keptHolds(book, op)
	tellAir(v, op.Scenario)
	v.Version, v.Replications, v.Enough = h.Program, len(runs[0].Outcomes), ruleOf(h, runs)
	if err := save(c, o.Out, v); err != nil {
		return err
	}
	if o.JSON {
		return reports.JSON(c.Stdout, v)
	}
	return reports.Text(c.Stdout, v, table.Style{})
}
