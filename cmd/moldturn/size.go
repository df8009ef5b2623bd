package main

import (
	"fmt"
	"io"
	"slices"
	"sort"
	"strings"

	"github.com/spf13/pflag"

	"moldturn/reports/table"
	"moldturn/reports/view"
	"moldturn/scenarios"
	"moldturn/sim/param"
	"moldturn/sim/param/guess"
	"moldturn/sim/param/unit"
	"moldturn/sim/study"
)

// sizeFlags are the flags of size beside the common ones.
type sizeFlags struct {
	common
	target string
	weeks  string
	worst  bool
	luster float64
	share  string
	may    string
	most   int
	budget int
}

func (o *sizeFlags) add(f *pflag.FlagSet) {
	o.common.add(f)
	f.StringVar(&o.target, "target", "", "boats to reach, \"10/week\"")
	f.StringVar(&o.weeks, "weeks", "90 %", "share of weeks that must reach it; \"0 %\": the mean week must")
	f.BoolVar(&o.worst, "worst-month", false, "it must be reached in the worst month too, not only over the year")
	f.Float64Var(&o.luster, "luster", 0, "luster that boats must reach")
	f.StringVar(&o.share, "share", "95 %", "share of boats that must reach that luster")
	f.StringVar(&o.may, "may", "", "what may change: molds, booths, guns, bays, crew, crew.gel, crew.gel.day, … separated by commas; everything by default")
	f.IntVar(&o.most, "most", 3, "how many times as many as now at most")
	f.IntVar(&o.budget, "budget", 400, "sizes to try at most")
}

func sizeCommand() *command {
	o := &sizeFlags{common: common{Inputs: inputPaths}}
	return &command{
		name:     "size",
		synopsis: "the cheapest people, places and molds that reach a number of boats",
		help: `Looks for the cheapest set of people by craft and shift, places and mold sets
that ships the target in 9 weeks of 10 (--weeks), in the mix of the models'
orders. It starts from what the plant cannot do without on paper, adds where work
waits longest for the price, takes away what is not needed, and holds the answer
and those near it against fresh luck ("moldturn explain sizing"). Prices are those
of the scenario, else the inputs size.person, size.booth, size.guns, size.hoist,
size.place and size.mold_per_m2.`,
		args:  scenarioArg(),
		flags: o.add,
		run:   func(c *Context) error { return size(c, o) },
	}
}

// goal reads the flags that say what must be reached; all faults at once.
func (o *sizeFlags) goal() (*study.Target, error) {
	var faults []string
	read := func(flag, text string, kind param.Kind) float64 {
		x, err := unit.Parse(kind, text)
		if err != nil {
			faults = append(faults, fmt.Sprintf("--%s: %v", flag, err))
		}
		return x
	}
	g := &study.Target{Worst: o.worst}
	if o.target == "" {
		faults = append(faults, "--target is needed, for example --target 10/week")
	} else if g.Boats = read("target", o.target, param.Rate); g.Boats <= 0 && len(faults) == 0 {
		faults = append(faults, "--target: must be above 0")
	}
	if o.luster < 0 || o.luster > 100 {
		faults = append(faults, fmt.Sprintf("--luster: %v is not 0 to 100", o.luster))
	}
	g.Share = read("weeks", o.weeks, param.Share)
	if g.Share < 0 || g.Share > 0.999 {
		faults = append(faults, fmt.Sprintf("--weeks: %s is not 0 %% to 99.9 %%", o.weeks))
	}
	if o.luster > 0 {
		if g.Luster = read("share", o.share, param.Share); g.Luster <= 0 || g.Luster >= 1 {
			faults = append(faults, fmt.Sprintf("--share: %s is not above 0 %% and below 100 %%", o.share))
		}
	}
	if o.most < 1 || o.budget < 1 {
		faults = append(faults, "--most and --budget must be 1 or more")
	}
	if len(faults) > 0 {
		return nil, misuse("moldturn size fenwater --target 10/week --may molds,booth,crew", "%s", strings.Join(faults, "\n"))
	}
	return g, nil
}

