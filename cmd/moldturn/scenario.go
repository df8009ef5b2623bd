package main

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"moldturn/scenarios"
	"moldturn/sim/param/guess"
)

// scenarioArg is the argument SCENARIO for help and completion.
func scenarioArg() argSpec {
	return argSpec{names: "SCENARIO", min: 1, max: 1, offer: func(*Context, []string) offer {
		o := offerWords(scenarios.Bundled()...)
		o.paths = files
		return o
	}}
}

// inputPaths are the paths that --set takes, as they are listed.
func inputPaths(*Context) []string {
	tree, err := scenarios.Inputs()
	if err != nil {
		return nil
	}
	var paths []string
	for _, in := range tree.Inputs() {
		if !strings.ContainsAny(in.Path, "*[") {
			paths = append(paths, in.Path)
		}
	}
	return paths
}

// readScenario finds the text of a scenario: a file of that name, else a
// bundled one. file opens what the scenario names beside itself.
func readScenario(name string) (shown string, data []byte, file func(string) ([]byte, error), err error) {
	data, err = os.ReadFile(name)
	switch {
	case err == nil:
		return name, data, beside(name), nil
	case !errors.Is(err, fs.ErrNotExist):
		return "", nil, nil, fmt.Errorf("%s: cannot be read: %w", name, plain(err))
	}
	if data, ok := scenarios.BundledFile(name); ok {
		return name + ".yaml", data, notBeside, nil
	}
	bundled := scenarios.Bundled()
	hint := ""
	if near := guess.Near(name, bundled); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return "", nil, nil, failed(hint, "%s: no such file, and no scenario that comes with the program\n  allowed: a file, %s",
		name, strings.Join(bundled, ", "))
}

// beside opens files named in a scenario file: from its folder, unless their
// names say otherwise.
func beside(scenario string) func(string) ([]byte, error) {
	return func(name string) ([]byte, error) {
		if !filepath.IsAbs(name) {
			name = filepath.Join(filepath.Dir(scenario), name)
		}
		data, err := os.ReadFile(name)
		return data, plain(err)
	}
}

func notBeside(name string) ([]byte, error) {
	return nil, fmt.Errorf("a scenario that comes with the program has no file %q beside it", name)
}

// plain is a file error without the call and the name, which are said before.
func plain(err error) error {
	var p *fs.PathError
	if errors.As(err, &p) {
		return p.Err
	}
	return err
}

// loadScenario reads and checks a scenario with the settings and years of the
// command line.
func loadScenario(name string, o *common) (*scenarios.Scenario, error) {
	shown, data, file, err := readScenario(name)
	if err != nil {
		return nil, err
	}
	opt := scenarios.Options{Years: o.Years.Or(-1), Files: file}
	var complaints scenarios.Complaints
	for _, s := range o.Settings {
		change, faults := scenarios.ParseChange("--set", s.Path+"="+s.Value)
		complaints = append(complaints, faults...)
		opt.Sets = append(opt.Sets, change)
	}
	if len(complaints) > 0 {
		return nil, complaints
	}
	s, complaints := scenarios.Load(shown, data, opt)
	if len(complaints) > 0 {
		return nil, withOptions(complaints)
	}
	return s, nil
}

// withOptions points at the option when --set names what only an option sets.
func withOptions(found scenarios.Complaints) scenarios.Complaints {
	for i := range found {
		c := &found[i]
		if name, ok := strings.CutPrefix(c.File, "--set "); ok && slices.Contains([]string{"seed", "replications", "workers", "years"}, name) {
			c.Hint = "it is an option of its own: --" + name
		}
	}
	return found
}
