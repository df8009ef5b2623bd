package main

import (
	"errors"
	"path/filepath"
	"slices"

	"moldturn/scenarios"
	"moldturn/sim/study"
)

// opened is a scenario with all that was read for it, so that results can carry
// it along.
type opened struct {
	*scenarios.Scenario
	shown string            // name of the file, without folders
	text  string            // its content
	sets  []string          // changes of the command line, "path=value"
	files map[string][]byte // content of the files it names
	years int               // below 0: as the scenario says
}

// openScenario is loadScenario that keeps what it read.
func openScenario(name string, o *common) (*opened, error) {
	shown, data, file, err := readScenario(name)
	if err != nil {
		return nil, err
	}
	op := &opened{shown: shown, text: string(data), years: o.Years.Or(-1)}
	for _, s := range o.Settings {
		op.sets = append(op.sets, s.Path+"="+s.Value)
	}
	err = op.load(file)
	op.shown = filepath.Base(shown)
	return op, err
}

// reopen makes the scenario of a file of results.
func reopen(h *study.Head) (*opened, error) {
	op := &opened{shown: h.Scenario, text: h.Text, sets: h.Set, years: h.Years}
	return op, op.load(func(name string) ([]byte, error) {
		text, ok := h.Files[name]
		if !ok {
			return nil, errors.New("the file of results does not hold it")
		}
		return []byte(text), nil
	})
}

// load checks the text; file opens what it names.
func (op *opened) load(file func(string) ([]byte, error)) error {
	op.files = map[string][]byte{}
	opt := scenarios.Options{Years: op.years, Files: func(name string) ([]byte, error) {
		data, err := file(name)
		if err == nil {
			op.files[name] = data
		}
		return data, err
	}}
	var complaints scenarios.Complaints
	for _, set := range op.sets {
		change, faults := scenarios.ParseChange("--set", set)
		complaints = append(complaints, faults...)
		opt.Sets = append(opt.Sets, change)
	}
	if len(complaints) > 0 {
		return complaints
	}
	s, complaints := scenarios.Load(op.shown, []byte(op.text), opt)
	if len(complaints) > 0 {
		return complaints
	}
	op.Scenario = s
	return nil
}

// head is the first line of a file of results, as far as the scenario goes.
func (op *opened) head(kind string, seed uint64, replications int) study.Head {
	h := study.Head{Kind: kind, Program: programVersion(), Scenario: op.shown, Text: op.text, Set: slices.Clone(op.sets),
		Fingerprint: op.Base.Fingerprint(op.files), Years: op.Base.Years, Seed: seed, Replications: replications}
	for name, data := range op.files {
		if h.Files == nil {
			h.Files = map[string]string{}
		}
		h.Files[name] = string(data)
	}
	return h
}

// seed and replications are those of the command line, else of the scenario.
func (op *opened) seed(o *common) uint64 {
	return o.Seed.Or(uint64(op.Base.Value.At("run.seed").Count()))
}

func (op *opened) replications(o *common) int {
	return o.Replications.Or(op.Base.Value.At("run.replications").Count())
}

// baseName is what the base of a sweep is called: as the scenario says, unless
// the command line changed it.
func (op *opened) baseName() string {
	if len(op.sets) > 0 {
		return "as set"
	}
	return op.Alternatives[0].Name
}