// mayWord is the word of --may for what was meant by another.
func mayWord(word string) string {
	switch word {
	case "gunsets", "gun sets", "gun set":
		return "guns"
	case "people", "crews":
		return "crew"
	case "mold":
		return "molds"
	}
	return word
}

// leverNames are the names that --may knows a lever by: "crew", "crew.gel" and
// "crew.gel.day".
func leverNames(l *scenarios.Lever) []string {
	head, _, _ := strings.Cut(l.Key, ".")
	names := []string{head, l.Key}
	if _, shift, ok := strings.Cut(l.Label, ", "); ok && l.Kind == scenarios.People {
		names = append(names, l.Key+"."+shift)
	}
	return names
}

// movable picks the levers that --may names.
func (o *sizeFlags) movable(levers []scenarios.Lever) ([]scenarios.Lever, error) {
	if o.may == "" {
		return levers, nil
	}
	var out []scenarios.Lever
	names := map[string]bool{}
	for _, l := range levers {
		for _, n := range leverNames(&l) {
			names[n] = true
		}
	}
	var faults []string
	hint := ""
	for _, want := range strings.Split(o.may, ",") {
		want = strings.TrimSpace(want)
		if one := strings.TrimSuffix(want, "s"); !names[want] && names[one] {
			want = one // "booths" for "booth"
		}
		if !names[want] {
			want = mayWord(want)
		}
		if !names[want] {
			all := make([]string, 0, len(names))
			for n := range names {
				all = append(all, n)
			}
			sort.Strings(all)
			faults = append(faults, fmt.Sprintf("--may: nothing is called %q\n  allowed: %s", want, strings.Join(all, ", ")))
			if want == "bay" || want == "bays" || want == "stall" || want == "stalls" || want == "guns" {
				hint = "what is not listed under places of the scenario is there without limit, so it need not be sized"
			} else if near := guess.Near(want, all); near != "" {
				hint = fmt.Sprintf("did you mean %q?", near)
			}
			continue
		}
		for _, l := range levers {
			given := slices.ContainsFunc(out, func(x scenarios.Lever) bool { return x.Label == l.Label })
			if !given && slices.Contains(leverNames(&l), want) {
				out = append(out, l)
			}
		}
	}
	if len(faults) > 0 {
		return nil, misuse(hint, "%s", strings.Join(faults, "\n"))
	}
	return out, nil
}

func size(c *Context, o *sizeFlags) error {
	g, err := o.goal()
	if err != nil {
		return err
	}
	if o.luster > 0 {
		o.Settings = append(o.Settings, setting{Path: "quality.target", Value: fmt.Sprint(o.luster)})
	}
	s, err := loadScenario(c.Args[0], &o.common)
	if err != nil {
		return err
	}
	g.Mix = orderMix(s)
	levers, err := o.movable(s.Levers())
	if err != nil {
		return err
	}
	if err := mayWrite(o.Out); err != nil {
		return err
	}
	told := newProgress(c, "looking for the cheapest plant", o.Quiet)
	z := &sizer{c: c, o: o, s: s, g: g, levers: levers, told: told}
	v, err := z.look()
	told.Close()
	if err != nil {
		return err
	}
	return tell(c, &o.common, "size", v, sizeText)
}

func sizeText(w io.Writer, v *view.Sized) error {
	if _, err := fmt.Fprint(w, table.Wrap(v.Headline(), table.Style{}), "\n"); err != nil {
		return err
	}
	for _, t := range v.Tables() {
		if err := table.Write(w, t, table.Style{}); err != nil {
			return err
		}
		fmt.Fprintln(w)
	}
	for _, line := range append(v.Staircase(), v.Cost()...) {
		if _, err := fmt.Fprint(w, table.Wrap(line, table.Style{})); err != nil {
			return err
		}
	}
	return nil
}

// orderMix is the share of each model in the orders; nil without orders.
func orderMix(s *scenarios.Scenario) []float64 {
	var mix []float64
	sum := 0.0
	for _, m := range s.Base.Value.Each("models") {
		mix = append(mix, m.At("orders").PerWeek())
		sum += mix[len(mix)-1]
	}
	if sum == 0 {
		return nil
	}
	for i := range mix {
		mix[i] /= sum
	}
	return mix
}
