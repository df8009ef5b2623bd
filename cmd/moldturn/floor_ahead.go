package main

import (
	"fmt"
	"sync/atomic"

	"github.com/spf13/pflag"

	"moldturn/scenarios"
	"moldturn/scenarios/floor"
	"moldturn/sim"
	"moldturn/sim/ahead"
)

// aheadFlags are those of commands that look ahead from a floor. Their zero
// value asks for the usual number of futures.
type aheadFlags struct {
	common
	Floor   floorFlags
	Futures option[int]
}

// usualFutures is how many futures chances are counted in: 9 in 10 is then good
// to about ± 4 in a hundred (one standard error of a share of 200).
const usualFutures = 200

func (o *aheadFlags) add(f *pflag.FlagSet, purpose string) {
	o.Floor.add(f, purpose)
	f.Var(&whole[int]{flag: "futures", to: &o.Futures, low: 10, high: mostReplications}, "futures", "look at N futures, 200 by default")
	f.VarP(&folder{flag: "out", to: &o.Out}, "out", "o", "write the results into this folder")
	f.Var(&whole[uint64]{flag: "seed", to: &o.Seed, low: 0, high: mostSeed}, "seed", "draw all luck from this number; the same number gives the same results")
	f.Var(&whole[int]{flag: "workers", to: &o.Workers, low: 1, high: mostWorkers}, "workers", "use N processors, all by default; results do not depend on it")
	f.Var(&settings{flag: "set", to: &o.Settings, paths: inputPaths}, "set", "change one input for this run; may be given again")
	f.BoolVar(&o.JSON, "json", false, "print the result as JSON")
	f.BoolVarP(&o.Quiet, "quiet", "q", false, "show no progress")
}

// shopFloor is a scenario with the floor it stands on.
type shopFloor struct {
	*scenarios.Scenario
	Floor  *floor.Floor
	Warned []string // what a reader of an answer must know of the floor
}

// openFloor loads a scenario and the floor that the flags name.
func openFloor(name string, o *aheadFlags) (*shopFloor, error) {
	if o.Floor.Folder == "" {
		return nil, failed("--floor fenwater is one that comes with the program", "--floor is missing: the folder with the molds, the work and the orders of this morning")
	}
	s, err := loadScenario(name, &o.common)
	if err != nil {
		return nil, err
	}
	r, err := readFloor(&o.Floor, s)
	if err != nil {
		return nil, err
	}
	if r.Floor == nil {
		return nil, failed(fatalHint(r), "%s: no run can start from this floor; see: moldturn check %s --floor %s", o.Floor.Folder, name, o.Floor.Folder)
	}
	warned := r.Warnings()
	if n := len(warned); n > 0 {
		warned[n-1] += fmt.Sprintf(" See: moldturn check %s --floor %s", name, o.Floor.Folder)
		if !o.Floor.Morning.IsZero() {
			warned[n-1] += fmt.Sprintf(" --morning %q", o.Floor.Morning.String())
		}
	}
	return &shopFloor{s, r.Floor, warned}, nil
}

// from makes the futures of a floor, up to some weeks ahead.
func (f *shopFloor) from(c *Context, o *aheadFlags, opt scenarios.FloorOptions) (*scenarios.FloorStart, *ahead.Setup, error) {
	start, complaints := f.StartFrom(f.Floor, opt)
	if len(complaints) > 0 {
		return nil, nil, complaints
	}
	setup := &ahead.Setup{Plan: start.Plant.Plan(), Start: start.Start, Air: start.Plant.Air,
		Seed: o.Seed.Or(uint64(f.Base.Value.At("run.seed").Count())), Futures: o.Futures.Or(usualFutures), Workers: o.workers()}
	return start, setup, nil
}

// told shows how far some futures have come, which are looked at about so many
// times; the result ends the showing.
func (o *aheadFlags) told(c *Context, setup *ahead.Setup, what string, times int) (end func()) {
	p := newProgress(c, what, o.Quiet)
	var done atomic.Int64
	setup.Done = func() { p.Update(min(int(done.Add(1)), times*setup.Futures), times*setup.Futures) }
	return p.Close
}

// orderNames are what the orders of a start are called.
func orderNames(plan *sim.Plan, s *scenarios.FloorStart) []string {
	var out []string
	for i, o := range s.Orders {
		name := o.Name
		if name == "" {
			name = fmt.Sprintf("order %d", i+1)
		}
		out = append(out, name+", "+plan.Models[s.Start.Orders[i].Model].Name)
	}
	return out
}
