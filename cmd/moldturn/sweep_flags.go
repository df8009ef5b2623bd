package main

import (
	"errors"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/sim/param/guess"
	"moldturn/sim/study"
)

// sweepFlags are the flags of "moldturn sweep" beside the common ones.
type sweepFlags struct {
	over   []string
	of     []study.Metric
	latin  bool
	each   bool
	points option[int]
	fresh  bool
}

func (s *sweepFlags) add(f *pflag.FlagSet) {
	f.Var(&overs{to: &s.over}, "over", "values of one input, as path=low..high/step or path=value, value; may be given again")
	f.Var(&figures{to: &s.of}, "of", "figures to report, as \"moldturn list metrics\" names them")
	f.BoolVar(&s.each, "each", false, "change one input at a time instead of all together")
	f.BoolVar(&s.latin, "latin", false, "spread --points settings over the ranges as a Latin hypercube")
	f.Var(&whole[int]{flag: "points", to: &s.points, low: 2, high: study.MostPoints}, "points", "settings of a Latin hypercube")
	f.BoolVar(&s.fresh, "fresh", false, "throw away what the results folder already holds")
}

// defaultOf are the figures that are reported without --of.
func defaultOf() []study.Metric {
	boats, _ := study.MetricNamed("boats_per_week")
	luster, _ := study.MetricNamed("luster_p10")
	return []study.Metric{boats, luster}
}

// asked is what the flags ask for; it fails where they contradict each other.
func (s *sweepFlags) asked() (*study.Asked, error) {
	a := &study.Asked{Form: study.Grid, Over: s.over}
	switch {
	case len(s.over) == 0:
		return nil, misuse("for example --over strip.every=1..15, or --over hold.clock=12h..36h/2h", "sweep needs --over")
	case s.latin && s.each:
		return nil, misuse("", "--latin and --each do not go together")
	case s.points.Given && !s.latin:
		return nil, misuse("without --latin every value is tried with every other", "--points goes with --latin")
	case s.latin && !s.points.Given:
		return nil, misuse("ten for each input is a common choice, --points 20 for two", "--latin needs --points")
	case s.latin:
		a.Form, a.Points = study.Latin, s.points.Value
	case s.each:
		a.Form = study.Each
	}
	return a, nil
}

// designOf makes the points that were asked for.
func designOf(a *study.Asked, seed uint64) (*study.Design, error) {
	var factors []study.Factor
	for _, text := range a.Over {
		f, err := study.ParseFactor(text)
		if err != nil {
			return nil, misuse("", "--over: %v", err)
		}
		factors = append(factors, f)
	}
	var d *study.Design
	var err error
	switch a.Form {
	case study.Latin:
		d, err = study.NewLatin(factors, a.Points, seed)
	case study.Each:
		d, err = study.NewEach(factors)
	case study.Grid:
		d, err = study.NewGrid(factors)
	default:
		err = fmt.Errorf("unknown form %q", a.Form)
	}
	if err != nil {
		return nil, misuse("", "--over: %v", err)
	}
	return d, nil
}

// sweepFolder is where the results of a sweep are kept: the folder of --out, or
// one named after the scenario.
func sweepFolder(out, scenario string) string {
	if out != "" {
		return out
	}
	base := filepath.Base(scenario)
	return strings.TrimSuffix(base, filepath.Ext(base)) + "-sweep"
}

// overs is the flag --over.
type overs struct {
	to    *[]string
	wrong []string
}

// Set implements pflag.Value. It returns no error; see complaints.
func (v *overs) Set(text string) error {
	f, err := study.ParseFactor(text)
	if err == nil && slices.ContainsFunc(*v.to, func(s string) bool {
		earlier, _ := study.ParseFactor(s)
		return earlier.Path == f.Path
	}) {
		err = errors.New(f.Path + " is given twice")
	}
	if err != nil {
		v.wrong = append(v.wrong, "--over: "+err.Error())
		return nil
	}
	*v.to = append(*v.to, text)
	return nil
}

// String implements pflag.Value.
func (v *overs) String() string { return "" }

// Type implements pflag.Value; it stands for the value in help texts.
func (v *overs) Type() string { return "PATH=VALUES" }

func (v *overs) complaints() []string { return v.wrong }

func (v *overs) offer(c *Context) offer {
	var o offer
	for _, path := range inputPaths(c) {
		o.words = append(o.words, offered{word: path + "="})
	}
	return o
}

// figures is a flag that takes names of figures with commas between.
type figures struct {
	to    *[]study.Metric
	text  string
	wrong []string
}

// Set implements pflag.Value. It returns no error; see complaints.
func (v *figures) Set(text string) error {
	v.text = text
	*v.to = nil
	for _, name := range strings.Split(text, ",") {
		name = strings.TrimSpace(name)
		m, ok := study.MetricNamed(name)
		switch {
		case !ok:
			line := fmt.Sprintf("--of: unknown figure %q, allowed: names that \"moldturn list metrics\" shows", name)
			if near := guess.Near(name, figureNames()); near != "" {
				line += fmt.Sprintf("; did you mean %q?", near)
			}
			v.wrong = append(v.wrong, line)
		case slices.ContainsFunc(*v.to, func(x study.Metric) bool { return x.Name == name }):
			v.wrong = append(v.wrong, fmt.Sprintf("--of: %s is given twice", name))
		default:
			*v.to = append(*v.to, m)
		}
	}
	return nil
}

// String implements pflag.Value.
func (v *figures) String() string { return v.text }

// Type implements pflag.Value; it stands for the value in help texts.
func (v *figures) Type() string { return "FIGURES" }

func (v *figures) complaints() []string { return v.wrong }

func (v *figures) offer(*Context) offer { return offerWords(figureNames()...) }

func figureNames() []string {
	var names []string
	for _, m := range study.Metrics() {
		names = append(names, m.Name)
	}
	return names
}
