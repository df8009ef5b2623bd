package main

import (
	"runtime"

	"github.com/spf13/pflag"
)

// common are the flags of every command that runs the plant. Its zero value is
// a command line without any of them.
type common struct {
	Out          string         // folder for the results, "" for none
	Replications option[int]    // simulated repeats with other luck
	Years        option[int]    // simulated years in each, the dropped first ones included
	Seed         option[uint64] // number from which all luck is drawn
	Workers      option[int]    // processors to use; results do not depend on it
	Settings     []setting      // inputs changed for this run, in the order given
	JSON         bool           // the result as JSON on stdout
	Quiet        bool           // no progress

	// Inputs lists the paths that --set takes, for shell completion; may be nil.
	Inputs func(*Context) []string
}

// The largest numbers that the common flags take. A seed stays exact in a
// float64, and so in every program that reads JSON.
const (
	mostReplications = 10_000
	mostYears        = 1_000
	mostWorkers      = 1_024
	mostSeed         = 1<<53 - 1
)

// add puts the common flags into f; values arrive in o when f is parsed.
func (o *common) add(f *pflag.FlagSet) {
	f.VarP(&folder{flag: "out", to: &o.Out}, "out", "o", "write the results into this folder")
	f.Var(&whole[int]{flag: "replications", to: &o.Replications, low: 1, high: mostReplications},
		"replications", "repeat N times with other luck")
	f.Var(&whole[int]{flag: "years", to: &o.Years, low: 1, high: mostYears},
		"years", "simulate N years in each repeat")
	f.Var(&whole[uint64]{flag: "seed", to: &o.Seed, low: 0, high: mostSeed},
		"seed", "draw all luck from this number; the same number gives the same results")
	f.Var(&whole[int]{flag: "workers", to: &o.Workers, low: 1, high: mostWorkers},
		"workers", "use N processors, all by default; results do not depend on it")
	f.Var(&settings{flag: "set", to: &o.Settings, paths: o.Inputs},
		"set", "change one input for this run; may be given again")
	f.BoolVar(&o.JSON, "json", false, "print the result as JSON")
	f.BoolVarP(&o.Quiet, "quiet", "q", false, "show no progress")
}

// workers is how many goroutines to simulate with.
func (o *common) workers() int { return o.Workers.Or(runtime.GOMAXPROCS(0)) }
