package main

import (
	"fmt"

	"github.com/spf13/pflag"

	"moldturn/reports"
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

// file runs one replication of each of the alternatives again and gives the file
// of what happened after the warm-up; none unless asked for.
func (o *factsFlag) file(c *Context, seed uint64, s *scenarios.Scenario) ([]resultFile, error) {
	if !o.replication.Given {
		return nil, nil
	}
	var runs []reports.Facts
	rep := o.replication.Value - 1
	for i, a := range s.Study() {
		air, err := a.Air(seed, rep)
		if err != nil {
			return nil, err
		}
		for _, plan := range []*sim.Plan{a.Capacity, a.Dated} {
			if err := c.Ctx.Err(); err != nil {
				return nil, err
			}
			if plan == nil {
				continue
			}
			r, err := recorded(plan, air, seed, rep, &s.Alternatives[i].Plant.Frame)
			if err != nil {
				return nil, err
			}
			runs = append(runs, reports.Facts{Alternative: a.Name, Plan: plan, Recorder: r})
		}
	}
	return []resultFile{resultOf("facts.csv", runs, reports.FactsCSV)}, nil
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
