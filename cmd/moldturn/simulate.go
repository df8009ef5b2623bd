package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"runtime/debug"
	"sync"
	"sync/atomic"

	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/study"
)

// simulate runs the plants of a scenario, with progress on stderr, and gives
// the outcomes with their names. what is told while it runs.
func simulate(c *Context, o *common, s *scenarios.Scenario, what string) (*view.Study, error) {
	if err := mayWrite(o.Out); err != nil {
		return nil, err
	}
	run := s.Base.Value.At("run")
	setup := &study.Setup{
		Alternatives: s.Study(),
		Replications: o.Replications.Or(run.At("replications").Count()),
		Seed:         o.Seed.Or(uint64(run.At("seed").Count())),
		Workers:      o.workers(),
	}
	told := newProgress(c, what, o.Quiet)
	var done atomic.Int64
	setup.Done = func(n int) { told.Update(int(done.Add(int64(n))), setup.Total()) }
	runs, err := study.Compare(c.Ctx, setup)
	told.Close()
	if err != nil {
		return nil, err
	}
	return studyOf(s, setup, runs), nil
}

// typicalWeeks is how many weeks of a typical run the report shows from near.
const typicalWeeks = 4

// studyOf joins outcomes with the names their indices stand for.
func studyOf(s *scenarios.Scenario, setup *study.Setup, runs []study.Runs) *view.Study {
	v := &view.Study{
		Scenario: s.Base.Value.At("name").Text(), Seed: setup.Seed, Replications: setup.Replications,
		Years: s.Base.Years, Warm: s.Base.Warm, Hash: s.Base.Value.Hash(), Version: programVersion(), Money: moneyOf(s),
	}
	if note := s.Base.Value.At("note"); note.Given() {
		v.Note = note.Text()
	}
	v.Inputs = inputsOf(s.Base.Assumptions())
	paper := byHand(s.Base)
	v.Hand = &paper
	for i := range runs {
		v.Alternatives = append(v.Alternatives, view.Alternative{Runs: runs[i], Plan: s.Alternatives[i].Plant.Plan()})
	}
	if len(runs) > 0 {
		base := &setup.Alternatives[0]
		v.Typical = sync.OnceValues(func() (*study.Typical, error) { return study.TypicalOf(base, &runs[0], setup.Seed, typicalWeeks) })
	}
	return v
}

// inputsOf are values of a scenario as a report lists them.
func inputsOf(list []scenarios.Input) []view.Input {
	var out []view.Input
	for _, in := range list {
		out = append(out, view.Input{Path: in.Path, Value: in.Value, Range: in.Range, Doc: in.Doc,
			Mark: string(in.Mark), Source: in.Source, Changed: in.Changed, Place: in.Place})
	}
	return out
}

// mayWrite finds out before a long computation whether files can be put into a
// folder, or the folder be made. It leaves nothing behind.
func mayWrite(folder string) error {
	if folder == "" {
		return nil
	}
	at := filepath.Clean(folder)
	for {
		info, err := os.Stat(at)
		if err == nil && !info.IsDir() {
			return fmt.Errorf("%s: nothing can be written there: %s is a file", folder, at)
		}
		if err == nil {
			break
		}
		parent := filepath.Dir(at)
		if parent == at {
			return fmt.Errorf("%s: nothing can be written there: %w", folder, plain(err))
		}
		at = parent
	}
	f, err := os.CreateTemp(at, ".moldturn-*.tmp")
	if err != nil {
		return fmt.Errorf("%s: nothing can be written there: %w", folder, plain(err))
	}
	return errors.Join(f.Close(), os.Remove(f.Name()))
}

// programVersion names the program and what its results depend on beside it.
func programVersion() string {
	info, ok := debug.ReadBuildInfo()
	if !ok {
		return ""
	}
	return fmt.Sprintf("moldturn %s, %s, simgo %s", info.Main.Version, runtime.Version(), moduleVersion(info, kernelModule))
}
