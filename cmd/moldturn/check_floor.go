package main

import (
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/scenarios"
	"moldturn/scenarios/floor"
	"moldturn/sim/param/guess"
)

// floorFlags say which floor a command starts from. The zero value is none.
type floorFlags struct {
	Folder  string
	Morning floor.Moment
}

// add puts the flags into f.
func (o *floorFlags) add(f *pflag.FlagSet, purpose string) {
	f.Var(&floorFolder{to: &o.Folder}, "floor", purpose)
	f.Var(&morningFlag{to: &o.Morning}, "morning", "the morning of the floor; default: after the last entry")
}

// floorFolder is a flag that names a folder of floor files, or a floor that
// comes with the program.
type floorFolder struct {
	to  *string
	set bool
}

// Set implements pflag.Value. It returns no error; see complaints.
func (f *floorFolder) Set(text string) error {
	*f.to, f.set = text, true
	return nil
}

// String implements pflag.Value.
func (f *floorFolder) String() string { return *f.to }

// Type implements pflag.Value; it stands for the value in help texts.
func (f *floorFolder) Type() string { return "FOLDER" }

func (f *floorFolder) offer(*Context) offer {
	o := offerWords(scenarios.BundledFloors()...)
	o.paths = folders
	return o
}

func (f *floorFolder) complaints() []string {
	if f.set && strings.TrimSpace(*f.to) == "" {
		return []string{"--floor: found nothing, allowed: the name of a folder"}
	}
	return nil
}

// morningFlag is a date with or without a time.
type morningFlag struct {
	flag  string // "morning" without one
	to    *floor.Moment
	text  string
	wrong string
}

// Set implements pflag.Value. It returns no error; see complaints.
func (m *morningFlag) Set(text string) error {
	m.text, m.wrong = text, ""
	at, err := floor.ParseMorning(text)
	if err != nil {
		m.wrong = "--" + cmp.Or(m.flag, "morning") + ": " + err.Error()
	}
	*m.to = at
	return nil
}

// String implements pflag.Value.
func (m *morningFlag) String() string { return m.text }

// Type implements pflag.Value; it stands for the value in help texts.
func (m *morningFlag) Type() string { return "DATE" }

func (m *morningFlag) complaints() []string {
	if m.wrong == "" {
		return nil
	}
	return []string{m.wrong}
}

// readFloor reads the floor that the flags name for the plan of a scenario. The folder is
// opened for reading only, and nothing outside of it, links included. What is
// wrong with the files is in the reading; the error is for folders that cannot
// be opened.
func readFloor(o *floorFlags, s *scenarios.Scenario) (*floor.Reading, error) {
	plan := s.Base.Plan()
	opt := floor.Options{Name: o.Folder, Morning: o.Morning, Currency: s.Base.Value.At("currency").Text()}
	root, err := os.OpenRoot(o.Folder)
	if err == nil {
		defer root.Close()
		return floor.Read(root.FS(), plan, opt), nil
	}
	if !errors.Is(err, fs.ErrNotExist) {
		return nil, fmt.Errorf("%s: cannot be opened as a folder: %w", o.Folder, plain(err))
	}
	if dir, ok := scenarios.BundledFloor(o.Folder); ok {
		return floor.Read(dir, plan, opt), nil
	}
	hint := ""
	if near := guess.Near(o.Folder, scenarios.BundledFloors()); near != "" {
		hint = fmt.Sprintf("did you mean %q?", near)
	}
	return nil, failed(hint, "%s: no such folder, and no floor that comes with the program\n  allowed: a folder, %s", o.Folder, strings.Join(scenarios.BundledFloors(), ", "))
}

// checkFloor tells all about a floor. It fails if no run can start from it.
func checkFloor(c *Context, s *scenarios.Scenario, o *floorFlags, warnings []warning, asJSON bool) error {
	plan := s.Base.Plan()
	r, err := readFloor(o, s)
	if err != nil {
		return err
	}
	if asJSON {
		err = writeJSON(c, checkedFloor{[]scenarios.Complaint{}, warnings, floorReportOf(r)})
	} else {
		err = writeFloor(c, plan, r, o.Folder)
	}
	if err == nil && r.Floor == nil {
		return failed(fatalHint(r), "%s: no run can start from this floor", o.Folder)
	}
	return err
}

// fatalHint is what to do about a floor that cannot be used.
func fatalHint(r *floor.Reading) string {
	for _, n := range r.Notices {
		if n.Level == floor.Fatal {
			return n.Hint
		}
	}
	return ""
}
