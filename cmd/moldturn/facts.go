package main

import (
	"fmt"
	"io"
	"path/filepath"

	"github.com/spf13/pflag"

	"moldturn/reports"
	resultfiles "moldturn/reports/files"
	"moldturn/scenarios"
	"moldturn/sim"
	"moldturn/sim/record"
	"moldturn/sim/study"
)

// factsFlag asks for every visit of one replication.
type factsFlag struct{ replication option[int] }

func (o *factsFlag) add(f *pflag.FlagSet) {
	f.Var(&whole[int]{flag: "facts", to: &o.replication, low: 1, high: mostReplications}, "facts", "with --out: write every visit of one replication, the first unless --facts=N, to facts.csv")
	f.Lookup("facts").NoOptDefVal = "1"
}

// judge complains of a command line that has nowhere to put the facts.
func (o *factsFlag) judge(c *common) error {
	if o.replication.Given && c.Out == "" {
		return misuse("add -o FOLDER", "--facts needs a folder to write facts.csv into")
	}
	return nil
}

// save runs one replication of each of the alternatives again and writes what
// happened after the warm-up.
func (o *factsFlag) save(c *Context, folder string, seed uint64, s *scenarios.Scenario) error {
	if !o.replication.Given {
		return nil
	}
	var runs []reports.Facts
	rep := o.replication.Value - 1
	for i, a := range s.Study() {
		air, err := a.Air(seed, rep)
		if err != nil {
			return err
		}
		for _, plan := range []*sim.Plan{a.Capacity, a.Dated} {
			if err := c.Ctx.Err(); err != nil {
				return err
			}
			if plan == nil {
				continue
			}
			r, err := recorded(plan, air, seed, rep, &s.Alternatives[i].Plant.Frame)
			if err != nil {
				return err
			}
			runs = append(runs, reports.Facts{Alternative: a.Name, Plan: plan, Recorder: r})
		}
	}
	path := filepath.Join(folder, "facts.csv")
	if err := resultfiles.Write(path, func(w io.Writer) error { return reports.FactsCSV(w, runs) }); err != nil {
		return err
	}
	c.Wrote(path)
	return nil
}

func recorded(plan *sim.Plan, air *sim.Air, seed uint64, rep int, f *record.Frame) (*record.Recorder, error) {
	r := record.NewRecorder(f.From, f.To)
	if err := sim.Simulate(plan, air, seed, rep, r); err != nil {
		return nil, err
	}
	if err := study.Complete(r); err != nil {
		return nil, fmt.Errorf("--facts: %w; fewer --years leave less", err)
	}
	return r, nil
}
